import { type Box, boxesOverlap, circleHitsBox, grown, segmentHitsBox } from './boxes.ts';
import type { Point } from './shapes.ts';

/** What a label must keep clear of. Filled by whoever draws; labels add their own boxes as they are placed. */
export interface Obstacles {
  readonly segments: (readonly [Point, Point])[];
  readonly circles: { readonly centre: Point; readonly r: number }[];
  readonly boxes: Box[];
  readonly frame: Box;
}

const directions = 16;
const distances = [0, 5, 11, 18, 26, 36];
const clearance = 1.2;

/** Whether a box keeps clear of everything placed so far and stays inside the frame. */
export function isFree(box: Box, obstacles: Obstacles): boolean {
  const { frame } = obstacles;
  if (box.x1 < frame.x1 || box.x2 > frame.x2 || box.y1 < frame.y1 || box.y2 > frame.y2) return false;
  const room = grown(box, clearance);
  return (
    !obstacles.boxes.some((other) => boxesOverlap(room, other)) &&
    !obstacles.circles.some(({ centre, r }) => circleHitsBox(centre, r, room) || encloses(centre, r, room)) &&
    !obstacles.segments.some(([from, to]) => segmentHitsBox(from, to, room))
  );
}

function encloses(centre: Point, r: number, box: Box): boolean {
  return Math.hypot((box.x1 + box.x2) / 2 - centre.x, (box.y1 + box.y2) / 2 - centre.y) < r;
}

/** Centres to try around a target, nearest first and beginning at the angle wished for. */
function* candidates(target: Point, reach: number, size: { w: number; h: number }, first: number): Generator<Point> {
  for (const distance of distances) {
    for (let step = 0; step < directions; step += 1) {
      const turn = step % 2 === 0 ? step / 2 : -(step + 1) / 2;
      const angle = first + (turn * 2 * Math.PI) / directions;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      const away = reach + distance + clearance + 1;
      yield {
        x: target.x + cos * away + (cos * size.w) / 2,
        y: target.y + sin * away + (sin * size.h) / 2,
      };
    }
  }
}

/** What a label belongs to, and the angle at which to try first [rad], y down. */
export interface LabelTarget {
  readonly centre: Point;
  readonly r: number;
  readonly angle: number;
}

/** Where a label stands, and the line that leads to it when it stands apart. */
export interface PlacedLabel {
  readonly centre: Point;
  readonly leader?: readonly [Point, Point];
}

/**
 * Finds room for a label of a given size beside a target, and takes it.
 * @returns the place, or undefined where everything near is taken
 */
export function placeLabel(
  target: LabelTarget,
  size: { readonly w: number; readonly h: number },
  obstacles: Obstacles,
): PlacedLabel | undefined {
  for (const centre of candidates(target.centre, target.r, size, target.angle)) {
    const box = {
      x1: centre.x - size.w / 2,
      y1: centre.y - size.h / 2,
      x2: centre.x + size.w / 2,
      y2: centre.y + size.h / 2,
    };
    const lead = leaderTo(target, box);
    if (isFree(box, obstacles) && (!lead || leaderIsFree(lead, obstacles))) {
      obstacles.boxes.push(box);
      if (lead) obstacles.segments.push(lead);
      return { centre, ...(lead && { leader: lead }) };
    }
  }
  return undefined;
}

/** Beyond this gap a line leads from the thing to its label. */
const longestGap = 4.5;

/** The line from the rim of a thing to the nearest point of its label, where the label stands apart. */
function leaderTo(target: LabelTarget, box: Box): readonly [Point, Point] | undefined {
  const { centre, r } = target;
  const near = {
    x: Math.min(Math.max(centre.x, box.x1), box.x2),
    y: Math.min(Math.max(centre.y, box.y1), box.y2),
  };
  const distance = Math.hypot(near.x - centre.x, near.y - centre.y);
  if (distance - r < longestGap) return undefined;
  const share = r / distance;
  return [{ x: centre.x + (near.x - centre.x) * share, y: centre.y + (near.y - centre.y) * share }, near];
}

/** A leader may cross a strand, but no other label. */
function leaderIsFree([from, to]: readonly [Point, Point], { boxes }: Obstacles): boolean {
  const holds = (box: Box): boolean => from.x >= box.x1 && from.x <= box.x2 && from.y >= box.y1 && from.y <= box.y2;
  return !boxes.some((box) => !holds(box) && segmentHitsBox(from, to, box));
}
