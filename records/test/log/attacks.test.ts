import { utf8ToBytes } from '@noble/hashes/utils.js';
import { describe, expect, it } from 'vitest';
import { verifyArchive } from '../../src/archive/index.ts';
import {
  type Checkpoint,
  cardCode,
  compareLogs,
  consistencyProof,
  countersignature,
  type LogVerdict,
  meetCheckpoint,
  signWitness,
  verifyExport,
  verifyLog,
  writeCountersignatures,
} from '../../src/log/index.ts';
import {
  checkpointAt,
  deviceKey,
  exportOf,
  happening,
  plantId,
  type SampleLog,
  sampleLog,
  verify,
} from './sample-log.ts';

// What the log alone shows of each attack, what closes the gap, and what stays open. A test for what is not seen keeps
// anybody from promising it.
const honest = await sampleLog(10);
const { publicKey } = honest.key;

const look = (lines: readonly string[], checkpoints: readonly Checkpoint[] = []): Promise<LogVerdict> =>
  verifyLog({ lines, publicKey, plant: plantId, checkpoints }, verify);
const verdict = async (lines: readonly string[], checkpoints: readonly Checkpoint[] = []) =>
  (await look(lines, checkpoints)).failure?.verdict ?? 'ok';

/** A log that whoever has the key makes to agree with the honest one up to a place, and not from there. */
const rewrittenFrom = (from: number, size = 10): Promise<SampleLog> =>
  sampleLog(size, { change: (n) => happening(n, n >= from ? { by: 'thief' } : {}) });

describe('attacks on a log', () => {
  it('[LOG-90] a changed value, a changed order, a missing middle: seen by itself', async () => {
    const [a, b, ...rest] = honest.lines;
    expect(await verdict([a?.replace('a3f1', 'a3f2') ?? '', b ?? '', ...rest])).toBe('bad-signature');
    expect(await verdict([b ?? '', a ?? '', ...rest])).toBe('sequence-gap');
    expect(await verdict([a ?? '', ...rest])).toBe('sequence-gap');
  });

  it('[LOG-91] a cut tail: not seen by itself; seen by a checkpoint; open for what no checkpoint covers', async () => {
    const checkpoint = await checkpointAt(honest, 8);
    expect(await verdict(honest.lines.slice(0, 7))).toBe('ok');
    expect(await verdict(honest.lines.slice(0, 7), [checkpoint])).toBe('truncated');
    expect(await verdict(honest.lines.slice(0, 8), [checkpoint])).toBe('ok');
    const { state, witnessed } = await look(honest.lines, [checkpoint]);
    expect(state.size - witnessed, 'events only on this device').toBe(2);
  });

  it('[LOG-91] the code on a printed card shows whether a checkpoint is the one printed; it holds against nothing else', async () => {
    const printed = cardCode(await checkpointAt(honest, 8));
    expect(cardCode(await checkpointAt(honest, 8))).toBe(printed);
    expect(cardCode(await checkpointAt(honest, 7))).not.toBe(printed);
    expect(cardCode(await checkpointAt(await rewrittenFrom(6), 8))).not.toBe(printed);
  });

  it('[LOG-91] [LOG-93] whoever has the key exports a shorter or another log: whole by itself, seen where it was witnessed', async () => {
    const statement = await signWitness(await checkpointAt(honest, 8), '2026-11-26T00:00:01Z', deviceKey('tablet'));
    const witnesses = utf8ToBytes(writeCountersignatures([countersignature(statement, deviceKey('tablet').publicKey)]));
    const said = async (log: SampleLog) => {
      const content = { log: await exportOf([log]), blobs: new Map() };
      const [alone, beside] = [
        await verifyArchive(content, verify),
        await verifyArchive({ ...content, witnesses }, verify),
      ];
      return [alone, beside].map(({ failure }) => failure?.verdict ?? 'ok');
    };
    expect(await said(honest)).toEqual(['ok', 'ok']);
    expect(await said(await sampleLog(7))).toEqual(['ok', 'truncated']);
    expect(await said(await rewrittenFrom(6))).toEqual(['ok', 'history-rewritten']);
    expect(await said(await rewrittenFrom(8))).toEqual(['ok', 'ok']);
  });

  it('[LOG-91] the end of another device’s log beyond its checkpoint can be cut from an export; the warning is all that tells', async () => {
    const tablet = await sampleLog(6, { key: deviceKey('tablet') });
    const lines = Buffer.from(await exportOf([honest, tablet], [10, 4]))
      .toString('utf8')
      .split('\n');
    const cut = await verifyExport(utf8ToBytes(lines.toSpliced(-3, 1).join('\n')), { verify });
    expect(cut.failure).toBeUndefined();
    expect(cut.warnings).toEqual([{ code: 'not-witnessed', at: 15 }]);
    const twice = await verifyExport(utf8ToBytes(lines.toSpliced(-4, 2).join('\n')), { verify });
    expect([twice.failure, twice.warnings]).toEqual([undefined, []]);
  });

  it('[LOG-92] a key thief appends: not seen, also not by checkpoints of what was before', async () => {
    const longer = await rewrittenFrom(10, 13);
    expect(await verdict(longer.lines, [await checkpointAt(honest, 10)])).toBe('ok');
    expect((await look(longer.lines, [await checkpointAt(honest, 10)])).witnessed).toBe(10);
  });

  it('[LOG-93] a key thief rewrites: not seen by itself; seen by any checkpoint in the range; open behind it', async () => {
    const rewritten = await rewrittenFrom(6);
    expect(await verdict(rewritten.lines)).toBe('ok');
    for (const size of [7, 8, 9, 10])
      expect(await verdict(rewritten.lines, [await checkpointAt(honest, size)])).toBe('history-rewritten');
    expect(await verdict(rewritten.lines, [await checkpointAt(honest, 6)])).toBe('ok');
  });

  it('[LOG-94] a cloned phone: not seen while the branches are apart; seen where they meet', async () => {
    const clone = await rewrittenFrom(6);
    expect([await verdict(honest.lines), await verdict(clone.lines)]).toEqual(['ok', 'ok']);
    const met = await compareLogs({ a: honest.lines, b: clone.lines, publicKey, plant: plantId }, verify);
    expect(met).toEqual({ verdict: 'fork', at: 6 });
  });

  it('[LOG-95] the whole log replaced under a new key: seen where the key is known; else not', async () => {
    const replaced = await sampleLog(10, { key: deviceKey('new key') });
    expect(await verdict(replaced.lines)).toBe('wrong-device');
    const asked = { lines: replaced.lines, publicKey: replaced.key.publicKey, plant: plantId };
    expect((await verifyLog(asked, verify)).failure).toBeUndefined();
  });

  it('[LOG-96] a clock set back is a warning; a clock that was wrong from the start is not seen', async () => {
    const back = await sampleLog(3, { change: (n) => happening(n, n === 2 ? { at: '2026-11-25T01:00:00Z' } : {}) });
    expect((await look(back.lines)).warnings).toEqual([{ code: 'clock-back', at: 2 }]);
    const wrong = await sampleLog(3, { change: (n) => happening(n, { at: `1999-01-01T00:0${n}:00Z` }) });
    expect(await look(wrong.lines)).toMatchObject({ warnings: [] });
    expect(await verdict(wrong.lines)).toBe('ok');
  });

  it('[LOG-97] a keeper that rolls back: not seen by who comes new; seen by who kept the last checkpoint', async () => {
    const [last, rolledBack] = [await checkpointAt(honest, 10), await checkpointAt(honest, 6)];
    expect(meetCheckpoint(undefined, rolledBack, [])).toBe('first-seen');
    expect(meetCheckpoint(last, rolledBack, [])).toBe('older');
    const regrown = await rewrittenFrom(6, 12);
    const proof = consistencyProof(regrown.ids, 10);
    expect(meetCheckpoint(last, await checkpointAt(regrown, 12), proof)).toBe('not-proved');
  });

  it('[LOG-98] a false entry by an honest device is never seen: a log proves who said what, not that it is true', async () => {
    const change = (n: number) => happening(n, { body: { schema: 1, thing: { id: 'p1', tension_N: -1 } } });
    expect(await verdict((await sampleLog(3, { change })).lines)).toBe('ok');
  });
});
