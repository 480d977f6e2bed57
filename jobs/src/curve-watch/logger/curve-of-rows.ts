import type {
  LoggerCurve,
  LoggerFault,
  LoggerNote,
  LoggerOptions,
  LoggerQuestion,
  LoggerResult,
} from './logger-codes.ts';
import type { Table } from './sniff-table.ts';
import type { Counted, Taken } from './take-rows.ts';
import { guessTemperature, guessTime, possible_degC, seconds, toCelsius } from './units-of-curve.ts';

/** A stretch without a row is a gap from so many seconds on, and from four usual steps. */
const gap_s = 15;

/**
 * The curve that rows make, in SI, with what was odd about them and what somebody should confirm.
 *
 * @param taken - rows in the file's units
 * @param table - how it was read
 * @param answers - what somebody said
 */
export function curveOfRows(taken: Taken, table: Table, answers: LoggerOptions['answers'] = {}): LoggerResult {
  const { least, most, rows, length, count } = taken;
  if (least === undefined || most === undefined || rows.length < 2)
    return faulty({ code: 'too-few-rows', data: { count } });
  if (length <= 0) return faulty({ code: 'time-stands-still', data: { count } });
  const saidUnit = answers.temperature ?? table.said.temperature;
  const degrees = saidUnit ? { unit: saidUnit } : guessTemperature({ least: least.value, most: most.value });
  if ('code' in degrees) return faulty({ ...degrees, row: most.row, column: most.column });
  for (const extreme of [most, least]) {
    const value_degC = toCelsius(extreme.value, degrees.unit);
    if (value_degC >= possible_degC.least && value_degC <= possible_degC.most) continue;
    const data = { value_degC, least_degC: possible_degC.least, most_degC: possible_degC.most };
    return faulty({ code: 'temperature-impossible', row: extreme.row, column: extreme.column, data });
  }
  const saidTime = answers.time ?? table.said.time;
  const timing =
    saidTime && table.form !== 'date' && table.form !== 'three' ? { unit: saidTime } : guessTime(taken, table.form);
  const curve = curveIn(taken, table, {
    perUnit_s: seconds[timing.unit],
    celsius: (value) => toCelsius(value, degrees.unit),
  });
  return {
    ok: true,
    curve,
    columns: table.columns,
    notes: notesOf(taken, table, curve),
    questions: [
      ...questionOf(degrees),
      ...questionOf(timing),
      ...(table.doubt && !answers.columns ? [{ code: table.doubt, columns: table.columns }] : []),
    ],
  };
}

const faulty = (fault: LoggerFault): LoggerResult => ({ ok: false, fault });

function questionOf(guessed: { readonly question?: LoggerQuestion }): readonly LoggerQuestion[] {
  return guessed.question === undefined ? [] : [guessed.question];
}

interface InSI {
  readonly perUnit_s: number;
  readonly celsius: (value: number) => number;
}

function curveIn({ rows, count, holes }: Taken, { columns }: Table, { perUnit_s, celsius }: InSI): LoggerCurve {
  const start = rows[0]?.time ?? 0;
  const time_s = (raw: number): number => rounded((raw - start) * perUnit_s);
  const line = (i: number): readonly (number | null)[] =>
    rows.map(({ values }) => {
      const value = values[i] ?? null;
      return value === null ? null : rounded(celsius(value));
    });
  const beltAt = columns.bottom === undefined ? 1 : 2;
  return {
    times_s: rows.map(({ time }) => time_s(time)),
    top_degC: line(0),
    ...(columns.bottom !== undefined && { bottom_degC: line(1) }),
    ...(columns.belt !== undefined && { belt_degC: line(beltAt) }),
    rows: count,
    gaps: holes
      .map(({ from, to }) => ({ from_s: time_s(from), to_s: time_s(to) }))
      .filter(({ from_s, to_s }) => to_s - from_s > gap_s),
  };
}

/** A millionth is finer than any logger; it takes off what binary fractions add. */
function rounded(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}

function notesOf(
  { rows, count, repeated, sameTime, missing }: Taken,
  { columns }: Table,
  { gaps }: LoggerCurve,
): readonly LoggerNote[] {
  const counted = (code: LoggerNote['code'], { count: n, row }: Counted): readonly LoggerNote[] =>
    n === 0 ? [] : [{ code, row, data: { count: n } }];
  return [
    ...counted('rows-repeated', repeated),
    ...counted('same-time', sameTime),
    ...counted('cells-missing', missing),
    ...gaps.map(({ from_s, to_s }): LoggerNote => ({ code: 'gap', data: { from_s, to_s, length_s: to_s - from_s } })),
    ...(columns.bottom === undefined ? [{ code: 'one-sensor' as const, data: {} }] : []),
    ...(rows.length < count ? [{ code: 'thinned' as const, data: { count, kept: rows.length } }] : []),
  ];
}
