import { rodasp } from './rodas.ts';

const stages = 6;
const { gamma, a, c } = rodasp;

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
}

/**
 * An end of the stack: a plate (or bare surface) with loss and heat, its sensor and its controller.
 * Sensor and integral depend on the plate alone, so that they fold into its row of the matrix.
 */
export interface End extends Omit<EndParts, 'loss_W_m2K'> {
  loss_W_m2K: number;
  /** True while the controller is inside its band; else `share` is the share of full power. */
  following: boolean;
  share: number;
  sensor_degC: number;
  integral: number;
  nextSensor_degC: number;
  nextIntegral: number;
  /** Heat per area given to it and lost by it so far. */
  supplied_J_m2: number;
  lost_J_m2: number;
  nextSupplied_J_m2: number;
  nextLost_J_m2: number;
  /** Enthalpy of the plate at the step's start, above 25 degC. */
  enthalpy_J_m2: number;
  readonly kSensor: Float64Array;
  readonly kIntegral: Float64Array;
  readonly kSupplied: Float64Array;
  readonly kLost: Float64Array;
  // At the stage: sensor, integral, share of full power.
  stageSensor_degC: number;
  stageIntegral: number;
  stageShare: number;
  // Folding: k of sensor, integral and share = constant + slope * k of the plate.
  sensorInverse: number;
  integralInverse: number;
  integralBySensor: number;
  sensorSlope: number;
  integralSlope: number;
  shareSlope: number;
  sensorConstant: number;
  integralConstant: number;
  shareConstant: number;
  kShare: number;
}

/**
 * An end at rest at its start temperature with its controller switched off.
 *
 * @param parts - plate, losses, controller and sensor [units in their names]
 * @returns end
 * @source derived: plain allocation
 */
export function makeEnd(parts: EndParts): End {
  return {
    ...parts,
    following: false,
    share: 0,
    sensor_degC: parts.start_degC,
    integral: 0,
    nextSensor_degC: parts.start_degC,
    nextIntegral: 0,
    supplied_J_m2: 0,
    lost_J_m2: 0,
    nextSupplied_J_m2: 0,
    nextLost_J_m2: 0,
    enthalpy_J_m2: 0,
    kSensor: new Float64Array(stages),
    kIntegral: new Float64Array(stages),
    kSupplied: new Float64Array(stages),
    kLost: new Float64Array(stages),
    stageSensor_degC: 0,
    stageIntegral: 0,
    stageShare: 0,
    sensorInverse: 0,
    integralInverse: 0,
    integralBySensor: 0,
    sensorSlope: 0,
    integralSlope: 0,
    shareSlope: 0,
    sensorConstant: 0,
    integralConstant: 0,
    shareConstant: 0,
    kShare: 0,
  };
}

/**
 * Output that the controller asks for, before it is limited to 0..1. raw = (set - S)/band + I.
 *
 * @param end - set point and gain
 * @param sensor_degC - what the sensor shows S [degC]
 * @param integral - integral part I [1]
 * @returns share of full power, unlimited [1]
 * @source derived: definition of a proportional-integral controller
 */
export function rawOutput(end: End, sensor_degC: number, integral: number): number {
  return (end.set_degC - sensor_degC) * end.gain_1_K + integral;
}

/** Prepares the folding for a step of a given length; the controller keeps to its side of its limits for the step. */
export function linearizeEnd(e: End, step_s: number): void {
  const inverse = 1 / (step_s * gamma);
  const tracking = e.following ? 0 : e.trackingRate_1_s;
  e.sensorInverse = 1 / (inverse + 1 / e.sensorLag_s);
  e.sensorSlope = e.sensorInverse / e.sensorLag_s;
  e.integralBySensor = e.gain_1_K * tracking - e.integralRate_1_Ks;
  e.integralInverse = 1 / (inverse + tracking);
  e.integralSlope = e.integralBySensor * e.sensorSlope * e.integralInverse;
  e.shareSlope = e.following ? e.integralSlope - e.gain_1_K * e.sensorSlope : 0;
}

/** Sum of the stages before `stage`, weighted. */
function weighted(row: readonly number[] | undefined, k: Float64Array, stage: number): number {
  let sum = 0;
  for (let j = 0; j < stage; j += 1) sum += (row?.[j] as number) * (k[j] as number);
  return sum;
}

/** Sensor, integral and share of full power at a stage. */
export function endAtStage(e: End, stage: number): void {
  if (stage === 5) {
    e.stageSensor_degC += e.kSensor[4] as number;
    e.stageIntegral += e.kIntegral[4] as number;
  } else {
    e.stageSensor_degC = e.sensor_degC + weighted(a[stage], e.kSensor, stage);
    e.stageIntegral = e.integral + weighted(a[stage], e.kIntegral, stage);
  }
  e.stageShare = e.following ? rawOutput(e, e.stageSensor_degC, e.stageIntegral) : e.share;
}

/** Constants of the folding at a stage, from the plate's stage temperature. */
export function foldEnd(e: End, stage: number, plate_degC: number, perStep_1_s: number): void {
  const sensorRate =
    (plate_degC - e.stageSensor_degC) / e.sensorLag_s + weighted(c[stage], e.kSensor, stage) * perStep_1_s;
  e.sensorConstant = sensorRate * e.sensorInverse;
  let integralRate = (e.set_degC - e.stageSensor_degC) * e.integralRate_1_Ks;
  if (!e.following) {
    integralRate += (e.share - rawOutput(e, e.stageSensor_degC, e.stageIntegral)) * e.trackingRate_1_s;
  }
  integralRate += weighted(c[stage], e.kIntegral, stage) * perStep_1_s;
  e.integralConstant = (integralRate + e.integralBySensor * e.sensorConstant) * e.integralInverse;
  e.shareConstant = e.following ? e.integralConstant - e.gain_1_K * e.sensorConstant : 0;
}

/** Sensor, integral and share of this stage, now that the plate's is known. */
export function unfoldEnd(e: End, stage: number, kPlate: number): void {
  e.kSensor[stage] = e.sensorConstant + e.sensorSlope * kPlate;
  e.kIntegral[stage] = e.integralConstant + e.integralSlope * kPlate;
  e.kShare = e.shareConstant + e.shareSlope * kPlate;
}

/** A quantity that is only summed up: its stage from its rate and the change of the rate. */
export function summedStage(k: Float64Array, stage: number, rate: number, change: number, step_s: number): void {
  k[stage] = step_s * gamma * (rate + change + weighted(c[stage], k, stage) / step_s);
}

/** Value after the step of something with these stages. */
export function afterStep(value: number, k: Float64Array): number {
  return value + weighted(a[4], k, 4) + (k[4] as number) + (k[5] as number);
}
