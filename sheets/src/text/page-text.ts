import type { Block, Figure, Page, Row, Section, StateShape } from '../page/page.ts';
import { wrapWith } from '../type/wrap-text.ts';

export interface TextOptions {
  /** Also write each worked formula under its number. */
  readonly worked?: boolean;
}

const indent = '   ';
const stateSigns: Readonly<Record<StateShape, string>> = { running: '●', due: '▲', past: '◆', torn: '✕', empty: '○' };
const cautionSigns = { stop: '■', care: '▲', note: '·' } as const;
const widestLabel = 38;
const narrowest = 20;

const lengthOf = (line: string): number => Array.from(line).length;

/** Wraps behind a first prefix; further lines hang under the text. */
function hanging(prefix: string, content: string, width: number): string[] {
  const room = Math.max(narrowest, width - lengthOf(prefix));
  const rest = ' '.repeat(lengthOf(prefix));
  return wrapWith(content, (line) => lengthOf(line) <= room).map((line, i) => (i === 0 ? prefix : rest) + line);
}

/** The number of a step in a ring; the plain digits where no such sign exists. */
function ringed(number: number): string {
  return number >= 1 && number <= 20 ? String.fromCodePoint(0x245f + number) : `(${number})`;
}

/** Value, unit, label, range, and where the number comes from. */
function figureText(figure: Figure, label = ''): string {
  const unit = figure.unit === '' ? '' : `\u00a0${figure.unit}`;
  const range = figure.range === undefined ? '' : ` (${figure.range})`;
  const origin = [figure.source, ...(figure.uncalibrated ? [figure.uncalibrated] : [])].join(', ');
  return `${figure.value}${unit}${label === '' ? '' : ` ${label}`}${range} [${origin}]`;
}

function workedLines(figure: Figure | undefined, width: number, options: TextOptions): string[] {
  const worked = figure?.worked;
  if (!worked || !options.worked) return [];
  const inner = `${indent}  `;
  return [
    ...hanging(`${inner}= `, worked.expression, width),
    ...hanging(`${inner}= `, worked.withNumbers, width),
    ...hanging(`${inner}  `, worked.source, width),
  ];
}

function rowLines(rows: readonly Row[], width: number, options: TextOptions): string[] {
  const widest = Math.max(...rows.map(({ label }) => lengthOf(label)));
  const column = Math.min(widest, widestLabel, Math.floor(width / 2)) + 2;
  return rows.flatMap((row) => {
    const value = [row.figure ? figureText(row.figure) : '', row.text ?? '', row.note ?? ''];
    const label = `${indent}${row.label}`;
    const room = column + indent.length;
    const content = value.filter((part) => part !== '').join(' · ');
    const lines =
      lengthOf(label) < room
        ? hanging(label.padEnd(room), content, width)
        : [...hanging(indent, row.label, width), ...hanging(' '.repeat(room), content, width)];
    return [...lines, ...workedLines(row.figure, width, options)];
  });
}

function blockLines(block: Block, width: number, options: TextOptions): string[] {
  switch (block.kind) {
    case 'figure':
      return [
        ...hanging(indent, figureText(block.figure, block.label), width),
        ...workedLines(block.figure, width, options),
      ];
    case 'figures':
      return rowLines(block.figures, width, options);
    case 'rows':
      return rowLines(block.rows, width, options);
    case 'text':
      return hanging(indent, block.text, width);
    case 'list':
      return block.items.flatMap((item) => hanging(`${indent}${block.ticks ? '☐' : '–'} `, item, width));
    case 'caution':
      return hanging(`${indent}${cautionSigns[block.level]} `, block.text, width);
    case 'drawing':
      return hanging(indent, block.drawing.alt, width);
  }
}

function sectionLines(section: Section, width: number, options: TextOptions): string[] {
  const head = section.number === undefined ? '' : `${ringed(section.number)} `;
  return [
    '',
    ...hanging(head, section.title, width),
    ...section.blocks.flatMap((block) => blockLines(block, width, options)),
  ];
}

function headLines(page: Page, width: number): string[] {
  return [
    ...hanging('', page.title, width),
    ...hanging('', page.subtitle, width),
    ...hanging(`${stateSigns[page.state.shape]} `, page.state.word, width),
    ...hanging('', `${page.time.label}: ${figureText(page.time.figure)}`, width),
  ];
}

/**
 * A page as plain text for a terminal.
 * @param page - the page
 * @param width - characters a line may have, at least 40
 * @param options - whether to write the formulas out
 * @returns lines joined by line feeds, the last one ended
 */
export function pageText(page: Page, width = 80, options: TextOptions = {}): string {
  const room = Math.max(40, width);
  const rule = '─'.repeat(room);
  // Formulas stand at their numbers, when they are asked for.
  const back = page.back.filter(({ id }) => id !== 'formulas');
  const lines = [
    ...headLines(page, room),
    rule,
    ...page.front.flatMap((section) => sectionLines(section, room, options)),
    '',
    rule,
    ...back.flatMap((section) => sectionLines(section, room, options)),
    '',
    rule,
    ...page.footer.flatMap((line) => hanging('', line, room)),
    ...(page.code === '' ? [] : [page.codeText ?? page.code]),
  ];
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`;
}
