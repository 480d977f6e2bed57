import { describe, expect, it } from 'vitest';
import {
  type Checkpoint,
  consistencyProof,
  countersignatureFault,
  type KeptCheckpoints,
  meetExport,
  type Witnessed,
  witnessLog,
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

const log = await sampleLog(20);
const rewritten = await sampleLog(20, { change: (n) => happening(n, n > 4 ? { by: 'thief' } : {}) });
const witness = { key: deviceKey('witness'), at: '2026-11-26T00:00:01Z' };

/** A store that takes its time between reading and writing, as one on a disk does; `isAtomic` keeps others waiting. */
function keptIn(rows: Map<string, Checkpoint>, isAtomic = true): KeptCheckpoints {
  let before: Promise<unknown> = Promise.resolve();
  return {
    exchange: async ({ device }, step) => {
      const work = async () => {
        const { keep, answer } = step(rows.get(device));
        await new Promise((resolve) => setTimeout(resolve, keep === undefined ? 1 : 40 - keep.size));
        if (keep !== undefined) rows.set(device, keep);
        return answer;
      };
      if (!isAtomic) return work();
      const turn = before.then(work);
      before = turn;
      return turn;
    },
  };
}

const whole = async (of: SampleLog, size: number) => ({
  checkpoint: await checkpointAt(of, size),
  shown: { ids: of.ids.slice(0, size) },
});
const meet = async (of: SampleLog, size: number, kept: KeptCheckpoints): Promise<Witnessed> =>
  witnessLog(await whole(of, size), kept, witness);

describe('a witness that keeps what it saw', () => {
  it('[LOG-100] countersigns a log at first sight, unchanged and grown, and keeps the latest checkpoint', async () => {
    const rows = new Map<string, Checkpoint>();
    const kept = keptIn(rows);
    for (const [size, meeting] of [
      [5, 'first-seen'],
      [5, 'same'],
      [12, 'grown'],
      [20, 'grown'],
    ] as const) {
      const said = await meet(log, size, kept);
      expect(said.meeting).toBe(meeting);
      expect([...rows.values()].map((each) => each.size)).toEqual([size]);
      const given = 'countersignature' in said ? said.countersignature : undefined;
      expect(given?.statement.size).toBe(size);
      expect(await countersignatureFault(given, plantId, verify)).toBeUndefined();
    }
  });

  it('[LOG-100] countersigns nothing older, nothing unproved, and keeps what it had', async () => {
    const rows = new Map<string, Checkpoint>();
    const kept = keptIn(rows);
    await meet(log, 12, kept);
    expect(await meet(log, 5, kept)).toEqual({ meeting: 'older', known: await checkpointAt(log, 12) });
    const checkpoint = await checkpointAt(log, 20);
    const byCode = (proof: readonly string[]) => witnessLog({ checkpoint, shown: { proof } }, kept, witness);
    expect((await byCode([])).meeting).toBe('not-proved');
    expect([...rows.values()][0]?.size).toBe(12);
    expect((await byCode(consistencyProof(log.ids, 12))).meeting).toBe('grown');
  });

  it('[LOG-101] one size with two roots, or a whole log without what was known, is an alarm with both checkpoints', async () => {
    const kept = keptIn(new Map());
    await meet(log, 12, kept);
    const known = await checkpointAt(log, 12);
    for (const [size, meeting] of [
      [12, 'fork'],
      [20, 'rewritten'],
    ] as const)
      expect(await meet(rewritten, size, kept)).toEqual({
        meeting,
        known,
        offered: await checkpointAt(rewritten, size),
      });
    // Its checkpoint is older, but the log beside it goes on and contradicts what is known.
    const shown = { ids: rewritten.ids };
    const offered = await checkpointAt(rewritten, 8);
    expect(await witnessLog({ checkpoint: offered, shown }, kept, witness)).toEqual({
      meeting: 'rewritten',
      known,
      offered,
    });
    expect((await meet(log, 20, kept)).meeting).toBe('grown');
  });

  it('[LOG-100] two answers at once cannot roll a log back; a store that reads and writes apart lets them', async () => {
    const [fine, loose] = [new Map<string, Checkpoint>(), new Map<string, Checkpoint>()];
    for (const [rows, isAtomic] of [
      [fine, true],
      [loose, false],
    ] as const) {
      const kept = keptIn(rows, isAtomic);
      await Promise.all([meet(log, 20, kept), meet(log, 5, kept)]);
    }
    expect([...fine.values()].map(({ size }) => size)).toEqual([20]);
    expect([...loose.values()].map(({ size }) => size)).toEqual([5]);
  });

  it('[LOG-100] an export is met log by log; one that fails is met not at all', async () => {
    const tablet = await sampleLog(6, { key: deviceKey('tablet') });
    const file = await exportOf([log, tablet], [20, 4]);
    const { verdict, logs } = await meetExport(file, verify);
    expect(verdict.failure).toBeUndefined();
    expect(logs).toEqual([
      { checkpoint: await checkpointAt(log, 20), shown: { ids: log.ids } },
      { checkpoint: await checkpointAt(tablet, 4), shown: { ids: tablet.ids } },
    ]);
    expect((await meetExport(file.subarray(0, -1), verify)).logs).toEqual([]);
  });
});
