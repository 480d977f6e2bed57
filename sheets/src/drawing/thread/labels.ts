import type { CardPath } from '@loopwright/jobs';
import type { Shape } from '../../page/page.ts';
import { textWidth } from '../../type/text-width.ts';
import { type Obstacles, placeLabel } from '../place-label.ts';
import { lettering, type Point, polyline, ring, textSize } from '../shapes.ts';
import { type BeltLine, beltOffset } from './belt-line.ts';
import type { DrawnPulley } from './layout.ts';

const balloon = 5.6;
const balloonText = 7.5;
/** A pulley drawn at least this large carries its number inside, and is the balloon itself. */
const roomForNumber = 8.6;

/** Away from where the belt touches: there a number stands clear of the strands. */
function freeAngle(index: number, pulley: DrawnPulley, belt: BeltLine): number {
  const arrive = belt.strands.at(index - 1)?.[1] ?? pulley.centre;
  const leave = belt.strands[index]?.[0] ?? pulley.centre;
  const x = arrive.x + leave.x - 2 * pulley.centre.x;
  const y = arrive.y + leave.y - 2 * pulley.centre.y;
  return Math.atan2(-y, -x);
}

function leader(from: Point, fromRadius: number, to: Point, toRadius: number): Shape[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  if (length < fromRadius + toRadius + 2) return [];
  const on = (distance: number): Point => ({
    x: from.x + (dx / length) * distance,
    y: from.y + (dy / length) * distance,
  });
  return [polyline([on(fromRadius), on(length - toRadius)], { width: 0.5 })];
}

const baseline = (centre: Point, size: number): Point => ({ x: centre.x, y: centre.y + size * 0.365 });

function numberOutside(
  text: string,
  index: number,
  pulley: DrawnPulley,
  belt: BeltLine,
  obstacles: Obstacles,
): Shape[] {
  const target = { centre: pulley.centre, r: pulley.r + beltOffset, angle: freeAngle(index, pulley, belt) };
  const place = placeLabel(target, { w: 2 * balloon, h: 2 * balloon }, obstacles);
  if (!place) return [];
  return [
    ...leader(pulley.centre, pulley.r, place, balloon),
    ring(place, balloon, { width: 0.8, fill: 'paper' }),
    lettering(text, baseline(place, balloonText), { size: balloonText, anchor: 'middle', bold: true }),
  ];
}

/** The ringed number of every pulley, equal to its order of travel. */
export function pulleyNumbers(
  path: CardPath,
  pulleys: readonly DrawnPulley[],
  belt: BeltLine,
  obstacles: Obstacles,
): Shape[] {
  return pulleys.flatMap((pulley, i) => {
    const text = String(path.pulleys[i]?.order ?? i + 1);
    if (pulley.r < roomForNumber) return numberOutside(text, i, pulley, belt, obstacles);
    const size = Math.min(11, pulley.r * 0.95);
    return [lettering(text, baseline(pulley.centre, size), { size, anchor: 'middle', bold: true })];
  });
}

/** A word beside what it names, with a leader line where it had to move away. */
export function wordBeside(
  text: string,
  target: { readonly centre: Point; readonly r: number; readonly angle: number },
  obstacles: Obstacles,
): Shape[] {
  const size = { w: textWidth(text, textSize), h: textSize * 0.97 };
  const place = placeLabel(target, size, obstacles);
  if (!place) return [];
  const near = Math.hypot(place.x - target.centre.x, place.y - target.centre.y) - target.r;
  const edge = {
    x: Math.min(Math.max(target.centre.x, place.x - size.w / 2), place.x + size.w / 2),
    y: Math.min(Math.max(target.centre.y, place.y - size.h / 2 - 1), place.y + size.h / 2 + 1),
  };
  return [
    ...(near > Math.max(size.w, size.h) / 2 + 8 ? leader(target.centre, target.r + 1, edge, 0) : []),
    lettering(text, { x: place.x, y: place.y + size.h / 2 - textSize * 0.24 }, { anchor: 'middle' }),
  ];
}
