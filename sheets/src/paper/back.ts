import type { Block, Page, Section } from '../page/page.ts';
import { sectionPieces, widestInColumn } from './block-pieces.ts';
import { balanced, type Flowed, flow } from './flow.ts';
import { columnWidth, type Frame, oneColumn, type Room, rule, twoColumns } from './frame.ts';
import { numberedSteps } from './front.ts';
import { heightOf, type PaperStyle, type Piece } from './piece.ts';

/** The doing is never smaller than this; reasons may be. */
const readable = 7.5;
/** Formulas are for looking up, and may be smaller than the rest. */
const formulaShare = 0.9;
const besideGap = 8;
const narrowest = 90;

/** What a full back leaves out first, from the last on: it is for looking up, and app and terminal show it all. */
const lookedUp = ['reasons', 'resplice', 'time-parts', 'formulas'] as const;

const isWide = (block: Block): boolean => block.kind === 'drawing' && block.drawing.width > widestInColumn;
const hasWide = ({ blocks }: Section): boolean => blocks.some(isWide);
const widest = ({ blocks }: Section): number =>
  Math.max(...blocks.map((block) => (block.kind === 'drawing' ? block.drawing.width : 0)));

/** What the steps on the front leave to the back, under the same numbers. */
const leftOver = (sections: readonly Section[]): Section[] =>
  sections
    .map((section) => ({ ...section, blocks: section.blocks.filter(({ overleaf }) => overleaf) }))
    .filter(({ blocks }) => blocks.length > 0);

function withoutSources(section: Section): Section {
  const blocks = section.blocks.map((block) =>
    block.kind === 'rows' ? { ...block, rows: block.rows.map(({ note: _note, ...row }) => row) } : block,
  );
  return { ...section, blocks };
}

function reasonPieces(section: Section, width: number, style: PaperStyle): Piece[] {
  if (section.id !== 'formulas') return sectionPieces(section, width, style);
  const shown = style.formulaSources ? section : withoutSources(section);
  return sectionPieces(shown, width, { ...style, size: style.size * formulaShare });
}

interface Top {
  readonly flowed: Flowed;
  readonly end: number;
  /** Sections that found room beside the wide drawing. */
  readonly beside: ReadonlySet<Section>;
}

/** Wide drawings, and beside them the sections that fit there whole. */
function topPart(
  wide: readonly Section[],
  others: readonly Section[],
  frame: Frame,
  room: Room,
  style: PaperStyle,
): Top {
  const inset = Math.min(frame.inner, Math.max(0, ...wide.map(widest)));
  const own = { ...style, size: Math.max(style.size, readable) };
  const pieces = wide.flatMap((section) => sectionPieces(section, inset, own));
  const flowed = flow(pieces, oneColumn(frame, room.top, room.bottom));
  const height = heightOf(pieces);
  const width = frame.inner - inset - besideGap;
  const beside = new Set<Section>();
  const set: Piece[] = [];
  for (const section of width >= narrowest ? others : []) {
    const more = reasonPieces(section, width, style);
    if (heightOf([...set, ...more]) > height) continue;
    set.push(...more);
    beside.add(section);
  }
  const column = { corner: { x: frame.left + inset + besideGap, y: room.top }, height };
  return {
    flowed: { shapes: [...flowed.shapes, ...flow(set, [column]).shapes], left: flowed.left },
    end: room.top + height,
    beside,
  };
}

/**
 * The back: wide drawings, the steps for which the front had no room, then what stands behind the numbers.
 * @param steps - how many of the numbered steps stand on the front
 */
export function backBody(page: Page, steps: number, frame: Frame, room: Room, style: PaperStyle): Flowed {
  const numbered = numberedSteps(page);
  const behind = leftOver(numbered.slice(0, steps));
  const isLookedUp = ({ id }: Section): boolean => lookedUp.some((other) => other === id);
  const narrow = behind.filter((section) => !hasWide(section));
  const needed = [...narrow, ...page.back.filter((section) => !isLookedUp(section))];
  const optional = page.back.filter(isLookedUp);
  const fillers = [...needed, ...optional].filter(({ blocks }) => blocks.every(({ kind }) => kind === 'rows'));
  const top = topPart(behind.filter(hasWide), fillers.toReversed(), frame, room, style);
  const width = columnWidth(frame);
  const own: PaperStyle = { ...style, size: Math.max(style.size, readable) };
  const must = [
    ...numbered.slice(steps).flatMap((section) => sectionPieces(section, width, own)),
    ...needed.filter((section) => !top.beside.has(section)).flatMap((section) => reasonPieces(section, width, style)),
  ];
  const more = optional
    .filter((section) => !top.beside.has(section))
    .flatMap((section) => reasonPieces(section, width, style));
  const begin = top.end + (top.end > room.top ? 1 : 0);
  const body = balanced([...must, ...more], twoColumns(frame, begin + 2, room.bottom));
  const line = top.end > room.top ? [rule(frame, begin, 0.8)] : [];
  return {
    shapes: [...top.flowed.shapes, ...line, ...body.shapes],
    left: [...top.flowed.left, ...body.left.filter((piece) => must.includes(piece) || style.size > smallestWhole)],
  };
}

/** Down to this size everything is tried to be kept; below, what is looked up gives way. */
const smallestWhole = 6.4;
