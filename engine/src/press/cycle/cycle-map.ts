import { fusionParameters } from '../../fusion/parameters.ts';
import { inRange, type Limits } from '../../in-range.ts';
import { timeOf } from '../march/slab.ts';
import { checkCycle } from './check-cycle.ts';
import { coolTo, startCooling } from './cooling.ts';
import type { CycleInput } from './cycle-input.ts';
import { type MapPoint, mapPoint, noPoint } from './map-point.ts';
import { runPhase } from './phase.ts';
import { type PreparedPress, preparePress } from './prepare-press.ts';
import { type PressRun, startRun } from './press-run.ts';
import { onePressure } from './pressure-spans.ts';
import { restoreRun, saveRun } from './saved-run.ts';
import { jumpSetPoints } from './set-points.ts';
import { stepsPoints, variedCycle } from './steps-map.ts';

/**
 * A cycle and what is varied round it. Heat-up is computed once for all dwells, a thermal history once for all pressures.
 * Of a recipe with steps its last dwell is varied, the set points of the last ramp before that, and the pressure that it
 * begins with; each is then a cycle by itself.
 */
export interface CycleMapInput extends Omit<CycleInput, 'probes' | 'times_s' | 'columns'> {
  readonly map: {
    /** Added to both set points: of a recipe with steps, to those of the last ramp before its last dwell. */
    readonly shift_K: readonly number[];
    /** Ascending; of a recipe with steps, its last dwell. */
    readonly dwell_s: readonly number[];
    /** The recipe's alone where not given; steps that change the pressure stay as they are. */
    readonly pressure_Pa?: readonly number[] | undefined;
  };
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
 * @throws not-finite, out-of-range, and those of a cycle
 * @validity as a cycle's
 * @source the cycle's own equations
 * @verified CYCLE-10 map against single cycles
 */
export function* cycleMap({ map, ...rest }: CycleMapInput): Generator<readonly MapPoint[], void, undefined> {
  const base: CycleInput = { ...rest, probes: [] };
  checkCycle(base);
  fusionParameters(base.fusion);
  const { shift_K, dwell_s, pressure_Pa: pressures_Pa = [base.recipe.pressure_Pa] } = map;
  checkAxes(shift_K, dwell_s, pressures_Pa);
  // The extreme set points must be such as a recipe may have, before anything is computed.
  const cycles = shift_K.map((shift) => variedCycle(base, { shift_K: shift }));
  for (const cycle of cycles) checkCycle(cycle);
  const press = preparePress(base);
  for (const [index, cycle] of cycles.entries()) {
    const axes = { shift_K: shift_K[index] as number, dwells_s: dwell_s, pressures_Pa };
    yield base.recipe.steps === undefined
      ? shiftPoints(startRun(cycle, press), axes)
      : shiftOfSteps(cycle, press, axes);
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

/** What is varied for one shift of the set points. */
interface ShiftAxes {
  readonly shift_K: number;
  readonly dwells_s: readonly number[];
  readonly pressures_Pa: readonly number[];
}

function shiftOfSteps(
  cycle: CycleInput,
  press: PreparedPress,
  { shift_K, dwells_s, pressures_Pa }: ShiftAxes,
): MapPoint[] {
  return dwells_s.flatMap((dwell_s) =>
    stepsPoints(variedCycle(cycle, { dwell_s }), press, { shift_K, dwell_s }, pressures_Pa),
  );
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
      ? pressures_Pa.map((pressure_Pa) =>
          mapPoint(run, { shift_K, dwell_s, pressure_Pa }, onePressure(pressure_Pa), ready_s),
        )
      : failed(axes, dwell_s, cooled === 'time' ? 'never-cools' : 'not-converged');
  restoreRun(run, saved);
  return points;
}

function failed({ shift_K, pressures_Pa }: ShiftAxes, dwell_s: number, status: MapPoint['status']): MapPoint[] {
  return pressures_Pa.map((pressure_Pa) => noPoint({ shift_K, dwell_s, pressure_Pa }, status));
}
