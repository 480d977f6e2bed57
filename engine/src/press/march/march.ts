import { clearStages, record } from './cells.ts';
import { clearEnd, endField } from './end.ts';
import { heaterField } from './heaters.ts';
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
  readonly trend: Trend;
}

/** The step taken before, as long as the same goes on: how its error compares tells how the next one's will grow. */
interface Trend {
  step_s: number;
  error_K: number;
  /** What the march itself proposed; another proposal than that came from outside. */
  proposed_s: number;
  topFollows: boolean;
  bottomFollows: boolean;
}

const shortest_s = 1e-9;
const safety = 0.88;
const mostGrowth = 6;
const mostShrink = 0.2;
const mostTrend = 1.2;
const { CAPACITY, STRIDE } = record;
const { GAIN } = endField;
const { TOP_BY_TOP, BOTTOM_BY_BOTTOM } = heaterField;

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
    trend: { step_s: 0, error_K: 0, proposed_s: Number.NaN, topFollows: false, bottomFollows: false },
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
  easeIn(march);
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
      const next_s = step_s * Math.min(mostGrowth, factor * growth(march.trend, step_s, error));
      march.proposed_s = limited ? Math.max(march.proposed_s, next_s) : next_s;
      march.trend.step_s = step_s;
      march.trend.error_K = error;
      march.trend.proposed_s = march.proposed_s;
      return step_s;
    }
    if (!Number.isFinite(error)) forgetStages(march.slab);
    step_s *= Number.isFinite(factor) ? Math.max(mostShrink, factor) : mostShrink;
    if (march.tries >= march.mostTries) march.failure = 'too-many-steps';
    else if (!(step_s > shortest_s)) march.failure = 'step-too-small';
    if (march.failure !== undefined) return 0;
  }
}

/**
 * While fast parts of the solution die away the error grows far less than with the fourth power of the step; as much less
 * as from the step before to this one is taken for the next.
 */
function growth({ step_s, error_K }: Trend, now_s: number, nowError_K: number): number {
  if (step_s === 0 || nowError_K === 0) return 1;
  const ratio = (now_s / step_s) * Math.sqrt(Math.sqrt(error_K / nowError_K));
  return Math.max(1, Math.min(mostTrend, ratio));
}

/** A controller that begins to follow is met with a step of its own loop's time; nothing before it foretells the error. */
function easeIn(march: March): void {
  const { slab, trend } = march;
  const { top, bottom } = slab;
  const topBegins = top.following && !trend.topFollows;
  const bottomBegins = bottom.following && !trend.bottomFollows;
  const switched = top.following !== trend.topFollows || bottom.following !== trend.bottomFollows;
  if (switched || march.proposed_s !== trend.proposed_s) trend.step_s = 0;
  trend.topFollows = top.following;
  trend.bottomFollows = bottom.following;
  if (march.fixedStep_s !== undefined) return;
  if (topBegins) march.proposed_s = Math.min(march.proposed_s, loopTime_s(slab, 'top'));
  if (bottomBegins) march.proposed_s = Math.min(march.proposed_s, loopTime_s(slab, 'bottom'));
}

/** Time in which full power heats the plate through its controller's band. */
function loopTime_s({ cells, top, bottom, heaters }: Slab, side: 'top' | 'bottom'): number {
  const isTop = side === 'top';
  const capacity_J_m2K = cells.numbers[(isTop ? 1 : cells.count) * STRIDE + CAPACITY] as number;
  const gain_1_K = (isTop ? top : bottom).numbers[GAIN] as number;
  const full_W_m2 = heaters[isTop ? TOP_BY_TOP : BOTTOM_BY_BOTTOM] as number;
  return full_W_m2 > 0 ? capacity_J_m2K / (gain_1_K * full_W_m2) : Number.POSITIVE_INFINITY;
}

function forgetStages({ cells, edges, top, bottom }: Slab): void {
  clearStages(cells);
  for (const edge of edges) clearStages(edge.cells);
  clearEnd(top);
  clearEnd(bottom);
}

/** Two halves rather than a long step and a crumb. */
function withoutRemainder(wanted_s: number, most_s: number): number {
  if (wanted_s >= most_s * (1 - 1e-9)) return most_s;
  return 2 * wanted_s > most_s && wanted_s < 0.95 * most_s ? 0.5 * most_s : wanted_s;
}
