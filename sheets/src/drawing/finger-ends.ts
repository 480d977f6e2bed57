import type { Drawing, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
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
const beltHeight = 38;
const fenceY = 24;
const endLength = 46;
const fingerLength = 20;
const mostFingers = 6;

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
  const right = left + endLength + fingerLength + 8;
  const hatch: Shape[] = [];
  for (let x = left; x < right - 3; x += 5) {
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
  return [
    polyline(
      [
        { x: left, y: fenceY },
        { x: right, y: fenceY },
      ],
      { width: 1.4 },
    ),
    ...hatch,
    lettering(word, { x: left, y: fenceY - 7 }, { size: textSize }),
  ];
}

/** One end pushed in against the fence, with the distance of its first tip. */
function end(letter: string, left: number, cut: FingerCut, distance: string, travel: 1 | -1): Shape[] {
  const roots = { x: left + endLength, y: fenceY };
  const tipX = roots.x + fingerLength;
  const tipY = fenceY + cut.firstTip;
  const edge = fingerLine(cut, roots, 1);
  const outline: Point[] = [{ x: left, y: fenceY }, ...edge, { x: left, y: fenceY + beltHeight }];
  const middle = fenceY + beltHeight / 2;
  const arrowX: readonly [number, number] = travel === 1 ? [left + 17, left + 40] : [left + 40, left + 17];
  return [
    polygon(outline, 'paper', { width: 1.2 }),
    lettering(letter, { x: left + 8, y: middle + 4 }, { size: 11, anchor: 'middle', bold: true }),
    ...arrow({ x: arrowX[0], y: middle }, { x: arrowX[1], y: middle }),
    polyline(
      [
        { x: tipX - 2, y: tipY },
        { x: tipX + 10, y: tipY },
      ],
      { width: 0.4 },
    ),
    polyline(
      [
        { x: tipX + 6, y: fenceY - 9 },
        { x: tipX + 6, y: fenceY },
      ],
      { width: 0.5 },
    ),
    arrowhead({ x: tipX + 6, y: fenceY }, { x: 0, y: 1 }, 3.5),
    arrowhead({ x: tipX + 6, y: tipY }, { x: 0, y: -1 }, 3.5),
    polyline(
      [
        { x: tipX + 6, y: tipY + 3 },
        { x: tipX + 6, y: tipY + 9 },
      ],
      { width: 0.5 },
    ),
    lettering(distance, { x: tipX + 8, y: fenceY - 12 }, { anchor: 'end', bold: true }),
  ];
}

/** Both ends meshed: the tip of one in the root of the other. */
function meshed(cut: FingerCut, y: number, words: FingerEnds): Shape[] {
  const low = { ...cut, width: cut.width * 0.6, pitch: cut.pitch * 0.6, firstTip: cut.firstTip * 0.6 };
  const [left, right, bottom] = [8, 92, y + low.width];
  const seam = fingerLine(low, { x: 44, y }, 1);
  return [
    polygon(
      [
        { x: left, y },
        { x: right, y },
        { x: right, y: bottom },
        { x: left, y: bottom },
      ],
      'paper',
      { width: 1.2 },
    ),
    polyline(seam, { width: 1.2 }),
    lettering('A', { x: left + 7, y: y + low.width / 2 + 3.5 }, { size: 10, anchor: 'middle', bold: true }),
    lettering('B', { x: right - 7, y: y + low.width / 2 + 3.5 }, { size: 10, anchor: 'middle', bold: true }),
    ...arrow({ x: left + 15, y: y + low.width / 2 }, { x: left + 33, y: y + low.width / 2 }),
    lettering(words.meshed, { x: right + 6, y: y + low.width / 2 + 3 }),
  ];
}

/**
 * Both ends as they go into the die: the same face down, against the same fence, pushed in the same way, with
 * the first tip the same distance from the edge at the fence; and how they mesh. Not to scale along the belt.
 */
export function fingerEnds(ends: FingerEnds): Drawing {
  const first = cutOf(ends, 0);
  const second = cutOf(ends, ends.secondShift_m);
  const low = fenceY + beltHeight;
  const wide = Math.max(width, 98 + textWidth(ends.meshed, textSize) + 2);
  return {
    id: 'finger-ends',
    alt: ends.alt,
    width: Math.ceil(wide),
    height: low + 46,
    shapes: [
      ...fence(6, ends.fence),
      ...fence(104, ends.fence),
      ...end('A', 6, first, ends.firstTip, 1),
      ...end('B', 104, second, ends.secondFirstTip, -1),
      lettering(ends.down, { x: 6, y: low + 11 }),
      ...meshed(first, low + 19, ends),
    ],
  };
}
