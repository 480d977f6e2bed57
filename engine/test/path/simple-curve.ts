import type { PathPulley } from '../../src/loop/path-input.ts';

type Point = readonly [x: number, y: number];

// Chords lie inside their disc, where no other part of an acceptable belt comes: coarse ones serve.
const arcStep = Math.PI / 36;
const touch_m = 1e-9;

/**
 * Referee for layouts of a belt without thickness, by arctangents and brute force: draws the belt as a polygon
 * and tests every pair of edges, every span against every disc, and every pair of discs.
 */
export function simpleCurve(pulleys: readonly PathPulley[]): boolean {
  const arcs = drawn(pulleys);
  if (!arcs || discsOverlap(pulleys)) return false;
  const spans = arcs.map((arc, i) => [arc[arc.length - 1], arcs[(i + 1) % arcs.length]?.[0]] as const);
  return !edgesCross(arcs.flat()) && !spansCut(pulleys, spans as (readonly [Point, Point])[]);
}

/** Points along the arc at each pulley; the spans join the last of one to the first of the next. */
function drawn(pulleys: readonly PathPulley[]): Point[][] | undefined {
  const n = pulleys.length;
  const at = (i: number) => pulleys[(i + n) % n] as PathPulley;
  const side = (i: number) => (at(i).turn === 'left' ? 1 : -1);
  const headings = pulleys.map((one, i) => {
    const [dx, dy] = [at(i + 1).x_m - one.x_m, at(i + 1).y_m - one.y_m];
    const drop = side(i) * one.surfaceRadius_m - side(i + 1) * at(i + 1).surfaceRadius_m;
    return Math.atan2(dy, dx) + Math.asin(drop / Math.hypot(dx, dy));
  });
  if (headings.some(Number.isNaN)) return undefined;
  return pulleys.map((one, i) => {
    const from = headings[(i + n - 1) % n] as number;
    const turn = side(i) * ((headings[i] as number) - from);
    const wrap = turn - 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
    const steps = Math.max(1, Math.ceil(wrap / arcStep));
    return Array.from({ length: steps + 1 }, (_, k): Point => {
      const heading = from + (side(i) * wrap * k) / steps;
      const reach = side(i) * one.surfaceRadius_m;
      return [one.x_m + reach * Math.sin(heading), one.y_m - reach * Math.cos(heading)];
    });
  });
}

function discsOverlap(pulleys: readonly PathPulley[]): boolean {
  return pulleys.some((a, i) =>
    pulleys.slice(i + 1).some((b) => Math.hypot(a.x_m - b.x_m, a.y_m - b.y_m) < a.surfaceRadius_m + b.surfaceRadius_m),
  );
}

function edgesCross(polygon: readonly Point[]): boolean {
  const n = polygon.length;
  for (let i = 0; i < n; i++) {
    const [ax, ay] = polygon[i] as Point;
    const [bx, by] = polygon[(i + 1) % n] as Point;
    for (let k = i + 2; k < n; k++) {
      if (i === 0 && k === n - 1) continue;
      const [cx, cy] = polygon[k] as Point;
      const [dx, dy] = polygon[(k + 1) % n] as Point;
      const c = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
      const d = (bx - ax) * (dy - ay) - (by - ay) * (dx - ax);
      if (c * d >= 0) continue;
      const a = (dx - cx) * (ay - cy) - (dy - cy) * (ax - cx);
      const b = (dx - cx) * (by - cy) - (dy - cy) * (bx - cx);
      if (a * b < 0) return true;
    }
  }
  return false;
}

/** Whether a straight span comes closer to a centre than that pulley's radius. */
function spansCut(pulleys: readonly PathPulley[], spans: readonly (readonly [Point, Point])[]): boolean {
  return pulleys.some(({ x_m, y_m, surfaceRadius_m }) =>
    spans.some(([[ax, ay], [bx, by]]) => {
      const [dx, dy] = [bx - ax, by - ay];
      const along = Math.min(1, Math.max(0, ((x_m - ax) * dx + (y_m - ay) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(x_m - ax - along * dx, y_m - ay - along * dy) < surfaceRadius_m - touch_m;
    }),
  );
}
