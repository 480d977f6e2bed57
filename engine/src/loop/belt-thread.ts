import { neutralRadiusBackRow, neutralRadiusRunningRow } from './path-formulas.ts';
import type { BeltFace, BeltSection, PathInput, PathPulley } from './path-input.ts';
import { type PathKernelOut, pathKernel, pathKernelOut } from './path-kernel.ts';

/** Where each span leaves its pulley and reaches the next [m]. */
export interface SpanEnds {
  readonly fromX: Float64Array;
  readonly fromY: Float64Array;
  readonly toX: Float64Array;
  readonly toY: Float64Array;
}

/** A layout as arrays, and what the kernel made of it for one assignment of faces to pulleys. */
export interface BeltThread {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly surfaceRadii_m: Float64Array;
  /** +1 where the belt turns left (counter-clockwise), -1 where it turns right. */
  readonly sides: Int8Array;
  readonly faces: readonly BeltFace[];
  /** Neutral radius times side. */
  readonly signedRadii_m: Float64Array;
  readonly length_m: number;
  readonly kernel: PathKernelOut;
  readonly spans: SpanEnds;
  /** Revolutions the belt makes on its way round; NaN where a tangent is missing. */
  readonly turning: number;
}

/**
 * Lays a belt round its pulleys with given faces; judges nothing.
 *
 * r = R + y where the running face touches, R + t - y where the back does; R = surface radius, t = thickness,
 * y = neutral line from the running face. Turning = sum(side_i * w_i)/(2*pi).
 *
 * @param input - layout [m]
 * @param faces - the face that touches each pulley, same order
 * @returns arrays, length and turning number [m, rad, 1]
 * @validity numbers already checked
 * @source derived: section geometry of a bent belt
 * @verified T2 H with t 2.0, y 0.6
 */
export function threadBelt(input: PathInput, faces: readonly BeltFace[]): BeltThread {
  const { pulleys, belt } = input;
  const count = pulleys.length;
  const xs = new Float64Array(count);
  const ys = new Float64Array(count);
  const surfaceRadii_m = new Float64Array(count);
  const sides = new Int8Array(count);
  const signedRadii_m = new Float64Array(count);
  pulleys.forEach((pulley, i) => {
    const side = sideOf(pulley);
    xs[i] = pulley.x_m;
    ys[i] = pulley.y_m;
    surfaceRadii_m[i] = pulley.surfaceRadius_m;
    sides[i] = side;
    signedRadii_m[i] = side * neutralRadius(pulley.surfaceRadius_m, belt, faces[i] ?? 'running');
  });
  const kernel = pathKernelOut(count);
  const length_m = pathKernel(xs, ys, signedRadii_m, kernel);
  const spans = spanEnds(xs, ys, signedRadii_m, kernel);
  const turning = turningOf(sides, kernel);
  return { xs, ys, surfaceRadii_m, sides, faces, signedRadii_m, length_m, kernel, spans, turning };
}

/**
 * Faces of a loop that turns in a given sense with its running face inside.
 *
 * @param pulleys - pulleys in travel order
 * @param sense - the loop's sense [1], +1 counter-clockwise or -1 clockwise
 * @returns the face at each pulley
 * @source derived: the face inside the loop touches the pulleys that turn as the loop does
 */
export function facesOfLoop(pulleys: readonly PathPulley[], sense: number): BeltFace[] {
  return pulleys.map((pulley) => (sideOf(pulley) === sense ? 'running' : 'back'));
}

function sideOf(pulley: PathPulley): number {
  return pulley.turn === 'left' ? 1 : -1;
}

function neutralRadius(surfaceRadius_m: number, belt: BeltSection, face: BeltFace): number {
  const y = belt.neutralLineFromRunningFace_m;
  if (face === 'running') return neutralRadiusRunningRow.compute({ R: surfaceRadius_m, y });
  return neutralRadiusBackRow.compute({ R: surfaceRadius_m, t: belt.thickness_m, y });
}

/** Touch points c + q*(t_y, -t_x), q = signed neutral radius, t = heading: the radius there is square to the belt. */
function spanEnds(xs: Float64Array, ys: Float64Array, signedRadii_m: Float64Array, kernel: PathKernelOut): SpanEnds {
  const count = xs.length;
  const ends = {
    fromX: new Float64Array(count),
    fromY: new Float64Array(count),
    toX: new Float64Array(count),
    toY: new Float64Array(count),
  };
  for (let i = 0; i < count; i++) {
    const next = i + 1 === count ? 0 : i + 1;
    const headingX = kernel.headingX[i] as number;
    const headingY = kernel.headingY[i] as number;
    const radius = signedRadii_m[i] as number;
    const nextRadius = signedRadii_m[next] as number;
    ends.fromX[i] = (xs[i] as number) + radius * headingY;
    ends.fromY[i] = (ys[i] as number) - radius * headingX;
    ends.toX[i] = (xs[next] as number) + nextRadius * headingY;
    ends.toY[i] = (ys[next] as number) - nextRadius * headingX;
  }
  return ends;
}

function turningOf(sides: Int8Array, kernel: PathKernelOut): number {
  const angle = kernel.wraps_rad.reduce((sum, wrap, i) => sum + wrap * (sides[i] as number), 0);
  // 0 + turns a negative zero into a plain one.
  return 0 + Math.round(angle / (2 * Math.PI));
}
