import type { BeltPath } from '@loopwright/engine/loop';

/** Room that a splice needs on a straight span besides the press: 0.5 m clear on each side. Common practice, no source. */
const clearEachSide_m = 0.5;

/** The span under the carrying rollers: the highest of the long ones, whatever stands at its ends. */
export function carryingSpan({ spans_m, tangents }: Pick<BeltPath, 'spans_m' | 'tangents'>): number {
  const long_m = Math.max(...spans_m) / 2;
  let best = 0;
  let bestHeight_m = Number.NEGATIVE_INFINITY;
  tangents.forEach(({ from, to }, i) => {
    const height_m = (from[1] + to[1]) / 2;
    if ((spans_m[i] ?? 0) < long_m || height_m <= bestHeight_m) return;
    best = i;
    bestHeight_m = height_m;
  });
  return best;
}

/**
 * Where to splice: the longest free span, off the carrying strand when one there has room for the press
 * and half a metre on each side, for the rollers are in the way on the carrying strand.
 */
export function spliceSpan(spans_m: ArrayLike<number>, carrying: number, platenLength_m: number): number {
  const needed = platenLength_m + 2 * clearEachSide_m;
  const free = longest(spans_m, (i) => i !== carrying);
  return free >= 0 && (spans_m[free] ?? 0) >= needed ? free : longest(spans_m, () => true);
}

function longest(spans_m: ArrayLike<number>, allowed: (index: number) => boolean): number {
  let best = -1;
  for (let i = 0; i < spans_m.length; i += 1) {
    if (allowed(i) && (best < 0 || (spans_m[i] ?? 0) > (spans_m[best] ?? 0))) best = i;
  }
  return best;
}

/** True when the take-up stands on the tight side: between the carrying strand and the drive, in travel order. */
export function takeUpOnTightSide(drive: number, takeUp: number, carrying: number, count: number): boolean {
  const after = (index: number): number => (index - carrying - 1 + count) % count;
  return after(takeUp) < after(drive);
}
