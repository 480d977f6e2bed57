import { type Cells, record } from './cells.ts';
import { endField } from './end.ts';
import { heaterField } from './heaters.ts';
import type { Slab } from './slab.ts';
import { solveCells } from './solve.ts';

const { RATE, FROM_TOP, FROM_BOTTOM, STRIDE } = record;
const { SHARE_SLOPE } = endField;
const { TOP_BY_BOTTOM, BOTTOM_BY_TOP } = heaterField;

/**
 * Responses of all unknowns to a unit of heat at either plate, for the correction of `couplePlates`.
 *
 * @param cells - unknowns with the factors of a step, changed
 * @returns nothing
 * @source derived: two more right-hand sides
 */
export function respondToPlates(cells: Cells): void {
  respond(cells, FROM_TOP, STRIDE);
  respond(cells, FROM_BOTTOM, cells.count * STRIDE);
}

function respond(cells: Cells, own: number, plate: number): void {
  const { numbers, count } = cells;
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) numbers[j + own] = 0;
  numbers[plate + own] = 1;
  solveCells(cells, own, own);
}

/**
 * The lead's drop makes each plate's row depend on the other's controller: a correction of rank two of a solution, and of
 * what it carries on to the next.
 *
 * @param slab - slab with the solution without it, changed
 * @param own - field of the solution [1]
 * @returns nothing
 * @source Sherman-Morrison-Woodbury formula
 */
export function couplePlates(slab: Slab, own: number): void {
  const { numbers, count } = slab.cells;
  const upper = STRIDE;
  const lower = count * STRIDE;
  const down = (slab.heaters[TOP_BY_BOTTOM] as number) * (slab.bottom.numbers[SHARE_SLOPE] as number);
  const up = (slab.heaters[BOTTOM_BY_TOP] as number) * (slab.top.numbers[SHARE_SLOPE] as number);
  const a00 = 1 - up * (numbers[upper + FROM_BOTTOM] as number);
  const a01 = -down * (numbers[upper + FROM_TOP] as number);
  const a10 = -up * (numbers[lower + FROM_BOTTOM] as number);
  const a11 = 1 - down * (numbers[lower + FROM_TOP] as number);
  const first = numbers[upper + own] as number;
  const last = numbers[lower + own] as number;
  const determinant = a00 * a11 - a01 * a10;
  const topShare = (down * (a00 * last - a10 * first)) / determinant;
  const bottomShare = (up * (first * a11 - a01 * last)) / determinant;
  for (let j = upper; j <= lower; j += STRIDE) {
    const correction =
      topShare * (numbers[j + FROM_TOP] as number) + bottomShare * (numbers[j + FROM_BOTTOM] as number);
    const solution = (numbers[j + own] as number) + correction;
    numbers[j + own] = solution;
    numbers[j + own + 1] = (numbers[j + RATE] as number) * solution;
  }
}
