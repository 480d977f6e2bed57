import type { Shape } from '../page/page.ts';
import { capHeight, descent, textWidth } from '../type/text-width.ts';
import type { Point } from './shapes.ts';

/** An upright rectangle: left, top, right, bottom. */
export interface Box {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

type TextShape = Extract<Shape, { readonly shape: 'text' }>;

const share = { start: 0, middle: 0.5, end: 1 } as const;

/** The room a text takes, from the top of its capitals to the foot of its descenders. */
export function textBox(text: TextShape): Box {
  const width = textWidth(text.text, text.size, text.bold);
  const x1 = text.x - width * share[text.anchor];
  return { x1, y1: text.y - capHeight * text.size, x2: x1 + width, y2: text.y + descent * text.size };
}

export function boxesOverlap(a: Box, b: Box): boolean {
  return a.x1 < b.x2 && b.x1 < a.x2 && a.y1 < b.y2 && b.y1 < a.y2;
}

export function grown(box: Box, by: number): Box {
  return { x1: box.x1 - by, y1: box.y1 - by, x2: box.x2 + by, y2: box.y2 + by };
}

/** Whether a straight line from one point to another passes through a box (Liang and Barsky 1984). */
export function segmentHitsBox(from: Point, to: Point, box: Box): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let enter = 0;
  let leave = 1;
  const edges: readonly (readonly [number, number])[] = [
    [-dx, from.x - box.x1],
    [dx, box.x2 - from.x],
    [-dy, from.y - box.y1],
    [dy, box.y2 - from.y],
  ];
  for (const [slope, distance] of edges) {
    if (slope === 0) {
      if (distance <= 0) return false;
      continue;
    }
    const t = distance / slope;
    if (slope < 0) enter = Math.max(enter, t);
    else leave = Math.min(leave, t);
  }
  return enter < leave;
}

/** Whether the line of a circle passes through a box. */
export function circleHitsBox(centre: Point, r: number, box: Box): boolean {
  const nearX = Math.max(box.x1 - centre.x, 0, centre.x - box.x2);
  const nearY = Math.max(box.y1 - centre.y, 0, centre.y - box.y2);
  const farX = Math.max(Math.abs(box.x1 - centre.x), Math.abs(box.x2 - centre.x));
  const farY = Math.max(Math.abs(box.y1 - centre.y), Math.abs(box.y2 - centre.y));
  return Math.hypot(nearX, nearY) < r && Math.hypot(farX, farY) > r;
}
