import { lookUpTemperatures } from './conduction.ts';
import type { End } from './end.ts';
import { rodasp } from './rodas.ts';
import type { Slab } from './slab.ts';

const { d2, d3 } = rodasp;

/**
 * Temperatures of all unknowns inside the step tried last; needs `prepareInside`.
 *
 * @param slab - slab with that step
 * @param share - where in the step [1], 0 to 1
 * @param into - temperatures [degC], overwritten
 * @returns nothing
 * @source third-order interpolation of RODASP, see `rodas.ts`
 * @verified MARCH-05 interpolation inside a step
 */
export function temperaturesInside(slab: Slab, share: number, into: Float64Array): void {
  const { temperature, nextLinear, inside2, inside3, count } = slab;
  const rest = 1 - share;
  for (let i = 0; i < count; i += 1) {
    const bow = (inside2[i] as number) + share * (inside3[i] as number);
    into[i] = (temperature[i] as number) * rest + share * ((nextLinear[i] as number) + rest * bow);
  }
  lookUpTemperatures(slab, into, into);
}

function inside(start: number, end: number, k: Float64Array, share: number): number {
  const rest = 1 - share;
  let bow = 0;
  for (let j = 0; j < d2.length; j += 1) bow += ((d2[j] as number) + share * (d3[j] as number)) * (k[j] as number);
  return start * rest + share * (end + rest * bow);
}

/**
 * What a sensor shows inside the step tried last.
 *
 * @param end - end with that step
 * @param share - where in the step [1], 0 to 1
 * @returns temperature shown [degC]
 * @source third-order interpolation of RODASP, see `rodas.ts`
 */
export function sensorInside(end: End, share: number): number {
  return inside(end.sensor_degC, end.nextSensor_degC, end.kSensor, share);
}

/**
 * Integral part of a controller inside the step tried last.
 *
 * @param end - end with that step
 * @param share - where in the step [1], 0 to 1
 * @returns integral part [1]
 * @source third-order interpolation of RODASP, see `rodas.ts`
 */
export function integralInside(end: End, share: number): number {
  return inside(end.integral, end.nextIntegral, end.kIntegral, share);
}
