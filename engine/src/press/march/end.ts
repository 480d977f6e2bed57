import type { LossLaw } from './loss-law.ts';
import { rampStages, rodasp } from './rodas.ts';

const { gamma, a, c, time } = rodasp;
const ROW = 5;
const LAST = 5;

/** What an end of the stack is made of. */
export interface EndParts {
  /** True for a plate whose temperature nothing changes. */
  readonly held: boolean;
  /** Heat capacity per area at 25 degC; 0 for a bare surface. */
  readonly capacity_J_m2K: number;
  readonly capacitySlope_1_K: number;
  readonly loss_W_m2K: number;
  readonly ambient_degC: number;
  /** Given heat, beside the heater's. */
  readonly flux_W_m2: number;
  readonly start_degC: number;
  readonly set_degC: number;
  /** One over the proportional band. */
  readonly gain_1_K: number;
  /** Growth of the integral per kelvin of error and second. */
  readonly integralRate_1_Ks: number;
  /** How fast the integral follows the limited output. */
  readonly trackingRate_1_s: number;
  readonly sensorLag_s: number;
  /** Loss that is no straight line over temperature, beside the one that is. */
  readonly law?: LossLaw | undefined;
}

/**
 * An end of the stack: a plate (or bare surface) with loss and heat, its sensor and its controller. Sensor and integral
 * depend on the plate alone, so that they fold into its row of the matrix: k = constant + slope * k of the plate.
 */
export interface End {
  readonly held: boolean;
  /** True while the controller is inside its band; else its share of full power is constant. */
  following: boolean;
  readonly law: LossLaw | undefined;
  /** See `endField`. */
  readonly numbers: Float64Array;
}

/** Where the numbers of an end stand. Files with loops take them apart into constants of their own. */
export const endField = {
  AMBIENT: 0,
  GIVEN: 1,
  SET: 2,
  GAIN: 3,
  INTEGRAL_RATE: 4,
  TRACKING: 5,
  /** One over the sensor's lag. */
  PER_LAG: 6,
  LOSS: 7,
  /** Share of full power while it does not follow. */
  SHARE: 8,
  // State at the step's start and end: sensor, integral, heat per area supplied and lost so far.
  SENSOR: 9,
  INTEGRAL: 10,
  SUPPLIED: 11,
  LOST: 12,
  NEXT_SENSOR: 13,
  NEXT_INTEGRAL: 14,
  NEXT_SUPPLIED: 15,
  NEXT_LOST: 16,
  // At the stage.
  STAGE_SENSOR: 17,
  STAGE_INTEGRAL: 18,
  STAGE_SHARE: 19,
  K_SHARE: 20,
  // Folding.
  SENSOR_INVERSE: 21,
  INTEGRAL_INVERSE: 22,
  INTEGRAL_BY_SENSOR: 23,
  SENSOR_SLOPE: 24,
  INTEGRAL_SLOPE: 25,
  SHARE_SLOPE: 26,
  SENSOR_CONSTANT: 27,
  INTEGRAL_CONSTANT: 28,
  SHARE_CONSTANT: 29,
  // Six stages each.
  K_SENSOR: 30,
  K_INTEGRAL: 36,
  /** How fast the set point moves [K/s]; where it is at the step's end and at the stage, and its own stage. */
  SET_RATE: 42,
  NEXT_SET: 43,
  STAGE_SET: 44,
  K_SET: 45,
  /** Slope of all that is lost by the plate's temperature, at the step's start. */
  LOSS_SLOPE: 46,
  STEP: 47,
  COUNT: 48,
} as const;

const { AMBIENT, GIVEN, SET, GAIN, INTEGRAL_RATE, TRACKING, PER_LAG, LOSS, SHARE } = endField;
const { SENSOR, INTEGRAL, SUPPLIED, LOST, NEXT_SENSOR, NEXT_INTEGRAL, NEXT_SUPPLIED, NEXT_LOST } = endField;
const { STAGE_SENSOR, STAGE_INTEGRAL, STAGE_SHARE, K_SHARE, K_SENSOR, K_INTEGRAL, COUNT } = endField;
const { SENSOR_INVERSE, INTEGRAL_INVERSE, INTEGRAL_BY_SENSOR, SENSOR_SLOPE, INTEGRAL_SLOPE, SHARE_SLOPE } = endField;
const { SENSOR_CONSTANT, INTEGRAL_CONSTANT, SHARE_CONSTANT } = endField;
const { SET_RATE, NEXT_SET, STAGE_SET, K_SET, STEP } = endField;

/**
 * An end at rest at its start temperature with its controller switched off.
 *
 * @param parts - plate, losses, controller and sensor [units in their names]
 * @returns end
 * @source derived: plain allocation
 */
export function makeEnd(parts: EndParts): End {
  const numbers = new Float64Array(COUNT);
  numbers[AMBIENT] = parts.ambient_degC;
  numbers[GIVEN] = parts.flux_W_m2;
  numbers[SET] = parts.set_degC;
  numbers[NEXT_SET] = parts.set_degC;
  numbers[GAIN] = parts.gain_1_K;
  numbers[INTEGRAL_RATE] = parts.integralRate_1_Ks;
  numbers[TRACKING] = parts.trackingRate_1_s;
  numbers[PER_LAG] = 1 / parts.sensorLag_s;
  numbers[LOSS] = parts.loss_W_m2K;
  numbers[SENSOR] = parts.start_degC;
  return { held: parts.held, following: false, law: parts.law, numbers };
}

/** Output that the controller asks for at the stage, before it is limited to 0..1. */
function raw(e: Float64Array, sensor_degC: number, integral: number): number {
  return ((e[STAGE_SET] as number) - sensor_degC) * (e[GAIN] as number) + integral;
}

/**
 * Prepares the folding for a step; the controller stays on its side of its limits for the whole of it.
 *
 * @param end - end, changed
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function linearizeEnd({ numbers: e, following }: End, step_s: number): void {
  e[STEP] = step_s;
  e[NEXT_SET] = (e[SET] as number) + step_s * (e[SET_RATE] as number);
  const inverse = 1 / (step_s * gamma);
  const tracking = following ? 0 : (e[TRACKING] as number);
  const gain = e[GAIN] as number;
  const perLag = e[PER_LAG] as number;
  const sensorInverse = 1 / (inverse + perLag);
  const integralBySensor = gain * tracking - (e[INTEGRAL_RATE] as number);
  const integralInverse = 1 / (inverse + tracking);
  const sensorSlope = sensorInverse * perLag;
  const integralSlope = integralBySensor * sensorSlope * integralInverse;
  e[SENSOR_INVERSE] = sensorInverse;
  e[SENSOR_SLOPE] = sensorSlope;
  e[INTEGRAL_BY_SENSOR] = integralBySensor;
  e[INTEGRAL_INVERSE] = integralInverse;
  e[INTEGRAL_SLOPE] = integralSlope;
  e[SHARE_SLOPE] = following ? integralSlope - gain * sensorSlope : 0;
  e[NEXT_SUPPLIED] = e[SUPPLIED] as number;
  e[NEXT_LOST] = e[LOST] as number;
}

/** Stages from k on, weighted by the row of one; weights of stages still to come are 0. */
function weighted(rows: Float64Array, stage: number, e: Float64Array, k: number): number {
  const row = stage * ROW;
  return (
    (rows[row] as number) * (e[k] as number) +
    (rows[row + 1] as number) * (e[k + 1] as number) +
    ((rows[row + 2] as number) * (e[k + 2] as number) + (rows[row + 3] as number) * (e[k + 3] as number)) +
    (rows[row + 4] as number) * (e[k + 4] as number)
  );
}

/**
 * Sensor, integral, set point and share of full power at a stage.
 *
 * @param end - end, changed
 * @param stage - number of the stage [1], 0 to 5
 * @returns nothing
 * @source Rosenbrock method, see `rodas.ts`
 */
export function endAtStage({ numbers: e, following }: End, stage: number): void {
  const sensor = (e[SENSOR] as number) + weighted(a, stage, e, K_SENSOR);
  const integral = e[INTEGRAL_RATE] === 0 ? 0 : (e[INTEGRAL] as number) + weighted(a, stage, e, K_INTEGRAL);
  const moved_K = (e[STEP] as number) * (e[SET_RATE] as number);
  e[STAGE_SENSOR] = sensor;
  e[STAGE_INTEGRAL] = integral;
  e[STAGE_SET] = (e[SET] as number) + moved_K * (time[stage] as number);
  e[K_SET] = moved_K * (rampStages[stage] as number);
  e[STAGE_SHARE] = following ? raw(e, sensor, integral) : (e[SHARE] as number);
}

/**
 * Constants of the folding at a stage.
 * tau*dS/dt = T - S; dI/dt = (set - S)/(band*Ti) + (u - raw)/Tt.
 *
 * @param end - end, changed
 * @param stage - number of the stage [1], 0 to 5
 * @param plate_degC - the plate's temperature at the stage T [degC]
 * @param perStep_1_s - one over the length of the step [1/s]
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function foldEnd(end: End, stage: number, plate_degC: number, perStep_1_s: number): void {
  const { numbers: e, following } = end;
  const rate =
    (plate_degC - (e[STAGE_SENSOR] as number)) * (e[PER_LAG] as number) + weighted(c, stage, e, K_SENSOR) * perStep_1_s;
  const sensor = rate * (e[SENSOR_INVERSE] as number);
  const integral = e[INTEGRAL_RATE] === 0 ? 0 : integralConstant(end, stage, sensor, perStep_1_s);
  e[SENSOR_CONSTANT] = sensor;
  e[INTEGRAL_CONSTANT] = integral;
  e[SHARE_CONSTANT] = following ? integral - (e[GAIN] as number) * (sensor - (e[K_SET] as number)) : 0;
}

function integralConstant({ numbers: e, following }: End, stage: number, sensor: number, perStep_1_s: number): number {
  const stageSensor = e[STAGE_SENSOR] as number;
  let rate = ((e[STAGE_SET] as number) - stageSensor) * (e[INTEGRAL_RATE] as number);
  rate += weighted(c, stage, e, K_INTEGRAL) * perStep_1_s;
  if (!following) {
    rate += ((e[SHARE] as number) - raw(e, stageSensor, e[STAGE_INTEGRAL] as number)) * (e[TRACKING] as number);
  }
  const error = sensor - (e[K_SET] as number);
  return (rate + (e[INTEGRAL_BY_SENSOR] as number) * error) * (e[INTEGRAL_INVERSE] as number);
}

/**
 * Sensor, integral and share of a stage, now that the plate's is known.
 *
 * @param end - end, changed
 * @param stage - number of the stage [1], 0 to 5
 * @param kPlate - the plate's stage [K]
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function unfoldEnd({ numbers: e }: End, stage: number, kPlate: number): void {
  e[K_SENSOR + stage] = (e[SENSOR_CONSTANT] as number) + (e[SENSOR_SLOPE] as number) * kPlate;
  e[K_INTEGRAL + stage] = (e[INTEGRAL_CONSTANT] as number) + (e[INTEGRAL_SLOPE] as number) * kPlate;
  e[K_SHARE] = (e[SHARE_CONSTANT] as number) + (e[SHARE_SLOPE] as number) * kPlate;
}

/** How little the integral's error counts while the output is limited and the integral only follows it. */
const limitedWeight = 0.02;

/**
 * Sensor and integral at the step's end, and the estimate of their error. The integral counts as the error of the sensor
 * that would ask for the same output.
 *
 * @param end - end, changed
 * @returns error of the step [K]
 * @source Rosenbrock method, see `rodas.ts`
 */
export function finishEnd({ numbers: e, following }: End): number {
  const sensor_K = e[K_SENSOR + LAST] as number;
  const integral = e[K_INTEGRAL + LAST] as number;
  e[NEXT_SENSOR] = (e[STAGE_SENSOR] as number) + sensor_K;
  e[NEXT_INTEGRAL] = (e[STAGE_INTEGRAL] as number) + integral;
  if (e[INTEGRAL_RATE] === 0) return Math.abs(sensor_K);
  const weight = following ? 1 : limitedWeight;
  return Math.max(Math.abs(sensor_K), (weight * Math.abs(integral)) / (e[GAIN] as number));
}

/**
 * Takes the step that was tried last.
 *
 * @param end - end, moved to the step's end
 * @returns nothing
 * @source derived: plain assignment
 */
export function acceptEnd({ numbers: e }: End): void {
  e[SET] = e[NEXT_SET] as number;
  e[SENSOR] = e[NEXT_SENSOR] as number;
  e[INTEGRAL] = e[NEXT_INTEGRAL] as number;
  e[SUPPLIED] = e[NEXT_SUPPLIED] as number;
  e[LOST] = e[NEXT_LOST] as number;
}

/**
 * Forgets the stages of a step that came to nothing.
 *
 * @param end - end, changed
 * @returns nothing
 * @source derived: a stage that is not a number must not reach the next try
 */
export function clearEnd({ numbers }: End): void {
  numbers.fill(0, K_SENSOR, SET_RATE);
}
