import { type Cells, record, type TabledRun } from './cells.ts';
import { chain, EXTRA } from './chain.ts';
import { type End, endField } from './end.ts';
import { lookUp } from './finish.ts';
import type { Slab } from './slab.ts';

const { START, V, LINEAR, X, STAGE, STRIDE } = record;
const { d2, d3 } = chain;
const { SENSOR, INTEGRAL, NEXT_SENSOR, NEXT_INTEGRAL } = endField;
const { SENSOR_BOW, SENSOR_TWIST, INTEGRAL_BOW, INTEGRAL_TWIST } = endField;

/** Weight of a solution where the curve inside the step bows off the straight line from start to end. */
function bow(link: number, share: number): number {
  return share * (1 - share) * ((d2[link] as number) + share * (d3[link] as number));
}

/**
 * Temperatures of neighbouring unknowns inside the step tried last, written where the stages' temperatures stand.
 *
 * @param slab - slab with that step, changed
 * @param share - where in the step [1], 0 to 1
 * @param first - first of the unknowns [1], 0 the upper plate
 * @param last - last of them [1]
 * @returns nothing; `temperatureInside` reads them
 * @source third-order interpolation of RODASP, see `rodas.ts`
 * @verified MARCH-05 interpolation inside a step
 */
export function lookInside({ cells, bent }: Slab, share: number, first: number, last: number): void {
  const { numbers, tables, tabled } = cells;
  const from = (first + 1) * STRIDE;
  const to = (last + 2) * STRIDE;
  const w0 = bow(0, share);
  const w1 = bow(1, share);
  const w2 = bow(2, share);
  const w3 = bow(3, share);
  const w4 = bow(4, share);
  const wx = bent ? bow(EXTRA, share) : 0;
  for (let j = from; j < to; j += STRIDE) {
    const start = numbers[j + START] as number;
    const straight = start + share * ((numbers[j + LINEAR] as number) - start);
    const early = w0 * (numbers[j + V] as number) + w1 * (numbers[j + V + 1] as number);
    const late = w2 * (numbers[j + V + 2] as number) + w3 * (numbers[j + V + 3] as number);
    const rest = w4 * (numbers[j + V + 4] as number) + wx * (numbers[j + X] as number);
    numbers[j + STAGE] = straight + (early + late) + rest;
  }
  for (let r = 0; r < tabled.length; r += 1) {
    const run = tabled[r] as TabledRun;
    lookUp(numbers, tables, run.table, Math.max(from, run.from), Math.min(to, run.to), STAGE, STAGE);
  }
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

/** Cubic through start and end of a step; most ask for one of these alone. */
function inside(start: number, end: number, bow: number, twist: number, share: number): number {
  if (share === 1) return end;
  if (share === 0) return start;
  const rest = 1 - share;
  return start * rest + share * (end + rest * (bow + share * twist));
}

/**
 * What a sensor shows inside the step tried last.
 *
 * @param end - end with that step
 * @param share - where in the step [1], 0 to 1
 * @returns temperature shown [degC]
 * @source third-order interpolation of RODASP, see `rodas.ts`
 */
export function sensorInside({ numbers: e }: End, share: number): number {
  return inside(
    e[SENSOR] as number,
    e[NEXT_SENSOR] as number,
    e[SENSOR_BOW] as number,
    e[SENSOR_TWIST] as number,
    share,
  );
}

/**
 * Integral part of a controller inside the step tried last.
 *
 * @param end - end with that step
 * @param share - where in the step [1], 0 to 1
 * @returns integral part [1]
 * @source third-order interpolation of RODASP, see `rodas.ts`
 */
export function integralInside({ numbers: e }: End, share: number): number {
  return inside(
    e[INTEGRAL] as number,
    e[NEXT_INTEGRAL] as number,
    e[INTEGRAL_BOW] as number,
    e[INTEGRAL_TWIST] as number,
    share,
  );
}
