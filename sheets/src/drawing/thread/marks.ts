import type { CardPath } from '@loopwright/jobs';
import type { Shape } from '../../page/page.ts';
import { arrow, arrowhead, breakMark, type Point, polygon, polyline, ring } from '../shapes.ts';
import type { BeltLine } from './belt-line.ts';
import type { DrawnPulley, ThreadLayout } from './layout.ts';

const along = ([from, to]: readonly [Point, Point], t: number): Point => ({
  x: from.x + (to.x - from.x) * t,
  y: from.y + (to.y - from.y) * t,
});

/** Where strands cross the cuts of the layout: middle of the break mark and direction of the strand. */
export function breakPoints(belt: BeltLine, layout: ThreadLayout): { readonly point: Point; readonly angle: number }[] {
  return belt.strands.flatMap((strand) => {
    const [from, to] = strand;
    const angle = Math.atan2(to.y - from.y, to.x - from.x);
    const crossing = (cut: number, a: number, b: number) =>
      (cut - a) * (cut - b) < 0 ? [{ point: along(strand, (cut - a) / (b - a)), angle }] : [];
    return [
      ...layout.cutsX.flatMap((cut) => crossing(cut, from.x, to.x)),
      ...layout.cutsY.flatMap((cut) => crossing(cut, from.y, to.y)),
    ];
  });
}

export const breakMarks = (points: ReturnType<typeof breakPoints>): Shape[] =>
  points.flatMap(({ point, angle }) => breakMark(point, 9, angle));

/** A ring for the pulley side, a double ring for the roller side: told apart without colour. */
export function faceRings(centre: Point, r: number, face: 'running' | 'back'): Shape[] {
  if (face === 'running') return [ring(centre, r, { width: 1.1, fill: 'paper' })];
  const inner = Math.max(r - 2, r * 0.5);
  return [ring(centre, r, { width: 0.8, fill: 'paper' }), ring(centre, inner, { width: 0.8 })];
}

const tries = [0.5, 0.38, 0.62, 0.3, 0.7, 0.22, 0.78, 0.15, 0.85];

/** A place on the splice strand away from the break marks, and the direction of the strand there. */
export function splicePlace(
  path: CardPath,
  belt: BeltLine,
  breaks: readonly { readonly point: Point }[],
): { readonly point: Point; readonly angle: number } | undefined {
  const strand = belt.strands[path.spliceSpan];
  if (!strand) return undefined;
  const clear = (point: Point): number =>
    Math.min(...breaks.map((other) => Math.hypot(other.point.x - point.x, other.point.y - point.y)), 14);
  const points = tries.map((t) => along(strand, t));
  const best = points.reduce((a, b) => (clear(b) > clear(a) ? b : a));
  return { point: best, angle: Math.atan2(strand[1].y - strand[0].y, strand[1].x - strand[0].x) };
}

/** A short zigzag across the belt: the fingers of the splice. */
export function spliceMark(centre: Point, angle: number): Shape[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const turned = (x: number, y: number): Point => ({
    x: centre.x + x * cos - y * sin,
    y: centre.y + x * sin + y * cos,
  });
  const plate = [turned(-6, -3.4), turned(6, -3.4), turned(6, 3.4), turned(-6, 3.4)];
  const teeth = [-5, -3, -1, 1, 3, 5].map((x, i) => turned(x, i % 2 === 0 ? -2 : 2));
  return [polygon(plate, 'paper', { width: 0.7 }), polyline(teeth, { width: 1.2 })];
}

/** Small heads on the belt that show which way it runs. */
export function travelHeads(belt: BeltLine, breaks: readonly { readonly point: Point }[]): Shape[] {
  return belt.strands.flatMap((strand) => {
    const [from, to] = strand;
    const direction = { x: to.x - from.x, y: to.y - from.y };
    if (Math.hypot(direction.x, direction.y) < 26) return [];
    const tip = along(strand, 0.5 + 3 / Math.hypot(direction.x, direction.y));
    const blocked = breaks.some(({ point }) => Math.hypot(point.x - tip.x, point.y - tip.y) < 12);
    return blocked ? [] : [arrowhead(tip, direction, 6)];
  });
}

/** From the rim of the take-up outwards, the way that lengthens the loop. */
export function takeUpArrow(pulley: DrawnPulley, direction: Point): readonly [Point, Point] {
  const length = Math.hypot(direction.x, direction.y) || 1;
  const [ux, uy] = [direction.x / length, -direction.y / length];
  const out = (distance: number): Point => ({ x: pulley.centre.x + ux * distance, y: pulley.centre.y + uy * distance });
  return [out(pulley.r + 4), out(pulley.r + 15)];
}

export const takeUpShapes = (ends: readonly [Point, Point]): Shape[] => arrow(ends[0], ends[1], { width: 1.1 });
