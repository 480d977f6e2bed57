import type { RefusalData } from '@loopwright/engine/refusal';
import Papa from 'papaparse';
import { folderLimits } from './limits.ts';

export type Delimiter = ',' | ';' | '\t';

/** A row of cells with its number as a spreadsheet counts. */
export interface TableRow {
  readonly row: number;
  readonly cells: readonly string[];
}

export interface Table {
  readonly delimiter: Delimiter;
  readonly header: TableRow;
  readonly rows: readonly TableRow[];
}

export interface TableRefusal {
  readonly code: 'no-header' | 'open-quote' | 'too-many-rows' | 'too-many-columns';
  readonly row?: number;
  readonly data: RefusalData;
}

/**
 * Splits the text of a CSV file into rows. Lines that start with `#` and empty rows are passed over.
 *
 * @param text - with `\n` as line end
 * @returns the table, or why there is none
 */
export function readTable(text: string): Table | TableRefusal {
  const lines = withoutComments(text);
  const heading = lines.find((line) => line.trim() !== '');
  if (heading === undefined) return { code: 'no-header', data: {} };
  const delimiter = delimiterOf(heading);
  const columns = heading.split(delimiter).length;
  if (columns > folderLimits.columns) {
    return { code: 'too-many-columns', data: { value: columns, max: folderLimits.columns } };
  }
  return split(lines.join('\n').replace(/\n+$/, ''), delimiter);
}

/**
 * Rows of cells that are apart already, as a spreadsheet workbook has them. Texts in it may have decimal commas.
 *
 * @param cells - every row from the first, empty ones too
 * @returns the table, or why there is none
 */
export function tableOfCells(cells: readonly (readonly string[])[]): Table | TableRefusal {
  if (cells.length > folderLimits.rows + 1) return { code: 'too-many-rows', data: { max: folderLimits.rows } };
  const table = tableOf(cells, ';');
  if ('code' in table) return table;
  const columns = table.header.cells.length;
  if (columns > folderLimits.columns) {
    return { code: 'too-many-columns', data: { value: columns, max: folderLimits.columns } };
  }
  // A workbook does not write the empty cells at the end of a row.
  const filled = table.rows.map(({ row, cells: own }) => ({
    row,
    cells: [...own, ...Array.from({ length: Math.max(0, columns - own.length) }, () => '')],
  }));
  return { ...table, rows: filled };
}

function split(text: string, delimiter: Delimiter): Table | TableRefusal {
  // The extra two: the heading, and one row that shows there are more.
  const parsed = Papa.parse<string[]>(text, { delimiter, newline: '\n', preview: folderLimits.rows + 2 });
  const broken = parsed.errors.find((error) => error.type === 'Quotes');
  if (broken) return { code: 'open-quote', row: (broken.row ?? 0) + 1, data: {} };
  if (parsed.data.length > folderLimits.rows + 1) {
    return { code: 'too-many-rows', data: { max: folderLimits.rows } };
  }
  return tableOf(parsed.data, delimiter);
}

function tableOf(data: readonly (readonly string[])[], delimiter: Delimiter): Table | TableRefusal {
  const rows = data
    .map((cells, i) => ({ row: i + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== '') && !cells[0]?.startsWith('#'));
  const [header, ...body] = rows;
  if (!header) return { code: 'no-header', data: {} };
  return { delimiter, header: trimmedHeader(header), rows: body };
}

/** Spreadsheets like to add empty columns at the right end. */
function trimmedHeader(header: TableRow): TableRow {
  const last = header.cells.findLastIndex((cell) => cell !== '');
  return { row: header.row, cells: header.cells.slice(0, last + 1) };
}

/** Comment lines become empty ones, so that rows keep their number; a `#` inside a quoted cell is left alone. */
function withoutComments(text: string): string[] {
  let quoted = false;
  return text.split('\n').map((line) => {
    if (!quoted && line.startsWith('#')) return '';
    if (line.includes('"') && line.split('"').length % 2 === 0) quoted = !quoted;
    return line;
  });
}

function delimiterOf(heading: string): Delimiter {
  const outsideQuotes = heading.replace(/"[^"]*"/g, '');
  const count = (mark: string) => outsideQuotes.split(mark).length - 1;
  const candidates: readonly Delimiter[] = [',', ';', '\t'];
  return candidates.reduce((best, next) => (count(next) > count(best) ? next : best));
}
