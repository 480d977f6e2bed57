import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { hexToBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { describe, expect, it } from 'vitest';
import { type Checkpoint, rootOfLeaves, solveLog, solveTwoLogs, verifyExport, verifyLog } from '../../src/log/index.ts';
import { verify } from './sample-log.ts';

/** Made by another program, in another language: see make-log.py beside it. */
interface IndependentLog {
  readonly plant: string;
  readonly publicKey_hex: string;
  readonly lines: readonly string[];
  readonly ids: readonly string[];
  readonly roots: readonly string[];
  readonly checkpoints: readonly Checkpoint[];
  readonly branch: readonly string[];
  readonly branchCheckpoint: Checkpoint;
  readonly export: string;
}

const file = join(import.meta.dirname, '../fixtures/independent/log.json');
const made = JSON.parse(readFileSync(file, 'utf8')) as IndependentLog;
const { plant, publicKey_hex, lines, checkpoints } = made;

describe('a log made by another program', () => {
  it('[LOG-30] is whole here, with its ids, roots and checkpoints', async () => {
    const answer = await solveLog({ lines, publicKey_hex, plant, checkpoints }, verify);
    const [head, root] = [made.ids[6], made.roots[7]];
    expect(answer).toEqual({ verdict: 'ok', size: 7, head, root, witnessed: 7, warnings: [] });
    for (const [size, each] of made.roots.entries()) expect(rootOfLeaves(made.ids.slice(0, size))).toBe(each);
  });

  it('[LOG-43] [LOG-50] parts from its branch at the fourth event', async () => {
    const asked = { a: lines, b: made.branch, publicKey_hex, plant };
    expect(await solveTwoLogs(asked, verify)).toEqual({ verdict: 'fork', at: 4 });
    const rewritten = { lines: made.branch, publicKey: hexToBytes(publicKey_hex), plant };
    const verdict = await verifyLog({ ...rewritten, checkpoints }, verify);
    expect(verdict.failure).toEqual({ verdict: 'history-rewritten', at: 7 });
    expect((await verifyLog({ ...rewritten, checkpoints: [made.branchCheckpoint] }, verify)).witnessed).toBe(7);
  });

  it('[LOG-71] its export is whole here', async () => {
    const { failure, logs, warnings } = await verifyExport(utf8ToBytes(made.export), { verify });
    expect(failure).toBeUndefined();
    expect(logs.map(({ state, witnessed }) => [state.size, witnessed])).toEqual([
      [7, 7],
      [5, 4],
    ]);
    expect(warnings).toEqual([{ code: 'not-witnessed', at: 12 }]);
  });
});
