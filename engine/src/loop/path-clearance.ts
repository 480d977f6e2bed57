import { Refusal } from '../refusal.ts';
import type { BeltThread, SpanEnds } from './belt-thread.ts';
import { type PathPulley, pulleyName } from './path-input.ts';
import { type Boxes, sweepPairs } from './sweep-pairs.ts';

// Pulleys and belt may touch; rounding of coordinates given in millimetres must not read as a collision.
const tolerance_m = 1e-9;

/** Two things that meet: pulleys, or spans (span i leaves pulley i). */
interface Meeting {
  readonly first: number;
  readonly second: number;
}

/**
 * Lets a belt through whose pulleys do not overlap and whose spans keep off all other pulleys and cross each other no
 * more often than allowed. Overlap goes before a hit, a hit before a crossing, because the one explains the other.
 *
 * Pulleys overlap when their centres are closer than R_i + R_j. A span hits a pulley when it passes the centre closer
 * than R. Neighbouring spans cross when the wrap between them is over pi and both are longer than r*|tan(w/2)|.
 *
 * @param thread - the belt laid round its pulleys [m]
 * @param pulleys - the same pulleys, for their names
 * @param crossings - pairs of spans that may cross [1], 0 or 1
 * @returns how many pairs of spans cross [1]
 * @throws pulleys-overlap, belt-hits-pulley, belt-crosses-itself
 * @source derived: distances of points and segments, crossing of two segments
 * @verified T2 overlapping pulleys, T2 two missed pulleys, T2 span through a pulley
 */
export function checkClearance(thread: BeltThread, pulleys: readonly PathPulley[], crossings: number): number {
  const count = pulleys.length;
  let overlap: Meeting | undefined;
  let hit: Meeting | undefined;
  let crossing: Meeting | undefined;
  let crossed = 0;
  sweepPairs(boxesOf(thread), (first, second) => {
    const span = second - count;
    if (span < 0) {
      if (discsOverlap(thread, first, second)) overlap = earlier(overlap, { first, second });
    } else if (first < count) {
      if (spanHits(thread, span, first)) hit = earlier(hit, { first, second: span });
    } else if (spansCross(thread, first - count, span)) {
      crossed++;
      crossing = earlier(crossing, { first: first - count, second: span });
    }
  });
  if (overlap) throw overlapRefusal(thread, pulleys, overlap);
  if (hit) throw hitRefusal(thread, pulleys, hit);
  if (crossing && crossed > crossings) throw crossingRefusal(pulleys, crossing);
  return crossed;
}

/**
 * Whether the two spans at a pulley cross each other.
 *
 * w > pi and both spans longer than r*|tan(w/2)|.
 *
 * @param thread - the belt laid round its pulleys [m]
 * @param index - the pulley between the spans, counted from 0 [1]
 * @returns true when they cross
 * @source derived: the tangents at both ends of an arc w meet at r*|tan(w/2)| from it
 * @verified T2 C crossed
 */
export function crossesAtPulley(thread: BeltThread, index: number): boolean {
  const { spans_m, wraps_rad } = thread.kernel;
  const wrap = wraps_rad[index] as number;
  if (wrap <= Math.PI) return false;
  const meet_m = Math.abs((thread.signedRadii_m[index] as number) * Math.tan(wrap / 2));
  const before = spans_m[(index + spans_m.length - 1) % spans_m.length] as number;
  return before > meet_m && (spans_m[index] as number) > meet_m;
}

function earlier(found: Meeting | undefined, other: Meeting): Meeting {
  if (!found) return other;
  return other.first < found.first || (other.first === found.first && other.second < found.second) ? other : found;
}

function discsOverlap({ xs, ys, surfaceRadii_m }: BeltThread, first: number, second: number): boolean {
  const reach = (surfaceRadii_m[first] as number) + (surfaceRadii_m[second] as number) - tolerance_m;
  const dx = (xs[second] as number) - (xs[first] as number);
  const dy = (ys[second] as number) - (ys[first] as number);
  return reach > 0 && dx * dx + dy * dy < reach * reach;
}

function spanDistance({ xs, ys, spans }: BeltThread, span: number, pulley: number): number {
  const fromX = spans.fromX[span] as number;
  const fromY = spans.fromY[span] as number;
  const dx = (spans.toX[span] as number) - fromX;
  const dy = (spans.toY[span] as number) - fromY;
  const x = (xs[pulley] as number) - fromX;
  const y = (ys[pulley] as number) - fromY;
  const along = Math.min(1, Math.max(0, (x * dx + y * dy) / (dx * dx + dy * dy)));
  const awayX = x - along * dx;
  const awayY = y - along * dy;
  return Math.sqrt(awayX * awayX + awayY * awayY);
}

function spanHits(thread: BeltThread, span: number, pulley: number): boolean {
  const isEnd = pulley === span || pulley === (span + 1) % thread.xs.length;
  return !isEnd && spanDistance(thread, span, pulley) < (thread.surfaceRadii_m[pulley] as number) - tolerance_m;
}

function spansCross(thread: BeltThread, first: number, second: number): boolean {
  const count = thread.xs.length;
  const afterFirst = second === first + 1;
  const afterSecond = first === 0 && second === count - 1;
  if (afterFirst || afterSecond) {
    return (afterFirst && crossesAtPulley(thread, second)) || (afterSecond && crossesAtPulley(thread, first));
  }
  return parts(thread.spans, first, second) && parts(thread.spans, second, first);
}

/** Whether the line through one span has the ends of the other on its two sides. */
function parts({ fromX, fromY, toX, toY }: SpanEnds, line: number, other: number): boolean {
  const x = fromX[line] as number;
  const y = fromY[line] as number;
  const dx = (toX[line] as number) - x;
  const dy = (toY[line] as number) - y;
  const from = dx * ((fromY[other] as number) - y) - dy * ((fromX[other] as number) - x);
  const to = dx * ((toY[other] as number) - y) - dy * ((toX[other] as number) - x);
  return from * to < 0;
}

function overlapRefusal(thread: BeltThread, pulleys: readonly PathPulley[], { first, second }: Meeting): Refusal {
  const { xs, ys, surfaceRadii_m } = thread;
  return new Refusal('pulleys-overlap', `pulleys[${second}]`, {
    pulley: pulleyName(pulleys, second),
    other: pulleyName(pulleys, first),
    value: Math.hypot((xs[second] as number) - (xs[first] as number), (ys[second] as number) - (ys[first] as number)),
    min: (surfaceRadii_m[first] as number) + (surfaceRadii_m[second] as number),
    unit: 'm',
  });
}

function hitRefusal(thread: BeltThread, pulleys: readonly PathPulley[], hit: Meeting): Refusal {
  const { first: pulley, second: span } = hit;
  return new Refusal('belt-hits-pulley', `pulleys[${pulley}]`, {
    pulley: pulleyName(pulleys, pulley),
    other: pulleyName(pulleys, span),
    otherTo: pulleyName(pulleys, (span + 1) % pulleys.length),
    value: spanDistance(thread, span, pulley),
    min: thread.surfaceRadii_m[pulley] as number,
    unit: 'm',
  });
}

function crossingRefusal(pulleys: readonly PathPulley[], { first, second }: Meeting): Refusal {
  return new Refusal('belt-crosses-itself', `pulleys[${second}]`, {
    pulley: pulleyName(pulleys, second),
    other: pulleyName(pulleys, first),
  });
}

/** Boxes round the pulleys, then round the spans. */
function boxesOf({ xs, ys, surfaceRadii_m, spans }: BeltThread): Boxes {
  const boxes = { minX: [] as number[], maxX: [] as number[], minY: [] as number[], maxY: [] as number[] };
  const add = (fromX: number, fromY: number, toX: number, toY: number) => {
    boxes.minX.push(Math.min(fromX, toX));
    boxes.maxX.push(Math.max(fromX, toX));
    boxes.minY.push(Math.min(fromY, toY));
    boxes.maxY.push(Math.max(fromY, toY));
  };
  for (let i = 0; i < xs.length; i++) {
    const [x, y, radius] = [xs[i] as number, ys[i] as number, surfaceRadii_m[i] as number];
    add(x - radius, y - radius, x + radius, y + radius);
  }
  for (let i = 0; i < xs.length; i++) {
    add(spans.fromX[i] as number, spans.fromY[i] as number, spans.toX[i] as number, spans.toY[i] as number);
  }
  return boxes;
}
