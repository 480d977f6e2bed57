import type { CardPath } from '@loopwright/jobs';
import type { Shape } from '../../page/page.ts';
import { textWidth } from '../../type/text-width.ts';
import { type LabelTarget, type Obstacles, type PlacedLabel, placeLabel } from '../place-label.ts';
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

const leaderShapes = ({ leader }: PlacedLabel): Shape[] => (leader ? [polyline(leader, { width: 0.5 })] : []);

const baseline = (centre: Point, size: number): Point => ({ x: centre.x, y: centre.y + size * 0.365 });

function numberOutside(
  text: string,
  index: number,
  pulley: DrawnPulley,
  belt: BeltLine,
  obstacles: Obstacles,
): Shape[] {
  const target = { centre: pulley.centre, r: pulley.r + beltOffset, angle: freeAngle(index, pulley, belt) };
  const placed = placeLabel(target, { w: 2 * balloon, h: 2 * balloon }, obstacles);
  if (!placed) return [];
  return [
    ...leaderShapes(placed),
    ring(placed.centre, balloon, { width: 0.8, fill: 'paper' }),
    lettering(text, baseline(placed.centre, balloonText), { size: balloonText, anchor: 'middle', bold: true }),
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

/** A word beside what it names, with a line to it where it had to stand apart. */
export function wordBeside(text: string, target: LabelTarget, obstacles: Obstacles): Shape[] {
  const size = { w: textWidth(text, textSize), h: textSize * 0.97 };
  const placed = placeLabel(target, size, obstacles);
  if (!placed) return [];
  const { x, y } = placed.centre;
  const foot = { x, y: y + size.h / 2 - textSize * 0.24 };
  return [...leaderShapes(placed), lettering(text, foot, { anchor: 'middle' })];
}
