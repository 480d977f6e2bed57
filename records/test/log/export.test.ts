import { utf8ToBytes } from '@noble/hashes/utils.js';
import { describe, expect, it } from 'vitest';
import {
  canonicalText,
  deviceOf,
  type ExportVerdict,
  sha256Hex,
  verifyExport,
  writeExport,
} from '../../src/log/index.ts';
import {
  checkpointAt,
  deviceKey,
  exportOf,
  plantId,
  type SampleLog,
  sampleLog,
  stateAt,
  verify,
} from './sample-log.ts';

const own = await sampleLog(6);
const tablet = await sampleLog(5, { key: deviceKey('tablet') });
const idle = await sampleLog(0, { key: deviceKey('idle') });
const text = (bytes: Uint8Array) => Buffer.from(bytes).toString('utf8');
const check = (file: Uint8Array | string): Promise<ExportVerdict> =>
  verifyExport(typeof file === 'string' ? utf8ToBytes(file) : file, { verify });
const linesOf = (file: Uint8Array) => text(file).split('\n').slice(0, -1);
const joined = (lines: readonly string[]) => `${lines.join('\n')}\n`;
const failureOf = async (file: Uint8Array | string) => (await check(file)).failure;

/** The lines with the trailer signed anew by whoever has the exporting device's key. */
async function signedAnew(lines: readonly string[], log: SampleLog, change: object = {}): Promise<string> {
  const { sig: _, ...trailer } = JSON.parse(lines.at(-1) ?? '') as { sig: string };
  const said = { ...trailer, header: sha256Hex(lines[0] ?? ''), ...change };
  const message = Buffer.concat([Buffer.from('splice-record/export/1\0'), Buffer.from(canonicalText(said))]);
  const sig = Buffer.from(await log.key.sign(message)).toString('hex');
  return joined([...lines.slice(0, -1), canonicalText({ ...said, sig })]);
}

describe('export', async () => {
  const file = await exportOf([own]);
  const lines = linesOf(file);

  it('[LOG-70] header, events by seq, trailer; every line canonical, the last one ended', async () => {
    expect(text(file).endsWith('}\n')).toBe(true);
    expect(lines).toHaveLength(8);
    for (const line of lines) expect(canonicalText(JSON.parse(line))).toBe(line);
    const keys = [Buffer.from(own.key.publicKey).toString('hex')];
    expect(JSON.parse(lines[0] ?? '')).toEqual({ v: 1, kind: 'export', plant: plantId, keys });
    const trailer = JSON.parse(lines[7] ?? '') as Record<string, unknown>;
    expect(Object.keys(trailer)).toEqual(['checkpoints', 'header', 'sig', 'v']);
    expect(trailer['header']).toBe(sha256Hex(lines[0] ?? ''));
    expect(trailer['checkpoints']).toEqual([await checkpointAt(own, 6)]);
  });

  it('[LOG-71] is whole as written, and says so with the state of each log', async () => {
    const { failure, plant, logs, warnings } = await check(file);
    expect([failure, plant, warnings]).toEqual([undefined, plantId, []]);
    const checkpoint = await checkpointAt(own, 6);
    expect(logs).toEqual([{ publicKey: own.key.publicKey, state: stateAt(own, 6), witnessed: 6, checkpoint }]);
  });

  it('[LOG-71] hands over every event in order', async () => {
    const ids: string[] = [];
    const several = await exportOf([own, tablet]);
    await verifyExport(several, { verify, onEvent: (_event, id) => ids.push(id) });
    expect(ids).toEqual([...own.ids, ...tablet.ids]);
  });

  it('[LOG-72] several devices, one of them without events; what no checkpoint covers is said', async () => {
    const { failure, logs, warnings } = await check(await exportOf([own, idle, tablet], [6, 0, 3]));
    expect(failure).toBeUndefined();
    expect(logs.map(({ state, witnessed }) => [state.size, witnessed])).toEqual([
      [6, 6],
      [0, 0],
      [5, 3],
    ]);
    expect(warnings).toEqual([{ code: 'not-witnessed', at: 10 }]);
  });

  it('[LOG-72] an idle device may export, too', async () => {
    expect((await check(await exportOf([idle, own]))).failure).toBeUndefined();
    expect((await check(await exportOf([idle]))).failure).toBeUndefined();
  });

  it('[LOG-73] a header of another form is refused', async () => {
    const header = JSON.parse(lines[0] ?? '') as { keys: string[] };
    const wrong: readonly (readonly [unknown, object])[] = [
      [{ ...header, v: 2 }, { field: 'v' }],
      [{ ...header, kind: 'log' }, { field: 'kind' }],
      [{ ...header, extra: 1 }, { field: 'extra' }],
      [{ ...header, keys: [] }, { field: 'keys' }],
      [{ ...header, keys: ['xyz'] }, { field: 'keys' }],
      [{ ...header, keys: [...header.keys, ...header.keys] }, { field: 'keys' }],
      [{ ...header, plant: 7 }, { field: 'plant' }],
      [[], {}],
    ];
    for (const [value, place] of wrong) {
      const failure = await failureOf(joined([canonicalText(value), ...lines.slice(1)]));
      expect(failure).toEqual({ verdict: 'bad-envelope', at: 0, ...place });
    }
    expect(await failureOf(joined([` ${lines[0]}`, ...lines.slice(1)]))).toEqual({ verdict: 'not-canonical', at: 0 });
    expect(await failureOf('')).toEqual({ verdict: 'not-canonical', at: 0 });
    expect(await failureOf(`\ufeff${text(file)}`)).toEqual({ verdict: 'not-canonical', at: 0 });
  });

  it('[LOG-74] another header under the same events is refused even when it adds a key', async () => {
    const header = JSON.parse(lines[0] ?? '') as { keys: string[] };
    const keys = [...header.keys, Buffer.from(tablet.key.publicKey).toString('hex')];
    const changed = [canonicalText({ ...header, keys }), ...lines.slice(1)];
    expect(await failureOf(joined(changed))).toEqual({ verdict: 'broken-link', at: 7 });
    const vouched = await signedAnew(changed, own);
    expect(await failureOf(vouched)).toEqual({ verdict: 'bad-checkpoint' });
  });

  it('[LOG-75] a trailer of another form, or not signed by the exporting device, is refused', async () => {
    const trailer = JSON.parse(lines[7] ?? '') as { sig: string; checkpoints: unknown[] };
    const last = (value: unknown) => joined([...lines.slice(0, 7), canonicalText(value)]);
    expect(await failureOf(last({ ...trailer, v: 2 }))).toEqual({ verdict: 'bad-envelope', at: 7, field: 'v' });
    expect(await failureOf(last({ ...trailer, extra: 1 }))).toEqual({ verdict: 'bad-envelope', at: 7, field: 'extra' });
    const noList = { verdict: 'bad-envelope', at: 7, field: 'checkpoints' };
    expect(await failureOf(last({ ...trailer, checkpoints: {} }))).toEqual(noList);
    expect(await failureOf(last({ ...trailer, checkpoints: [] }))).toEqual({ verdict: 'bad-signature', at: 7 });
    expect(await failureOf(await signedAnew(lines, tablet))).toEqual({ verdict: 'bad-signature', at: 7 });
  });

  it('[LOG-76] each log has one checkpoint, and the exporting device covers all its events', async () => {
    const vouchFor = async (checkpoints: unknown[]) => failureOf(await signedAnew(lines, own, { checkpoints }));
    expect(await vouchFor([await checkpointAt(own, 6)])).toBeUndefined();
    expect(await vouchFor([await checkpointAt(own, 5)])).toEqual({ verdict: 'bad-checkpoint', at: 5, field: 'size' });
    expect(await vouchFor([])).toEqual({ verdict: 'bad-checkpoint' });
    expect(await vouchFor([await checkpointAt(own, 6), await checkpointAt(own, 6)])).toEqual({
      verdict: 'bad-checkpoint',
      at: 7,
      field: 'checkpoints',
    });
    expect(await vouchFor([await checkpointAt(tablet, 5)])).toEqual({
      verdict: 'bad-checkpoint',
      at: 5,
      field: 'device',
    });
  });

  it('[LOG-76] a checkpoint of another device that its log contradicts is refused', async () => {
    const both = await exportOf([own, tablet], [6, 4]);
    const short = linesOf(both).filter((_, i) => i < 9 || i === 12);
    const failed = await check(joined(short));
    expect(failed.failure).toEqual({ verdict: 'truncated', at: 2, witnessed: 4 });
    expect(failed.device).toBe(deviceOf(tablet.key.publicKey));
  });

  it('[LOG-77] an export cut between two lines is truncated; cut inside a line it is not canonical', async () => {
    for (let count = 1; count < 8; count++) {
      const failure = await failureOf(joined(lines.slice(0, count)));
      expect(failure).toEqual(count === 1 ? { verdict: 'not-canonical', at: 1 } : { verdict: 'truncated', at: count });
    }
    for (const length of [1, 40, 700, 2000, file.length - 1])
      expect((await failureOf(file.subarray(0, length)))?.verdict).toBe('not-canonical');
  });

  it('[LOG-77] nothing may follow the trailer', async () => {
    expect((await failureOf(joined([...lines, lines[6] ?? ''])))?.verdict).toBe('bad-envelope');
    expect((await failureOf(`${text(file)}\n`))?.verdict).toBe('bad-envelope');
  });

  it('[LOG-70] is not written when the checkpoint does not fit', async () => {
    const { key } = own;
    const code = async (logs: Parameters<typeof writeExport>[1]) =>
      writeExport(plantId, logs, key.sign).catch((cause: unknown) => (cause as { code?: string }).code);
    const log = { publicKey: key.publicKey, lines: own.lines };
    expect(await code([])).toBe('too-few');
    expect(await code([{ ...log, checkpoint: await checkpointAt(own, 5) }])).toBe('checkpoint-behind');
    expect(await code([{ ...log, checkpoint: await checkpointAt(tablet, 5) }])).toBe('wrong-device');
  });
});
