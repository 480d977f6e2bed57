import { extendLog } from './extend-log.ts';
import { emptyLog } from './log-state.ts';
import type { Verify } from './signing.ts';
import type { Failure } from './verdict.ts';

/** Two copies of the log of one device. */
export interface TwoLogs {
  readonly a: readonly string[];
  readonly b: readonly string[];
  readonly publicKey: Uint8Array;
  readonly plant: string;
}

/** What two copies have in common, and where they part. */
export interface Comparison {
  /** `fork`: one device wrote two different events at one place; `prefix`: one copy goes on where the other ends. */
  readonly verdict: Failure['verdict'] | 'ok';
  /** First place at which they differ; without a difference the shorter length. */
  readonly at: number;
  /** The copy that is not whole in itself. */
  readonly log?: 'a' | 'b';
}

/**
 * Compares two copies of one log. A copy that is not whole in itself is said first.
 *
 * @param logs - the copies, with key and plant
 * @param verify - checks a signature
 */
export async function compareLogs({ a, b, publicKey, plant }: TwoLogs, verify: Verify): Promise<Comparison> {
  const ids: Record<'a' | 'b', string[]> = { a: [], b: [] };
  for (const [log, lines] of [['a', a] as const, ['b', b] as const]) {
    const onEvent = (_event: unknown, id: string) => ids[log].push(id);
    const { failure } = await extendLog(emptyLog(plant, publicKey), lines, { publicKey, verify, onEvent });
    if (failure !== undefined) return { verdict: failure.verdict, at: failure.at ?? 0, log };
  }
  const shorter = Math.min(ids.a.length, ids.b.length);
  const fork = ids.a.findIndex((id, i) => i < shorter && id !== ids.b[i]);
  if (fork >= 0) return { verdict: 'fork', at: fork };
  return { verdict: ids.a.length === ids.b.length ? 'ok' : 'prefix', at: shorter };
}
