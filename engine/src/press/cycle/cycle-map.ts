import type { Grade } from '../../fusion/grade.ts';
import { fusionParameters } from '../../fusion/parameters.ts';
import { inRange, type Limits } from '../../in-range.ts';
import { Refusal } from '../../refusal.ts';
import { timeOf } from '../march/slab.ts';
import { beltResult, gradeOfBelt } from './belt-result.ts';
import { checkCycle } from './check-cycle.ts';
import { coolTo, startCooling } from './cooling.ts';
import type { CycleInput } from './cycle-input.ts';
import { runPhase } from './phase.ts';
import { type PressRun, preparePress, startRun } from './press-run.ts';
import { onePressure } from './pressure-spans.ts';
import { restoreRun, saveRun } from './saved-run.ts';
import { jumpSetPoints } from './set-points.ts';

/** A cycle and what is varied round it. Heat-up is computed once for all dwells, a thermal history once for all pressures. */
export interface CycleMapInput extends Omit<CycleInput, 'probes' | 'times_s' | 'columns'> {
  readonly map: {
    /** Added to both set points. */
    readonly shift_K: readonly number[];
    /** Ascending. */
    readonly dwell_s: readonly number[];
    /** The recipe's alone where not given. */
    readonly pressure_Pa?: readonly number[] | undefined;
  };
}

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

const longest_s = 86_400;
/** A map of 40 x 40 x 3; more is asked in parts. */
const mostPoints = 4800;
const dwellLimits: Limits = { min: 0, max: 86_400, unit: 's' };
const pressureLimits: Limits = { min: 0, max: 5e6, unit: 'Pa' };
const shiftLimits: Limits = { min: -200, max: 200, unit: 'K' };

/**
 * Cycles over a grid of set points, dwells and pressures: whoever asks may stop between any two shifts, count them, or
 * share them out.
 *
 * @param input - a cycle and what is varied round it [units in their names]
 * @returns points of one shift after the other; in it dwell by dwell, in it pressure by pressure
 * @throws steps-in-map, not-finite, out-of-range, and those of a cycle
 * @validity as a cycle's
 * @source the cycle's own equations
 * @verified CYCLE-10 map against single cycles
 */
export function* cycleMap({ map, ...rest }: CycleMapInput): Generator<readonly MapPoint[], void, undefined> {
  const base: CycleInput = { ...rest, probes: [] };
  checkCycle(base);
  if (base.recipe.steps !== undefined) throw new Refusal('steps-in-map', 'recipe.steps', {});
  fusionParameters(base.fusion);
  const { shift_K, dwell_s, pressure_Pa: pressures_Pa = [base.recipe.pressure_Pa] } = map;
  checkAxes(shift_K, dwell_s, pressures_Pa);
  // The extreme set points must be such as a recipe may have, before anything is computed.
  const cycles = shift_K.map((shift) => shifted(base, shift));
  for (const cycle of cycles) checkCycle(cycle);
  const press = preparePress(base);
  for (const [index, cycle] of cycles.entries()) {
    yield shiftPoints(startRun(cycle, press), { shift_K: shift_K[index] as number, dwells_s: dwell_s, pressures_Pa });
  }
}

function checkAxes(shifts: readonly number[], dwells: readonly number[], pressures: readonly number[]): void {
  const points = shifts.length * dwells.length * pressures.length;
  inRange(points, 'map', { min: 1, max: mostPoints, unit: '1' });
  for (const [index, shift] of shifts.entries()) inRange(shift, `map.shift_K[${index}]`, shiftLimits);
  for (const [index, pressure] of pressures.entries()) inRange(pressure, `map.pressure_Pa[${index}]`, pressureLimits);
  for (const [index, dwell] of dwells.entries())
    inRange(dwell, `map.dwell_s[${index}]`, { ...dwellLimits, min: dwells[index - 1] ?? dwellLimits.min });
}

function shifted(cycle: CycleInput, shift_K: number): CycleInput {
  const { top_degC, bottom_degC } = cycle.recipe;
  return { ...cycle, recipe: { ...cycle.recipe, top_degC: top_degC + shift_K, bottom_degC: bottom_degC + shift_K } };
}

/** What is varied for one shift of the set points. */
interface ShiftAxes {
  readonly shift_K: number;
  readonly dwells_s: readonly number[];
  readonly pressures_Pa: readonly number[];
}

function shiftPoints(run: PressRun, axes: ShiftAxes): MapPoint[] {
  jumpSetPoints(run, run.input.recipe);
  const heated = runPhase(run, 'ready', longest_s);
  if (heated !== 'goal') {
    const status = heated === 'time' ? 'set-point-not-reached' : 'not-converged';
    return axes.dwells_s.flatMap((dwell_s) => failed(axes, dwell_s, status));
  }
  const ready_s = timeOf(run.march.slab);
  return axes.dwells_s.flatMap((dwell_s) => dwellPoints(run, axes, { ready_s, dwell_s }));
}

/** Dwells on from where the last dwell ended, cools from there, and goes back. */
function dwellPoints(
  run: PressRun,
  axes: ShiftAxes,
  { ready_s, dwell_s }: { readonly ready_s: number; readonly dwell_s: number },
): MapPoint[] {
  if (runPhase(run, 'none', ready_s + dwell_s) !== 'time') return failed(axes, dwell_s, 'not-converged');
  const saved = saveRun(run);
  startCooling(run);
  const cooled = coolTo(run, run.input.recipe.open_degC, ready_s + dwell_s + longest_s);
  const { shift_K, pressures_Pa } = axes;
  const points =
    cooled === 'goal'
      ? pressures_Pa.map((pressure_Pa) => point(run, { shift_K, dwell_s, pressure_Pa }, ready_s))
      : failed(axes, dwell_s, cooled === 'time' ? 'never-cools' : 'not-converged');
  restoreRun(run, saved);
  return points;
}

function point(run: PressRun, key: Pick<MapPoint, 'shift_K' | 'dwell_s' | 'pressure_Pa'>, ready_s: number): MapPoint {
  const pressures = onePressure(key.pressure_Pa);
  const belt = beltResult(run, pressures);
  const { max_degC, bondMin, fillMin_m, fillMax_m, molarMassShareMin } = belt;
  const { grade } = gradeOfBelt(run.fusion, pressures, belt);
  const open_s = timeOf(run.march.slab);
  return { ...key, status: 'ok', grade, ready_s, open_s, max_degC, bondMin, fillMin_m, fillMax_m, molarMassShareMin };
}

function failed({ shift_K, pressures_Pa }: ShiftAxes, dwell_s: number, status: MapPoint['status']): MapPoint[] {
  const times = { grade: null, ready_s: null, open_s: null, max_degC: null };
  const nothing = { ...times, bondMin: null, fillMin_m: null, fillMax_m: null, molarMassShareMin: null };
  return pressures_Pa.map((pressure_Pa) => ({ shift_K, dwell_s, pressure_Pa, status, ...nothing }));
}
