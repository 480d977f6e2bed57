import { type Cycle, type CycleInput, cycle } from '@loopwright/engine/press';
import { Refusal, type RefusalData } from '@loopwright/engine/refusal';

/** Why there is no cycle: an input that cannot be computed with, or a solver that did not settle. */
export interface NoCycle {
  readonly status: 'none';
  readonly code: string;
  readonly path: string;
  readonly data: RefusalData;
}

/**
 * A press cycle, or why there is none. Platens that never get hot enough, or never cool, are such a reason.
 *
 * @param input - press, stack, supply and recipe
 */
export function runCycle(input: CycleInput): Cycle | NoCycle {
  try {
    const result = cycle(input);
    if (result.status === 'ok') return result;
    const { reason, residual, iterations } = result;
    return { status: 'none', code: 'cycle-not-converged', path: '', data: { reason, residual, iterations } };
  } catch (cause) {
    if (!(cause instanceof Refusal)) throw cause;
    return { status: 'none', code: cause.code, path: cause.path, data: cause.data };
  }
}
