import { lettering } from '../drawing/shapes.ts';
import { labelPaperSizes } from '../label/label-paper.ts';
import type { Drawing, Page, Section, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';
import { wrapText } from '../type/wrap-text.ts';
import { sectionPieces, widestInColumn } from './block-pieces.ts';
import { flow } from './flow.ts';
import { firstHead, nextHead } from './flow-head.ts';
import { columnWidth, type Frame, frameOfSize, oneColumn, type Room, rule, twoColumns } from './frame.ts';
import { paperSizes } from './paper-size.ts';
import { heightOf, leadingOf, type PaperStyle, type Piece, space } from './piece.ts';

/** Papers on which a page flows over as many sheets as it needs. */
export const flowPapers = ['A4', 'A5', 'letter'] as const;
export type FlowPaper = (typeof flowPapers)[number];

interface Sheet {
  readonly frame: Frame;
  readonly style: PaperStyle;
}

const sheets: Readonly<Record<FlowPaper, Sheet>> = {
  A4: sheetOf(labelPaperSizes.A4, 36, 9.2),
  A5: sheetOf(paperSizes.A5, 20, 8),
  letter: sheetOf(labelPaperSizes.letter, 36, 9.2),
};

function sheetOf(size: { readonly width: number; readonly height: number }, edge: number, type: number): Sheet {
  return { frame: frameOfSize(size, edge), style: { size: type, runIn: false, formulaSources: true } };
}

/**
 * A page on as many sheets as it needs: what stands across first, the rest in two columns.
 *
 * @param page - the page
 * @param paper - the paper
 * @returns one drawing a side; one unit is a point
 */
export function flowSheets(page: Page, paper: FlowPaper): readonly Drawing[] {
  const usual = sheetsIn(page, sheets[paper]);
  const smaller = sheetsIn(page, withType(sheets[paper], smallerShare));
  return smaller.length < usual.length ? smaller : usual;
}

/** A little smaller type where that saves a whole sheet. */
const smallerShare = 0.94;

function withType({ frame, style }: Sheet, share: number): Sheet {
  return { frame, style: { ...style, size: style.size * share } };
}

function sheetsIn(page: Page, { frame, style }: Sheet): readonly Drawing[] {
  const first = firstHead(page, frame, style.size);
  const next = nextHead(page, frame, style.size);
  const foot = footLines(page, frame, style.size * 0.82);
  const bottom = frame.bottom - foot.length * leadingOf(style.size * 0.82) - 5;
  const bodies = bodiesOf(page, { frame, style }, { first: first.end + 4, next: next.end + 4, bottom });
  return bodies.map((body, i) => ({
    id: `sheet-${i + 1}`,
    alt: page.title,
    width: frame.width,
    height: frame.height,
    shapes: [
      ...(i === 0 ? first : next).shapes,
      ...body,
      ...footShapes(foot, frame, { top: bottom, size: style.size * 0.82, of: counted(page, i + 1, bodies.length) }),
    ],
  }));
}

/** Sections of one width that follow each other. */
interface Run {
  readonly across: boolean;
  readonly sections: Section[];
}

const across = ['warnings', 'timeline'];

function runsOf({ front, back }: Page): Run[] {
  const runs: Run[] = [];
  for (const section of [...front, ...back]) {
    const wide =
      across.includes(section.id) ||
      section.blocks.some((block) => block.kind === 'drawing' && block.drawing.width > widestInColumn);
    const last = runs.at(-1);
    if (last?.across === wide) last.sections.push(section);
    else runs.push({ across: wide, sections: [section] });
  }
  return runs;
}

interface Heights {
  readonly first: number;
  readonly next: number;
  readonly bottom: number;
}

/** The body of each sheet. */
function bodiesOf(page: Page, { frame, style }: Sheet, { first, next, bottom }: Heights): Shape[][] {
  const bodies: Shape[][] = [[]];
  let top = first;
  for (const run of runsOf(page)) {
    const width = run.across ? frame.inner : columnWidth(frame);
    let pieces = run.sections.flatMap((section) => [space(style.size * 0.6), ...sectionPieces(section, width, style)]);
    for (let left = pieces.length; left > 0; left = pieces.length) {
      const isFresh = top === next;
      const filled = fill(pieces, run, frame, { top, bottom });
      bodies.at(-1)?.push(...filled.shapes);
      pieces = filled.left;
      top = filled.end + style.size * 0.6;
      if (pieces.length === 0) break;
      // A piece taller than a whole sheet would never find room.
      if (pieces.length === left && isFresh) pieces = pieces.slice(1);
      bodies.push([]);
      top = next;
    }
  }
  return bodies;
}

interface Filled {
  readonly shapes: readonly Shape[];
  readonly left: Piece[];
  readonly end: number;
}

/** One column across, or two that end at about the same height. */
function fill(pieces: readonly Piece[], run: Run, frame: Frame, { top, bottom }: Room): Filled {
  if (run.across) {
    const { shapes, left } = flow(pieces, oneColumn(frame, top, bottom));
    return { shapes, left: [...left], end: top + heightOf(pieces.slice(0, pieces.length - left.length)) };
  }
  for (let height = heightOf(pieces) / 2; top + height < bottom; height += 3) {
    const { shapes, left } = flow(pieces, twoColumns(frame, top, top + height));
    if (left.length === 0) return { shapes, left: [], end: top + height };
  }
  const { shapes, left } = flow(pieces, twoColumns(frame, top, bottom));
  return { shapes, left: [...left], end: bottom };
}

function counted({ sheetOf: said = '{sheet} / {sheets}' }: Page, sheet: number, sheets: number): string {
  return said.replace('{sheet}', String(sheet)).replace('{sheets}', String(sheets));
}

/** Room at the end of the last line for which sheet it is. */
function footLines(page: Page, frame: Frame, size: number): string[] {
  const [check = '', rules = '', version = ''] = page.footer;
  const width = frame.inner - textWidth(counted(page, 88, 88), size) - 8;
  const last = [version, ...(page.codeText === undefined ? [] : [page.codeText])].join(' · ');
  return [`${check} ${rules}`, last].flatMap((line) => wrapText(line, { size, width }));
}

function footShapes(
  lines: readonly string[],
  frame: Frame,
  { top, size, of }: { readonly top: number; readonly size: number; readonly of: string },
): Shape[] {
  const baseline = (i: number): number => top + 5 + (i + 1) * leadingOf(size) - 1.5;
  const end = { x: frame.left + frame.inner, y: baseline(lines.length - 1) };
  return [
    rule(frame, top + 3, 0.8),
    ...lines.map((line, i) => lettering(line, { x: frame.left, y: baseline(i) }, { size })),
    lettering(of, end, { size, anchor: 'end' }),
  ];
}
