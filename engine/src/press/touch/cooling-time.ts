import { inRange } from '../../in-range.ts';
import { Refusal } from '../../refusal.ts';
import { coolingTimeRow } from './touch-formulas.ts';

/** A body that cools as one lump. */
export interface Cooling {
  readonly from_degC: number;
  readonly to_degC: number;
  readonly around_degC: number;
  /** Heat capacity per area over heat transfer: belt and template belong in the capacity. */
  readonly timeConstant_s: number;
}

/**
 * Time until a lump has cooled to a temperature. t = (C/h)*ln[(T0 - Ta)/(T1 - Ta)].
 *
 * @param cooling - from, to, around [degC] -60 to 400, time constant C/h [s] above 0
 * @returns time [s]; 0 when it is there already
 * @throws not-finite, out-of-range, never-cools
 * @validity even temperature inside, constant heat transfer
 * @source derived: lumped cooling
 * @verified TOUCH-03 cooling 185 to 50 degC
 */
export function coolingTime_s(cooling: Cooling): number {
  const degC = (name: 'from_degC' | 'to_degC' | 'around_degC') =>
    inRange(cooling[name], name, { min: -60, max: 400, unit: 'degC' });
  const [from, to, around] = [degC('from_degC'), degC('to_degC'), degC('around_degC')];
  const tau_s = inRange(cooling.timeConstant_s, 'timeConstant_s', { min: 0, max: 1e6, unit: 's', above: true });
  if (from <= to) return 0;
  if (to <= around) throw new Refusal('never-cools', 'to_degC', { value: to, min: around, unit: 'degC' });
  return coolingTimeRow.compute({ tau: tau_s, T0: from, T1: to, Ta: around });
}
