import { encode } from 'uqr';
import { type Point, rounded } from '../drawing/shapes.ts';
import type { Shape } from '../page/page.ts';

/** White modules round the code, as ISO/IEC 18004 asks for. */
const quiet = 4;

/** A code as one filled path in a square of the given side, quiet zone included. */
export function codePicture(payload: string, corner: Point, side: number): Shape {
  const { data, size } = encode(payload, { ecc: 'M', border: 0 });
  const module = side / (size + 2 * quiet);
  const at = (index: number): number => rounded((index + quiet) * module);
  const edge = rounded(module);
  const squares = data.flatMap((line, row) =>
    line.flatMap((dark, column) =>
      dark ? [`M${rounded(corner.x + at(column))} ${rounded(corner.y + at(row))} h${edge} v${edge} h${-edge} Z`] : [],
    ),
  );
  return { shape: 'path', d: squares.join(' '), fill: 'ink', width: 0 };
}
