import { record } from './cells.ts';
import { chain, chainRow, EXTRA, lastLink } from './chain.ts';
import { type End, endField } from './end.ts';

const { gamma } = chain;
const { START, V, X } = record;
const { SET, SET_RATE, GAIN, INTEGRAL_RATE, TRACKING, PER_LAG, SHARE, SENSOR, INTEGRAL, SUPPLIED, LOST } = endField;
const { NEXT_SET, NEXT_SENSOR, NEXT_INTEGRAL, NEXT_SUPPLIED, NEXT_LOST, START_SHARE } = endField;
const { INVERSE, SENSOR_INVERSE, INTEGRAL_INVERSE, INTEGRAL_BY_SENSOR, SENSOR_SLOPE, INTEGRAL_SLOPE } = endField;
const { SHARE_SLOPE, SENSOR_CONSTANT, INTEGRAL_CONSTANT, SHARE_CONSTANT, MOVED, OFF } = endField;
const { V_SENSOR, V_INTEGRAL, V_SHARE, SENSOR_BOW, SENSOR_TWIST, INTEGRAL_BOW, INTEGRAL_TWIST } = endField;

/** Output that the controller asks for at the step's start, before it is limited to 0..1. */
function startOutput(e: Float64Array): number {
  return ((e[SET] as number) - (e[SENSOR] as number)) * (e[GAIN] as number) + (e[INTEGRAL] as number);
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
  const inverse = 1 / (step_s * gamma);
  const tracking = following ? 0 : (e[TRACKING] as number);
  const gain = e[GAIN] as number;
  const perLag = e[PER_LAG] as number;
  const sensorInverse = 1 / (inverse + perLag);
  const integralBySensor = gain * tracking - (e[INTEGRAL_RATE] as number);
  const integralInverse = 1 / (inverse + tracking);
  const sensorSlope = sensorInverse * perLag;
  const integralSlope = integralBySensor * sensorSlope * integralInverse;
  e[INVERSE] = inverse;
  e[SENSOR_INVERSE] = sensorInverse;
  e[SENSOR_SLOPE] = sensorSlope;
  e[INTEGRAL_BY_SENSOR] = integralBySensor;
  e[INTEGRAL_INVERSE] = integralInverse;
  e[INTEGRAL_SLOPE] = integralSlope;
  e[SHARE_SLOPE] = following ? integralSlope - gain * sensorSlope : 0;
  e[START_SHARE] = following ? startOutput(e) : (e[SHARE] as number);
  e[MOVED] = step_s * gamma * (e[SET_RATE] as number);
  e[NEXT_SET] = (e[SET] as number) + step_s * (e[SET_RATE] as number);
  e[NEXT_SUPPLIED] = e[SUPPLIED] as number;
  e[NEXT_LOST] = e[LOST] as number;
  // Where nothing bends there is no extra solution, and what the last step left in its place must not count.
  e[V_SENSOR + EXTRA] = 0;
  e[V_INTEGRAL + EXTRA] = 0;
  e[V_SHARE + EXTRA] = 0;
}

/**
 * Constants of the folding for one solution of the chain.
 * tau*dS/dt = T - S; dI/dt = (set - S)/(band*Ti) + (u - raw)/Tt.
 *
 * @param end - end, changed
 * @param link - which solution [1]
 * @param plate_degC - the plate's temperature at the step's start T [degC]
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function foldEnd(end: End, link: number, plate_degC: number): void {
  const { numbers: e, following } = end;
  const perLag = e[PER_LAG] as number;
  const off = perLag * (e[OFF + link] as number);
  const rate = link === 0 ? perLag * (plate_degC - (e[SENSOR] as number)) : carried(e, V_SENSOR, link) + off;
  const sensor = rate * (e[SENSOR_INVERSE] as number);
  const error = link === EXTRA ? sensor : sensor - (e[MOVED] as number);
  const integral = e[INTEGRAL_RATE] === 0 ? 0 : integralConstant(end, link, error);
  e[SENSOR_CONSTANT] = sensor;
  e[INTEGRAL_CONSTANT] = integral;
  e[SHARE_CONSTANT] = following ? integral - (e[GAIN] as number) * error : 0;
}

/** What comes over from the solution before; nothing to the extra one, which has none before it. */
function carried(e: Float64Array, v: number, link: number): number {
  if (link === EXTRA) return 0;
  return (
    ((e[v + link - 1] as number) + (chain.carry[link] as number) * (e[v + EXTRA] as number)) * (e[INVERSE] as number)
  );
}

function integralConstant({ numbers: e, following }: End, link: number, error_K: number): number {
  let rate =
    link === 0
      ? ((e[SET] as number) - (e[SENSOR] as number)) * (e[INTEGRAL_RATE] as number)
      : carried(e, V_INTEGRAL, link);
  if (link === 0 && !following) rate += ((e[SHARE] as number) - startOutput(e)) * (e[TRACKING] as number);
  return (rate + (e[INTEGRAL_BY_SENSOR] as number) * error_K) * (e[INTEGRAL_INVERSE] as number);
}

/**
 * Sensor, integral and share of a solution, now that the plate's is known.
 *
 * @param end - end, changed
 * @param link - which solution [1]
 * @param plate - the plate's [K]
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function unfoldEnd({ numbers: e }: End, link: number, plate: number): void {
  e[V_SENSOR + link] = (e[SENSOR_CONSTANT] as number) + (e[SENSOR_SLOPE] as number) * plate;
  e[V_INTEGRAL + link] = (e[INTEGRAL_CONSTANT] as number) + (e[INTEGRAL_SLOPE] as number) * plate;
  e[V_SHARE + link] = (e[SHARE_CONSTANT] as number) + (e[SHARE_SLOPE] as number) * plate;
}

/**
 * Sensor and integral all along the chain, of an end whose share of full power does not depend on them.
 *
 * @param end - end, changed
 * @param plates - records with the plate's solutions [K]
 * @param j - where the plate's record begins [1]
 * @param bent - whether the extra solution counts
 * @returns nothing
 * @source derived: elimination of sensor and integral from the step's equations
 */
export function settleEnd(end: End, plates: Float64Array, j: number, bent: boolean): void {
  if (bent || end.numbers[INTEGRAL_RATE] !== 0) {
    settleLink(end, plates, j, 0, V);
    if (bent) settleLink(end, plates, j, EXTRA, X);
    for (let link = 1; link <= lastLink; link += 1) settleLink(end, plates, j, link, V + link);
    return;
  }
  const { numbers: e } = end;
  const inverse = e[SENSOR_INVERSE] as number;
  const slope = e[SENSOR_SLOPE] as number;
  const carry = inverse * (e[INVERSE] as number);
  const missing_K = (plates[j + START] as number) - (e[SENSOR] as number);
  let sensor = inverse * (e[PER_LAG] as number) * missing_K + slope * (plates[j + V] as number);
  e[V_SENSOR] = sensor;
  for (let link = 1; link <= lastLink; link += 1) {
    sensor = carry * sensor + slope * (plates[j + V + link] as number);
    e[V_SENSOR + link] = sensor;
  }
}

function settleLink(end: End, plates: Float64Array, j: number, link: number, own: number): void {
  foldEnd(end, link, plates[j + START] as number);
  unfoldEnd(end, link, plates[j + own] as number);
}

/**
 * Solutions of an end, weighted.
 *
 * @param weights - weights [1]
 * @param row - where they begin [1]
 * @param e - numbers of an end [units of their solutions]
 * @param v - where the solutions begin in them [1]
 * @returns sum [unit of the solutions]
 * @source derived: plain sum
 */
export function weighted(weights: Float64Array, row: number, e: Float64Array, v: number): number {
  return (
    (weights[row] as number) * (e[v] as number) +
    (weights[row + 1] as number) * (e[v + 1] as number) +
    ((weights[row + 2] as number) * (e[v + 2] as number) + (weights[row + 3] as number) * (e[v + 3] as number)) +
    ((weights[row + 4] as number) * (e[v + 4] as number) + (weights[row + 5] as number) * (e[v + 5] as number))
  );
}

/**
 * Share of full power at a stage.
 *
 * @param end - end with the earlier solutions
 * @param stage - number of the stage [1], 1 to 5
 * @returns share [1]
 * @source Rosenbrock method, see `chain.ts`
 */
export function shareAtStage({ numbers: e, following }: End, stage: number): number {
  const start = e[START_SHARE] as number;
  return following ? start + weighted(chain.stage, stage * chainRow, e, V_SHARE) : start;
}

/** How little the integral's error counts while the output is limited and the integral only follows it. */
const limitedWeight = 0.02;

/**
 * Sensor and integral at the step's end, and the estimate of their error. The integral counts as the error of the sensor
 * that would ask for the same output.
 *
 * @param end - end, changed
 * @returns error of the step [K]
 * @source Rosenbrock method, see `chain.ts`
 */
export function finishEnd({ numbers: e, following }: End): number {
  e[NEXT_SENSOR] = (e[SENSOR] as number) + weighted(chain.next, 0, e, V_SENSOR);
  e[SENSOR_BOW] = weighted(chain.d2, 0, e, V_SENSOR);
  e[SENSOR_TWIST] = weighted(chain.d3, 0, e, V_SENSOR);
  const sensor_K = Math.abs(weighted(chain.error, 0, e, V_SENSOR));
  if (e[INTEGRAL_RATE] === 0) return sensor_K;
  e[INTEGRAL_BOW] = weighted(chain.d2, 0, e, V_INTEGRAL);
  e[INTEGRAL_TWIST] = weighted(chain.d3, 0, e, V_INTEGRAL);
  e[NEXT_INTEGRAL] = (e[INTEGRAL] as number) + weighted(chain.next, 0, e, V_INTEGRAL);
  const integral = weighted(chain.error, 0, e, V_INTEGRAL);
  const weight = following ? 1 : limitedWeight;
  return Math.max(sensor_K, (weight * Math.abs(integral)) / (e[GAIN] as number));
}
