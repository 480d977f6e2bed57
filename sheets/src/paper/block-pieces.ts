import { lettering, type Point, rectangle, ring } from '../drawing/shapes.ts';
import type { Block, Drawing, Section, Shape } from '../page/page.ts';
import { wrapText } from '../type/wrap-text.ts';
import { moveShape } from './move-shape.ts';
import { leadingOf, type PaperStyle, type Piece, space } from './piece.ts';
import { type Run, richLines } from './rich-lines.ts';
import { cautionSign } from './signs.ts';
import { bigFigure, figureCells, isRunIn, lines, listPieces, rowPieces, runIn, wordRuns } from './text-pieces.ts';

/** A drawing wider than this stands across both columns. */
export const widestInColumn = 200;

/** Drawings are not blown up beyond this, so that their text stays near the size of the rest. */
const largestScale = 1;

/** A drawing in a width, centred. */
function drawingPiece(drawing: Drawing, width: number): Piece {
  const scale = Math.min(largestScale, width / drawing.width);
  return {
    height: drawing.height * scale + 3,
    draw: ({ x, y }) => {
      const left = x + (width - drawing.width * scale) / 2;
      return drawing.shapes.map((shape) => moveShape(shape, { x: left, y: y + 1, scale }));
    },
  };
}

type Caution = Extract<Block, { readonly kind: 'caution' }>;

/** A caution is never parted; one that stops stands in a frame. */
function cautionPiece({ level, text }: Caution, width: number, size: number): Piece {
  const bold = level === 'stop';
  const inset = bold ? 3 : 0;
  const r = size * 0.52;
  const left = inset + r * 2 + size * 0.45;
  const set = wrapText(text, { size, bold, width: width - left - inset });
  const height = set.length * leadingOf(size) + 2 * inset;
  return {
    height: height + 2.5,
    draw: ({ x, y }) => [
      ...(bold ? [rectangle({ x, y }, { w: width, h: height }, 'none')] : []),
      ...cautionSign[level]({ x: x + inset + r, y: y + inset + size * 0.68 }, r),
      ...set.map((line, i) =>
        lettering(line, { x: x + left, y: y + inset + size + i * leadingOf(size) }, { size, bold }),
      ),
    ],
  };
}

const tickMark = ({ ticks }: { readonly ticks?: boolean }): string => (ticks ? '☐' : '–');

/** The pieces of one block in a column. */
export function blockPieces(block: Block, width: number, style: PaperStyle): Piece[] {
  const { size } = style;
  switch (block.kind) {
    case 'figure':
      return bigFigure(block.figure, block.label, width, size);
    case 'figures':
      return figureCells(block.figures, width, size);
    case 'rows':
      return rowPieces(block.rows, width, size);
    case 'text':
      return lines(block.text, { size, width, bold: block.strong === true, ink: block.soft ? 'soft' : 'ink' });
    case 'list':
      return listPieces(block.items, tickMark(block), width, style);
    case 'caution':
      return [cautionPiece(block, width, size)];
    case 'drawing':
      return [drawingPiece(block.drawing, width)];
  }
}

const ringRadius = (size: number): number => size * 0.8;

/** The title of a section, its number in a ring. */
export function titlePiece(title: string, number: number | undefined, width: number, size: number): Piece {
  const large = size * 1.12;
  const r = ringRadius(size);
  const left = number === undefined ? 0 : 2 * r + 4;
  const set = wrapText(title, { size: large, bold: true, width: width - left });
  const height = set.length * leadingOf(large) + 2.2;
  return {
    height,
    keepWithNext: true,
    draw: ({ x, y }: Point) => [
      ...numberRing({ x, y: y + large * 0.68 }, r, number),
      ...set.map((line, i) =>
        lettering(line, { x: x + left, y: y + large + i * leadingOf(large) }, { size: large, bold: true }),
      ),
    ],
  };
}

/** The number of a step in its ring, left edge and middle given. */
function numberRing({ x, y }: Point, r: number, number: number | undefined): Shape[] {
  if (number === undefined) return [];
  const size = r * (number > 9 ? 1.1 : 1.25);
  const centre = { x: x + r + 0.4, y };
  return [
    ring(centre, r, { width: 0.8 }),
    lettering(String(number), { x: centre.x, y: y + size * 0.365 }, { size, anchor: 'middle', bold: true }),
  ];
}

/** Words that may follow the title on the same line, and what is left of their block. */
function runInWords(block: Block, width: number, style: PaperStyle): { runs: Run[]; rest: Block[] } | undefined {
  if (!style.runIn) return undefined;
  if (block.kind === 'text' && !block.strong && !block.soft) return { runs: [{ text: block.text }], rest: [] };
  if (block.kind === 'list' && isRunIn(block.items, width, style))
    return { runs: [{ text: runIn(block.items, tickMark(block)) }], rest: [] };
  const [first, ...others] = block.kind === 'rows' ? block.rows : [];
  if (!first || first.figure) return undefined;
  return { runs: wordRuns(first), rest: others.length > 0 ? [{ kind: 'rows', rows: others }] : [] };
}

/** Title and first words on one line. */
function runInTitle(section: Section, words: readonly Run[], width: number, size: number): Piece[] {
  const r = ringRadius(size) * 0.86;
  const indent = section.number === undefined ? 0 : 2 * r + 4;
  const runs = [{ text: section.title, bold: true }, ...words];
  return richLines(runs, width, size, indent).map((piece, i) => ({
    ...piece,
    draw: (corner: Point) => [
      ...(i === 0 ? numberRing({ x: corner.x, y: corner.y + size * 0.64 }, r, section.number) : []),
      ...piece.draw(corner),
    ],
  }));
}

/** A whole section: room, title, blocks. */
export function sectionPieces(section: Section, width: number, style: PaperStyle): Piece[] {
  const [first, ...rest] = section.blocks;
  if (first === undefined) return [];
  const opening = runInWords(first, width, style);
  const pieces = (blocks: readonly Block[]): Piece[] => blocks.flatMap((block) => blockPieces(block, width, style));
  return [
    space(style.size * 0.42),
    ...(opening === undefined
      ? [titlePiece(section.title, section.number, width, style.size), ...pieces(section.blocks)]
      : [...runInTitle(section, opening.runs, width, style.size), ...pieces([...opening.rest, ...rest])]),
  ];
}
