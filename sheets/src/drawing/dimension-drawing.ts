import type { Drawing, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { type FingerCut, fingerLine } from './finger-line.ts';
import { breakMark, dimensionLine, lettering, type Point, polygon, polyline, textSize } from './shapes.ts';

/** Lengths as the reader sees them, each with its word: `64 302 mm tip to tip`. */
export interface DimensionWords {
  readonly alt: string;
  readonly square: string;
  readonly tips: string;
  readonly endless: string;
  readonly finger: string;
}

const width = 190;
const left = 16;
const right = 174;
const waste = 11;
const finger = 20;
const top = 26;
const beltWidth = 18;
const cut: FingerCut = { width: beltWidth, pitch: 4.5, length: finger, firstTip: 1.125 };
const rows = { square: 7, tips: 18, endless: 54, finger: 65 } as const;

/** A dimension with its text in the middle of the line. */
function dimension(from: number, to: number, y: number, text: string, bold = false): Shape[] {
  const half = textWidth(text, textSize, bold) / 2 + 2;
  const middle = (from + to) / 2;
  const [a, b] = dimensionLine({ x: from, y }, { x: to, y }).slice(1);
  return [
    polyline([
      { x: from, y },
      { x: middle - half, y },
    ]),
    polyline([
      { x: middle + half, y },
      { x: to, y },
    ]),
    ...(a && b ? [a, b] : []),
    lettering(text, { x: middle, y: y + 2.9 }, { anchor: 'middle', bold }),
  ];
}

const upright = (x: number, from: number, to: number): Shape =>
  polyline(
    [
      { x, y: from },
      { x, y: to },
    ],
    { width: 0.4 },
  );

/** The strip with both cut ends: one curve, moved along the belt by the endless length. */
function strip(): Shape[] {
  const leftEnd = fingerLine(cut, { x: left, y: top }, 1);
  const rightEnd = fingerLine(cut, { x: right - finger, y: top }, 1);
  const outline: Point[] = [...leftEnd, ...rightEnd.toReversed()];
  const dash = { dash: [2, 2], width: 0.6 } as const;
  const square = [left - waste, right + waste].flatMap((x, i) => {
    const inner = i === 0 ? left + finger * 0.5 : right - finger * 0.5;
    return [
      polyline(
        [
          { x: inner, y: top },
          { x, y: top },
          { x, y: top + beltWidth },
          { x: inner, y: top + beltWidth },
        ],
        dash,
      ),
    ];
  });
  return [
    ...square,
    polygon(outline, 'paper', { width: 1.2 }),
    ...breakMark({ x: width / 2, y: top + beltWidth / 2 }, beltWidth + 6),
  ];
}

/**
 * Why the cut length and the endless length differ by one finger: both ends are the same curve, moved by the
 * endless length, so the strip is one finger longer. Not to scale.
 */
export function dimensionDrawing(words: DimensionWords): Drawing {
  const low = top + beltWidth;
  const fingerHalf = textWidth(words.finger, textSize) / 2;
  return {
    id: 'lengths',
    alt: words.alt,
    width,
    height: 69,
    shapes: [
      ...strip(),
      upright(left - waste, rows.square - 3, top),
      upright(right + waste, rows.square - 3, top),
      ...dimension(left - waste, right + waste, rows.square, words.square),
      upright(left, rows.tips - 3, low + 12),
      upright(right, rows.tips - 3, top),
      ...dimension(left, right, rows.tips, words.tips, true),
      upright(right - finger, top, low + 12),
      upright(right, low, low + 12),
      ...dimension(left, right - finger, rows.endless, words.endless),
      ...dimensionLine({ x: right - finger, y: rows.endless }, { x: right, y: rows.endless }),
      lettering(
        words.finger,
        { x: Math.min(right - finger / 2, width - 1 - fingerHalf), y: rows.finger },
        { anchor: 'middle' },
      ),
    ],
  };
}
