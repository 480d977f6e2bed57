import { type End, endField } from './end.ts';
import { lawLoss_W_m2, lawSlope_W_m2K } from './loss-law.ts';

const { AMBIENT, LOSS, LOSS_SLOPE } = endField;

/**
 * Slope of all that an end loses, at the step's start; it stands in the matrix of the step.
 *
 * @param end - end, changed
 * @param plate_degC - temperature of its plate at the step's start [degC]
 * @returns slope of the loss per area [W/(m2*K)]
 * @source derived: coefficient plus slope of the law
 * @verified LOSS-13 platen in still air
 */
export function linearizeLoss({ numbers: e, law }: End, plate_degC: number): number {
  const linear = e[LOSS] as number;
  const slope = law === undefined ? linear : linear + lawSlope_W_m2K(law, plate_degC);
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

/**
 * What an end loses at a stage, with its change over the stage: summed up with the stages' weights it balances.
 *
 * @param end - end with its slope
 * @param plate_degC - temperature of its plate at the stage [degC]
 * @param k_K - the plate's stage [K]
 * @returns loss per area [W/m2]
 * @source derived: first-order expansion of the loss
 * @verified LOSS-13 platen in still air
 */
export function lossOfStage_W_m2(end: End, plate_degC: number, k_K: number): number {
  const { numbers: e, law } = end;
  if (law === undefined) return (e[LOSS] as number) * (plate_degC + k_K - (e[AMBIENT] as number));
  return lossAt_W_m2(end, plate_degC) + (e[LOSS_SLOPE] as number) * k_K;
}
