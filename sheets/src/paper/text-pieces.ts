import { lettering, type Point, polyline } from '../drawing/shapes.ts';
import type { Figure, Ink, Row, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { wrapText } from '../type/wrap-text.ts';
import { leadingOf, type PaperStyle, type Piece } from './piece.ts';
import { drawRuns, type Run, richLines, runsWidth } from './rich-lines.ts';

/** How lines are set within a column. */
export interface Lines {
  readonly size: number;
  readonly width: number;
  readonly bold?: boolean;
  readonly ink?: Ink;
  readonly indent?: number;
}

/** One piece a line, so that a paragraph may run on in the next column. */
export function lines(content: string, set: Lines): Piece[] {
  const { size, bold = false, ink = 'ink', indent = 0 } = set;
  return wrapText(content, { size, bold, width: set.width - indent }).map((line) => ({
    height: leadingOf(size),
    draw: ({ x, y }) => [lettering(line, { x: x + indent, y: y + size }, { size, bold, ink })],
  }));
}

/** Many short items run in always, long ones where room is short. */
export function isRunIn(items: readonly string[], width: number, { size, runIn: always }: PaperStyle): boolean {
  return always || (items.length > 4 && items.every((item) => textWidth(item, size) < width * 0.6));
}

export const runIn = (items: readonly string[], mark: string): string =>
  items.map((item) => `${mark}\u00a0${item}`).join('  ');

/** Items with a box to tick or a dash, one after the other, or run in to save room. */
export function listPieces(items: readonly string[], mark: string, width: number, style: PaperStyle): Piece[] {
  const { size } = style;
  if (isRunIn(items, width, style)) return lines(runIn(items, mark), { size, width });
  const indent = size * 1.25;
  return items.flatMap((item) =>
    lines(item, { size, width, indent }).map((piece, i) => ({
      ...piece,
      draw: (corner: Point) => [
        ...(i === 0 ? [lettering(mark, { x: corner.x, y: corner.y + size }, { size })] : []),
        ...piece.draw(corner),
      ],
    })),
  );
}

/** Range, origin and warning behind a number, in words. */
export function figureNote(figure: Figure): string {
  return [figure.range ?? '', figure.computed ? '' : figure.source, figure.uncalibrated ?? '']
    .filter((part) => part !== '')
    .join(' · ');
}

/** The one number of a step, large, its label and range beside it. */
export function bigFigure(figure: Figure, label: string, width: number, size: number): Piece[] {
  const large = size * 2.3;
  const numberWidth = textWidth(figure.value, large, true);
  const head = `${figure.unit} ${label}`.trim();
  const left = numberWidth + size * 0.5;
  const rest = figureNote(figure);
  const beside = [head, ...(rest === '' ? [] : [rest])].flatMap((part) =>
    wrapText(part, { size, width: width - left }),
  );
  const fits = beside.length <= 2 && beside.every((line) => textWidth(line, size) <= width - left);
  const number: Piece = {
    height: large * 1.02,
    keepWithNext: !fits,
    draw: ({ x, y }) => [
      lettering(figure.value, { x, y: y + large * 0.86 }, { size: large, bold: true }),
      ...(fits ? besideNumber(beside, { x: x + left, y: y + large * 0.86 }, size) : []),
    ],
  };
  return fits ? [number] : [number, ...lines([head, rest].filter((part) => part !== '').join(' · '), { size, width })];
}

function besideNumber(beside: readonly string[], foot: Point, size: number): Shape[] {
  return beside.map((line, i) =>
    lettering(
      line,
      { x: foot.x, y: foot.y - (beside.length - 1 - i) * leadingOf(size) },
      { size, ink: i === 0 ? 'ink' : 'soft' },
    ),
  );
}

type Cell = { readonly label: string; readonly figure: Figure };

const cellGap = 5;

const cellNotes = ({ label, figure }: Cell): string[] =>
  [`${figure.unit} ${label}`.trim(), figureNote(figure)].filter((part) => part !== '');

/** No word of a cell is broken. */
function narrowestCell(cell: Cell, size: number, large: number): number {
  const words = cellNotes(cell).flatMap((note) => note.split(' '));
  return Math.max(textWidth(cell.figure.value, large, true), ...words.map((word) => textWidth(word, size))) + cellGap;
}

/** Several numbers side by side, each over its label; as rows where they do not fit. */
export function figureCells(cells: readonly Cell[], width: number, size: number): Piece[] {
  const large = size * 1.6;
  const least = cells.map((cell) => narrowestCell(cell, size, large));
  const spare = (width - least.reduce((sum, one) => sum + one, 0)) / Math.max(1, cells.length);
  if (spare < 0) return rowPieces(cells, width, size);
  const widths = least.map((one) => one + spare);
  const set = cells.map((cell, i) => ({
    left: widths.slice(0, i).reduce((sum, one) => sum + one, 0),
    value: cell.figure.value,
    under: cellNotes(cell).flatMap((note) => wrapText(note, { size, width: (widths[i] ?? width) - cellGap + 0.5 })),
  }));
  const foot = large * 0.85;
  const depth = Math.max(...set.map(({ under }) => under.length));
  const draw = ({ x, y }: Point): Shape[] =>
    set.flatMap(({ left, value, under }) => [
      lettering(value, { x: x + left, y: y + foot }, { size: large, bold: true }),
      ...under.map((line, n) => lettering(line, { x: x + left, y: y + foot + (n + 1) * leadingOf(size) }, { size })),
    ]);
  return [{ height: large * 0.95 + depth * leadingOf(size) + 1, draw }];
}

const figureValue = (figure: Figure): string =>
  figure.unit === '' ? figure.value : `${figure.value}\u00a0${figure.unit}`;

/** Label and note on the left, value on the right; the value on a line of its own where they do not fit. */
function figureRow(row: Row, figure: Figure, width: number, size: number): Piece[] {
  const behind = figureNote(figure);
  const right = [{ text: figureValue(figure), bold: true }, ...(behind === '' ? [] : [{ text: behind, soft: true }])];
  const left = [{ text: row.label }, ...(row.note === undefined ? [] : [{ text: row.note, soft: true }])];
  const rightWidth = runsWidth(right, size);
  const value = ({ x, y }: Point): Shape[] => drawRuns(right, { x: x + width - rightWidth, y: y + size }, size);
  if (runsWidth(left, size) + rightWidth + size <= width) {
    const draw = (corner: Point): Shape[] => [
      ...drawRuns(left, { x: corner.x, y: corner.y + size }, size),
      ...value(corner),
    ];
    return [{ height: leadingOf(size), draw }];
  }
  const label = richLines(left, width, size).map((piece) => ({ ...piece, keepWithNext: true }));
  return rightWidth > width
    ? [...label, ...richLines(right, width, size)]
    : [...label, { height: leadingOf(size), draw: value }];
}

/** A row of words runs on: what, which, where. */
export function wordRuns(row: Row): Run[] {
  const note = row.note === undefined ? [] : [{ text: row.note, soft: true }];
  return [{ text: row.label }, { text: row.text ?? '', bold: true }, ...note];
}

/** Rows with a hairline under each. */
export function rowPieces(list: readonly Row[], width: number, size: number): Piece[] {
  return list.flatMap((row, i) => {
    const pieces = row.figure ? figureRow(row, row.figure, width, size) : richLines(wordRuns(row), width, size);
    return i === list.length - 1 ? together(pieces) : underlined(pieces, width);
  });
}

/** The lines of a row are never parted. */
const together = (pieces: readonly Piece[]): Piece[] =>
  pieces.map((piece, i) => (i < pieces.length - 1 ? { ...piece, keepWithNext: true } : piece));

function underlined(pieces: readonly Piece[], width: number): Piece[] {
  return together(pieces).map((piece, i) => (i < pieces.length - 1 ? piece : withRule(piece, width)));
}

function withRule(piece: Piece, width: number): Piece {
  const line = ({ x, y }: Point): Shape =>
    polyline(
      [
        { x, y },
        { x: x + width, y },
      ],
      { width: 0.25, ink: 'soft' },
    );
  return {
    ...piece,
    height: piece.height + 1,
    draw: ({ x, y }) => [...piece.draw({ x, y }), line({ x, y: y + piece.height + 0.4 })],
  };
}
