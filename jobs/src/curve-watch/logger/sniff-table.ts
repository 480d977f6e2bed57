import { type Role, roleOf, temperatureUnitOf, timeUnitOf } from './header-words.ts';
import type { LoggerColumns, LoggerFault, LoggerOptions, TemperatureUnit, TimeUnit } from './logger-codes.ts';
import { hasUnclearDate, readNumber, readTemperature, type TimeForm, timeForm, unitInCell } from './read-cell.ts';
import { type Separator, splitRow } from './split-row.ts';

/** How a file is to be read, by its first lines. */
export interface Table {
  readonly separator: Separator;
  readonly decimal: '.' | ',';
  /** Lines before the first row of numbers. */
  readonly skip: number;
  readonly width: number;
  readonly columns: LoggerColumns;
  readonly form: TimeForm;
  readonly said: { readonly temperature?: TemperatureUnit; readonly time?: TimeUnit };
  /** Roles that were guessed, or that the numbers contradict. */
  readonly doubt?: 'columns' | 'columns-swapped';
}

/** Lines that are looked at before the first number is taken. */
export const headLines = 200;

interface Grid {
  readonly separator: Separator;
  readonly decimal: '.' | ',';
  readonly skip: number;
  readonly headers: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/**
 * Finds separator, decimal sign, columns, forms and units in the first lines of a file.
 *
 * @param lines - the first ones
 * @param answers - what somebody said of them
 */
export function sniffTable(lines: readonly string[], answers: LoggerOptions['answers'] = {}): Table | LoggerFault {
  const grid = gridOf(lines);
  if ('code' in grid) return grid;
  const found = answers.columns === undefined ? columnsOf(grid) : { columns: answers.columns };
  if ('code' in found) return found;
  const { columns } = found;
  const cells = grid.rows.map((row) => row[columns.time - 1] ?? '');
  const form = cells.map((cell) => timeForm(cell, grid.decimal)).find((each) => each !== undefined);
  if (form === undefined) return noTime(cells[0] ?? '', grid.skip + 1, columns.time);
  const header = (column: number | undefined): string => (column === undefined ? '' : (grid.headers[column - 1] ?? ''));
  const temperature =
    temperatureUnitOf(header(columns.top)) ?? temperatureUnitOf(header(columns.bottom)) ?? cellUnit(grid, columns.top);
  const time = timeUnitOf(header(columns.time));
  return {
    separator: grid.separator,
    decimal: grid.decimal,
    skip: grid.skip,
    width: Math.max(columns.time, columns.top, columns.bottom ?? 0, columns.belt ?? 0),
    columns,
    form,
    said: { ...(temperature && { temperature }), ...(time && { time }) },
    ...('doubt' in found && found.doubt && { doubt: found.doubt }),
  };
}

function noTime(cell: string, row: number, column: number): LoggerFault {
  return hasUnclearDate(cell.trim())
    ? { code: 'date-order', row, column, data: { value: cell.trim() } }
    : { code: 'no-time', row, data: { value: cell.trim() } };
}

function cellUnit({ rows }: Grid, column: number): TemperatureUnit | undefined {
  return rows.map((row) => unitInCell(row[column - 1] ?? '')).find((unit) => unit !== undefined);
}

const separators: readonly Separator[] = ['\t', ';', ','];

function gridOf(lines: readonly string[]): Grid | LoggerFault {
  const told = /^sep=(.)$/i.exec(lines[0]?.trim() ?? '')?.[1];
  const tried = separators.filter((each) => told === undefined || each === told);
  for (const separator of tried) {
    const grid = gridWith(lines, separator);
    if (grid !== undefined) return halved(grid) ?? grid;
  }
  const filled = lines.findIndex((line) => line.trim() !== '');
  if (filled < 0) return { code: 'empty', data: {} };
  return { code: 'no-columns', row: filled + 1, data: { value: (lines[filled] ?? '').slice(0, 60) } };
}

function gridWith(lines: readonly string[], separator: Separator): Grid | undefined {
  const rows = lines.map((line) => splitRow(line, separator));
  const decimal = separator === ',' ? '.' : decimalOf(rows);
  const first = rows.findIndex((row) => isData(row, decimal));
  if (first < 0) return undefined;
  const width = rows[first]?.length ?? 0;
  const heads = rows.slice(0, first).filter((row) => row.length === width || row.length * 2 === width);
  const headers = (heads.at(-1) ?? []).map((_, column) =>
    heads
      .slice(-2)
      .map((row) => row[column]?.trim() ?? '')
      .join(' ')
      .trim(),
  );
  const data = rows.slice(first).filter((row) => row.length > 1);
  return { separator, decimal, skip: first, headers, rows: data };
}

/** A row of numbers: at least two cells that are a number or a time, and hardly anything else. */
function isData(row: readonly string[], decimal: '.' | ','): boolean {
  const filled = row.filter((cell) => cell.trim() !== '');
  const read = filled.filter(
    (cell) =>
      timeForm(cell, decimal) !== undefined ||
      typeof readTemperature(cell, decimal) === 'number' ||
      hasUnclearDate(cell.trim()),
  );
  return read.length >= 2 && read.length * 2 >= filled.length;
}

function decimalOf(rows: readonly (readonly string[])[]): '.' | ',' {
  return rows.some((row) => row.some((cell) => /^\s*[+-]?\d+,\d+\s*°?\s*[CFK]?\s*$/i.test(cell))) ? ',' : '.';
}

/** Comma between cells and before decimals: every number is cut in two. */
function halved({ separator, rows, headers, skip }: Grid): LoggerFault | undefined {
  const [first = []] = rows;
  const whole = rows.every((row) => row.every((cell) => /^\s*[+-]?\d*\s*$/.test(cell)));
  if (separator !== ',' || !whole) return undefined;
  const named = headers.filter((header) => header !== '').length;
  const widthOf = (column: number): number => new Set(rows.map((row) => row[column]?.trim().length)).size;
  const twice =
    named > 1
      ? first.length >= 2 * named - 1 && first.length > named
      : first.length >= 4 && widthOf(first.length - 1) === 1;
  const stepsBack = rows.some((row, i) => Number(row.at(-1)) < Number(rows[i - 1]?.at(-1)));
  return twice && (named > 1 || (first.length % 2 === 0 && stepsBack))
    ? { code: 'decimal-comma', row: skip + 1, data: { value: first.join(',').slice(0, 60) } }
    : undefined;
}

interface Columns {
  readonly columns: LoggerColumns;
  readonly doubt?: Table['doubt'];
}

function columnsOf(grid: Grid): Columns | LoggerFault {
  const width = Math.max(...grid.rows.map((row) => row.length));
  const all = Array.from({ length: width }, (_, i) => i);
  const roles = all.map((i) => roleOf(grid.headers[i] ?? ''));
  const numeric = all.filter((i) =>
    grid.rows.some((row) => typeof readTemperature(row[i] ?? '', grid.decimal) === 'number'),
  );
  const time = timeColumn(grid, all, roles);
  if ('code' in time) return time;
  const moved = (i: number): Role | undefined => (i === time.said ? (roles[time.column] ?? undefined) : roles[i]);
  const free = numeric.filter(
    (i) => i !== time.column && !['other', 'index', 'date'].includes(moved(i) ?? '') && !isCounter(numbersIn(grid, i)),
  );
  const named = (role: Role): number | undefined => free.find((i) => moved(i) === role);
  const plain = free.filter((i) => !['top', 'bottom', 'belt'].includes(moved(i) ?? ''));
  const top = named('top') ?? plain.shift() ?? named('bottom') ?? named('belt');
  if (top === undefined) return { code: 'no-temperature', row: grid.skip + 1, data: { columns: width } };
  const bottom = notAgain(named('bottom') ?? plain.shift(), top);
  const belt = notAgain(named('belt') ?? plain.shift(), top);
  const sure = moved(top) === 'top' && (bottom === undefined || moved(bottom) === 'bottom');
  const doubt = time.swapped ? 'columns-swapped' : sure ? undefined : 'columns';
  return {
    columns: {
      time: time.column + 1,
      top: top + 1,
      ...(bottom !== undefined && { bottom: bottom + 1 }),
      ...(belt !== undefined && { belt: belt + 1 }),
    },
    ...(doubt && { doubt }),
  };
}

function notAgain(column: number | undefined, taken: number): number | undefined {
  return column === taken ? undefined : column;
}

/** Rows from which it can be said that words and numbers of a file differ. */
const fewest = 10;

interface TimeFound {
  readonly column: number;
  readonly swapped: boolean;
  /** The column that the words call time, where the numbers say another. */
  readonly said?: number;
}

function timeColumn(grid: Grid, all: readonly number[], roles: readonly (Role | undefined)[]): TimeFound | LoggerFault {
  const cells = (i: number): readonly string[] => grid.rows.map((row) => row[i] ?? '');
  const forms = all.map((i) =>
    cells(i)
      .map((cell) => timeForm(cell, grid.decimal))
      .find((form) => form !== undefined),
  );
  const clocked = all.filter((i) => forms[i] !== undefined && forms[i] !== 'number' && !isDayOnly(cells(i)));
  const [written] = clocked.filter((i) => roles[i] === 'time').concat(clocked);
  if (written !== undefined) return { column: written, swapped: false };
  const unclear = all.find((i) => hasUnclearDate(cells(i)[0]?.trim() ?? ''));
  if (unclear !== undefined) return noTime(cells(unclear)[0] ?? '', grid.skip + 1, unclear + 1);
  const numbers = (i: number): readonly number[] => numbersIn(grid, i);
  const rising = all.filter((i) => roles[i] !== 'index' && isRising(numbers(i)));
  const steady = rising.filter((i) => !(isCounter(numbers(i)) && rising.length > 1 && roles[i] !== 'time'));
  const [best] = steady.toSorted((a, b) => unevenness(numbers(a)) - unevenness(numbers(b)));
  const said = roles.indexOf('time');
  if (said < 0)
    return best === undefined ? noTime(cells(0)[0] ?? '', grid.skip + 1, 1) : { column: best, swapped: false };
  const clearly =
    grid.rows.length >= fewest &&
    best !== undefined &&
    best !== said &&
    unevenness(numbers(best)) < 0.01 &&
    unevenness(numbers(said)) > 0.1;
  const swapped = clearly && (!rising.includes(said) || roles[best] !== undefined);
  return swapped ? { column: best, swapped, said } : { column: said, swapped: false };
}

function numbersIn({ rows, decimal }: Grid, column: number): readonly number[] {
  return rows.flatMap((row) => readNumber((row[column] ?? '').trim(), decimal) ?? []);
}

function isDayOnly(cells: readonly string[]): boolean {
  return cells.every((cell) => !cell.includes(':'));
}

function isRising(values: readonly number[]): boolean {
  return (
    values.length > 1 &&
    values.every((value, i) => value >= (values[i - 1] ?? value)) &&
    (values.at(-1) ?? 0) > (values[0] ?? 0)
  );
}

function isCounter(values: readonly number[]): boolean {
  return (
    values.length > 2 &&
    (values[0] === 0 || values[0] === 1) &&
    values.every((value, i) => i === 0 || value - (values[i - 1] ?? 0) === 1)
  );
}

/** How uneven the steps are: nothing for a clock, a lot for what heat does. */
function unevenness(values: readonly number[]): number {
  const steps = values.slice(1).map((value, i) => value - (values[i] ?? value));
  const mean = steps.reduce((a, b) => a + b, 0) / Math.max(1, steps.length);
  const spread = Math.sqrt(steps.reduce((sum, step) => sum + (step - mean) ** 2, 0) / Math.max(1, steps.length));
  return mean > 0 ? spread / mean : Number.POSITIVE_INFINITY;
}
