import type { CardPath } from '@loopwright/jobs';
import type { Shape } from '../../page/page.ts';
import type { Box } from '../boxes.ts';
import { type Point, ring } from '../shapes.ts';
import { beltOffset } from './belt-line.ts';
import type { DrawnPulley } from './layout.ts';

const fromEnds = 4;
const fromCuts = 9;
const radius = { least: 2, most: 5 } as const;
const most = 60;

/** Rollers beside the carrying strand: the shapes, and the bands that labels keep clear of. */
export interface DrawnRollers {
  readonly shapes: readonly Shape[];
  readonly bands: readonly Box[];
}

interface Row {
  readonly r: number;
  /** Above the strand (-1) or below it (+1). */
  readonly side: -1 | 1;
  readonly first: number;
  readonly step: number;
}

const drawnRadius = (diameter_m: number, scale: number): number =>
  Math.min(radius.most, Math.max(radius.least, (diameter_m / 2) * scale));

/** What rollers keep clear of: the cuts of shortened stretches, and the pulleys. */
export interface RollerRoom {
  readonly cutsX: readonly number[];
  readonly pulleys: readonly DrawnPulley[];
}

function isFree({ x, y }: Point, r: number, { cutsX, pulleys }: RollerRoom): boolean {
  return (
    cutsX.every((cut) => Math.abs(cut - x) >= r + fromCuts) &&
    pulleys.every((pulley) => Math.hypot(pulley.centre.x - x, pulley.centre.y - y) >= pulley.r + r + 2)
  );
}

function rollerRow(strand: readonly [Point, Point], room: RollerRoom, row: Row): DrawnRollers {
  const [left, right] = strand[0].x <= strand[1].x ? strand : [strand[1], strand[0]];
  const slope = right.x === left.x ? 0 : (right.y - left.y) / (right.x - left.x);
  const shapes: Shape[] = [];
  const reach = row.r + fromEnds;
  for (let x = left.x + row.first; x <= right.x - reach && shapes.length < most; x += row.step) {
    const centre = { x, y: left.y + slope * (x - left.x) + row.side * (row.r + beltOffset) };
    if (isFree(centre, row.r, room)) shapes.push(ring(centre, row.r, { width: 0.6, fill: 'paper' }));
  }
  const depth = row.side * (2 * row.r + beltOffset);
  const ys = [left.y, right.y, left.y + depth, right.y + depth];
  const band = { x1: left.x, x2: right.x, y1: Math.min(...ys), y2: Math.max(...ys) };
  return { shapes, bands: shapes.length > 0 ? [band] : [] };
}

/** A few carrying rollers on the carrying strand and, between them, the pressure rollers under it. */
export function drawnRollers(
  path: CardPath,
  strand: readonly [Point, Point],
  scale: number,
  room: RollerRoom,
): DrawnRollers {
  const carrier = drawnRadius(path.carrierDiameter_m ?? 0, scale);
  const step = Math.max((path.carrierPitch_m ?? 0) * scale, 2 * carrier + 2.5);
  const first = carrier + fromEnds;
  const rows: DrawnRollers[] = [];
  if (path.carrierDiameter_m !== undefined) rows.push(rollerRow(strand, room, { r: carrier, side: -1, first, step }));
  if (path.pressureRollerDiameter_m !== undefined) {
    const r = drawnRadius(path.pressureRollerDiameter_m, scale);
    rows.push(
      rollerRow(strand, room, {
        r,
        side: 1,
        first: first + step / 2,
        step: Math.max(2, Math.ceil((2 * r + 2) / step)) * step,
      }),
    );
  }
  return { shapes: rows.flatMap((row) => row.shapes), bands: rows.flatMap((row) => row.bands) };
}
