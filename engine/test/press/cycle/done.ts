import { type Cycle, type CycleInput, cycle } from '../../../src/press/index.ts';
import { Refusal } from '../../../src/refusal.ts';

/** A cycle that must come to its end. */
export function done(input: CycleInput, exactness?: Parameters<typeof cycle>[1]): Cycle {
  const result = cycle(input, exactness);
  if (result.status !== 'ok') throw new Error(result.reason);
  return result;
}

/** A cycle that must be refused. */
export function refusal(input: CycleInput): Refusal {
  try {
    cycle(input);
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
    throw cause;
  }
  throw new Error('not refused');
}
