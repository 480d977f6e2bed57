import { type End, endField } from './end.ts';

const { SET, NEXT_SET, GAIN } = endField;

/**
 * Output that the controller asks for, before it is limited to 0..1. raw = (set - S)/band + I.
 *
 * @param end - gain of its controller
 * @param set_degC - set point [degC]
 * @param sensor_degC - what the sensor shows S [degC]
 * @param integral - integral part I [1]
 * @returns share of full power, unlimited [1]
 * @source derived: definition of a proportional-integral controller
 */
export function rawOutput({ numbers }: End, set_degC: number, sensor_degC: number, integral: number): number {
  return (set_degC - sensor_degC) * (numbers[GAIN] as number) + integral;
}

/**
 * Set point inside the step tried last: it moves in a straight line.
 *
 * @param end - end with that step
 * @param share - where in the step [1], 0 to 1
 * @returns set point [degC]
 * @source derived: straight line
 */
export function setInside({ numbers }: End, share: number): number {
  const set = numbers[SET] as number;
  return set + share * ((numbers[NEXT_SET] as number) - set);
}
