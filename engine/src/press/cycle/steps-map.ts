import { Refusal } from '../../refusal.ts';
import type { CycleInput, RecipeStep } from './cycle-input.ts';
import { type MapKey, type MapPoint, mapPoint, noPoint } from './map-point.ts';
import type { PreparedPress } from './prepare-press.ts';
import { startRun } from './press-run.ts';
import { closePressures, onePressure, type Pressures } from './pressure-spans.ts';
import { recipePlan } from './recipe-plan.ts';
import { runPlan } from './run-plan.ts';

/**
 * A cycle with what a map varies: the set points of the last ramp before the last dwell, the time of that dwell, and the
 * pressure that the recipe begins with. Without steps there is only one of each.
 *
 * @param cycle - a cycle
 * @param key - shift_K of the set points [K], dwell_s [s], pressure_Pa [Pa]; the cycle's own where left out
 * @returns cycle
 * @source derived: plain assignment
 * @verified CYCLE-10 map against single cycles
 */
export function variedCycle(cycle: CycleInput, key: Partial<MapKey>): CycleInput {
  const { recipe } = cycle;
  const { shift_K = 0, dwell_s, pressure_Pa = recipe.pressure_Pa } = key;
  const { steps } = recipe;
  const set = (given: number | undefined, own: number): number => (given ?? own) + shift_K;
  if (steps === undefined) {
    const [top_degC, bottom_degC] = [recipe.top_degC + shift_K, recipe.bottom_degC + shift_K];
    return { ...cycle, recipe: { ...recipe, top_degC, bottom_degC, dwell_s: dwell_s ?? recipe.dwell_s, pressure_Pa } };
  }
  const dwell = steps.findLastIndex(({ kind }) => kind === 'dwell');
  const ramp = steps.slice(0, Math.max(0, dwell)).findLastIndex(({ kind }) => kind === 'ramp');
  const varied = steps.map((step, index): RecipeStep => {
    if (index === dwell && step.kind === 'dwell') return { ...step, time_s: dwell_s ?? step.time_s };
    if (index !== ramp || step.kind !== 'ramp') return step;
    const top_degC = set(step.top_degC, recipe.top_degC);
    return { ...step, top_degC, bottom_degC: set(step.bottom_degC, recipe.bottom_degC) };
  });
  return { ...cycle, recipe: { ...recipe, pressure_Pa, steps: varied } };
}

/**
 * Points of one shift and dwell of a recipe with steps. Where no step changes the pressure all pressures share one thermal
 * history; else each is a cycle by itself, for what follows a pressure begins a new step.
 *
 * @param cycle - cycle of that shift and dwell
 * @param press - what `preparePress` made of it
 * @param key - shift_K [K] and dwell_s [s]
 * @param pressures_Pa - pressures that the recipe begins with [Pa]
 * @returns one point a pressure
 * @source the cycle's own equations
 * @verified CYCLE-10 map against single cycles
 */
export function stepsPoints(
  cycle: CycleInput,
  press: PreparedPress,
  key: Omit<MapKey, 'pressure_Pa'>,
  pressures_Pa: readonly number[],
): MapPoint[] {
  const keys = pressures_Pa.map((pressure_Pa) => ({ ...key, pressure_Pa }));
  const changes = cycle.recipe.steps?.some(({ kind }) => kind === 'pressure') ?? false;
  if (!changes) return pointsOfRun(cycle, press, keys, ({ pressure_Pa }) => onePressure(pressure_Pa));
  return keys.flatMap((one) => pointsOfRun(variedCycle(cycle, { pressure_Pa: one.pressure_Pa }), press, [one]));
}

function pointsOfRun(
  cycle: CycleInput,
  press: PreparedPress,
  keys: readonly MapKey[],
  pressuresOf?: (key: MapKey) => Pressures,
): MapPoint[] {
  try {
    const run = startRun(cycle, press);
    const marks = runPlan(run, recipePlan(cycle.recipe));
    if (typeof marks === 'string') return keys.map((key) => noPoint(key, 'not-converged'));
    closePressures(run.pressures, run.history, run.beltPlaces);
    return keys.map((key) => mapPoint(run, key, pressuresOf?.(key) ?? run.pressures, marks.ready_s));
  } catch (cause) {
    const status = statusOf(cause);
    if (status === undefined) throw cause;
    return keys.map((key) => noPoint(key, status));
  }
}

function statusOf(cause: unknown): MapPoint['status'] | undefined {
  if (!(cause instanceof Refusal)) return undefined;
  return cause.code === 'set-point-not-reached' || cause.code === 'never-cools' ? cause.code : undefined;
}
