import { freshTensionRow, marksStretchedRow, strandTensionRow } from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import type { Belt, Line } from '@loopwright/plant';
import type { Loop } from '../loop/loop.ts';
import { computed, example, given, type Quantity } from '../quantity.ts';
import type { CardMarks } from './card.ts';

/** A line drawn with a pen is read to this on a tape: common practice, no source. */
const readingError_m = 0.0005;

/** Marks on the slack, flat belt: how far apart, how far apart once tight, and the tension that means. */
export function cardMarks(belt: Belt, line: Line, loop: Loop | undefined): CardMarks {
  const before = example('length', marksApart_m(loop));
  const after = work(marksStretchedRow, { m: before.value, e: line.setElongation });
  const error = readingError_m / before.value;
  return {
    before,
    after: computed('shortLength', after, readingError_m),
    elongation: given('percent', line.setElongation, line, 'setElongation', error),
    ...strandTension(belt, line, error),
  };
}

/** Two metres where the span allows, else one. */
function marksApart_m(loop: Loop | undefined): number {
  const longest = loop ? Math.max(...loop.path.spans_m) : Number.POSITIVE_INFINITY;
  return longest >= 2.5 ? 2 : 1;
}

function strandTension(belt: Belt, line: Line, error: number): { strandTension: Quantity; freshTension: Quantity } {
  const k1 = belt.k1_N_mm_pct;
  const b = line.width_m;
  const relaxed = work(strandTensionRow, { k1, e: line.setElongation, b });
  const fresh = work(freshTensionRow, { c: belt.freshFactor, F: relaxed.value });
  const perElongation = relaxed.value / line.setElongation;
  return {
    strandTension: computed('force', relaxed, perElongation * error),
    freshTension: computed('force', fresh, belt.freshFactor * perElongation * error),
  };
}
