import { tableTemperature_degC } from '../stack/enthalpy-table.ts';
import { type Cells, ENTHALPY, HEAT, K, LINEAR, START, STRIDE, TABLE } from './cells.ts';
import type { End } from './end.ts';
import { rodasp } from './rodas.ts';

const { d2, d3 } = rodasp;

/**
 * Temperature of an unknown inside the step tried last.
 *
 * @param cells - unknowns with that step
 * @param index - which [1], 0 the upper plate, count - 1 the lower
 * @param share - where in the step [1], 0 to 1
 * @returns temperature [degC]
 * @source third-order interpolation of RODASP, see `rodas.ts`
 * @verified MARCH-05 interpolation inside a step
 */
export function temperatureInside({ numbers, tables }: Cells, index: number, share: number): number {
  const j = (index + 1) * STRIDE;
  const start = numbers[j + START] as number;
  const linear = inside(start, numbers[j + LINEAR] as number, numbers, j + K, share);
  const table = numbers[j + TABLE] as number;
  if (table < 0) return linear;
  const enthalpy = (numbers[j + ENTHALPY] as number) + (numbers[j + HEAT] as number) * (linear - start);
  return tableTemperature_degC(tables, table, enthalpy);
}

/** Cubic through start and end of a step, bent by its stages, which stand in `k` from `at` on. */
function inside(start: number, end: number, k: Float64Array, at: number, share: number): number {
  const rest = 1 - share;
  let bow = 0;
  for (let j = 0; j < d2.length; j += 1) bow += ((d2[j] as number) + share * (d3[j] as number)) * (k[at + j] as number);
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
  return inside(end.sensor_degC, end.nextSensor_degC, end.kSensor, 0, share);
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
  return inside(end.integral, end.nextIntegral, end.kIntegral, 0, share);
}
