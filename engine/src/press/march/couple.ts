import { type Cells, record } from './cells.ts';
import { endField } from './end.ts';
import { heaterField } from './heaters.ts';
import type { Slab } from './slab.ts';

const { K, FORWARD, INVERSE, BACK, FROM_TOP, FROM_BOTTOM, STRIDE } = record;
const { SHARE_SLOPE } = endField;
const { TOP_BY_BOTTOM, BOTTOM_BY_TOP } = heaterField;
/**
 * Responses of all unknowns to a unit of heat at either plate, for the correction of `couplePlates`.
 *
 * @param cells - unknowns with the factors of a step, changed
 * @returns nothing
 * @source derived: two more right-hand sides
 */
export function respondToPlates({ numbers, count }: Cells): void {
  const last = count * STRIDE;
  let high = 1;
  for (let j = STRIDE; j <= last; j += STRIDE) {
    if (j > STRIDE) high *= numbers[j + FORWARD] as number;
    numbers[j + FROM_TOP] = high;
  }
  let fromTop = 0;
  let fromBottom = 0;
  for (let j = last; j > 0; j -= STRIDE) {
    const inverse = numbers[j + INVERSE] as number;
    const back = numbers[j + BACK] as number;
    fromTop = (numbers[j + FROM_TOP] as number) * inverse + back * fromTop;
    fromBottom = (j === last ? inverse : 0) + back * fromBottom;
    numbers[j + FROM_TOP] = fromTop;
    numbers[j + FROM_BOTTOM] = fromBottom;
  }
}

/**
 * The lead's drop makes each plate's row depend on the other's controller: a correction of rank two of a stage.
 *
 * @param slab - slab with the stage as solved without it, changed
 * @param stage - number of the stage [1], 0 to 5
 * @returns nothing
 * @source Sherman-Morrison-Woodbury formula
 */
export function couplePlates(slab: Slab, stage: number): void {
  const { numbers, count } = slab.cells;
  const upper = STRIDE;
  const lower = count * STRIDE;
  const down = (slab.heaters[TOP_BY_BOTTOM] as number) * (slab.bottom.numbers[SHARE_SLOPE] as number);
  const up = (slab.heaters[BOTTOM_BY_TOP] as number) * (slab.top.numbers[SHARE_SLOPE] as number);
  const a00 = 1 - up * (numbers[upper + FROM_BOTTOM] as number);
  const a01 = -down * (numbers[upper + FROM_TOP] as number);
  const a10 = -up * (numbers[lower + FROM_BOTTOM] as number);
  const a11 = 1 - down * (numbers[lower + FROM_TOP] as number);
  const first = numbers[upper + K + stage] as number;
  const last = numbers[lower + K + stage] as number;
  const determinant = a00 * a11 - a01 * a10;
  const topShare = (down * (a00 * last - a10 * first)) / determinant;
  const bottomShare = (up * (first * a11 - a01 * last)) / determinant;
  for (let j = upper; j <= lower; j += STRIDE) {
    const correction =
      topShare * (numbers[j + FROM_TOP] as number) + bottomShare * (numbers[j + FROM_BOTTOM] as number);
    numbers[j + K + stage] = (numbers[j + K + stage] as number) + correction;
  }
}
