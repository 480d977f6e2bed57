import { keepExtremes, type LoggedRow } from './keep-extremes.ts';
import type { LoggerFault } from './logger-codes.ts';
import { readTemperature, readTime } from './read-cell.ts';
import type { Table } from './sniff-table.ts';
import { splitRow } from './split-row.ts';

/** What the rows of a file came to, times and temperatures in its own units. */
export interface Taken {
  readonly rows: readonly LoggedRow[];
  readonly count: number;
  readonly least?: LoggedExtreme;
  readonly most?: LoggedExtreme;
  /** Usual time from row to row. */
  readonly step: number;
  readonly length: number;
  readonly holes: readonly Hole[];
  readonly repeated: Counted;
  readonly sameTime: Counted;
  readonly missing: Counted;
}

export interface LoggedExtreme {
  readonly value: number;
  readonly row: number;
  readonly column: number;
}

/** How many, and where the first is. */
export interface Counted {
  readonly count: number;
  readonly row: number;
}

/** Two rows further apart than usual; of a time that goes on at midnight. */
interface Hole {
  readonly from: number;
  readonly to: number;
}

/** Takes row after row; a fault ends it. */
export interface RowTaker {
  readonly take: (line: string, row: number) => LoggerFault | undefined;
  readonly taken: () => Taken;
}

const halfDay_s = 43_200;
const day_s = 86_400;
/** Steps from which the usual one is found, and how many of it make a hole. */
const stepsLooked = 101;
const longStep = 4;
/** Holes that are named one by one. */
const mostHoles = 1000;

/**
 * Reads the rows of a table one by one; memory stays bounded however many there are.
 *
 * @param table - how the file is written
 * @param keep - rows kept, about
 */
export function takeRows(table: Table, keep: number): RowTaker {
  const { columns, decimal, form, separator, width } = table;
  const used = [columns.top, columns.bottom, columns.belt].filter((column) => column !== undefined);
  const keeper = keepExtremes(keep);
  const counts = { rows: 0, repeated: none(), sameTime: none(), missing: none() };
  const steps = { first: [] as number[], usual: 0 };
  const holes: Hole[] = [];
  const range: { least?: LoggedExtreme; most?: LoggedExtreme } = {};
  let [first, last, days] = [Number.NaN, undefined as LoggedRow | undefined, 0];

  const timeOf = (cells: readonly string[], row: number): number | LoggerFault => {
    const cell = cells[columns.time - 1] ?? '';
    const read = readTime(cell, form, decimal);
    if (read === undefined) return { code: 'time-not-read', row, column: columns.time, data: { value: shown(cell) } };
    const isNextDay = form === 'three' && last !== undefined && last.time - (read + days) > halfDay_s;
    if (isNextDay) days += day_s;
    if (last !== undefined && read + days < last.time)
      return { code: 'time-goes-back', row, column: columns.time, data: { value: shown(cell), before: last.row } };
    return read + days;
  };

  const valuesOf = (cells: readonly string[], row: number): readonly (number | null)[] | LoggerFault => {
    const values: (number | null)[] = [];
    for (const column of used) {
      const cell = cells[column - 1] ?? '';
      const read = readTemperature(cell, decimal);
      if (read === undefined) return { code: 'not-a-number', row, column, data: { value: shown(cell) } };
      values.push(read);
      if (read === null) add(counts.missing, row);
      else widen(range, read, row, column);
    }
    return values;
  };

  const keepRow = (logged: LoggedRow): void => {
    const again = last !== undefined && logged.time === last.time;
    const same = again && logged.values.every((value, i) => value === last?.values[i]);
    if (again) add(same ? counts.repeated : counts.sameTime, logged.row);
    if (same) return;
    if (last !== undefined) noteStep(logged.time - last.time, last.time, { steps, holes });
    if (Number.isNaN(first)) first = logged.time;
    last = logged;
    counts.rows += 1;
    keeper.push(logged);
  };

  return {
    take: (line, row) => {
      if (line.trim() === '') return undefined;
      const cells = splitRow(line, separator);
      if (cells.length < width) return { code: 'columns-missing', row, data: { found: cells.length, wanted: width } };
      const time = timeOf(cells, row);
      if (typeof time !== 'number') return time;
      const values = valuesOf(cells, row);
      if ('code' in values) return values;
      if (values.some((value) => value !== null)) keepRow({ row, time, values });
      return undefined;
    },
    taken: () => {
      const step = steps.usual;
      return {
        ...range,
        rows: keeper.rows(),
        count: counts.rows,
        step,
        length: (last?.time ?? 0) - (Number.isNaN(first) ? 0 : first),
        holes: holes.filter(({ from, to }) => to - from > longStep * step),
        repeated: counts.repeated,
        sameTime: counts.sameTime,
        missing: counts.missing,
      };
    },
  };
}

const shown = (cell: string): string => cell.trim().slice(0, 40);

function none(): { count: number; row: number } {
  return { count: 0, row: 0 };
}

function add(counted: { count: number; row: number }, row: number): void {
  if (counted.count === 0) counted.row = row;
  counted.count += 1;
}

function widen(
  range: { least?: LoggedExtreme; most?: LoggedExtreme },
  value: number,
  row: number,
  column: number,
): void {
  if (range.least === undefined || value < range.least.value) range.least = { value, row, column };
  if (range.most === undefined || value > range.most.value) range.most = { value, row, column };
}

/** The usual step is known after the first hundred; until then every step may be a hole. */
function noteStep(step: number, from: number, { steps, holes }: Steps): void {
  if (steps.first.length < stepsLooked) {
    steps.first.push(step);
    steps.usual = usual(steps.first);
  }
  const known = steps.first.length < stepsLooked ? 0 : steps.usual;
  if (step > longStep * known && step > 0 && holes.length < mostHoles) holes.push({ from, to: from + step });
}

interface Steps {
  readonly steps: { readonly first: number[]; usual: number };
  readonly holes: Hole[];
}

function usual(steps: readonly number[]): number {
  return steps.toSorted((a, b) => a - b)[steps.length >> 1] ?? 0;
}
