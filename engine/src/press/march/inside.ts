import { type Cells, record } from './cells.ts';
import { type End, endField } from './end.ts';
import { rodasp } from './rodas.ts';
import { lookUpTemperatures } from './sweeps.ts';

const { START, K, LINEAR, STAGE, STRIDE } = record;
const [D20, D21, D22, D23] = rodasp.d2 as unknown as Four;
const [D30, D31, D32, D33, D34] = rodasp.d3 as unknown as Five;
const { SENSOR, INTEGRAL, NEXT_SENSOR, NEXT_INTEGRAL, K_SENSOR, K_INTEGRAL } = endField;

type Four = readonly [number, number, number, number];
type Five = readonly [number, number, number, number, number];

/**
 * Temperatures of all unknowns inside the step tried last, written where the stages' temperatures stand.
 *
 * @param cells - unknowns with that step, changed
 * @param share - where in the step [1], 0 to 1
 * @returns nothing; `temperatureInside` reads them
 * @source third-order interpolation of RODASP, see `rodas.ts`
 * @verified MARCH-05 interpolation inside a step
 */
export function lookInside(cells: Cells, share: number): void {
  const { numbers, count } = cells;
  const bow = share * (1 - share);
  const w0 = bow * (D20 + share * D30);
  const w1 = bow * (D21 + share * D31);
  const w2 = bow * (D22 + share * D32);
  const w3 = bow * (D23 + share * D33);
  const w4 = bow * share * D34;
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) {
    const start = numbers[j + START] as number;
    const early = w0 * (numbers[j + K] as number) + w1 * (numbers[j + K + 1] as number);
    const late = w2 * (numbers[j + K + 2] as number) + w3 * (numbers[j + K + 3] as number);
    const straight = start + share * ((numbers[j + LINEAR] as number) - start);
    numbers[j + STAGE] = straight + (early + late) + w4 * (numbers[j + K + 4] as number);
  }
  lookUpTemperatures(cells, STAGE, STAGE);
}

/**
 * Temperature of an unknown where `lookInside` last looked.
 *
 * @param cells - unknowns
 * @param index - which [1], 0 the upper plate, count - 1 the lower
 * @returns temperature [degC]
 * @source derived: plain look-up
 */
export function temperatureInside({ numbers }: Cells, index: number): number {
  return numbers[(index + 1) * STRIDE + STAGE] as number;
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
