import { lettering } from '../drawing/shapes.ts';
import { labelPaperSizes } from '../label/label-paper.ts';
import type { Drawing, Page, Section, Shape } from '../page/page.ts';
import { wrapText } from '../type/wrap-text.ts';
import { sectionPieces, widestInColumn } from './block-pieces.ts';
import { flow } from './flow.ts';
import { columnWidth, type Frame, frameOfSize, oneColumn, type Room, rule, type SetPart, twoColumns } from './frame.ts';
import { paperSizes } from './paper-size.ts';
import { heightOf, leadingOf, type PaperStyle, type Piece, space } from './piece.ts';
import { drawRuns } from './rich-lines.ts';
import { stateSign } from './signs.ts';
import { figureNote } from './text-pieces.ts';

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
  const { frame, style } = sheets[paper];
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
      ...footShapes(foot, frame, { top: bottom, size: style.size * 0.82, of: `${i + 1} / ${bodies.length}` }),
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
      const filled = fill(pieces, run, frame, { top, bottom });
      bodies.at(-1)?.push(...filled.shapes);
      pieces = filled.left;
      top = filled.end + 3;
      if (pieces.length === 0) break;
      // A piece taller than a whole sheet would never find room.
      if (pieces.length === left && top === next + 3) pieces = pieces.slice(1);
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

/** Which position, what came out, how long it takes. */
function firstHead(page: Page, frame: Frame, size: number): SetPart {
  const { left, inner } = frame;
  const { figure, label } = page.time;
  const subtitle = wrapText(page.subtitle, { size, width: inner });
  const value = `${figure.value}\u00a0${figure.unit}`;
  const time = [{ text: `${label}:` }, { text: value, bold: true }, { text: figureNote(figure), soft: true }];
  let y = left + size * 1.9;
  const shapes: Shape[] = [lettering(page.title, { x: left, y }, { size: size * 2.2, bold: true })];
  for (const line of subtitle) {
    y += leadingOf(size) + 1.5;
    shapes.push(lettering(line, { x: left, y }, { size, ink: 'soft' }));
  }
  y += leadingOf(size) + 3;
  shapes.push(...stateSign[page.state.shape]({ x: left + 4, y: y - size * 0.32 }, 3));
  shapes.push(lettering(page.state.word, { x: left + 12, y }, { size, bold: true }));
  y += leadingOf(size) + 2;
  shapes.push(...drawRuns(time, { x: left, y }, size), rule(frame, y + 5, 1.4));
  return { shapes, end: y + 5 };
}

function nextHead(page: Page, frame: Frame, size: number): SetPart {
  const y = frame.left + size;
  const title = wrapText(`${page.title} · ${page.subtitle}`, { size, width: frame.inner, bold: true })[0] ?? page.title;
  return {
    shapes: [lettering(title, { x: frame.left, y }, { size, bold: true }), rule(frame, y + 4, 1.4)],
    end: y + 4,
  };
}

function footLines({ footer }: Page, frame: Frame, size: number): string[] {
  const [check = '', rules = '', version = ''] = footer;
  return [`${check} ${rules}`, version].flatMap((line) => wrapText(line, { size, width: frame.inner - 30 }));
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
