/** Axis-parallel boxes, one element a box [m]. */
export interface Boxes {
  readonly minX: readonly number[];
  readonly maxX: readonly number[];
  readonly minY: readonly number[];
  readonly maxY: readonly number[];
}

/**
 * Visits every pair of boxes that touch, each once, by a sweep along the axis on which they are the more spread out.
 *
 * @param boxes - axis-parallel boxes [m]
 * @param visit - called with the two indices, the smaller first [1]
 * @returns nothing
 * @validity about n*log(n) for pulleys along a conveyor; never worse than all pairs of boxes once
 * @source derived: sweep over sorted intervals
 */
export function sweepPairs(boxes: Boxes, visit: (first: number, second: number) => void): void {
  const alongX = crowding(boxes.minX, boxes.maxX) <= crowding(boxes.minY, boxes.maxY);
  const { minX, maxX, minY, maxY } = boxes;
  if (alongX) sweep(minX, maxX, minY, maxY, visit);
  else sweep(minY, maxY, minX, maxX, visit);
}

/** Share of the axis that the boxes cover on average, summed: how many others each box meets on it. */
function crowding(low: readonly number[], high: readonly number[]): number {
  let covered = 0;
  let start = Number.POSITIVE_INFINITY;
  let end = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < low.length; i++) {
    const from = low[i] as number;
    const to = high[i] as number;
    covered += to - from;
    if (from < start) start = from;
    if (to > end) end = to;
  }
  return end > start ? covered / (end - start) : low.length;
}

function sweep(
  low: readonly number[],
  high: readonly number[],
  sideLow: readonly number[],
  sideHigh: readonly number[],
  visit: (first: number, second: number) => void,
): void {
  const order = low.map((_, i) => i).sort((a, b) => (low[a] as number) - (low[b] as number));
  const sorted = (values: readonly number[]) => order.map((box) => values[box] as number);
  const [lows, sideLows, sideHighs] = [sorted(low), sorted(sideLow), sorted(sideHigh)];
  for (let i = 0; i < order.length; i++) {
    const box = order[i] as number;
    const end = high[box] as number;
    const sideStart = sideLow[box] as number;
    const sideEnd = sideHigh[box] as number;
    for (let k = i + 1; k < order.length && (lows[k] as number) <= end; k++) {
      if ((sideLows[k] as number) > sideEnd || (sideHighs[k] as number) < sideStart) continue;
      const other = order[k] as number;
      if (box < other) visit(box, other);
      else visit(other, box);
    }
  }
}
