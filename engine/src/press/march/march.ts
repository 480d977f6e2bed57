import { clearStages } from './cells.ts';
import { clearEnd } from './end.ts';
import type { Slab } from './slab.ts';
import { tryStep } from './step.ts';

/** Why a march stopped short. */
export type MarchFailure = 'too-many-steps' | 'step-too-small';

/** A slab marching through time, each step as long as the accuracy allows. */
export interface March {
  readonly slab: Slab;
  /** Error allowed in one step. */
  readonly tolerance_K: number;
  /** Constant length of all steps, where that is wanted. */
  readonly fixedStep_s: number | undefined;
  readonly mostTries: number;
  proposed_s: number;
  tries: number;
  lastError_K: number;
  failure: MarchFailure | undefined;
}

const shortest_s = 1e-9;
const safety = 0.9;
const mostGrowth = 6;
const mostShrink = 0.2;

/**
 * A march that has not begun.
 *
 * @param slab - slab at its start
 * @param options - tolerance_K per step [K], first step [s], constant step [s] if wanted, most tries [1]
 * @returns march
 * @source derived: plain allocation
 */
export function makeMarch(
  slab: Slab,
  options: {
    readonly tolerance_K: number;
    readonly first_s: number;
    readonly fixedStep_s?: number | undefined;
    readonly mostTries: number;
  },
): March {
  return {
    slab,
    tolerance_K: options.tolerance_K,
    fixedStep_s: options.fixedStep_s,
    mostTries: options.mostTries,
    proposed_s: options.fixedStep_s ?? options.first_s,
    tries: 0,
    lastError_K: 0,
    failure: undefined,
  };
}

/**
 * Tries steps until one is accurate enough; the caller takes it with `acceptStep` or tries a shorter one itself.
 *
 * @param march - march; its proposal for the next step is updated
 * @param most_s - longest step that may be tried [s], > 0
 * @returns length of the step tried last [s]; 0 when the march failed
 * @source step control by the embedded error estimate, Hairer & Wanner, Solving Ordinary Differential Equations II, IV.8
 * @verified MARCH-02 error within the tolerance
 */
export function tryAccurateStep(march: March, most_s: number): number {
  let step_s = withoutRemainder(march.fixedStep_s ?? march.proposed_s, most_s);
  const limited = step_s < march.proposed_s;
  for (;;) {
    march.tries += 1;
    const error = tryStep(march.slab, step_s);
    march.lastError_K = error;
    if (march.fixedStep_s !== undefined) return step_s;
    // The estimate is of third order, so that the error grows with the fourth power of the step.
    const factor = safety * Math.sqrt(Math.sqrt(march.tolerance_K / Math.max(error, 1e-300)));
    if (error <= march.tolerance_K) {
      const next_s = step_s * Math.min(mostGrowth, factor);
      march.proposed_s = limited ? Math.max(march.proposed_s, next_s) : next_s;
      return step_s;
    }
    if (!Number.isFinite(error)) forgetStages(march.slab);
    step_s *= Number.isFinite(factor) ? Math.max(mostShrink, factor) : mostShrink;
    if (march.tries >= march.mostTries) march.failure = 'too-many-steps';
    else if (!(step_s > shortest_s)) march.failure = 'step-too-small';
    if (march.failure !== undefined) return 0;
  }
}

function forgetStages({ cells, top, bottom }: Slab): void {
  clearStages(cells);
  clearEnd(top);
  clearEnd(bottom);
}

/** Two halves rather than a long step and a crumb. */
function withoutRemainder(wanted_s: number, most_s: number): number {
  if (wanted_s >= most_s * (1 - 1e-9)) return most_s;
  return 2 * wanted_s > most_s && wanted_s < 0.95 * most_s ? 0.5 * most_s : wanted_s;
}
