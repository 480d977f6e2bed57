import { lastStage, rodasp, rowLength } from './rodas.ts';

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
 * An end of the stack: a plate (or bare surface) with loss and heat, its sensor and its controller. Sensor and integral
 * depend on the plate alone, so that they fold into its row of the matrix: k = constant + slope * k of the plate.
 */
export interface End {
  readonly held: boolean;
  readonly ambient_degC: number;
  readonly flux_W_m2: number;
  readonly set_degC: number;
  readonly gain_1_K: number;
  readonly integralRate_1_Ks: number;
  readonly trackingRate_1_s: number;
  /** One over the sensor's lag. */
  readonly perLag_1_s: number;
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
  readonly kSensor: Float64Array;
  readonly kIntegral: Float64Array;
  // At the stage.
  stageSensor_degC: number;
  stageIntegral: number;
  stageShare: number;
  kShare: number;
  // Folding.
  sensorInverse: number;
  integralInverse: number;
  integralBySensor: number;
  sensorSlope: number;
  integralSlope: number;
  shareSlope: number;
  sensorConstant: number;
  integralConstant: number;
  shareConstant: number;
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
    held: parts.held,
    ambient_degC: parts.ambient_degC,
    flux_W_m2: parts.flux_W_m2,
    set_degC: parts.set_degC,
    gain_1_K: parts.gain_1_K,
    integralRate_1_Ks: parts.integralRate_1_Ks,
    trackingRate_1_s: parts.trackingRate_1_s,
    perLag_1_s: 1 / parts.sensorLag_s,
    loss_W_m2K: parts.loss_W_m2K,
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
    kSensor: new Float64Array(lastStage + 1),
    kIntegral: new Float64Array(lastStage + 1),
    stageSensor_degC: 0,
    stageIntegral: 0,
    stageShare: 0,
    kShare: 0,
    sensorInverse: 0,
    integralInverse: 0,
    integralBySensor: 0,
    sensorSlope: 0,
    integralSlope: 0,
    shareSlope: 0,
    sensorConstant: 0,
    integralConstant: 0,
    shareConstant: 0,
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

/**
 * Prepares the folding for a step; the controller stays on its side of its limits for the whole of it.
 *
 * @param e - end, changed
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function linearizeEnd(e: End, step_s: number): void {
  const inverse = 1 / (step_s * gamma);
  const tracking = e.following ? 0 : e.trackingRate_1_s;
  e.sensorInverse = 1 / (inverse + e.perLag_1_s);
  e.sensorSlope = e.sensorInverse * e.perLag_1_s;
  e.integralBySensor = e.gain_1_K * tracking - e.integralRate_1_Ks;
  e.integralInverse = 1 / (inverse + tracking);
  e.integralSlope = e.integralBySensor * e.sensorSlope * e.integralInverse;
  e.shareSlope = e.following ? e.integralSlope - e.gain_1_K * e.sensorSlope : 0;
  e.nextSupplied_J_m2 = e.supplied_J_m2;
  e.nextLost_J_m2 = e.lost_J_m2;
}

/** Stages weighted by the row of one; weights of stages still to come are 0. */
function weighted(rows: Float64Array, stage: number, k: Float64Array): number {
  const row = stage * rowLength;
  return (
    (rows[row] as number) * (k[0] as number) +
    (rows[row + 1] as number) * (k[1] as number) +
    ((rows[row + 2] as number) * (k[2] as number) + (rows[row + 3] as number) * (k[3] as number)) +
    (rows[row + 4] as number) * (k[4] as number)
  );
}

/**
 * Sensor, integral and share of full power at a stage.
 *
 * @param e - end, changed
 * @param stage - number of the stage [1], 0 to 5
 * @returns nothing
 * @source Rosenbrock method, see `rodas.ts`
 */
export function endAtStage(e: End, stage: number): void {
  e.stageSensor_degC = e.sensor_degC + weighted(a, stage, e.kSensor);
  e.stageIntegral = e.integralRate_1_Ks === 0 ? 0 : e.integral + weighted(a, stage, e.kIntegral);
  e.stageShare = e.following ? rawOutput(e, e.stageSensor_degC, e.stageIntegral) : e.share;
}

/**
 * Constants of the folding at a stage.
 * tau*dS/dt = T - S; dI/dt = (set - S)/(band*Ti) + (u - raw)/Tt.
 *
 * @param e - end, changed
 * @param stage - number of the stage [1], 0 to 5
 * @param plate_degC - the plate's temperature at the stage T [degC]
 * @param perStep_1_s - one over the length of the step [1/s]
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function foldEnd(e: End, stage: number, plate_degC: number, perStep_1_s: number): void {
  const sensorRate = (plate_degC - e.stageSensor_degC) * e.perLag_1_s + weighted(c, stage, e.kSensor) * perStep_1_s;
  e.sensorConstant = sensorRate * e.sensorInverse;
  e.integralConstant = e.integralRate_1_Ks === 0 ? 0 : integralConstant(e, stage, perStep_1_s);
  e.shareConstant = e.following ? e.integralConstant - e.gain_1_K * e.sensorConstant : 0;
}

function integralConstant(e: End, stage: number, perStep_1_s: number): number {
  let rate = (e.set_degC - e.stageSensor_degC) * e.integralRate_1_Ks + weighted(c, stage, e.kIntegral) * perStep_1_s;
  if (!e.following) {
    rate += (e.share - rawOutput(e, e.stageSensor_degC, e.stageIntegral)) * e.trackingRate_1_s;
  }
  return (rate + e.integralBySensor * e.sensorConstant) * e.integralInverse;
}

/**
 * Sensor, integral and share of a stage, now that the plate's is known.
 *
 * @param e - end, changed
 * @param stage - number of the stage [1], 0 to 5
 * @param kPlate - the plate's stage [K]
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function unfoldEnd(e: End, stage: number, kPlate: number): void {
  e.kSensor[stage] = e.sensorConstant + e.sensorSlope * kPlate;
  e.kIntegral[stage] = e.integralConstant + e.integralSlope * kPlate;
  e.kShare = e.shareConstant + e.shareSlope * kPlate;
}

/**
 * Sensor and integral at the step's end, and the estimate of their error. The integral counts as the error of the sensor
 * that would ask for the same output, and little while the output is limited and it only follows.
 *
 * @param e - end, changed
 * @returns error of the step [K]
 * @source Rosenbrock method, see `rodas.ts`
 */
export function finishEnd(e: End): number {
  const sensor_K = e.kSensor[lastStage] as number;
  const integral = e.kIntegral[lastStage] as number;
  e.nextSensor_degC = e.stageSensor_degC + sensor_K;
  e.nextIntegral = e.stageIntegral + integral;
  if (e.integralRate_1_Ks === 0) return Math.abs(sensor_K);
  const weight = e.following ? 1 : limitedWeight;
  return Math.max(Math.abs(sensor_K), (weight * Math.abs(integral)) / e.gain_1_K);
}

const limitedWeight = 0.02;

/**
 * Takes the step that was tried last.
 *
 * @param e - end, moved to the step's end
 * @returns nothing
 * @source derived: plain assignment
 */
export function acceptEnd(e: End): void {
  e.sensor_degC = e.nextSensor_degC;
  e.integral = e.nextIntegral;
  e.supplied_J_m2 = e.nextSupplied_J_m2;
  e.lost_J_m2 = e.nextLost_J_m2;
}

/**
 * Forgets the stages of a step that came to nothing.
 *
 * @param e - end, changed
 * @returns nothing
 * @source derived: a stage that is not a number must not reach the next try
 */
export function clearEnd(e: End): void {
  e.kSensor.fill(0);
  e.kIntegral.fill(0);
}
