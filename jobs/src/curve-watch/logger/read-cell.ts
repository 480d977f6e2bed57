import type { TemperatureUnit } from './logger-codes.ts';

/** What loggers write where a sensor gave nothing. */
const missing = /^(-+|n\/?a|nan|null|ol|open|err(or)?|\*+)?$/i;
const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;
const withUnit = /^(.*?)\s*(?:°|º|\uFFFD|deg)?\s*([CFK])$/i;

/**
 * Reads a cell as a plain number.
 *
 * @param cell - trimmed
 * @param decimal - sign before the decimals
 * @returns the number; undefined when it is none
 */
export function readNumber(cell: string, decimal: '.' | ','): number | undefined {
  const plain = decimal === ',' ? cell.replace(',', '.') : cell;
  const text = plain.startsWith('\u2212') ? `-${plain.slice(1)}` : plain;
  return number.test(text) ? Number(text) : undefined;
}

/**
 * Reads a cell as a temperature, with its unit behind it or without.
 *
 * @param cell - as it stands
 * @param decimal - sign before the decimals
 * @returns the number; null where the sensor gave nothing; undefined when it is neither
 */
export function readTemperature(cell: string, decimal: '.' | ','): number | null | undefined {
  const text = cell.trim();
  const value = readNumber(text, decimal);
  if (value !== undefined) return value;
  if (missing.test(text)) return null;
  return readNumber(withUnit.exec(text)?.[1] ?? '', decimal);
}

/** The unit that stands in a cell, behind its number. */
export function unitInCell(cell: string): TemperatureUnit | undefined {
  const unit = withUnit.exec(cell.trim())?.[2];
  return unit === undefined ? undefined : unitOf(unit);
}

/** The unit that a letter stands for. */
export function unitOf(letter: string): TemperatureUnit {
  const upper = letter.toUpperCase();
  return upper === 'F' ? 'degF' : upper === 'K' ? 'K' : 'degC';
}

/** How the times of a file are written. `two`: minutes and seconds or hours and minutes. */
export type TimeForm = 'number' | 'two' | 'three' | 'date';

const clock = /^(\d+):(\d{1,2})(?::(\d{1,2}(?:[.,]\d+)?)|([.,]\d+))?\s*([ap])?\.?m?\.?$/i;
const yearFirst =
  /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ]\s*(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?)?\s*(Z|[+-]\d{2}:?\d{2})?$/;
const dayFirst = /^(\d{1,2})\.(\d{1,2})\.(\d{4})\s+(\d{1,2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?$/;
const slashed = /^\d{1,2}\/\d{1,2}\/\d{2,4}\s/;
const half_day_s = 43_200;

/** Whether a cell is a date of which nobody knows what is day and what is month. */
export function hasUnclearDate(cell: string): boolean {
  return slashed.test(cell);
}

/** The form of a time, by its looks; undefined when it is none. */
export function timeForm(cell: string, decimal: '.' | ','): TimeForm | undefined {
  const text = cell.trim();
  if (readNumber(text, decimal) !== undefined) return 'number';
  const match = clock.exec(text);
  if (match !== null) return match[3] === undefined ? 'two' : 'three';
  return dateSeconds(text) === undefined ? undefined : 'date';
}

/**
 * Reads a cell as a time of its form: [s], for `number` and `two` in a unit that is still to be found.
 *
 * @param cell - as it stands
 * @param form - of the column
 * @param decimal - sign before the decimals
 */
export function readTime(cell: string, form: TimeForm, decimal: '.' | ','): number | undefined {
  const text = cell.trim();
  if (form === 'number') return readNumber(text, decimal);
  return form === 'date' ? dateSeconds(text) : clockSeconds(text);
}

function clockSeconds(text: string): number | undefined {
  const match = clock.exec(text);
  if (match === null) return undefined;
  const [, first = '', second = '', third, fraction, half] = match;
  if (third === undefined) return Number(first) * 60 + Number(second) + Number((fraction ?? '0').replace(',', '.'));
  const hours = half === undefined ? Number(first) : Number(first) % 12;
  const seconds = hours * 3600 + Number(second) * 60 + Number(third.replace(',', '.'));
  return half?.toLowerCase() === 'p' ? seconds + half_day_s : seconds;
}

function dateSeconds(text: string): number | undefined {
  const iso = yearFirst.exec(text);
  const parts = iso === null ? dayFirst.exec(text) : iso;
  if (parts === null) return undefined;
  const [, a = '', month = '', c = '', hour = '0', minute = '0', second = '0', zone] = parts;
  const [year, day] = iso === null ? [c, a] : [a, c];
  const whole = Date.UTC(Number(year), Number(month) - 1, Number(day), Number(hour), Number(minute)) / 1000;
  return whole + Number(second.replace(',', '.')) - zoneSeconds(zone);
}

function zoneSeconds(zone: string | undefined): number {
  if (zone === undefined || zone === 'Z') return 0;
  const sign = zone.startsWith('-') ? -1 : 1;
  const digits = zone.replace(/\D/g, '');
  return sign * (Number(digits.slice(0, 2)) * 3600 + Number(digits.slice(2)) * 60);
}
