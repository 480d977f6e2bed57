import { Refusal } from '../refusal.ts';
import type { BeltThread } from './belt-thread.ts';
import { type PathPulley, pulleyName } from './path-input.ts';
import { type Boxes, sweepPairs } from './sweep-pairs.ts';

// Pulleys and belt may touch; rounding of coordinates given in millimetres must not read as a collision.
const tolerance_m = 1e-9;

/** Two things that meet: pulleys, or spans (span i leaves pulley i). */
interface Meeting {
  readonly first: number;
  readonly second: number;
}

/** End points of the straight spans [m]. */
interface Spans {
  readonly fromX: Float64Array;
  readonly fromY: Float64Array;
  readonly toX: Float64Array;
  readonly toY: Float64Array;
}

/**
 * Lets a layout through in which no two pulleys overlap.
 *
 * Overlap: centre distance < R_i + R_j.
 *
 * @param thread - the belt laid round its pulleys [m]
 * @param pulleys - the same pulleys, for their names
 * @returns nothing
 * @throws pulleys-overlap
 * @source derived: two discs
 * @verified T2 overlapping pulleys
 */
export function checkOverlap(thread: BeltThread, pulleys: readonly PathPulley[]): void {
  const { xs, ys, surfaceRadii_m: radii } = thread;
  let found: Meeting | undefined;
  sweepPairs(discBoxes(thread), (first, second) => {
    const reach = (radii[first] as number) + (radii[second] as number) - tolerance_m;
    const dx = (xs[second] as number) - (xs[first] as number);
    const dy = (ys[second] as number) - (ys[first] as number);
    if (reach > 0 && dx * dx + dy * dy < reach * reach) found = earlier(found, { first, second });
  });
  if (!found) return;
  const { first, second } = found;
  throw new Refusal('pulleys-overlap', `pulleys[${second}]`, {
    pulley: pulleyName(pulleys, second),
    other: pulleyName(pulleys, first),
    value: Math.hypot((xs[second] as number) - (xs[first] as number), (ys[second] as number) - (ys[first] as number)),
    min: (radii[first] as number) + (radii[second] as number),
    unit: 'm',
  });
}

/**
 * Lets a belt through whose spans keep off all other pulleys and cross each other no more often than allowed.
 *
 * A span hits a pulley when it passes the centre closer than R. Neighbouring spans cross when the wrap between them
 * is over pi and both are longer than r*|tan(w/2)|.
 *
 * @param thread - the belt laid round its pulleys [m]
 * @param pulleys - the same pulleys, for their names
 * @param crossings - pairs of spans that may cross [1], 0 or 1
 * @returns how many pairs of spans cross [1]
 * @throws belt-hits-pulley, belt-crosses-itself
 * @source derived: distance of a point from a segment, crossing of two segments
 * @verified T2 two missed pulleys, T2 span through a pulley
 */
export function checkClearance(thread: BeltThread, pulleys: readonly PathPulley[], crossings: number): number {
  const count = pulleys.length;
  const spans = spansOf(thread);
  let hit: Meeting | undefined;
  let crossing: Meeting | undefined;
  let crossed = 0;
  sweepPairs(joined(discBoxes(thread), spanBoxes(spans)), (first, second) => {
    if (second < count) return;
    const span = second - count;
    if (first < count) {
      if (!isEnd(span, first, count) && spanHits(thread, spans, span, first))
        hit = earlier(hit, { first, second: span });
    } else if (spansCross(thread, spans, first - count, span)) {
      crossed++;
      crossing = earlier(crossing, { first: first - count, second: span });
    }
  });
  if (hit) throw hitRefusal(thread, pulleys, spans, hit);
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

/**
 * End points of every span: c + q*(t_y, -t_x) with signed neutral radius q and heading t.
 *
 * @param thread - the belt laid round its pulleys [m]
 * @returns touch points where spans leave a pulley and reach the next [m]
 * @source derived: the radius to a touch point is square to the belt
 * @verified T2 A two equal
 */
export function spansOf({ xs, ys, signedRadii_m, kernel }: BeltThread): Spans {
  const { headingX, headingY } = kernel;
  const next = (values: Float64Array, i: number) => values[i + 1 === values.length ? 0 : i + 1] as number;
  return {
    fromX: xs.map((x, i) => x + (signedRadii_m[i] as number) * (headingY[i] as number)),
    fromY: ys.map((y, i) => y - (signedRadii_m[i] as number) * (headingX[i] as number)),
    toX: xs.map((_, i) => next(xs, i) + next(signedRadii_m, i) * (headingY[i] as number)),
    toY: ys.map((_, i) => next(ys, i) - next(signedRadii_m, i) * (headingX[i] as number)),
  };
}

function earlier(found: Meeting | undefined, other: Meeting): Meeting {
  if (!found) return other;
  return other.first < found.first || (other.first === found.first && other.second < found.second) ? other : found;
}

function isEnd(span: number, pulley: number, count: number): boolean {
  return pulley === span || pulley === (span + 1) % count;
}

function spanDistance(thread: BeltThread, spans: Spans, span: number, pulley: number): number {
  const fromX = spans.fromX[span] as number;
  const fromY = spans.fromY[span] as number;
  const dx = (spans.toX[span] as number) - fromX;
  const dy = (spans.toY[span] as number) - fromY;
  const x = (thread.xs[pulley] as number) - fromX;
  const y = (thread.ys[pulley] as number) - fromY;
  const along = Math.min(1, Math.max(0, (x * dx + y * dy) / (dx * dx + dy * dy)));
  const awayX = x - along * dx;
  const awayY = y - along * dy;
  return Math.sqrt(awayX * awayX + awayY * awayY);
}

function spanHits(thread: BeltThread, spans: Spans, span: number, pulley: number): boolean {
  return spanDistance(thread, spans, span, pulley) < (thread.surfaceRadii_m[pulley] as number) - tolerance_m;
}

function spansCross(thread: BeltThread, spans: Spans, first: number, second: number): boolean {
  const count = thread.xs.length;
  const afterFirst = second === first + 1;
  const afterSecond = first === 0 && second === count - 1;
  if (afterFirst || afterSecond) {
    return (afterFirst && crossesAtPulley(thread, second)) || (afterSecond && crossesAtPulley(thread, first));
  }
  return parts(spans, first, second) && parts(spans, second, first);
}

/** Whether the line through one span has the ends of the other on its two sides. */
function parts({ fromX, fromY, toX, toY }: Spans, line: number, other: number): boolean {
  const x = fromX[line] as number;
  const y = fromY[line] as number;
  const dx = (toX[line] as number) - x;
  const dy = (toY[line] as number) - y;
  const from = dx * ((fromY[other] as number) - y) - dy * ((fromX[other] as number) - x);
  const to = dx * ((toY[other] as number) - y) - dy * ((toX[other] as number) - x);
  return from * to < 0;
}

function hitRefusal(thread: BeltThread, pulleys: readonly PathPulley[], spans: Spans, hit: Meeting): Refusal {
  const { first: pulley, second: span } = hit;
  return new Refusal('belt-hits-pulley', `pulleys[${pulley}]`, {
    pulley: pulleyName(pulleys, pulley),
    other: pulleyName(pulleys, span),
    otherTo: pulleyName(pulleys, (span + 1) % pulleys.length),
    value: spanDistance(thread, spans, span, pulley),
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

function discBoxes({ xs, ys, surfaceRadii_m: radii }: BeltThread): Boxes {
  return {
    minX: xs.map((x, i) => x - (radii[i] as number)),
    maxX: xs.map((x, i) => x + (radii[i] as number)),
    minY: ys.map((y, i) => y - (radii[i] as number)),
    maxY: ys.map((y, i) => y + (radii[i] as number)),
  };
}

function spanBoxes({ fromX, fromY, toX, toY }: Spans): Boxes {
  return {
    minX: fromX.map((x, i) => Math.min(x, toX[i] as number)),
    maxX: fromX.map((x, i) => Math.max(x, toX[i] as number)),
    minY: fromY.map((y, i) => Math.min(y, toY[i] as number)),
    maxY: fromY.map((y, i) => Math.max(y, toY[i] as number)),
  };
}

function joined(first: Boxes, second: Boxes): Boxes {
  const join = (a: Float64Array, b: Float64Array) => {
    const all = new Float64Array(a.length + b.length);
    all.set(a);
    all.set(b, a.length);
    return all;
  };
  return {
    minX: join(first.minX, second.minX),
    maxX: join(first.maxX, second.maxX),
    minY: join(first.minY, second.minY),
    maxY: join(first.maxY, second.maxY),
  };
}
