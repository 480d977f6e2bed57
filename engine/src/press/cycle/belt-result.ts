import { type Graded, grade } from '../../fusion/grade.ts';
import type { FusionParameters } from '../../fusion/parameters.ts';
import type { BeltResult } from './cycle-result.ts';
import type { PressRun } from './press-run.ts';
import { flowAt, lastSpan, type Pressures, voidsOver } from './pressure-spans.ts';
import { rateCount } from './rate-table.ts';

/** Integrals of healing, flow and scission at one place. */
export interface FusionSums {
  readonly healing: number;
  readonly flow: number;
  readonly scission: number;
}

/**
 * What the sums of the rates at a place mean.
 * D = min(1, Z^(1/4)); J = p*integral of phi/eta; fill = g*sqrt(J/6); M/M0 = 1/(1 + integral of kappa).
 *
 * @param fusion - gap [m]
 * @param sums - integrals of healing, flow and scission [1]
 * @returns healing Z [1], bond D [1], flow J [1], fill [m], molar mass left [1]
 * @source derived: see the formulas of fusion
 * @verified CYCLE-01 healing
 */
export function fusionOf(fusion: FusionParameters, { healing, flow, scission }: FusionSums) {
  return {
    healing,
    bond: Math.min(1, healing ** 0.25),
    flow,
    fill_m: fusion.gap_m * Math.sqrt(flow / 6),
    molarMassShare: 1 / (1 + scission),
  };
}

/**
 * Extremes and means over all depths of the belt.
 *
 * @param run - run at its opening
 * @param pressures - pressures on the belt; a map asks for others than the run's
 * @returns extremes and means
 * @source derived: extremes and means over the belt's cells and faces
 * @verified CYCLE-01 healing
 */
export function beltResult(
  { fusion, beltPlaces, history }: Pick<PressRun, 'fusion' | 'beltPlaces' | 'history'>,
  pressures: Pressures,
): BeltResult {
  const { sums, peak, now } = history;
  const span = lastSpan(pressures);
  const least = { healing: Number.POSITIVE_INFINITY, flow: Number.POSITIVE_INFINITY };
  const most = { flow: 0, scission: 0, peak: -300, now: -300 };
  let bond = 0;
  let fill_m = 0;
  for (let n = 0; n < beltPlaces; n += 1) {
    const healing = sums[rateCount * n] as number;
    const flow = flowAt(span, n, sums[rateCount * n + 1] as number);
    least.healing = Math.min(least.healing, healing);
    least.flow = Math.min(least.flow, flow);
    most.flow = Math.max(most.flow, flow);
    most.scission = Math.max(most.scission, sums[rateCount * n + 2] as number);
    most.peak = Math.max(most.peak, peak[n] as number);
    most.now = Math.max(most.now, now[n] as number);
    bond += Math.min(1, Math.sqrt(Math.sqrt(healing)));
    fill_m += fusion.gap_m * Math.sqrt(flow / 6);
  }
  const worst = fusionOf(fusion, { ...least, scission: most.scission });
  return {
    healingMin: worst.healing,
    bondMin: worst.bond,
    bondMean: bond / beltPlaces,
    flowMin: worst.flow,
    fillMin_m: worst.fill_m,
    fillMean_m: fill_m / beltPlaces,
    fillMax_m: fusion.gap_m * Math.sqrt(most.flow / 6),
    molarMassShareMin: worst.molarMassShare,
    max_degC: most.peak,
    atOpenMax_degC: most.now,
  };
}

/**
 * Grade of a belt by the limits of the process window.
 *
 * @param fusion - fill needed [m] and moisture [1] if it is known
 * @param pressures - pressures on the belt
 * @param belt - extremes over the belt
 * @returns grade and the limits passed
 * @source engineering priors, see the grade of fusion
 */
export function gradeOfBelt(fusion: FusionParameters, pressures: Pressures, belt: BeltResult): Graded {
  const { fillNeeded_m } = fusion;
  return grade({
    bondMin: Math.sqrt(Math.sqrt(belt.healingMin)),
    fillMin: belt.fillMin_m / fillNeeded_m,
    fillMax: belt.fillMax_m / fillNeeded_m,
    damageMax: 1 - belt.molarMassShareMin,
    beltMax_degC: belt.max_degC,
    voidNumber: voidsOver(fusion, pressures, belt.max_degC),
    atOpen_degC: belt.atOpenMax_degC,
  });
}
