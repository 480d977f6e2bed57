import { type Checkpoint, type CheckpointOwner, checkpointFault } from './checkpoint.ts';
import { noEvent } from './log-event.ts';
import { type LogState, logRoot } from './log-state.ts';
import { emptyRoot } from './merkle.ts';
import type { Failure } from './verdict.ts';
import { namedField } from './wrong-field.ts';

/** Root and last event of a log at one of its sizes. */
export interface Mark {
  readonly root: string;
  readonly head: string;
}

/** Marks of a log at the sizes that its checkpoints speak of. */
export type Marks = ReadonlyMap<number, Mark>;

/** The sizes that checkpoints speak of; what they say of them is checked later. */
export function sizesSpokenOf(checkpoints: readonly unknown[]): ReadonlySet<number> {
  const sizes = checkpoints.map((each) =>
    typeof each === 'object' && each !== null && 'size' in each ? each.size : -1,
  );
  return new Set(sizes.filter((size) => typeof size === 'number'));
}

export const markOf = (state: LogState): Mark => ({ root: logRoot(state), head: state.head });

export const startMark: Mark = { root: emptyRoot, head: noEvent };

/** What checkpoints say of a log: the first that it contradicts, and how far the others vouch for it. */
export interface Vouched {
  readonly failure?: Failure;
  /** Largest size of the log that a checkpoint vouches for; 0 without one. */
  readonly witnessed: number;
}

/**
 * Holds a log that is whole in itself against checkpoints of it.
 *
 * @param checkpoints - anything; in the order in which they are to be looked at
 * @param owner - whose log it is
 * @param log - its size, and its marks at the sizes spoken of
 */
export async function checkCheckpoints(
  checkpoints: readonly unknown[],
  owner: CheckpointOwner,
  log: { readonly size: number; readonly marks: Marks },
): Promise<Vouched> {
  let witnessed = 0;
  for (const each of checkpoints) {
    const fault = await checkpointFault(each, owner);
    if (fault !== undefined)
      return { failure: { verdict: 'bad-checkpoint', ...placeOf(each), ...namedField(fault) }, witnessed };
    const failure = contradiction(each as Checkpoint, log);
    if (failure !== undefined) return { failure, witnessed };
    witnessed = Math.max(witnessed, (each as Checkpoint).size);
  }
  return { witnessed };
}

/**
 * What a sound statement about a log says that is not so.
 *
 * @param said - size, root and last event
 * @param log - its size, and its marks at the sizes spoken of
 */
export function contradiction(
  said: Mark & { readonly size: number },
  { size, marks }: { readonly size: number; readonly marks: Marks },
): Failure | undefined {
  if (said.size > size) return { verdict: 'truncated', at: size, witnessed: said.size };
  const mark = marks.get(said.size);
  const same = mark?.root === said.root && mark.head === said.head;
  return same ? undefined : { verdict: 'history-rewritten', at: said.size };
}

function placeOf(given: unknown): { at?: number } {
  const size = typeof given === 'object' && given !== null && 'size' in given ? given.size : undefined;
  return typeof size === 'number' && Number.isFinite(size) ? { at: size } : {};
}
