import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import type { BeltPath } from './path.ts';
import { lengthPerDisplacement } from './path-sensitivity.ts';

/** How well one pulley was surveyed; standard uncertainties. */
export interface PulleyUncertainty {
  /** Of either coordinate of the centre. */
  readonly position_m: number;
  readonly radius_m?: number;
}

export interface PathUncertainty {
  readonly standardUncertainty_m: number;
  /** What each pulley adds to the variance, and by which derivatives; the largest is worth measuring again. */
  readonly pulleys: readonly {
    readonly dLength_dx: number;
    readonly dLength_dy: number;
    readonly uncertainty_m: number;
  }[];
}

const limits = { min: 0, max: 10, unit: 'm' };

/**
 * Standard uncertainty of a surveyed path, to first order, from independent errors of coordinates and radii.
 *
 * u^2 = sum((dL/dx_i u_i)^2 + (dL/dy_i u_i)^2 + (w_i u_r,i)^2).
 *
 * @param path - a path from `beltPath` [m]
 * @param pulleys - uncertainties in the same order [m], each 0 to 10
 * @returns standard uncertainty of the length and each pulley's share [m]
 * @throws not-finite, out-of-range, wrong-count
 * @validity errors small against the spans and independent of each other
 * @source law of propagation of uncertainty, JCGM 100:2008 (GUM), 5.1.2 (from memory)
 * @verified T8 survey uncertainty of two pulleys
 */
export function pathUncertainty(path: BeltPath, pulleys: readonly PulleyUncertainty[]): PathUncertainty {
  const count = path.wraps_rad.length;
  if (pulleys.length !== count) {
    throw new Refusal('wrong-count', 'pulleys', { value: pulleys.length, min: count, max: count, unit: '1' });
  }
  const shares = pulleys.map((pulley, i) => ofPulley(path, pulley, i));
  return {
    standardUncertainty_m: Math.hypot(...shares.map((share) => share.uncertainty_m)),
    pulleys: shares,
  };
}

function ofPulley(path: BeltPath, { position_m, radius_m = 0 }: PulleyUncertainty, i: number) {
  inRange(position_m, `pulleys[${i}].position_m`, limits);
  inRange(radius_m, `pulleys[${i}].radius_m`, limits);
  const dLength_dx = lengthPerDisplacement(path, i, [1, 0]);
  const dLength_dy = lengthPerDisplacement(path, i, [0, 1]);
  const dLength_dr = path.dLength_dRadius[i] ?? 0;
  const uncertainty_m = Math.hypot(dLength_dx * position_m, dLength_dy * position_m, dLength_dr * radius_m);
  return { dLength_dx, dLength_dy, uncertainty_m };
}
