import type { LossLaw } from './loss-law.ts';

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
 * depend on the plate alone, so that they fold into its row of the matrix: v = constant + slope * v of the plate.
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
  /** How fast the set point moves [K/s]. */
  SET_RATE: 3,
  GAIN: 4,
  INTEGRAL_RATE: 5,
  TRACKING: 6,
  /** One over the sensor's lag. */
  PER_LAG: 7,
  LOSS: 8,
  /** Share of full power while it does not follow. */
  SHARE: 9,
  // State at the step's start and end: sensor, integral, heat per area supplied and lost so far.
  SENSOR: 10,
  INTEGRAL: 11,
  SUPPLIED: 12,
  LOST: 13,
  NEXT_SET: 14,
  NEXT_SENSOR: 15,
  NEXT_INTEGRAL: 16,
  NEXT_SUPPLIED: 17,
  NEXT_LOST: 18,
  /** Share of full power at the step's start; what is lost then, and its slope by the plate's temperature. */
  START_SHARE: 19,
  START_LOSS: 20,
  LOSS_SLOPE: 21,
  // Folding.
  INVERSE: 22,
  SENSOR_INVERSE: 23,
  INTEGRAL_INVERSE: 24,
  INTEGRAL_BY_SENSOR: 25,
  SENSOR_SLOPE: 26,
  INTEGRAL_SLOPE: 27,
  SHARE_SLOPE: 28,
  SENSOR_CONSTANT: 29,
  INTEGRAL_CONSTANT: 30,
  SHARE_CONSTANT: 31,
  /** The set point's own solution, the same all along the chain. */
  MOVED: 32,
  // One for each solution of the chain, the extra one last: how far the plate lies off its linear temperature, then
  // sensor, integral and share.
  OFF: 33,
  V_SENSOR: 39,
  V_INTEGRAL: 45,
  V_SHARE: 51,
  // How sensor and integral bow inside the step, see `inside.ts`.
  SENSOR_BOW: 57,
  SENSOR_TWIST: 58,
  INTEGRAL_BOW: 59,
  INTEGRAL_TWIST: 60,
  COUNT: 61,
} as const;

const { AMBIENT, GIVEN, SET, GAIN, INTEGRAL_RATE, TRACKING, PER_LAG, LOSS, SENSOR, INTEGRAL, SUPPLIED, LOST } =
  endField;
const { NEXT_SET, NEXT_SENSOR, NEXT_INTEGRAL, NEXT_SUPPLIED, NEXT_LOST, OFF, COUNT } = endField;

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
 * Forgets the solutions of a step that came to nothing.
 *
 * @param end - end, changed
 * @returns nothing
 * @source derived: a solution that is not a number must not reach the next try
 */
export function clearEnd({ numbers }: End): void {
  numbers.fill(0, OFF, COUNT);
}
