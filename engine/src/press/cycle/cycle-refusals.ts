import { Refusal } from '../../refusal.ts';
import { type End, endField } from '../march/end.ts';
import { lossAt_W_m2 } from '../march/end-loss.ts';
import { heaterField } from '../march/heaters.ts';
import type { PressRun } from './press-run.ts';
import type { CoolStep } from './recipe-plan.ts';

const { SENSOR, SET, SHARE } = endField;
const { TOP, BOTTOM } = heaterField;

/** Path of a field of the recipe: of a step where the recipe has steps. */
function pathOf({ input }: PressRun, given: number, field: string): string {
  return input.recipe.steps === undefined ? `recipe.${field}` : `recipe.steps[${given}]`;
}

/**
 * Says how hot the platen that stays farthest from its set point gets, and what holds it back.
 *
 * @param run - run at the end of a ramp that never ended
 * @param given - which step of the recipe [1]
 * @returns refusal
 * @throws set-point-not-reached, never-cools: by whoever asks for it
 * @source derived: plain comparison
 */
export function notReached(run: PressRun, given: number): Refusal {
  const { input, march, goal } = run;
  const { top, bottom } = march.slab;
  const side = goal.topWay * missing_K(top) > goal.bottomWay * missing_K(bottom) ? 'top' : 'bottom';
  const end = march.slab[side];
  const platen = input[side];
  const [value, reached] = [end.numbers[SET] as number, end.numbers[SENSOR] as number];
  if (goal[`${side}Way`] < 0) {
    return new Refusal('never-cools', pathOf(run, given, `${side}_degC`), { value, min: reached, unit: 'degC' });
  }
  return new Refusal('set-point-not-reached', pathOf(run, given, `${side}_degC`), {
    value,
    max: reached,
    unit: 'degC',
    volts_V: input.supply.volts_V,
    nominal_V: platen.nominal_V,
    heater_W: platen.heater_W,
    loss_W_m2K: platen.loss_W_m2K,
    lost_W: Math.round(lossAt_W_m2(end, reached) * platen.area_m2),
    given_W: Math.round((march.slab.heaters[side === 'top' ? TOP : BOTTOM] as number) * platen.area_m2),
    fullPower: !end.following && end.numbers[SHARE] === 1,
  });
}

function missing_K({ numbers }: End): number {
  return (numbers[SET] as number) - (numbers[SENSOR] as number);
}

/**
 * Says where cooling stays.
 *
 * @param run - run at the end of a cooling that never ended
 * @param step - the cooling
 * @returns refusal
 * @throws never-cools: by whoever asks for it
 * @source derived: plain comparison
 */
export function neverCools(run: PressRun, step: CoolStep): Refusal {
  const { top, bottom } = run.march.slab;
  return new Refusal('never-cools', pathOf(run, step.given, 'open_degC'), {
    value: step.below_degC,
    min: Math.max(top.numbers[SENSOR] as number, bottom.numbers[SENSOR] as number),
    unit: 'degC',
  });
}
