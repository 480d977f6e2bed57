import type { Grade } from '../../fusion/grade.ts';
import { timeOf } from '../march/slab.ts';
import { beltResult, gradeOfBelt } from './belt-result.ts';
import type { PressRun } from './press-run.ts';
import type { Pressures } from './pressure-spans.ts';

/** One point of a map; numbers of a cycle that did not come to its end are null. */
export interface MapPoint {
  readonly shift_K: number;
  readonly dwell_s: number;
  readonly pressure_Pa: number;
  readonly status: 'ok' | 'set-point-not-reached' | 'never-cools' | 'not-converged';
  readonly grade: Grade | null;
  readonly ready_s: number | null;
  readonly open_s: number | null;
  readonly max_degC: number | null;
  readonly bondMin: number | null;
  readonly fillMin_m: number | null;
  readonly fillMax_m: number | null;
  readonly molarMassShareMin: number | null;
}

/** Where a point lies on the axes of its map. */
export type MapKey = Pick<MapPoint, 'shift_K' | 'dwell_s' | 'pressure_Pa'>;

/**
 * Point of a run at its opening.
 *
 * @param run - run at its opening
 * @param key - where it lies on the axes
 * @param pressures - pressures on the belt; all of one thermal history share it
 * @param ready_s - when its dwell began [s]
 * @returns point
 * @source derived: extremes and means over the belt
 * @verified CYCLE-10 map against single cycles
 */
export function mapPoint(run: PressRun, key: MapKey, pressures: Pressures, ready_s: number): MapPoint {
  const belt = beltResult(run, pressures);
  const { max_degC, bondMin, fillMin_m, fillMax_m, molarMassShareMin } = belt;
  const { grade } = gradeOfBelt(run.fusion, pressures, belt);
  const open_s = timeOf(run.march.slab);
  return { ...key, status: 'ok', grade, ready_s, open_s, max_degC, bondMin, fillMin_m, fillMax_m, molarMassShareMin };
}

/**
 * Point of a cycle that did not come to its end.
 *
 * @param key - where it lies on the axes
 * @param status - why it did not
 * @returns point without numbers
 * @source derived: nothing is known of it
 */
export function noPoint(key: MapKey, status: MapPoint['status']): MapPoint {
  const times = { grade: null, ready_s: null, open_s: null, max_degC: null };
  return { ...key, status, ...times, bondMin: null, fillMin_m: null, fillMax_m: null, molarMassShareMin: null };
}
