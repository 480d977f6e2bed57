import type { CardPath } from '@loopwright/jobs';
import type { Point } from '../shapes.ts';
import { type Axis, merged, type Stretch, shortenedAxis } from './axis.ts';

/** One pulley in the drawing: centre in drawing units (y down), true radius at the drawing's scale. */
export interface DrawnPulley {
  readonly centre: Point;
  readonly r: number;
  readonly turn: 'left' | 'right';
}

/** The pulleys laid out: to one scale where they stand, with long empty stretches shortened. */
export interface ThreadLayout {
  readonly pulleys: readonly DrawnPulley[];
  /** Drawing units per metre where pulleys stand. */
  readonly scale: number;
  /** Where strands are shortened: vertical cuts (x) and horizontal cuts (y). */
  readonly cutsX: readonly number[];
  readonly cutsY: readonly number[];
  readonly width: number;
  readonly height: number;
}

const gapX = 38;
const gapY = 40;
const largestRadius = 24;
const shrink = 0.94;
const attempts = 120;

interface Axes {
  readonly x: Axis;
  readonly y: Axis;
  readonly scale: number;
}

function axesAt(path: CardPath, scale: number): Axes {
  const around = (pick: 'x_m' | 'y_m'): Stretch[] =>
    merged(path.pulleys.map((p) => [p[pick] - p.diameter_m / 2, p[pick] + p.diameter_m / 2]));
  return { x: shortenedAxis(around('x_m'), scale, gapX), y: shortenedAxis(around('y_m'), scale, gapY), scale };
}

/** The largest scale at which the shortened layout fits. */
function fittingAxes(path: CardPath, room: { readonly w: number; readonly h: number }): Axes {
  const largest_m = Math.max(...path.pulleys.map((pulley) => pulley.diameter_m / 2));
  let axes = axesAt(path, largestRadius / largest_m);
  for (let i = 0; i < attempts && (axes.x.length > room.w || axes.y.length > room.h); i += 1) {
    axes = axesAt(path, axes.scale * shrink);
  }
  return axes;
}

/** Room left over goes to the shortened stretches, which are the long ones in truth. */
function widened(path: CardPath, axes: Axes, w: number): Axes {
  const spare = w - axes.x.length;
  if (spare <= 0 || axes.x.breaks.length === 0) return axes;
  const stretches = merged(path.pulleys.map((p) => [p.x_m - p.diameter_m / 2, p.x_m + p.diameter_m / 2]));
  const x = shortenedAxis(stretches, axes.scale, gapX + spare / axes.x.breaks.length);
  return x.length <= w + 1 ? { ...axes, x } : axes;
}

/**
 * Lays a loop out for drawing.
 * @param path - the card's path, coordinates in metres, y up
 * @param room - width and height it may take, in drawing units
 */
export function threadLayout(path: CardPath, room: { readonly w: number; readonly h: number }): ThreadLayout {
  const { x, y, scale } = widened(path, fittingAxes(path, room), room.w);
  const pulleys = path.pulleys.map((pulley) => ({
    centre: { x: x.map(pulley.x_m), y: y.length - y.map(pulley.y_m) },
    r: (pulley.diameter_m / 2) * scale,
    turn: pulley.turn,
  }));
  const cutsY = y.breaks.map((cut) => y.length - cut);
  return { pulleys, scale, cutsX: x.breaks, cutsY, width: x.length, height: y.length };
}
