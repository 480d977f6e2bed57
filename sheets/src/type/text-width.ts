import { widthRuns } from './width-runs.ts';

/** What a glyph outside the table is taken to be: one em, wider than any letter in it. */
const unknown = 1000;
const tableEnd = 0x2800;

/** A plain array by code point: laying out one sheet asks for some hundred thousand widths. */
function widthsOf(weight: 'regular' | 'bold'): Uint16Array {
  const widths = new Uint16Array(tableEnd).fill(unknown);
  for (const run of widthRuns) widths.set(run[weight].split(' ').map(Number), run.from);
  return widths;
}

const regular = widthsOf('regular');
const bold = widthsOf('bold');

/** Height of the capitals above the baseline and depth of the descenders, as shares of the size. */
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
  for (let i = 0; i < text.length; i += 1) sum += widths[text.charCodeAt(i)] ?? unknown;
  return (sum * size) / 1000;
}
