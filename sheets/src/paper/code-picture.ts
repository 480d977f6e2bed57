import { encode } from 'uqr';
import { type Point, rounded } from '../drawing/shapes.ts';
import type { Shape } from '../page/page.ts';

/** White modules round the code, as ISO/IEC 18004 asks for. */
const quiet = 4;

/** Share of a code that may be dirty or worn: level M about 15 %, Q about 25 % (ISO/IEC 18004). */
type Correction = 'M' | 'Q';

/** Where a row of dark modules begins and how many stand side by side. */
function runsOf(line: readonly boolean[]): { readonly from: number; readonly count: number }[] {
  const edges = line.flatMap((dark, i) => (dark !== (line[i - 1] ?? false) ? [i] : []));
  const starts = edges.filter((i) => line[i]);
  return starts.map((from) => ({ from, count: (edges.find((edge) => edge > from) ?? line.length) - from }));
}

/** A code as one filled path in a square of the given side, quiet zone included. */
export function codePicture(payload: string, corner: Point, side: number, ecc: Correction = 'M'): Shape {
  const { data, size } = encode(payload, { ecc, border: 0 });
  const module = side / (size + 2 * quiet);
  const at = (index: number): number => rounded((index + quiet) * module);
  // Modules side by side are one rectangle: seams between them would show as hairlines.
  const bars = data.flatMap((line, row) =>
    runsOf(line).map(({ from, count }) => {
      const [x, y] = [rounded(corner.x + at(from)), rounded(corner.y + at(row))];
      const [w, h] = [rounded(count * module), rounded(module)];
      return `M${x} ${y} h${w} v${h} h${-w} Z`;
    }),
  );
  return { shape: 'path', d: bars.join(' '), fill: 'ink', width: 0 };
}

/** How many modules a code has from edge to edge, quiet zone included. */
export function codeModules(payload: string, ecc: Correction): number {
  return encode(payload, { ecc, border: 0 }).size + 2 * quiet;
}
