import { beltPressureRow } from '@loopwright/engine/press';
import { work } from '@loopwright/engine/worked';
import type { Belt, Line, Press, Recipe, Roll, Template } from '@loopwright/plant';
import { type PressCycle, pressCycle } from '../press-cycle/press-cycle.ts';
import type { NoCycle } from '../press-cycle/run-cycle.ts';
import { computed, given, type Quantity } from '../quantity.ts';
import type { CardPress } from './card.ts';
import { checkAge_days } from './choose.ts';
import { stripHeight } from './gather.ts';

export interface PressChoice {
  readonly belt: Belt;
  readonly line: Line;
  readonly press: Press | undefined;
  readonly recipe: Recipe | undefined;
  readonly template: Template | undefined;
  readonly roll: Roll | undefined;
  readonly now: string;
}

/** Press, stack and recipe as the hands and the display need them. */
export function cardPress({ belt, line, press, recipe, template, roll, now }: PressChoice): CardPress {
  const age = press && checkAge_days(press, now);
  const cycle = press && recipe && pressCycle({ line, belt, press, recipe, template, roll });
  return {
    ...(press && { press }),
    ...(age !== undefined && { checkAge_days: age }),
    ...(recipe && { recipe }),
    ...(template && { template }),
    stripHeight: stripHeight(belt),
    ...(recipe && pressures(line, press, recipe)),
    ...(cycle && { cycle }),
    ...(recipe && times(recipe, cycle)),
  };
}

type Pressures = Pick<CardPress, 'beltPressure' | 'gaugePressure' | 'pressureWithoutStrips'>;

/** With edge strips of belt height right across the bag the gauge shows the belt's pressure; without, it does not. */
function pressures(line: Line, press: Press | undefined, recipe: Recipe): Pressures {
  const beltPressure = given('pressure', recipe.beltPressure_Pa, recipe, 'beltPressure_Pa');
  if (!press) return { beltPressure };
  const bag = { pg: recipe.beltPressure_Pa, wb: press.bagWidth_m, b: line.width_m };
  const withStrips = work(beltPressureRow, { ...bag, ws: Math.max(0, press.bagWidth_m - line.width_m) });
  return {
    beltPressure,
    gaugePressure: computed('pressure', withStrips),
    pressureWithoutStrips: computed('pressure', work(beltPressureRow, { ...bag, ws: 0 })),
  };
}

type Times = Pick<CardPress, 'readyAt' | 'dwell' | 'openAt'>;

/** The computed time line; where there is none, what somebody timed. */
function times(recipe: Recipe, cycle: PressCycle | NoCycle | undefined): Times {
  const time = (value: number, field: string): Quantity => given('time', value, recipe, field);
  const dwell = time(recipe.dwell_s, 'dwell_s');
  if (cycle?.status === 'ok') return { dwell, readyAt: cycle.ready, openAt: cycle.open };
  return {
    dwell,
    ...(recipe.readyAt_s !== undefined && { readyAt: time(recipe.readyAt_s, 'readyAt_s') }),
    ...(recipe.openAt_s !== undefined && { openAt: time(recipe.openAt_s, 'openAt_s') }),
  };
}
