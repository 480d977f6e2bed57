import type { RefusalData } from '@loopwright/engine/refusal';
import type * as z from 'zod';
import { readCell } from './cell.ts';
import { bindColumns, type Column } from './columns.ts';
import { fieldsOf } from './fields.ts';
import { readNumber } from './number-cell.ts';
import type { FolderProblem, FolderProblemCode } from './problem.ts';
import type { Table, TableRow } from './table.ts';

/** A row as read: the cells that could be read, and the thing when the whole row is right. */
export interface ReadRow<T> {
  readonly row: number;
  readonly raw: Readonly<Record<string, unknown>>;
  readonly thing?: T;
}

export interface ReadThings<T> {
  readonly rows: readonly ReadRow<T>[];
  /** The heading a person wrote, for each field that has a column. */
  readonly headings: ReadonlyMap<string, string>;
  readonly problems: readonly FolderProblem[];
}

export interface ThingTable<S extends z.ZodObject> {
  readonly file: string;
  readonly schema: S;
  readonly table: Table;
  /** Fields that need no column, because they can be made from the others. */
  readonly derived?: { readonly keys: readonly string[]; fill(raw: Record<string, unknown>): void };
}

interface Problem {
  readonly row: number;
  readonly field: string;
  readonly code: FolderProblemCode;
  readonly data: RefusalData;
}

/**
 * Reads every row of a table as a thing of one schema and finds everything wrong with it.
 *
 * @param source - the file's name, its table, and the schema its rows must meet
 */
export function readThings<S extends z.ZodObject>(source: ThingTable<S>): ReadThings<z.infer<S>> {
  const { table } = source;
  const { columns, problems: columnProblems } = bindColumns(
    table.header.cells,
    fieldsOf(source.schema),
    source.derived?.keys,
  );
  const found: Problem[] = columnProblems.map(({ meant: _, ...problem }) => ({ row: table.header.row, ...problem }));
  found.push(...mixedDecimals(table, columns));
  const rows = table.rows.map((row) => readRow(row, columns, source, found));
  return {
    rows,
    headings: new Map(columns.filter((c) => !c.isSource).map((c) => [c.field.key, c.heading])),
    problems: found.map((problem) => ({ file: source.file, level: 'error', ...problem })),
  };
}

function readRow<S extends z.ZodObject>(
  { row, cells }: TableRow,
  columns: readonly Column[],
  source: ThingTable<S>,
  found: Problem[],
): ReadRow<z.infer<S>> {
  const { header, delimiter } = source.table;
  const tooMany = cells.slice(header.cells.length).some((cell) => cell !== '');
  if (tooMany || cells.length < header.cells.length) {
    found.push(raggedRow(row, cells.length, header.cells.length));
    const id = columns.find((column) => column.field.key === 'id');
    return { row, raw: id ? { id: cells[id.at] } : {} };
  }
  const before = found.length;
  const raw: Record<string, unknown> = {};
  const sources: Record<string, unknown> = {};
  for (const column of columns) {
    const cell = cells[column.at] ?? '';
    if (cell === '') continue;
    const read = readCell(cell, column, delimiter);
    if ('code' in read) found.push({ row, field: column.heading, ...read });
    else if (column.isSource) sources[column.field.key] = read.value;
    else raw[column.field.key] = read.value;
  }
  if (Object.keys(sources).length > 0) raw['sources'] = sources;
  source.derived?.fill(raw);
  const parsed = source.schema.safeParse(raw);
  if (parsed.success && found.length === before) return { row, raw, thing: parsed.data };
  if (!parsed.success) found.push(...issues(parsed.error, { row, cells, columns, raw }, found.slice(before)));
  return { row, raw };
}

function raggedRow(row: number, value: number, max: number): Problem {
  return { row, field: '', code: 'ragged-row', data: { value, max } };
}

interface RowCells extends TableRow {
  readonly columns: readonly Column[];
  readonly raw: Readonly<Record<string, unknown>>;
}

/** What the schema says of a row, but for cells that were found wrong already and columns that are not there. */
function issues(error: z.ZodError, { row, cells, columns, raw }: RowCells, known: readonly Problem[]): Problem[] {
  const knownFields = new Set(known.map((p) => p.field));
  return error.issues.flatMap((issue) => {
    const key = String(issue.path[0]);
    const column = columns.find((c) => !c.isSource && c.field.key === key);
    const field = column?.heading ?? key;
    const value = column ? (cells[column.at] ?? '') : String(raw[key] ?? '');
    if (knownFields.has(field) || (!column && value === '')) return [];
    return [{ row, field, ...issueProblem(issue, value || String(raw[key] ?? ''), column?.field.allowed) }];
  });
}

function issueProblem(
  issue: z.core.$ZodIssue,
  value: string,
  allowed: readonly string[] = [],
): { readonly code: FolderProblemCode; readonly data: RefusalData } {
  if (value === '') return { code: 'missing-value', data: { allowed: allowed.join(', ') } };
  if (issue.code === 'too_big') {
    return {
      code: 'too-long',
      data: { value: `${value.slice(0, 40)}…`, length: value.length, max: Number(issue.maximum) },
    };
  }
  const format = issue.code === 'invalid_format' ? issue.format : '';
  const code = format === 'date' ? 'not-a-day' : format === 'datetime' ? 'not-a-moment' : 'bad-id';
  return { code, data: { value: value.slice(0, 80) } };
}

/** One word for the whole file: with both marks in it, `1,234` could be either number. */
function mixedDecimals(table: Table, columns: readonly Column[]): Problem[] {
  if (table.delimiter === ',') return [];
  const numbers = columns.filter((c) => c.field.form === 'number' && !c.isSource);
  const first: { comma?: Problem; point?: Problem } = {};
  for (const { row, cells } of table.rows) {
    for (const { at, heading } of numbers) {
      const cell = cells[at] ?? '';
      const read = cell === '' ? undefined : readNumber(cell);
      if (!read || 'code' in read || read.mark === 'none') continue;
      first[read.mark] ??= { row, field: heading, code: 'mixed-decimals', data: { value: cell } };
    }
    if (first.comma && first.point) break;
  }
  const { comma, point } = first;
  if (!comma || !point) return [];
  return [{ ...comma, data: { ...comma.data, other: point.data['value'] ?? '', otherRow: point.row } }];
}
