import { type Cells, record } from './cells.ts';
import { middleOf } from './factor.ts';

const { FORWARD, INVERSE, BACK, RATE, STRIDE } = record;

/**
 * Solves the matrix of the step in place for a right-hand side, and on from there: capacity over gamma h times the
 * solution stands behind it as the right-hand side of the next. All in one function, for an engine that has to ask again
 * where its array lies in every other.
 *
 * @param cells - unknowns with the factors of a step, changed
 * @param first - field of the right-hand side, and of the solution [1]
 * @param last - field of the last solution wanted [1]; the one behind it is written over
 * @returns nothing
 * @source derived: elimination from both ends, substitution from the middle
 * @verified MARCH-01 order in time
 */
export function solveCells({ numbers, count }: Cells, first: number, last: number): void {
  const middle = middleOf(count);
  const end = count * STRIDE;
  for (let own = first; own <= last; own += 1) {
    let above = numbers[STRIDE + own] as number;
    let below = numbers[end + own] as number;
    let j = STRIDE + STRIDE;
    for (let l = end - STRIDE; l > middle; l -= STRIDE) {
      above = (numbers[j + own] as number) + (numbers[j + FORWARD] as number) * above;
      below = (numbers[l + own] as number) + (numbers[l + FORWARD] as number) * below;
      numbers[j + own] = above;
      numbers[l + own] = below;
      j += STRIDE;
    }
    // Of an even number of rows there is one more above the middle than below.
    if (j < middle) {
      above = (numbers[j + own] as number) + (numbers[j + FORWARD] as number) * above;
      numbers[j + own] = above;
    }
    const fromBoth = (numbers[middle + FORWARD] as number) * above + (numbers[middle + BACK] as number) * below;
    const solved = ((numbers[middle + own] as number) + fromBoth) * (numbers[middle + INVERSE] as number);
    numbers[middle + own] = solved;
    numbers[middle + own + 1] = (numbers[middle + RATE] as number) * solved;
    above = solved;
    below = solved;
    j = middle - STRIDE;
    for (let l = middle + STRIDE; l <= end; l += STRIDE) {
      above = (numbers[j + own] as number) * (numbers[j + INVERSE] as number) + (numbers[j + BACK] as number) * above;
      below = (numbers[l + own] as number) * (numbers[l + INVERSE] as number) + (numbers[l + BACK] as number) * below;
      numbers[j + own] = above;
      numbers[l + own] = below;
      numbers[j + own + 1] = (numbers[j + RATE] as number) * above;
      numbers[l + own + 1] = (numbers[l + RATE] as number) * below;
      j -= STRIDE;
    }
    if (j > 0) {
      above = (numbers[j + own] as number) * (numbers[j + INVERSE] as number) + (numbers[j + BACK] as number) * above;
      numbers[j + own] = above;
      numbers[j + own + 1] = (numbers[j + RATE] as number) * above;
    }
  }
}
