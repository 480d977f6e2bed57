import { turnAngle } from './turn-angle.ts';

/** What one pass round the pulleys fills in, one element a pulley; span i runs from pulley i to the next. */
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
 * Length of a closed belt round circular pulleys, with its derivatives, in one pass and without allocating.
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
  const { spans_m, wraps_rad, headingX, headingY, dLength_dX, dLength_dY } = out;
  const count = xs.length;
  let length_m = 0;
  let x = xs[0] as number;
  let y = ys[0] as number;
  let radius = signedRadii_m[0] as number;
  let inX = 0;
  let inY = 0;
  for (let i = 0; i < count; i++) {
    const next = i + 1 === count ? 0 : i + 1;
    const nextX = xs[next] as number;
    const nextY = ys[next] as number;
    const nextRadius = signedRadii_m[next] as number;
    const dx = nextX - x;
    const dy = nextY - y;
    const drop = radius - nextRadius;
    const square = dx * dx + dy * dy;
    const span = Math.sqrt(square - drop * drop);
    const inverse = 1 / square;
    const outX = (dx * span - dy * drop) * inverse;
    const outY = (dx * drop + dy * span) * inverse;
    spans_m[i] = span;
    headingX[i] = outX;
    headingY[i] = outY;
    length_m += span;
    if (i > 0) length_m += turn(i, radius, inX, inY, outX, outY, wraps_rad, dLength_dX, dLength_dY);
    inX = outX;
    inY = outY;
    x = nextX;
    y = nextY;
    radius = nextRadius;
  }
  const outX = headingX[0] as number;
  const outY = headingY[0] as number;
  return length_m + turn(0, radius, inX, inY, outX, outY, wraps_rad, dLength_dX, dLength_dY);
}

/** Enters wrap and derivatives of one pulley and gives the length of its arc. Plain numbers, so that it is inlined. */
function turn(
  i: number,
  radius: number,
  inX: number,
  inY: number,
  outX: number,
  outY: number,
  wraps_rad: Float64Array,
  dLength_dX: Float64Array,
  dLength_dY: Float64Array,
): number {
  const cross = inX * outY - inY * outX;
  const wrap = turnAngle(radius < 0 ? -cross : cross, inX * outX + inY * outY);
  const kept = wrap > almostFullTurn ? 0 : wrap;
  wraps_rad[i] = kept;
  dLength_dX[i] = inX - outX;
  dLength_dY[i] = inY - outY;
  return kept * (radius < 0 ? -radius : radius);
}
