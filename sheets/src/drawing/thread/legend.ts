import type { Shape } from '../../page/page.ts';
import { textWidth } from '../../type/text-width.ts';
import { wrapText } from '../../type/wrap-text.ts';
import { lettering, type Point, polyline, ring } from '../shapes.ts';

/** One line of a legend: a sample drawn round a point, and its words. */
export interface LegendEntry {
  readonly sample: (centre: Point) => readonly Shape[];
  readonly text: string;
}

const size = 7.5;
const sampleWidth = 16;
const between = 10;
const leading = 10.5;

/**
 * Sets a legend in rows from a top left corner.
 * @returns its shapes and the height it took
 */
export function legend(
  entries: readonly LegendEntry[],
  corner: Point,
  width: number,
): { readonly shapes: readonly Shape[]; readonly height: number } {
  const shapes: Shape[] = [];
  let x = corner.x;
  let y = corner.y + leading / 2;
  for (const { sample, text } of entries) {
    const lines = wrapText(text, { size, width: width - sampleWidth });
    const wide = sampleWidth + Math.max(...lines.map((line) => textWidth(line, size)));
    if (x > corner.x && x + wide > corner.x + width) {
      x = corner.x;
      y += leading;
    }
    shapes.push(...sample({ x: x + sampleWidth / 2 - 2, y }));
    lines.forEach((line, i) => {
      shapes.push(lettering(line, { x: x + sampleWidth, y: y + size * 0.36 + i * leading }, { size }));
    });
    y += (lines.length - 1) * leading;
    x += wide + between;
  }
  return { shapes, height: y - corner.y + leading / 2 };
}

/** Sample of the rollers: one above a strand, one under it. */
export function rollerSample({ x, y }: Point): Shape[] {
  return [
    polyline(
      [
        { x: x - 7, y },
        { x: x + 7, y },
      ],
      { width: 1.6 },
    ),
    ring({ x: x - 3, y: y - 2.8 }, 2, { width: 0.6 }),
    ring({ x: x + 3, y: y + 2.8 }, 2, { width: 0.6 }),
  ];
}
