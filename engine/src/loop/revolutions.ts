import { computeInRange } from '../worked/compute-in-range.ts';
import { beltFlexesRow, loopRevolutionsRow } from './life-formulas.ts';

export interface RevolutionsInput {
  readonly speed_m_s: number;
  readonly runningTime_s: number;
  readonly path_m: number;
  readonly pulleys: number;
}

/**
 * Revolutions of a belt and bends of every piece of it. N = v t / L; n = pulleys N.
 *
 * @param input.speed_m_s - belt speed [m/s], 0 to 100
 * @param input.runningTime_s - time under way [s], 0 to 1e10
 * @param input.path_m - length of the loop [m], 0.05 to 20000
 * @param input.pulleys - pulleys the belt bends round [1], 1 to 100000
 * @returns revolutions, flexes [1] and flexes a second [Hz]
 * @throws not-finite, out-of-range
 * @source derived
 * @verified T8 revolutions, T8 flexes, T8 flex frequency
 */
export function revolutions(input: RevolutionsInput): {
  readonly revolutions: number;
  readonly flexes: number;
  readonly flexFrequency_Hz: number;
} {
  const { speed_m_s: v, runningTime_s: t, path_m: L, pulleys: p } = input;
  const turns = computeInRange(loopRevolutionsRow, { v, t, L }, { v: 'speed_m_s', t: 'runningTime_s', L: 'path_m' });
  const flexes = computeInRange(beltFlexesRow, { p, N: turns }, { p: 'pulleys' });
  return { revolutions: turns, flexes, flexFrequency_Hz: (p * v) / L };
}
