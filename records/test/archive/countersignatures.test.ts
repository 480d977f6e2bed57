import { describe, expect, it } from 'vitest';
import { readArchive, verifyArchive, writeArchive } from '../../src/archive/index.ts';
import { type Countersignature, canonicalText, deviceOf, seenOf, writeCountersignatures } from '../../src/log/index.ts';
import { deviceKey, verify } from '../log/sample-log.ts';
import { forgedWitness } from '../verifier/forge.ts';
import { fileOf, phone, record, tablet } from '../verifier/sample-record.ts';

const log = fileOf(record.lines);
const [ofPhone = [], , ofTablet = []] = record.ids;
const seenPhone = { key: phone.key, ids: ofPhone };
const device = deviceOf(phone.key.publicKey);
const check = (list: readonly Countersignature[]) =>
  verifyArchive({ log, blobs: new Map(), witnesses: Buffer.from(writeCountersignatures(list)) }, verify);

describe('countersignatures in an archive', () => {
  it('[LOG-88] lie beside the log, one a line, and are read back and checked', async () => {
    const list = [await forgedWitness(seenPhone, 5), await forgedWitness({ key: tablet.key, ids: ofTablet }, 4)];
    const content = readArchive(writeArchive(log, { countersignatures: list }, '2026-11-25T02:00:00.000Z'));
    expect(Buffer.from(content.witnesses ?? []).toString()).toBe(
      list.map((each) => `${canonicalText(each)}\n`).join(''),
    );
    const { failure, countersignatures } = await verifyArchive(content, verify);
    expect([failure, countersignatures]).toEqual([undefined, list]);
  });

  it('[LOG-88] the first that is none is named by line and field', async () => {
    const [good, other] = [await forgedWitness(seenPhone, 5), await forgedWitness(seenPhone, 6)];
    const own = await forgedWitness(seenPhone, 5, { by: phone.key });
    const wrong: readonly (readonly [string | undefined, unknown])[] = [
      [undefined, null],
      ['extra', { ...other, extra: 1 }],
      ['v', { ...other, v: 2 }],
      ['key', { ...other, key: 'x' }],
      ['statement', { ...other, statement: 7 }],
      ['statement.at', { ...other, statement: { ...other.statement, at: undefined } }],
      ['statement.size', { ...other, statement: { ...other.statement, size: -1 } }],
      ['statement.witness', { ...other, key: good.key.replace(/^./, good.key.startsWith('0') ? '1' : '0') }],
      ['statement.witness', own],
      ['statement.sig', { ...other, statement: { ...other.statement, size: 7 } }],
      ['statement.plant', await forgedWitness(seenPhone, 6, { change: { plant: 'elsewhere' } })],
    ];
    for (const [field, each] of wrong) {
      const plain = JSON.parse(JSON.stringify(each)) as Countersignature;
      const place = field === undefined ? {} : { field };
      expect((await check([good, plain])).failure).toEqual({ verdict: 'bad-witness', at: 1, ...place });
    }
  });

  it('[LOG-89] what one says and the log does not is the verdict: a cut end, a history written anew', async () => {
    const longer = await forgedWitness({ key: phone.key, ids: [...ofPhone, '1'.repeat(64)] }, 10);
    expect((await check([longer])).failure).toEqual({ verdict: 'truncated', at: 9, witnessed: 10, device, witness: 0 });
    const before = await forgedWitness({ key: phone.key, ids: ofPhone.with(4, '1'.repeat(64)) }, 7);
    const failure = { verdict: 'history-rewritten', at: 7, device, witness: 1 };
    expect((await check([await forgedWitness(seenPhone, 3), before])).failure).toEqual(failure);
  });

  it('[LOG-89] one about a log that is not here is a warning', async () => {
    const elsewhere = await forgedWitness({ key: deviceKey('stranger'), ids: ofPhone }, 3);
    const { failure, warnings } = await check([elsewhere]);
    expect(failure).toBeUndefined();
    expect(warnings.at(-1)).toEqual({ code: 'witness-elsewhere', at: 0 });
  });

  it('[LOG-102] a log is on one device only until another bears witness; each event then says by how many it was seen', async () => {
    const of = (size: number, witness: string) => ({ device, size, witness });
    expect(seenOf([], device)).toMatchObject({ size: 0 });
    const seen = seenOf([of(5, 'a'), of(3, 'a'), of(8, 'b'), of(9, device), { ...of(9, 'c'), device: 'x' }], device);
    expect(seen.size).toBe(8);
    expect([0, 4, 5, 7, 8].map(seen.by)).toEqual([2, 2, 1, 1, 0]);
    const { countersignatures } = await check([await forgedWitness(seenPhone, 5)]);
    const said = seenOf(
      countersignatures.map(({ statement }) => statement),
      device,
    );
    expect([said.size, said.by(4), said.by(5)]).toEqual([5, 1, 0]);
  });
});
