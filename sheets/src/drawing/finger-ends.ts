import type { Drawing, Shape } from '../page/page.ts';
import { wrapText } from '../type/wrap-text.ts';
import { type FingerCut, fingerLine } from './finger-line.ts';
import { arrow, arrowhead, lettering, type Point, polygon, polyline, textSize } from './shapes.ts';

/** Words and distances of the drawing of both ends; lengths in metres only for the picture. */
export interface FingerEnds {
  readonly alt: string;
  readonly width_m: number;
  readonly pitch_m: number;
  readonly firstTip_m: number;
  /** How far the fence is moved for the second end. */
  readonly secondShift_m: number;
  readonly fence: string;
  readonly firstTip: string;
  readonly secondFirstTip: string;
  /** What lies below, in both pictures: `pulley side down`. */
  readonly down: string;
  readonly meshed: string;
}

const width = 190;
const beltHeight = 32;
const fenceY = 23;
const endLength = 32;
const fingerLength = 16;
const mostFingers = 6;
const lefts = { a: 2, b: 66, meshed: 130 } as const;
const underY = fenceY + beltHeight;

/** The cut in drawing units; a belt with many fingers is drawn narrower, its edge phase stays true. */
function cutOf(ends: FingerEnds, shift_m: number): FingerCut {
  const fingers = Math.min(ends.width_m / ends.pitch_m, mostFingers + ((ends.width_m / ends.pitch_m) % 1));
  const scale = beltHeight / (fingers * ends.pitch_m);
  return {
    width: beltHeight,
    pitch: ends.pitch_m * scale,
    length: fingerLength,
    firstTip: (ends.firstTip_m + shift_m) * scale,
  };
}

function fence(left: number, word: string): Shape[] {
  const right = left + endLength + fingerLength + 6;
  const hatch: Shape[] = [];
  for (let x = left; x < right - 8; x += 5) {
    hatch.push(
      polyline(
        [
          { x, y: fenceY },
          { x: x + 4, y: fenceY - 4 },
        ],
        { width: 0.4 },
      ),
    );
  }
  const heavy = polyline(
    [
      { x: left, y: fenceY },
      { x: right, y: fenceY },
    ],
    { width: 1.4 },
  );
  return [heavy, ...hatch, lettering(word, { x: left, y: fenceY - 6 })];
}

/** Arrows on both sides of a gap that is too small to write in, the number above. */
function smallGap(x: number, from: number, to: number, distance: string): Shape[] {
  return [
    polyline(
      [
        { x: x - 8, y: to },
        { x: x + 3, y: to },
      ],
      { width: 0.4 },
    ),
    polyline(
      [
        { x, y: from - 9 },
        { x, y: from },
      ],
      { width: 0.5 },
    ),
    arrowhead({ x, y: from }, { x: 0, y: 1 }, 3.2),
    arrowhead({ x, y: to }, { x: 0, y: -1 }, 3.2),
    polyline(
      [
        { x, y: to + 3 },
        { x, y: to + 8 },
      ],
      { width: 0.5 },
    ),
    lettering(distance, { x: x + 3, y: from - 14.3 }, { anchor: 'end', bold: true }),
  ];
}

const bigLetter = (letter: string, x: number, y: number): Shape =>
  lettering(letter, { x, y: y + 3.6 }, { size: 10, anchor: 'middle', bold: true });

/** One end pushed in against the fence, with the distance of its first tip. The belt goes on to the left. */
function end(letter: string, left: number, cut: FingerCut, distance: string, travel: 1 | -1): Shape[] {
  const roots = { x: left + endLength, y: fenceY };
  const outline: Point[] = [{ x: left, y: fenceY }, ...fingerLine(cut, roots, 1), { x: left, y: underY }];
  const middle = fenceY + beltHeight / 2;
  const [tail, head] = travel === 1 ? [left + 13, left + 28] : [left + 28, left + 13];
  return [
    polygon(outline, 'paper', { width: 0 }),
    polyline(outline, { width: 1.2 }),
    bigLetter(letter, left + 7, middle),
    ...arrow({ x: tail, y: middle }, { x: head, y: middle }),
    ...smallGap(roots.x + fingerLength + 4, fenceY, fenceY + cut.firstTip, distance),
  ];
}

/** Both ends meshed: the tip of one in the root of the other. */
function meshed(cut: FingerCut): Shape[] {
  const [left, right, middle] = [lefts.meshed, width - 2, fenceY + beltHeight / 2];
  return [
    polyline(
      [
        { x: left, y: fenceY },
        { x: right, y: fenceY },
      ],
      { width: 1.2 },
    ),
    polyline(
      [
        { x: left, y: underY },
        { x: right, y: underY },
      ],
      { width: 1.2 },
    ),
    polyline(fingerLine(cut, { x: left + 21, y: fenceY }, 1), { width: 1.2 }),
    bigLetter('A', left + 7, middle),
    bigLetter('B', right - 7, middle),
  ];
}

function under(text: string, left: number, room: number): Shape[] {
  return wrapText(text, { size: textSize, width: room }).map((line, i) =>
    lettering(line, { x: left, y: underY + 11 + i * 9.5 }),
  );
}

/**
 * Both ends as they go into the die: the same face down, against the same fence, pushed in the same way, with
 * the first tip the same distance from the edge at the fence; and how they mesh. Not to scale along the belt.
 */
export function fingerEnds(ends: FingerEnds): Drawing {
  const first = cutOf(ends, 0);
  const below = [
    ...under(ends.down, lefts.a, lefts.meshed - lefts.a - 6),
    ...under(ends.meshed, lefts.meshed, width - lefts.meshed),
  ];
  const foot = Math.max(...below.map((shape) => (shape.shape === 'text' ? shape.y : 0)));
  return {
    id: 'finger-ends',
    alt: ends.alt,
    width,
    height: foot + 3,
    shapes: [
      ...fence(lefts.a, ends.fence),
      ...fence(lefts.b, ends.fence),
      ...end('A', lefts.a, first, ends.firstTip, 1),
      ...end('B', lefts.b, cutOf(ends, ends.secondShift_m), ends.secondFirstTip, -1),
      ...meshed(first),
      ...below,
    ],
  };
}
