import type { Grade } from '../../fusion/grade.ts';
import { fusionParameters } from '../../fusion/parameters.ts';
import { inRange, type Limits } from '../../in-range.ts';
import { timeOf } from '../march/slab.ts';
import { beltResult, gradeOfBelt } from './belt-result.ts';
import { checkCycle } from './check-cycle.ts';
import { startCooling } from './cooling.ts';
import type { CycleInput } from './cycle-input.ts';
import { runPhase } from './phase.ts';
import { type PreparedPress, type PressRun, preparePress, startRun } from './press-run.ts';
import { restoreRun, saveRun } from './saved-run.ts';

/** What is varied round a cycle. Heat-up is computed once for all dwells, a thermal history once for all pressures. */
export interface CycleMapAxes {
  /** Added to both set points. */
  readonly setShifts_K: readonly number[];
  /** Ascending. */
  readonly dwells_s: readonly number[];
  /** The recipe's alone where not given. */
  readonly pressures_Pa?: readonly number[] | undefined;
  /** The supply's alone where not given. */
  readonly volts_V?: readonly number[] | undefined;
}

export interface CycleMapInput {
  readonly cycle: CycleInput;
  readonly axes: CycleMapAxes;
}

/** One point of a map; numbers of a cycle that did not come to its end are null. */
export interface MapPoint {
  readonly volts_V: number;
  readonly setShift_K: number;
  readonly dwell_s: number;
  readonly pressure_Pa: number;
  readonly outcome: 'ok' | 'set-point-not-reached' | 'never-cools' | 'not-converged';
  readonly grade: Grade | null;
  readonly ready_s: number | null;
  readonly open_s: number | null;
  readonly max_degC: number | null;
  readonly bondMin: number | null;
  readonly healingMin: number | null;
  readonly fillMin_m: number | null;
  readonly fillMax_m: number | null;
  readonly molarMassShareMin: number | null;
}

/** Points that share a heat-up: one supply voltage and one shift of the set points. */
export interface MapRow {
  /** Counted from 0; voltage by voltage, shift by shift. */
  readonly row: number;
  readonly rows: number;
  /** Dwell by dwell, pressure by pressure. */
  readonly points: readonly MapPoint[];
}

const longest_s = 86_400;
const mostPoints = 200_000;
const dwellLimits: Limits = { min: 0, max: 86_400, unit: 's' };
const pressureLimits: Limits = { min: 0, max: 5e6, unit: 'Pa' };
const shiftLimits: Limits = { min: -200, max: 200, unit: 'K' };
const voltsLimits: Limits = { min: 1, max: 1000, unit: 'V' };

/** A map's axes with the recipe's own values where none were given. */
interface WholeAxes {
  readonly setShifts_K: readonly number[];
  readonly dwells_s: readonly number[];
  readonly pressures_Pa: readonly number[];
  readonly volts_V: readonly number[];
}

/**
 * Cycles over a grid of set points, dwells, pressures and voltages, row by row: whoever asks for the rows may stop
 * between any two of them, count them, or share them out among workers.
 *
 * @param input - a cycle and what is varied round it [units in their names]
 * @param part - rows from the first to before the last [1]; all of them unless given
 * @returns rows, one heat-up each
 * @throws not-finite, out-of-range, and those of a cycle
 * @validity as a cycle's
 * @source the cycle's own equations
 * @verified CYCLE-10 map against single cycles
 */
export function* cycleMapRows(
  input: CycleMapInput,
  part: { readonly from: number; readonly to: number } = { from: 0, to: Number.POSITIVE_INFINITY },
): Generator<MapRow, void, undefined> {
  const axes = wholeAxes(input);
  const base: CycleInput = { ...input.cycle, times_s: undefined };
  const rows = axes.volts_V.length * axes.setShifts_K.length;
  const press = preparePress(base);
  for (let row = Math.max(0, part.from); row < Math.min(rows, part.to); row += 1) {
    const volts_V = axes.volts_V[Math.floor(row / axes.setShifts_K.length)] as number;
    const setShift_K = axes.setShifts_K[row % axes.setShifts_K.length] as number;
    yield { row, rows, points: rowPoints(base, press, axes, { volts_V, setShift_K }) };
  }
}

function wholeAxes({ cycle, axes }: CycleMapInput): WholeAxes {
  checkCycle(cycle);
  fusionParameters(cycle.fusion);
  const whole = {
    setShifts_K: checked(axes.setShifts_K, 'axes.setShifts_K', shiftLimits),
    dwells_s: checked(axes.dwells_s, 'axes.dwells_s', dwellLimits),
    pressures_Pa: checked(axes.pressures_Pa ?? [cycle.recipe.pressure_Pa], 'axes.pressures_Pa', pressureLimits),
    volts_V: checked(axes.volts_V ?? [cycle.supply.volts_V], 'axes.volts_V', voltsLimits),
  };
  const points = Object.values(whole).reduce((product, { length }) => product * length, 1);
  inRange(points, 'axes', { min: 1, max: mostPoints, unit: '1' });
  for (let i = 1; i < whole.dwells_s.length; i += 1) {
    inRange(whole.dwells_s[i] as number, `axes.dwells_s[${i}]`, {
      ...dwellLimits,
      min: whole.dwells_s[i - 1] as number,
    });
  }
  // The extreme set points must be such as a recipe may have.
  for (const setShift_K of whole.setShifts_K) checkCycle(shifted(cycle, cycle.supply.volts_V, setShift_K));
  return whole;
}

function checked(values: readonly number[], path: string, limits: Limits): readonly number[] {
  values.forEach((value, index) => {
    inRange(value, `${path}[${index}]`, limits);
  });
  return values;
}

function shifted(cycle: CycleInput, volts_V: number, setShift_K: number): CycleInput {
  const { recipe, supply } = cycle;
  return {
    ...cycle,
    supply: { ...supply, volts_V },
    recipe: {
      ...recipe,
      top_degC: recipe.top_degC + setShift_K,
      bottom_degC: recipe.bottom_degC + setShift_K,
    },
  };
}

type RowKey = Pick<MapPoint, 'volts_V' | 'setShift_K'>;

function rowPoints(base: CycleInput, press: PreparedPress, axes: WholeAxes, key: RowKey): MapPoint[] {
  const run = startRun(shifted(base, key.volts_V, key.setShift_K), press);
  const heated = runPhase(run, 'ready', longest_s);
  if (heated !== 'goal') {
    const outcome = heated === 'time' ? 'set-point-not-reached' : 'not-converged';
    return axes.dwells_s.flatMap((dwell_s) => failed(axes, key, dwell_s, outcome));
  }
  const ready_s = timeOf(run.march.slab);
  return axes.dwells_s.flatMap((dwell_s) => dwellPoints(run, axes, key, { ready_s, dwell_s }));
}

/** Dwells on from where the row's last dwell ended, cools from there, and goes back. */
function dwellPoints(
  run: PressRun,
  axes: WholeAxes,
  key: RowKey,
  { ready_s, dwell_s }: { readonly ready_s: number; readonly dwell_s: number },
): MapPoint[] {
  if (runPhase(run, 'none', ready_s + dwell_s) !== 'time') return failed(axes, key, dwell_s, 'not-converged');
  const saved = saveRun(run);
  startCooling(run);
  const cooled = runPhase(run, 'cold', ready_s + dwell_s + longest_s);
  const points =
    cooled === 'goal'
      ? axes.pressures_Pa.map((pressure_Pa) => point(run, { ...key, dwell_s, pressure_Pa }, ready_s))
      : failed(axes, key, dwell_s, cooled === 'time' ? 'never-cools' : 'not-converged');
  restoreRun(run, saved);
  return points;
}

function point(
  run: PressRun,
  key: Pick<MapPoint, 'volts_V' | 'setShift_K' | 'dwell_s' | 'pressure_Pa'>,
  ready_s: number,
): MapPoint {
  const belt = beltResult(run, key.pressure_Pa);
  return {
    ...key,
    outcome: 'ok',
    grade: gradeOfBelt(run.fusion, key.pressure_Pa, belt).grade,
    ready_s,
    open_s: timeOf(run.march.slab),
    max_degC: belt.max_degC,
    bondMin: belt.bondMin,
    healingMin: belt.healingMin,
    fillMin_m: belt.fillMin_m,
    fillMax_m: belt.fillMax_m,
    molarMassShareMin: belt.molarMassShareMin,
  };
}

function failed(axes: WholeAxes, key: RowKey, dwell_s: number, outcome: MapPoint['outcome']): MapPoint[] {
  const nothing = {
    grade: null,
    ready_s: null,
    open_s: null,
    max_degC: null,
    bondMin: null,
    healingMin: null,
    fillMin_m: null,
    fillMax_m: null,
    molarMassShareMin: null,
  };
  return axes.pressures_Pa.map((pressure_Pa) => ({ ...key, dwell_s, pressure_Pa, outcome, ...nothing }));
}

/**
 * Cycles over a grid, all at once.
 *
 * @param input - a cycle and what is varied round it [units in their names]
 * @param options - onRow hears of each row done; cancelled is asked before each
 * @returns points in order of voltage, shift, dwell, pressure; complete unless cancelled
 * @throws not-finite, out-of-range, and those of a cycle
 * @validity as a cycle's
 * @source the cycle's own equations
 * @verified CYCLE-10 map against single cycles
 */
export function cycleMap(
  input: CycleMapInput,
  options: {
    readonly onRow?: ((row: MapRow) => void) | undefined;
    readonly cancelled?: (() => boolean) | undefined;
  } = {},
): { readonly complete: boolean; readonly points: readonly MapPoint[] } {
  const points: MapPoint[] = [];
  if (options.cancelled?.()) return { complete: false, points };
  for (const row of cycleMapRows(input)) {
    points.push(...row.points);
    options.onRow?.(row);
    if (row.row + 1 < row.rows && options.cancelled?.()) return { complete: false, points };
  }
  return { complete: true, points };
}
