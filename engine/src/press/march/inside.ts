import { tableTemperature_degC } from '../stack/enthalpy-table.ts';
import { type Cells, record } from './cells.ts';
import { type End, endField } from './end.ts';
import { rodasp } from './rodas.ts';

const { START, K, LINEAR, TABLE, ENTHALPY, HEAT, STRIDE } = record;
const [D20, D21, D22, D23] = rodasp.d2 as unknown as Four;
const [D30, D31, D32, D33, D34] = rodasp.d3 as unknown as Five;
const { SENSOR, INTEGRAL, NEXT_SENSOR, NEXT_INTEGRAL, K_SENSOR, K_INTEGRAL } = endField;

type Four = readonly [number, number, number, number];
type Five = readonly [number, number, number, number, number];

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
  const k0 = k[at] as number;
  const k1 = k[at + 1] as number;
  const k2 = k[at + 2] as number;
  const k3 = k[at + 3] as number;
  const k4 = k[at + 4] as number;
  const second = D20 * k0 + D21 * k1 + (D22 * k2 + D23 * k3);
  const third = D30 * k0 + D31 * k1 + (D32 * k2 + D33 * k3) + D34 * k4;
  const rest = 1 - share;
  return start * rest + share * (end + rest * (second + share * third));
}

/**
 * What a sensor shows inside the step tried last.
 *
 * @param end - end with that step
 * @param share - where in the step [1], 0 to 1
 * @returns temperature shown [degC]
 * @source third-order interpolation of RODASP, see `rodas.ts`
 */
export function sensorInside({ numbers }: End, share: number): number {
  return inside(numbers[SENSOR] as number, numbers[NEXT_SENSOR] as number, numbers, K_SENSOR, share);
}

/**
 * Integral part of a controller inside the step tried last.
 *
 * @param end - end with that step
 * @param share - where in the step [1], 0 to 1
 * @returns integral part [1]
 * @source third-order interpolation of RODASP, see `rodas.ts`
 */
export function integralInside({ numbers }: End, share: number): number {
  return inside(numbers[INTEGRAL] as number, numbers[NEXT_INTEGRAL] as number, numbers, K_INTEGRAL, share);
}
