import { lettering, type Point, polyline } from '../drawing/shapes.ts';
import type { Figure, Ink, Row, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { wrapText } from '../type/wrap-text.ts';
import { leadingOf, type PaperStyle, type Piece } from './piece.ts';

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

/** Items with a box to tick or a dash, one after the other, or run in to save room. */
export function listPieces(items: readonly string[], mark: string, width: number, style: PaperStyle): Piece[] {
  const { size } = style;
  const short = items.every((item) => textWidth(item, size) < width * 0.6);
  if (style.runIn || (short && items.length > 4)) {
    return lines(items.map((item) => `${mark}\u00a0${item}`).join('  '), { size, width });
  }
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

/** Several numbers side by side, each over its label. */
export function figureCells(
  cells: readonly { readonly label: string; readonly figure: Figure }[],
  width: number,
  size: number,
): Piece[] {
  const large = size * 1.6;
  const cell = width / Math.max(1, cells.length);
  const texts = cells.map(({ label, figure }) => ({
    value: figure.value,
    under: [`${figure.unit} ${label}`.trim(), ...(figureNote(figure) === '' ? [] : [figureNote(figure)])].flatMap(
      (part) => wrapText(part, { size, width: cell - 4 }),
    ),
  }));
  const depth = Math.max(...texts.map(({ under }) => under.length));
  const draw = ({ x, y }: Point): Shape[] =>
    texts.flatMap(({ value, under }, i) => [
      lettering(value, { x: x + i * cell, y: y + large * 0.85 }, { size: large, bold: true }),
      ...under.map((line, n) =>
        lettering(line, { x: x + i * cell, y: y + large * 0.85 + (n + 1) * leadingOf(size) }, { size }),
      ),
    ]);
  return [{ height: large * 0.95 + depth * leadingOf(size) + 1, draw }];
}

const figureValue = (figure: Figure): string =>
  figure.unit === '' ? figure.value : `${figure.value}\u00a0${figure.unit}`;

/** Label on the left, value on the right, the value on a line of its own where both do not fit. */
function labelAndValue(row: Row, width: number, size: number): Piece[] {
  const value = row.figure ? figureValue(row.figure) : (row.text ?? '');
  const behind = row.figure ? figureNote(row.figure) : '';
  const valueWidth = textWidth(value, size, true) + (behind === '' ? 0 : textWidth(` ${behind}`, size));
  const oneLine = textWidth(row.label, size) + valueWidth + size <= width;
  const right = ({ x, y }: Point): Shape[] => [
    lettering(
      value,
      { x: x + width - (valueWidth - textWidth(value, size, true)), y: y + size },
      { size, bold: true, anchor: 'end' },
    ),
    ...(behind === ''
      ? []
      : [lettering(behind, { x: x + width, y: y + size }, { size, anchor: 'end', ink: 'soft' as const })]),
  ];
  if (oneLine) {
    const draw = (corner: Point): Shape[] => [
      lettering(row.label, { x: corner.x, y: corner.y + size }, { size }),
      ...right(corner),
    ];
    return [{ height: leadingOf(size), draw }];
  }
  const label = lines(row.label, { size, width }).map((piece) => ({ ...piece, keepWithNext: true }));
  if (valueWidth > width)
    return [...label, ...lines([value, behind].filter(Boolean).join(' · '), { size, width, bold: true })];
  return [...label, { height: leadingOf(size), draw: right }];
}

/** Rows with a hairline under each. */
export function rowPieces(list: readonly Row[], width: number, size: number): Piece[] {
  return list.flatMap((row, i) => {
    const note = row.note === undefined ? [] : lines(row.note, { size, width, ink: 'soft' });
    const pieces = [...labelAndValue(row, width, size), ...note];
    return i === list.length - 1 ? pieces : underlined(pieces, width);
  });
}

function underlined(pieces: readonly Piece[], width: number): Piece[] {
  return pieces.map((piece, i) =>
    i < pieces.length - 1
      ? { ...piece, keepWithNext: true }
      : {
          ...piece,
          height: piece.height + 1,
          draw: (corner: Point) => [
            ...piece.draw(corner),
            polyline(
              [
                { x: corner.x, y: corner.y + piece.height + 0.4 },
                { x: corner.x + width, y: corner.y + piece.height + 0.4 },
              ],
              {
                width: 0.25,
                ink: 'soft',
              },
            ),
          ],
        },
  );
}
