import { type Cells, record } from './cells.ts';

const { START, V, UPPER, FLUX, HALF, CONTACT, SLOPE, STRIDE } = record;
const reference_degC = 25;

/**
 * Resistance of half a cell over the one at 25 degC. 1/(1 + s*(T - 25)).
 *
 * @param slope_1_K - slope of the conductivity s [1/K]
 * @param temperature_degC - temperature T [degC]
 * @returns ratio [1]
 * @source derived: straight line of the conductivity
 */
export function halfRatio(slope_1_K: number, temperature_degC: number): number {
  return 1 / (1 + slope_1_K * (temperature_degC - reference_degC));
}

/**
 * Flux from a record to the next where conductivity changes with temperature.
 *
 * @param numbers - records [degC, m2*K/W]
 * @param j - where the upper record begins [1]
 * @param field - where its temperature stands in a record [1]
 * @returns flux [W/m2]
 * @source derived: half cells and contact in series
 */
export function slopedFlux(numbers: Float64Array, j: number, field: number): number {
  const upper = numbers[j + field] as number;
  const lower = numbers[j + STRIDE + field] as number;
  const upperHalf = (numbers[j + HALF] as number) * halfRatio(numbers[j + SLOPE] as number, upper);
  const lowerHalf = (numbers[j + STRIDE + HALF] as number) * halfRatio(numbers[j + STRIDE + SLOPE] as number, lower);
  return (upper - lower) / (upperHalf + (numbers[j + CONTACT] as number) + lowerHalf);
}

/**
 * Right-hand side of a step's first solution: what flows between neighbours at the start.
 *
 * @param cells - unknowns, changed
 * @returns nothing
 * @source cell-centred finite volumes
 */
export function startFluxes({ numbers, count, sloped }: Cells): void {
  const last = count * STRIDE;
  let above = numbers[STRIDE + START] as number;
  let inflow = 0;
  for (let j = STRIDE; j < last; j += STRIDE) {
    const below = numbers[j + STRIDE + START] as number;
    const outflow = sloped ? slopedFlux(numbers, j, START) : (numbers[j + UPPER] as number) * (above - below);
    numbers[j + FLUX] = outflow;
    numbers[j + V] = inflow - outflow;
    inflow = outflow;
    above = below;
  }
  numbers[last + V] = inflow;
}
