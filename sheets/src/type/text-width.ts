import { widthRuns } from './width-runs.ts';

type Widths = ReadonlyMap<number, number>;

/** What a glyph outside the table is taken to be: one em, wider than any letter in it. */
const unknown = 1000;

function widthsOf(weight: 'regular' | 'bold'): Widths {
  const widths = new Map<number, number>();
  for (const run of widthRuns) {
    run[weight].split(' ').forEach((width, i) => {
      widths.set(run.from + i, Number(width));
    });
  }
  return widths;
}

const regular = widthsOf('regular');
const bold = widthsOf('bold');

/** Height of the capital above the baseline and depth of the descender, as shares of the size. */
export const capHeight = 0.73;
export const descent = 0.24;

/**
 * Width of a line of text in the sheets' typeface, without kerning.
 * @param text - one line, without line breaks
 * @param size - type size, in any unit
 * @param isBold - whether it is set in bold
 * @returns the width, in the unit of `size`
 */
export function textWidth(text: string, size: number, isBold = false): number {
  const widths = isBold ? bold : regular;
  let sum = 0;
  for (const glyph of text) sum += widths.get(glyph.codePointAt(0) ?? 0) ?? unknown;
  return (sum * size) / 1000;
}
