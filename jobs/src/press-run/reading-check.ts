import type { ReadingMark, RunThing } from '@loopwright/records/run';
import { measureRules } from './measure-rules.ts';
import type { RunState, WhyNot } from './run-state.ts';

/** A platen may overshoot its set point by this much and no more; beyond it the reading is another unit or place. */
const overshoot_K = 40;
/** During the hold both platens are near their set point; this far below it there is no hold. */
const belowHold_K = 40;
/** Nothing in a hall is this much colder than the air that somebody said. */
const belowAir_K = 15;

/** Temperatures between which a display can read [degC]. */
export interface Possible {
  readonly least_degC: number;
  readonly most_degC: number;
}

/**
 * What the display of a platen can read at a mark of the cycle.
 *
 * @param state - of the run, for the recipe's set points and the air
 * @param mark - of the cycle
 * @param set_degC - set point of that platen
 */
export function possibleReading({ started }: RunState, mark: ReadingMark, set_degC: number): Possible {
  const air_degC = started.numbers.find(({ name }) => name === 'air')?.value ?? 20;
  const cold_degC = Math.min(air_degC - belowAir_K, set_degC);
  if (mark === 'hold') return { least_degC: set_degC - belowHold_K, most_degC: set_degC + overshoot_K };
  return { least_degC: cold_degC, most_degC: set_degC + overshoot_K };
}

/** Set points of the run's recipe [degC]; the hottest that a recipe may ask for where nobody knows it. */
export function setPoints({ started }: RunState): { readonly top_degC: number; readonly bottom_degC: number } {
  const { recipe } = started.things;
  return { top_degC: recipe?.top_degC ?? 260, bottom_degC: recipe?.bottom_degC ?? 260 };
}

/**
 * Why both displays cannot read what somebody says they do. A reading that would be right in degF says so.
 *
 * @param state - of the run
 * @param reading - as entered
 */
export function readingFaults(state: RunState, reading: RunThing<'run.display-read'>): readonly WhyNot[] {
  const set = setPoints(state);
  const knowsHold = state.started.things.recipe !== undefined || reading.mark !== 'hold';
  const mark = knowsHold ? reading.mark : 'heating';
  return [
    ...platenFault(reading.top_degC, possibleReading(state, mark, set.top_degC), { platen: 'top', mark }),
    ...platenFault(reading.bottom_degC, possibleReading(state, mark, set.bottom_degC), { platen: 'bottom', mark }),
  ];
}

function platenFault(value: number, { least_degC, most_degC }: Possible, where: Record<string, string>): WhyNot[] {
  if (value >= least_degC && value <= most_degC) return [];
  const inFahrenheit = (value - 32) / 1.8;
  const hint =
    inFahrenheit >= least_degC && inFahrenheit <= most_degC ? 'fahrenheit' : value > most_degC ? 'hot' : 'cold';
  return [
    {
      code: 'reading-impossible',
      data: { ...where, value, least: least_degC, most: most_degC, kind: 'temperature', hint },
    },
  ];
}

/**
 * Why a measure cannot be what somebody says.
 *
 * @param measured - what was read, SI
 */
export function measureFaults({
  measure,
  value,
}: {
  readonly measure: RunThing<'run.measured'>['measure'];
  readonly value: number;
}): readonly WhyNot[] {
  const { least, most, kind } = measureRules[measure];
  if (value >= least && value <= most) return [];
  const hint = value > most ? 'high' : 'low';
  return [{ code: 'reading-impossible', data: { measure, value, least, most, kind, hint } }];
}
