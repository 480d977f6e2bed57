import { type End, endField } from './end.ts';
import { lawLoss_W_m2, lawSlope_W_m2K } from './loss-law.ts';

const { AMBIENT, LOSS, START_LOSS, LOSS_SLOPE } = endField;

/**
 * What an end loses at the step's start, and its slope, which stands in the matrix of the step.
 *
 * @param end - end, changed
 * @param plate_degC - temperature of its plate at the step's start [degC]
 * @returns slope of the loss per area [W/(m2*K)]
 * @source derived: coefficient plus slope of the law
 * @verified LOSS-13 platen in still air
 */
export function linearizeLoss(end: End, plate_degC: number): number {
  const { numbers: e, law } = end;
  const linear = e[LOSS] as number;
  const slope = law === undefined ? linear : linear + lawSlope_W_m2K(law, plate_degC);
  e[START_LOSS] = lossAt_W_m2(end, plate_degC);
  e[LOSS_SLOPE] = slope;
  return slope;
}

/**
 * What an end loses at a temperature of its plate. q = U*(T - T_a) + law(T).
 *
 * @param end - end
 * @param plate_degC - temperature of its plate T [degC]
 * @returns loss per area [W/m2]
 * @source derived: sum of both
 * @verified LOSS-13 platen in still air
 */
export function lossAt_W_m2({ numbers: e, law }: End, plate_degC: number): number {
  const linear_W_m2 = (e[LOSS] as number) * (plate_degC - (e[AMBIENT] as number));
  return law === undefined ? linear_W_m2 : linear_W_m2 + lawLoss_W_m2(law, plate_degC);
}
