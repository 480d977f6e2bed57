import { indexInRange, inRange } from '../in-range.ts';
import { bracketedRoot } from '../numbers/bracketed-root.ts';
import { Refusal } from '../refusal.ts';
import { beltPath } from './path.ts';
import { checkPathInput, type PathInput } from './path-input.ts';

/** A pulley on a slide. Travel 0 is where the pulley's coordinates stand. */
export interface TakeUp {
  /** Index of the pulley that moves. */
  readonly pulley: number;
  /** Direction in which travel counts, any length but zero. */
  readonly direction: readonly [dx: number, dy: number];
}

/** Length of the path at a travel of the take-up [m]; throws where no belt can run. */
export type LengthAtTravel = (travel_m: number) => number;

/**
 * Length of the path as a function of the take-up's travel: the pulley displaced along its direction, all else as it is.
 *
 * @param path - pulleys in travel order and belt
 * @param takeUp - pulley index and direction of travel
 * @returns function from travel [m] to length [m]
 * @throws too-few-pulleys, not-finite, out-of-range, no-direction
 * @source derived: displaced coordinates
 * @verified T4.2 path at reference
 */
export function pathAtTravel(path: PathInput, takeUp: TakeUp): LengthAtTravel {
  checkPathInput(path);
  const index = indexInRange(takeUp.pulley, 'takeUp.pulley', path.pulleys.length);
  const [ex, ey] = unitVector(takeUp.direction, 'takeUp.direction');
  return (travel_m) =>
    beltPath({
      ...path,
      pulleys: path.pulleys.map((pulley, i) =>
        i === index ? { ...pulley, x_m: pulley.x_m + ex * travel_m, y_m: pulley.y_m + ey * travel_m } : pulley,
      ),
    }).length_m;
}

/**
 * A direction scaled to length 1.
 *
 * @param direction - two components of any length [1], not both zero
 * @param path - where it stands in the input
 * @returns unit vector [1]
 * @throws not-finite, out-of-range, no-direction
 * @source derived: plain scaling
 */
export function unitVector(direction: readonly [number, number], path: string): readonly [number, number] {
  const limits = { min: -1e9, max: 1e9, unit: '1' };
  const [dx, dy] = direction;
  inRange(dx, `${path}[0]`, limits);
  inRange(dy, `${path}[1]`, limits);
  const size = Math.hypot(dx, dy);
  if (size < 1e-9) throw new Refusal('no-direction', path, { dx, dy });
  return [dx / size, dy / size];
}

const lengthTolerance_m = 1e-12;
const maxSteps = 60;
const smallestStep_m = 1e-8;
const stepsChecked = 4;

/**
 * Travel of the take-up at which the path has a wanted length, or null where the pulley cannot get there.
 *
 * Walks from a travel that works towards the wanted length (never less than half of what is missing, because
 * |dL/dx| <= 2), brackets it and closes in by Brent's method. Null when the geometry gives out on the way.
 *
 * @param lengthAt - path length as a function of travel [m]
 * @param wanted_m - wanted length of the path [m]
 * @param start_m - travel at which the path exists [m]
 * @returns travel [m], negative when it lies on the far side of 0; null where not reachable
 * @validity the length grows with travel on the way
 * @source derived
 * @verified T4.2 slack take-up
 */
export function travelForLength(lengthAt: LengthAtTravel, wanted_m: number, start_m: number): number | null {
  const missing = (travel_m: number): number | null => {
    const length_m = lengthOrNull(lengthAt, travel_m);
    return length_m === null ? null : wanted_m - length_m;
  };
  const bracket = bracketFrom(missing, start_m);
  if (bracket === null) return null;
  if (bracket[0] === bracket[1]) return bracket[0];
  const root = bracketedRoot((x) => missing(x) ?? Number.NaN, bracket, { tolerance: lengthTolerance_m });
  if (root.status !== 'ok' || !reachable(missing, start_m, root.value)) return null;
  return root.value;
}

/**
 * Length of the path at a travel, or null where no belt can run there.
 *
 * @param lengthAt - path length as a function of travel [m]
 * @param travel_m - travel of the take-up [m]
 * @returns length [m] or null
 * @source derived
 * @verified T4.2 endless length
 */
export function lengthOrNull(lengthAt: LengthAtTravel, travel_m: number): number | null {
  try {
    return lengthAt(travel_m);
  } catch (error) {
    if (error instanceof Refusal) return null;
    throw error;
  }
}

function bracketFrom(missing: (x: number) => number | null, start_m: number): readonly [number, number] | null {
  let near = start_m;
  let nearMissing = missing(near);
  if (nearMissing === null) return null;
  let slope = 2;
  let step = nearMissing / slope;
  for (let n = 0; n < maxSteps && Math.abs(nearMissing) > lengthTolerance_m; n += 1) {
    const far = near + step;
    const farMissing = missing(far);
    if (farMissing === null) {
      step /= 2;
      if (Math.abs(step) < smallestStep_m) return null;
      continue;
    }
    if (farMissing * nearMissing <= 0) return [near, far];
    slope = Math.min(2, Math.max(0.05, (nearMissing - farMissing) / (far - near)));
    near = far;
    nearMissing = farMissing;
    step = (1.02 * nearMissing) / slope + Math.sign(nearMissing) * 1e-9;
  }
  return Math.abs(nearMissing) <= lengthTolerance_m ? [near, near] : null;
}

/** A root beyond a stretch where no belt can run is another layout, not this take-up further along. */
function reachable(missing: (x: number) => number | null, start_m: number, end_m: number): boolean {
  for (let n = 1; n < stepsChecked; n += 1) {
    if (missing(start_m + ((end_m - start_m) * n) / stepsChecked) === null) return false;
  }
  return true;
}
