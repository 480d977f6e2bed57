import { turnAngle } from './turn-angle.ts';

/** What the kernel fills in, one element a pulley; span i runs from pulley i to the next. */
export interface PathKernelOut {
  /** Free span from each pulley to the next [m]; NaN where no tangent exists. */
  readonly spans_m: Float64Array;
  /** Wrap at each pulley [rad]: also the derivative of the length by that neutral radius [1]. */
  readonly wraps_rad: Float64Array;
  /** Unit vector of travel along each span [1]. */
  readonly headingX: Float64Array;
  readonly headingY: Float64Array;
  /** Derivative of the length by each pulley's centre [1]: heading in minus heading out. */
  readonly dLength_dX: Float64Array;
  readonly dLength_dY: Float64Array;
}

const twoPi = 2 * Math.PI;

// A pulley that just touches a straight belt may come out a rounding error below zero, which reads as a full turn.
const almostFullTurn = twoPi - 1e-9;

/**
 * Makes the arrays that `pathKernel` fills, for reuse over many evaluations.
 *
 * @param count - number of pulleys [1], 2 or more
 * @returns empty result arrays [m, rad, 1]
 * @source derived: plain allocation
 * @verified T2 A two equal
 */
export function pathKernelOut(count: number): PathKernelOut {
  return {
    spans_m: new Float64Array(count),
    wraps_rad: new Float64Array(count),
    headingX: new Float64Array(count),
    headingY: new Float64Array(count),
    dLength_dX: new Float64Array(count),
    dLength_dY: new Float64Array(count),
  };
}

/**
 * Length of a closed belt round circular pulleys, with its derivatives, in one pass over spans and one over arcs, without allocating.
 *
 * L = sum(l_i) + sum(r_i * w_i), l_i = sqrt(D_i^2 - (q_i - q_{i+1})^2); q = signed neutral radius, D = centre
 * distance, w = wrap. The heading of a span is its centre line turned by asin((q_i - q_{i+1})/D).
 * dL/dr_i = w_i; dL/d(centre_i) = heading in - heading out.
 *
 * @param xs - centres, in travel order [m]
 * @param ys - centres, in travel order [m]
 * @param signedRadii_m - neutral radii [m], positive where the belt turns counter-clockwise, never 0
 * @param out - arrays of the same length, overwritten [m, rad, 1]
 * @returns length of the neutral line [m]; NaN when two neighbours have no common tangent
 * @validity checks nothing: a missed pulley reads as a wrap near a full turn; see `beltPath`
 * @source derived: common tangents of two circles
 * @verified T2 A two equal, T2 B open, T2 G live-roller loop
 */
export function pathKernel(
  xs: Float64Array,
  ys: Float64Array,
  signedRadii_m: Float64Array,
  out: PathKernelOut,
): number {
  return laySpans(xs, ys, signedRadii_m, out) + layArcs(signedRadii_m, out);
}

/** Spans and headings; gives the sum of spans. Kept apart from the arcs so that the divisions overlap. */
function laySpans(xs: Float64Array, ys: Float64Array, signedRadii_m: Float64Array, out: PathKernelOut): number {
  const { spans_m, headingX, headingY } = out;
  const count = xs.length;
  let span = count - 1;
  let x = xs[span] as number;
  let y = ys[span] as number;
  let radius = signedRadii_m[span] as number;
  let sum_m = 0;
  for (let i = 0; i < count; i++) {
    const nextX = xs[i] as number;
    const nextY = ys[i] as number;
    const nextRadius = signedRadii_m[i] as number;
    const dx = nextX - x;
    const dy = nextY - y;
    const drop = radius - nextRadius;
    const square = dx * dx + dy * dy;
    const free = Math.sqrt(square - drop * drop);
    const inverse = 1 / square;
    headingX[span] = (dx * free - dy * drop) * inverse;
    headingY[span] = (dx * drop + dy * free) * inverse;
    spans_m[span] = free;
    sum_m += free;
    span = i;
    x = nextX;
    y = nextY;
    radius = nextRadius;
  }
  return sum_m;
}

/** Wraps and derivatives from the headings; gives the sum of arcs. */
function layArcs(signedRadii_m: Float64Array, out: PathKernelOut): number {
  const { wraps_rad, headingX, headingY, dLength_dX, dLength_dY } = out;
  const count = headingX.length;
  let inX = headingX[count - 1] as number;
  let inY = headingY[count - 1] as number;
  let sum_m = 0;
  for (let i = 0; i < count; i++) {
    const outX = headingX[i] as number;
    const outY = headingY[i] as number;
    const radius = signedRadii_m[i] as number;
    const cross = inX * outY - inY * outX;
    const angle = turnAngle(radius < 0 ? -cross : cross, inX * outX + inY * outY);
    const wrap = angle > almostFullTurn ? 0 : angle;
    wraps_rad[i] = wrap;
    dLength_dX[i] = inX - outX;
    dLength_dY[i] = inY - outY;
    sum_m += wrap * (radius < 0 ? -radius : radius);
    inX = outX;
    inY = outY;
  }
  return sum_m;
}
