import { inRange } from '../in-range.ts';
import type { BeltPath, Tangent } from './path.ts';
import type { PathPulley } from './path-input.ts';

/**
 * The neutral line as a polygon for drawing: starts where the belt leaves pulley 0, ends where it reaches it and
 * goes round it; the last point joins the first.
 *
 * A chord of angle a lies r*(1 - cos(a/2)) inside its arc; each arc is cut into equal chords that keep to the limit.
 *
 * @param path - a path from `beltPath` [m]
 * @param pulleys - the same pulleys, in the same order [m]
 * @param maxChordError_m - largest distance of a chord from its arc [m], 1e-6 to 1
 * @returns points in travel order [m]
 * @throws not-finite, out-of-range
 * @validity the arcs are replaced by chords: shorter than the path by design
 * @source derived: sagitta of a circular arc
 * @verified T2 polyline of G
 */
export function pathPolyline(
  path: BeltPath,
  pulleys: readonly PathPulley[],
  maxChordError_m: number,
): (readonly [x: number, y: number])[] {
  inRange(maxChordError_m, 'maxChordError_m', { min: 1e-6, max: 1, unit: 'm' });
  const count = path.tangents.length;
  inRange(pulleys.length, 'pulleys', { min: count, max: count, unit: '1' });
  return path.tangents.flatMap((span, i) => {
    const next = (i + 1) % count;
    const arc = arcPoints(path, pulleys[next] as PathPulley, next, span.to, maxChordError_m);
    return [span.from, span.to, ...arc];
  });
}

/** Points strictly between the touch points of one pulley. */
function arcPoints(
  path: BeltPath,
  pulley: PathPulley,
  index: number,
  start: Tangent['to'],
  maxChordError_m: number,
): [number, number][] {
  const wrap = path.wraps_rad[index] as number;
  const radius = path.neutralRadii_m[index] as number;
  const widest = 2 * Math.acos(Math.max(0, 1 - maxChordError_m / radius));
  const chords = Math.max(1, Math.ceil(wrap / widest));
  const step = ((pulley.turn === 'left' ? 1 : -1) * wrap) / chords;
  const startAngle = Math.atan2(start[1] - pulley.y_m, start[0] - pulley.x_m);
  return Array.from({ length: chords - 1 }, (_, k) => {
    const angle = startAngle + step * (k + 1);
    return [pulley.x_m + radius * Math.cos(angle), pulley.y_m + radius * Math.sin(angle)];
  });
}
