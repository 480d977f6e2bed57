import { checkCheckpoints, type Mark, markOf, sizesSpokenOf, startMark } from './check-checkpoints.ts';
import { extendLog } from './extend-log.ts';
import { deviceOf, emptyLog, type LogState } from './log-state.ts';
import type { Verify } from './signing.ts';
import type { Failure, LogWarning } from './verdict.ts';

/** A log as someone hands it over, and whose it should be. */
export interface LogToVerify {
  /** Exact texts of the lines. */
  readonly lines: readonly string[];
  readonly publicKey: Uint8Array;
  readonly plant: string;
  /** Statements of its size and root from elsewhere. Without one a missing end cannot be seen. */
  readonly checkpoints?: readonly unknown[];
}

/** What is to be said of a log. */
export interface LogVerdict {
  readonly failure?: Failure;
  /** The log as far as it is whole. */
  readonly state: LogState;
  /** How many of its first events a checkpoint vouches for; beyond, only this copy does. */
  readonly witnessed: number;
  readonly warnings: readonly LogWarning[];
}

/**
 * Checks a log: every line by itself and against the one before, then every checkpoint.
 *
 * A log without checkpoints may have lost its end, or have been written anew by whoever holds the key, and still be
 * whole; that much no chain can tell.
 *
 * @param log - its lines, key, plant and checkpoints
 * @param verify - checks a signature
 */
export async function verifyLog(
  { lines, publicKey, plant, checkpoints = [] }: LogToVerify,
  verify: Verify,
): Promise<LogVerdict> {
  const sizes = sizesSpokenOf(checkpoints);
  const marks = new Map<number, Mark>([[0, startMark]]);
  const { state, failure, warnings } = await extendLog(emptyLog(plant, publicKey), lines, {
    publicKey,
    verify,
    onEvent: (_event, _id, after) => sizes.has(after.size) && marks.set(after.size, markOf(after)),
  });
  if (failure !== undefined) return { failure, state, witnessed: 0, warnings };
  const owner = { plant, device: deviceOf(publicKey), publicKey, verify };
  return { ...(await checkCheckpoints(checkpoints, owner, { size: state.size, marks })), state, warnings };
}
