import type { Shape } from '../../page/page.ts';
import { fingerLine } from '../finger-line.ts';
import { type Point, polygon, polyline } from '../shapes.ts';
import { type Outline, outlineOf, piece, zone } from './belt-piece.ts';

const height = 36;
const tops = { upper: 5, lower: 49 } as const;

/** What the zig-zag shows on each face. */
export interface BothFaces {
  readonly roller: Outline;
  readonly pulley: Outline;
}

function face(top: number, outline: Outline, isPulley: boolean): readonly Shape[] {
  const torn = (x: number): readonly Point[] =>
    [0, 1, 2, 3, 4].map((i) => ({ x: x + (i % 2 === 0 ? -2 : 2), y: top + (i * height) / 4 }));
  const right = [{ x: piece.right, y: top }, ...torn(piece.right)];
  const left = [{ x: piece.left, y: top }, ...torn(piece.left)];
  const cut = { width: height, pitch: 12, length: zone.right - zone.left, firstTip: 6 };
  const dots = [12, 19, 26, 94, 101, 108].flatMap((x) =>
    [9, 18, 27].map((y) =>
      polyline(
        [
          { x, y: top + y },
          { x: x + 2.4, y: top + y },
        ],
        { ink: 'soft', width: 0.9 },
      ),
    ),
  );
  return [
    polygon([...right, ...left.toReversed()], 'paper', { width: 1.4 }),
    ...(isPulley ? dots : []),
    ...outlineOf(outline, fingerLine(cut, { x: zone.left, y: top }, 1)),
  ];
}

/**
 * Both faces of one splice, one above the other: what shows on one and not on the other is seen at once.
 *
 * @param both - how the outline shows on each
 * @param first - the face that lies above
 */
export function twoFaces(both: BothFaces, first: 'roller' | 'pulley'): readonly Shape[] {
  const second = first === 'roller' ? 'pulley' : 'roller';
  return [...face(tops.upper, both[first], first === 'pulley'), ...face(tops.lower, both[second], second === 'pulley')];
}
