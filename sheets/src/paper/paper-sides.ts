import { lettering, type Point, polyline } from '../drawing/shapes.ts';
import type { Block, Drawing, Page, Section, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { wrapText } from '../type/wrap-text.ts';
import { drawingPiece, sectionPieces, titlePiece, widestInColumn } from './block-pieces.ts';
import { codePicture } from './code-picture.ts';
import { balanced, type Column, type Flowed, flow } from './flow.ts';
import { margin, type Paper, paperSizes } from './paper-size.ts';
import type { PaperStyle, Piece } from './piece.ts';
import { stateSign } from './signs.ts';
import { figureNote } from './text-pieces.ts';

/** Styles from the roomiest on; the first that fits is taken. The last ones are for cards of unusual length. */
const styles: readonly PaperStyle[] = [
  ...[8.6, 8.2, 7.8].map((size) => ({ size, runIn: false, formulaSources: true })),
  ...[8.2, 7.8, 7.5].map((size) => ({ size, runIn: true, formulaSources: false })),
  ...[7.1, 6.6, 6, 5.4, 4.8].map((size) => ({ size, runIn: true, formulaSources: false })),
];

const gutter = 11;
const codeSide = 62;
const footerSize = 6.8;

interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly inner: number;
  readonly bottom: number;
}

function frameOf(paper: Paper): Frame {
  const { width, height } = paperSizes[paper];
  return { width, height, left: margin, inner: width - 2 * margin, bottom: height - margin };
}

/** A part of the sheet that is already set: its shapes and where the next one may begin. */
interface SetPart {
  readonly shapes: readonly Shape[];
  readonly end: number;
}

function frontHead(page: Page, frame: Frame): SetPart {
  const { left, inner } = frame;
  const top = margin;
  const room = inner - codeSide - 4;
  const subtitle = wrapText(page.subtitle, { size: 7.8, width: room }).slice(0, 2);
  const stateY = top + 22 + subtitle.length * 9.4 + 10;
  const { figure, label } = page.time;
  const timeText = `${label}: `;
  const value = `${figure.value}\u00a0${figure.unit}`;
  const stateText = wrapText(page.state.word, { size: 8.6, bold: true, width: room - 12 })[0] ?? '';
  const timeX = left + textWidth(timeText, 8.6);
  return {
    end: top + Math.max(codeSide, stateY + 12 - top + 6) + 1,
    shapes: [
      lettering(page.title, { x: left, y: top + 17 }, { size: titleSize(page.title, room), bold: true }),
      ...subtitle.map((line, i) =>
        lettering(line, { x: left, y: top + 27 + i * 9.4 }, { size: 7.8, ink: 'soft' as const }),
      ),
      ...stateSign[page.state.shape]({ x: left + 4, y: stateY - 3 }, 3.2),
      lettering(stateText, { x: left + 12, y: stateY }, { size: 8.6, bold: true }),
      lettering(timeText, { x: left, y: stateY + 12 }, { size: 8.6 }),
      lettering(value, { x: timeX, y: stateY + 12 }, { size: 8.6, bold: true }),
      lettering(
        figureNote(figure),
        { x: timeX + textWidth(`${value} `, 8.6, true), y: stateY + 12 },
        { size: 8.6, ink: 'soft' },
      ),
      codePicture(page.code, { x: left + inner - codeSide, y: top - 4 }, codeSide),
    ],
  };
}

const titleSize = (title: string, room: number): number => Math.min(22, 22 * (room / textWidth(title, 22, true)));

function backHead(page: Page, frame: Frame): SetPart {
  const y = margin + 9;
  const title = textWidth(`${page.title}  `, 10, true);
  const room = frame.inner - title;
  const subtitle = wrapText(page.subtitle, { size: 7.5, width: room })[0] ?? '';
  return {
    end: y + 6,
    shapes: [
      lettering(page.title, { x: frame.left, y }, { size: 10, bold: true }),
      lettering(subtitle, { x: frame.left + title, y }, { size: 7.5, ink: 'soft' }),
    ],
  };
}

/** What binds the whole sheet: to be checked, whose word comes first, which version this is, which side. */
function foot(page: Page, side: 1 | 2, frame: Frame): { readonly shapes: readonly Shape[]; readonly top: number } {
  const [check = '', rules = '', version = ''] = page.footer;
  const set = wrapText(`${check} ${rules}`, { size: footerSize, width: frame.inner });
  const last = wrapText(`${version} · ${page.code}`, { size: footerSize, width: frame.inner - 24 });
  const all = [...set, ...last];
  const top = frame.bottom - all.length * footerSize * 1.18 - 3;
  const baseline = (i: number): number => top + 3 + footerSize + i * footerSize * 1.18;
  return {
    top: top - 2,
    shapes: [
      rule(frame, top, 0.8),
      ...all.map((line, i) =>
        lettering(line, { x: frame.left, y: baseline(i) }, { size: footerSize, bold: i < set.length }),
      ),
      lettering(
        `${side} / 2`,
        { x: frame.left + frame.inner, y: baseline(all.length - 1) },
        { size: footerSize, anchor: 'end' },
      ),
    ],
  };
}

const rule = (frame: Frame, y: number, width: number): Shape =>
  polyline(
    [
      { x: frame.left, y },
      { x: frame.left + frame.inner, y },
    ],
    { width },
  );

function twoColumns(frame: Frame, top: number, bottom: number): { readonly columns: Column[]; readonly width: number } {
  const width = (frame.inner - gutter) / 2;
  const corner = (i: number): Point => ({ x: frame.left + i * (width + gutter), y: top });
  return { width, columns: [0, 1].map((i) => ({ corner: corner(i), height: bottom - top })) };
}

/** The first style in which everything fits; failing that, the smallest, with what there is room for. */
function fitted(attempt: (style: PaperStyle) => Flowed): Flowed {
  let last: Flowed = { shapes: [], left: [] };
  for (const style of styles) {
    last = attempt(style);
    if (last.left.length === 0) return last;
  }
  return last;
}

function wholeWidth(
  pieces: readonly Piece[],
  frame: Frame,
  top: number,
  bottom: number,
): SetPart & { left: readonly Piece[] } {
  const flowed = flow(pieces, [{ corner: { x: frame.left, y: top }, height: bottom - top }]);
  const height = pieces.reduce((sum, piece, i) => sum + (i === 0 && piece.space ? 0 : piece.height), 0);
  return { shapes: flowed.shapes, end: top + height, left: flowed.left };
}

/** Warnings across the sheet, then the steps in two columns. */
function frontBody(page: Page, frame: Frame, top: number, bottom: number, style: PaperStyle): Flowed {
  const warnings = page.front.filter((section) => section.number === undefined);
  const numbered = page.front.filter((section) => section.number !== undefined);
  const above = wholeWidth(
    warnings.flatMap((section) => sectionPieces(section, frame.inner, style)),
    frame,
    top + 3,
    bottom,
  );
  const begin = warnings.length > 0 ? above.end + 3 : top;
  const { columns, width } = twoColumns(frame, begin + 3, bottom);
  const flowed = balanced(
    numbered.flatMap((section) => sectionPieces(section, width, style)),
    columns,
  );
  const line = warnings.length > 0 ? [rule(frame, begin, 0.8)] : [];
  return { shapes: [...above.shapes, ...line, ...flowed.shapes], left: [...above.left, ...flowed.left] };
}

const isWide = (block: Block): block is Extract<Block, { readonly kind: 'drawing' }> =>
  block.kind === 'drawing' && block.drawing.width > widestInColumn;

/** Wide drawings of the front, under the number and title of their step. */
function wideDrawings(page: Page, frame: Frame, size: number): Piece[] {
  return [...page.front, ...page.back].flatMap((section) =>
    section.blocks
      .filter(isWide)
      .flatMap(({ drawing }) => [
        titlePiece(section.title, section.number, frame.inner, size),
        drawingPiece(drawing, frame.inner, 1.3),
      ]),
  );
}

function withoutSources(section: Section, style: PaperStyle): Section {
  if (section.id !== 'formulas' || style.formulaSources) return section;
  const blocks = section.blocks.map((block) =>
    block.kind === 'rows' ? { ...block, rows: block.rows.map(({ note: _note, ...row }) => row) } : block,
  );
  return { ...section, blocks };
}

function backBody(page: Page, frame: Frame, top: number, bottom: number, style: PaperStyle): Flowed {
  const above = wholeWidth(wideDrawings(page, frame, Math.max(style.size, 7.5)), frame, top, bottom);
  const { columns, width } = twoColumns(frame, above.end + 4, bottom);
  const sections = page.back.map((section) => withoutSources(section, style));
  const flowed = balanced(
    sections.flatMap((section) => sectionPieces(section, width, style)),
    columns,
  );
  return { shapes: [...above.shapes, ...flowed.shapes], left: [...above.left, ...flowed.left] };
}

type Body = typeof frontBody;

function side(page: Page, paper: Paper, number: 1 | 2, headOf: typeof frontHead, body: Body): Drawing {
  const frame = frameOf(paper);
  const head = headOf(page, frame);
  const end = foot(page, number, frame);
  const filled = fitted((style) => body(page, frame, head.end + 2, end.top, style));
  return {
    id: `side-${number}`,
    alt: page.title,
    width: frame.width,
    height: frame.height,
    shapes: [...head.shapes, rule(frame, head.end, 1.4), ...filled.shapes, ...end.shapes],
  };
}

/**
 * A page on one sheet: the front for the doing, the back for wide drawings and reasons. One unit is a point.
 * @param page - the page
 * @param paper - the paper
 * @returns the two sides as drawings
 */
export function paperSides(page: Page, paper: Paper): readonly [front: Drawing, back: Drawing] {
  return [side(page, paper, 1, frontHead, frontBody), side(page, paper, 2, backHead, backBody)];
}
