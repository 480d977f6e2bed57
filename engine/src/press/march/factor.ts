import { tableHeat_J_kgK } from '../stack/enthalpy-table.ts';
import { type Cells, record, type TabledRun } from './cells.ts';
import { halfRatio } from './flux.ts';

const { START, RATE, CAPACITY, UPPER, LOWER, FORWARD, INVERSE, BACK, ENTHALPY, HEAT, MASS, STRIDE } = record;
const { HALF, CONTACT, SLOPE } = record;

/**
 * Slopes of the fluxes at the start of a step, where conductivity changes with temperature.
 * q = (T_i - T_j)/(r_i/(1 + s_i*(T_i - 25)) + R + r_j/(1 + s_j*(T_j - 25))).
 *
 * @param cells - unknowns, changed
 * @returns nothing
 * @source derived: derivative of the flux between two half cells
 */
export function slopeFluxes({ numbers, count }: Cells): void {
  for (let j = STRIDE; j < count * STRIDE; j += STRIDE) {
    const upper = numbers[j + START] as number;
    const lower = numbers[j + STRIDE + START] as number;
    const upperSlope = numbers[j + SLOPE] as number;
    const lowerSlope = numbers[j + STRIDE + SLOPE] as number;
    const upperRatio = halfRatio(upperSlope, upper);
    const lowerRatio = halfRatio(lowerSlope, lower);
    const upperHalf = (numbers[j + HALF] as number) * upperRatio;
    const lowerHalf = (numbers[j + STRIDE + HALF] as number) * lowerRatio;
    const conductance = 1 / (upperHalf + (numbers[j + CONTACT] as number) + lowerHalf);
    const flux = conductance * (upper - lower);
    numbers[j + UPPER] = conductance + flux * conductance * upperHalf * upperRatio * upperSlope;
    numbers[j + LOWER] = conductance - flux * conductance * lowerHalf * lowerRatio * lowerSlope;
  }
}

/**
 * Freezes the capacities at the step's start.
 *
 * @param cells - unknowns, changed
 * @returns nothing
 * @source derived: slope of the enthalpy
 */
export function freezeCapacities({ numbers, tables, tabled }: Cells): void {
  for (let r = 0; r < tabled.length; r += 1) {
    const { from, to, table } = tabled[r] as TabledRun;
    for (let j = from; j < to; j += STRIDE) {
      const heat = tableHeat_J_kgK(tables, table, numbers[j + ENTHALPY] as number);
      numbers[j + HEAT] = heat;
      numbers[j + CAPACITY] = heat * (numbers[j + MASS] as number);
    }
  }
}

/**
 * Factors the matrix of the step, capacity over gamma h on the diagonal and what flows to the neighbours beside it: from
 * both ends towards the middle row, so that a processor works on two chains at a time.
 *
 * @param cells - unknowns, changed
 * @param inverse_1_s - one over gamma h [1/s]
 * @param atTop - added to the upper plate's diagonal [W/(m2*K)]
 * @param atBottom - added to the lower plate's diagonal [W/(m2*K)]
 * @returns nothing
 * @source derived: Gauss elimination without pivoting, for a dominant diagonal
 * @verified MARCH-01 order in time
 */
export function factorCells({ numbers, count }: Cells, inverse_1_s: number, atTop: number, atBottom: number): void {
  const middle = middleOf(count);
  let fromAbove = 0;
  let inverseAbove = 0;
  let backAbove = 0;
  let own = atTop;
  let fromBelow = 0;
  let inverseBelow = 0;
  let backBelow = 0;
  let mirrored = atBottom;
  let l = count * STRIDE;
  for (let j = STRIDE; j < middle; j += STRIDE) {
    const upper = numbers[j + UPPER] as number;
    const rate = (numbers[j + CAPACITY] as number) * inverse_1_s;
    numbers[j + RATE] = rate;
    numbers[j + FORWARD] = fromAbove * inverseAbove;
    inverseAbove = 1 / (rate + own + upper - fromAbove * backAbove);
    numbers[j + INVERSE] = inverseAbove;
    own = numbers[j + LOWER] as number;
    backAbove = own * inverseAbove;
    numbers[j + BACK] = backAbove;
    fromAbove = upper;
    if (l <= middle) continue;
    const lower = numbers[l - STRIDE + LOWER] as number;
    const rateBelow = (numbers[l + CAPACITY] as number) * inverse_1_s;
    numbers[l + RATE] = rateBelow;
    numbers[l + FORWARD] = fromBelow * inverseBelow;
    inverseBelow = 1 / (rateBelow + mirrored + lower - fromBelow * backBelow);
    numbers[l + INVERSE] = inverseBelow;
    mirrored = numbers[l - STRIDE + UPPER] as number;
    backBelow = mirrored * inverseBelow;
    numbers[l + BACK] = backBelow;
    fromBelow = lower;
    l -= STRIDE;
  }
  const rate = (numbers[middle + CAPACITY] as number) * inverse_1_s;
  numbers[middle + RATE] = rate;
  numbers[middle + INVERSE] = 1 / (rate + own + mirrored - fromAbove * backAbove - fromBelow * backBelow);
  numbers[middle + FORWARD] = fromAbove * inverseAbove;
  numbers[middle + BACK] = fromBelow * inverseBelow;
}

/**
 * Where both eliminations meet: the rows above are as many as those below, or one more.
 *
 * @param count - number of unknowns [1], >= 3
 * @returns begin of the record [1]
 * @source derived: half the rows
 */
export function middleOf(count: number): number {
  return ((count >> 1) + 1) * STRIDE;
}
