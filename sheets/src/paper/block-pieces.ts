import { lettering, type Point, rectangle, ring } from '../drawing/shapes.ts';
import type { Block, Drawing, Section } from '../page/page.ts';
import { wrapText } from '../type/wrap-text.ts';
import { moveShape } from './move-shape.ts';
import { leadingOf, type PaperStyle, type Piece, space } from './piece.ts';
import { cautionSign } from './signs.ts';
import { bigFigure, figureCells, lines, listPieces, rowPieces } from './text-pieces.ts';

/** A drawing wider than this is for the back, across both columns. */
export const widestInColumn = 200;

/** Drawings are not blown up beyond this, so that their text stays near the size of the rest. */
const largestScale = 1.12;

/** A drawing in a width, centred. */
export function drawingPiece(drawing: Drawing, width: number, largest = largestScale): Piece {
  const scale = Math.min(largest, width / drawing.width);
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
      return listPieces(block.items, block.ticks ? '☐' : '–', width, style);
    case 'caution':
      return [cautionPiece(block, width, size)];
    case 'drawing':
      return block.drawing.width > widestInColumn ? [] : [drawingPiece(block.drawing, width)];
  }
}

/** The title of a section, its number in a ring. */
export function titlePiece(title: string, number: number | undefined, width: number, size: number): Piece {
  const large = size * 1.16;
  const r = large * 0.72;
  const left = number === undefined ? 0 : 2 * r + 4;
  const set = wrapText(title, { size: large, bold: true, width: width - left });
  const height = set.length * leadingOf(large) + 2.5;
  return {
    height,
    keepWithNext: true,
    draw: ({ x, y }: Point) => [
      ...(number === undefined ? [] : numberRing({ x: x + r + 0.4, y: y + large * 0.68 + 0.6 }, r, number, size)),
      ...set.map((line, i) =>
        lettering(line, { x: x + left, y: y + large + 0.6 + i * leadingOf(large) }, { size: large, bold: true }),
      ),
    ],
  };
}

function numberRing(centre: Point, r: number, number: number, size: number) {
  const small = size * (number > 9 ? 0.86 : 0.98);
  return [
    ring(centre, r, { width: 0.9 }),
    lettering(
      String(number),
      { x: centre.x, y: centre.y + small * 0.365 },
      { size: small, anchor: 'middle', bold: true },
    ),
  ];
}

/** A whole section: room, title, blocks. */
export function sectionPieces(section: Section, width: number, style: PaperStyle): Piece[] {
  const body = section.blocks.flatMap((block) => blockPieces(block, width, style));
  if (body.length === 0) return [];
  return [space(style.size * 0.55), titlePiece(section.title, section.number, width, style.size), ...body];
}
