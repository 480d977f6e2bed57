import { lettering } from '../drawing/shapes.ts';
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

/** What is looked up, first things first; a full back leaves out the last. App and terminal show it all. */
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

/** What must find room: everything, all but the formulas and the like, or only what the hands need. */
export type Keep = 'all' | 'reasons' | 'needed';

const keeps = (keep: Keep, { id }: Section): boolean => keep === 'all' || (keep === 'reasons' && id === 'reasons');

const isLookedUp = ({ id }: Section): boolean => lookedUp.some((other) => other === id);

/** What stands on the back: steps the front had no room for, what it left over, then what is looked up. */
function contents(page: Page, steps: number) {
  const numbered = numberedSteps(page);
  const behind = leftOver(numbered.slice(0, steps));
  const narrow = behind.filter((section) => !hasWide(section));
  return {
    wide: behind.filter(hasWide),
    doing: numbered.slice(steps),
    needed: [...narrow, ...page.back.filter((section) => !isLookedUp(section))],
    optional: lookedUp.flatMap((id) => page.back.filter((section) => section.id === id)),
  };
}

/** Room for the sign that says there is more. */
const moreSize = 8;

/** Two columns; where something is left out, a sign at the end says so. */
function columns(pieces: readonly Piece[], frame: Frame, room: Room): Flowed {
  const whole = balanced(pieces, twoColumns(frame, room.top, room.bottom));
  if (whole.left.length === 0) return whole;
  const cut = flow(pieces, twoColumns(frame, room.top, room.bottom - moreSize));
  const corner = { x: frame.left + frame.inner, y: room.bottom - 1 };
  return { shapes: [...cut.shapes, lettering('…', corner, { size: moreSize, anchor: 'end' })], left: cut.left };
}

/**
 * The back: wide drawings, the steps for which the front had no room, then what stands behind the numbers.
 * @param steps - how many of the numbered steps stand on the front
 * @param keep - what counts as left over when it finds no room
 */
export function backBody(
  page: Page,
  { steps, keep }: { readonly steps: number; readonly keep: Keep },
  frame: Frame,
  room: Room,
  style: PaperStyle,
): Flowed {
  const { wide, doing, needed, optional } = contents(page, steps);
  const fillers = [...needed, ...optional].filter(({ blocks }) => blocks.every(({ kind }) => kind === 'rows'));
  const top = topPart(wide, fillers.toReversed(), frame, room, style);
  const below = (section: Section): boolean => !top.beside.has(section);
  const width = columnWidth(frame);
  const own: PaperStyle = { ...style, size: Math.max(style.size, readable) };
  const styleOf = ({ id }: Section): PaperStyle => (id === 'cycle' ? own : style);
  const set = (sections: readonly Section[]): Piece[] =>
    sections.filter(below).flatMap((section) => reasonPieces(section, width, styleOf(section)));
  const must = [
    ...doing.flatMap((section) => sectionPieces(section, width, own)),
    ...set(needed),
    ...set(optional.filter((section) => keeps(keep, section))),
  ];
  const more = set(optional.filter((section) => !keeps(keep, section)));
  const begin = top.end + (wide.length > 0 ? 1 : 0);
  const body = columns([...must, ...more], frame, { top: begin + 4, bottom: room.bottom });
  const line = wide.length > 0 ? [rule(frame, begin, 0.8)] : [];
  return {
    shapes: [...top.flowed.shapes, ...line, ...body.shapes],
    left: [...top.flowed.left, ...body.left.filter((piece) => must.includes(piece))],
  };
}
