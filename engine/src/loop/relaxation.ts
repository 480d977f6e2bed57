import { inRange } from '../in-range.ts';
import { Refusal, type Warning } from '../refusal.ts';
import { workInRange } from '../worked/compute-in-range.ts';
import type { Worked } from '../worked/worked-formula.ts';
import { relaxationTimeRow, relaxedShareRow, retensionDaysRow } from './life-formulas.ts';

/** Two readings of the pull of a belt held at one length, as shares of its first pull. */
export interface RelaxationReadings {
  readonly at100s: number;
  readonly at500s: number;
}

const firstTime_s = 100;
const secondTime_s = 500;
/** The line was measured that far; beyond it is extrapolated. */
const measuredTo_s = 200_000;
const latest_s = 1e10;

/**
 * Slope of the second line of relaxation. a = (r500 - r100)/log10(5).
 *
 * @param readings.at100s - share left after 100 s [1], 0.01 to 1
 * @param readings.at500s - share left after 500 s [1], 0.01 to at100s
 * @returns change of the share a decade of time [1], 0 or less
 * @throws not-finite, out-of-range
 * @validity polyester yarns and fabrics, 100 s to 200 000 s
 * @source Milašius & Laureckienė, Autex Res. J. 2017, aut-2017-0017
 * @verified T4.6 slope
 */
export function relaxationSlope(readings: RelaxationReadings): number {
  checkReadings(readings);
  return (readings.at500s - readings.at100s) / Math.log10(secondTime_s / firstTime_s);
}

/**
 * Share of its first pull that a belt at constant length still has after a time. r = r100 + a log10(t/100 s).
 *
 * @param readings.at100s - share left after 100 s [1], 0.01 to 1
 * @param readings.at500s - share left after 500 s [1], 0.01 to at100s
 * @param time_s - time since tensioning [s], 100 to 1e10
 * @returns share left [1], at least 0, and a warning beyond 200 000 s
 * @throws not-finite, out-of-range
 * @validity polyester yarns and fabrics, 100 s to 200 000 s, there within 2 %
 * @source Milašius & Laureckienė, Autex Res. J. 2017, aut-2017-0017
 * @verified T4.6 share after 200 000 s
 */
export function relaxedShare(
  readings: RelaxationReadings,
  time_s: number,
): { readonly share: number; readonly worked: Worked; readonly warnings: readonly Warning[] } {
  checkReadings(readings);
  inRange(time_s, 'time_s', { min: firstTime_s, max: latest_s, unit: 's' });
  const worked = workInRange(relaxedShareRow, { ...lineOf(readings), t: time_s });
  return { share: Math.max(0, worked.value), worked, warnings: extrapolated(time_s) };
}

export interface Retension {
  readonly status: 'ok' | 'never' | 'before-line';
  /** Null when the share is never reached, or reached before the line begins at 100 s. */
  readonly time_s: number | null;
  readonly days: number | null;
  readonly worked: Worked | null;
  readonly warnings: readonly Warning[];
}

/**
 * Time after which a belt has relaxed to the share it needs: when to come back and re-tension.
 *
 * t = 100 s 5^((r100 - r)/(r100 - r500)).
 *
 * @param readings.at100s - share left after 100 s [1], 0.01 to 1
 * @param readings.at500s - share left after 500 s [1], 0.01 to at100s
 * @param shareNeeded - smallest share of the first pull that will do [1], 0.01 to 1
 * @returns time since tensioning [s] and [d], or why there is none
 * @throws not-finite, out-of-range
 * @validity polyester yarns and fabrics; extrapolated beyond 200 000 s and warned
 * @source Milašius & Laureckienė, Autex Res. J. 2017, aut-2017-0017
 * @verified T4.6 time to 0.80
 */
export function retensionAfter(readings: RelaxationReadings, shareNeeded: number): Retension {
  checkReadings(readings);
  inRange(shareNeeded, 'shareNeeded', { min: 0.01, max: 1, unit: '1' });
  const none = { time_s: null, days: null, worked: null, warnings: [] };
  if (shareNeeded > readings.at100s) return { status: 'before-line', ...none };
  if (readings.at500s === readings.at100s) return { status: 'never', ...none };
  const line = { ...lineOf(readings), r: shareNeeded };
  const time_s = relaxationTimeRow.compute(line);
  if (!(time_s <= latest_s)) return { status: 'never', ...none };
  const worked = workInRange(retensionDaysRow, line);
  return { status: 'ok', time_s, days: worked.value, worked, warnings: extrapolated(time_s) };
}

function lineOf({ at100s, at500s }: RelaxationReadings) {
  return { r1: at100s, r2: at500s, t1: firstTime_s, t2: secondTime_s };
}

function extrapolated(time_s: number): Warning[] {
  if (time_s <= measuredTo_s) return [];
  return [{ code: 'beyond-measured-relaxation', data: { value: time_s, max: measuredTo_s, unit: 's' } }];
}

function checkReadings({ at100s, at500s }: RelaxationReadings): void {
  inRange(at100s, 'readings.at100s', { min: 0.01, max: 1, unit: '1' });
  inRange(at500s, 'readings.at500s', { min: 0.01, max: 1, unit: '1' });
  if (at500s > at100s) {
    throw new Refusal('out-of-range', 'readings.at500s', { value: at500s, min: 0.01, max: at100s, unit: '1' });
  }
}
