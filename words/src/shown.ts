import type { Language } from './language.ts';
import { numberText } from './number-text.ts';
import { type QuantityKind, type Unit, type UnitSystem, unitTable } from './units.ts';

/** A number with its unit, formatted for one reader: `{ value: "64 302", unit: "mm" }`. */
export interface Shown {
  readonly value: string;
  readonly unit: string;
}

export interface ShowOptions {
  /** Decimals instead of the kind's own. */
  readonly digits?: number;
  /** Write a plus before a positive number. */
  readonly signed?: boolean;
}

/** Who reads: decides words, decimal sign and units. `unitWord` gives the words behind `unit.` symbols. */
export interface Reader {
  readonly language: Language;
  readonly units: UnitSystem;
  unitWord(symbol: string, count: number): string;
}

const clockFrom_s = 180;
const hoursFrom_s = 10_800;
const longestSet_s = 3600;

/** Formats a value given in the kind's inside unit for one reader. */
export function show(reader: Reader, value: number, kind: QuantityKind, options: ShowOptions = {}): Shown {
  return kind === 'time' && options.digits === undefined
    ? showTime(reader, value, options)
    : showIn(reader, value, unitAsked(reader, kind, value, options), options);
}

/** Two bounds in one unit: `90–130`. */
export function showRange(reader: Reader, low: number, high: number, kind: QuantityKind): Shown {
  const unit = unitFor(reader, kind, [low, high]);
  const [from, to] = [low, high].map((bound) => showIn(reader, bound, unit, {}));
  if (from === undefined || to === undefined) return { value: '', unit: '' };
  const value = from.value === to.value ? from.value : `${from.value}–${to.value}`;
  return { value, unit: to.unit };
}

/** A deviation: the offset of a scale does not apply to it (10 degC up is 18 degF up, not 50). */
export function showDeviation(reader: Reader, delta: number, kind: QuantityKind): Shown {
  const unit = { ...unitFor(reader, kind, [delta]), offset: 0 };
  const shown = showIn(reader, Math.abs(delta), unit, {});
  return { value: `±\u00a0${shown.value}`, unit: shown.unit };
}

function showIn(reader: Reader, value: number, unit: Unit, options: ShowOptions): Shown {
  const inUnit = value * unit.factor + unit.offset;
  return {
    value: numberText(inUnit, {
      language: reader.language,
      digits: options.digits ?? unit.digits,
      significant: options.digits === undefined ? unit.significant : 1,
      signed: options.signed ?? false,
    }),
    unit: unit.symbol.startsWith('unit.') ? reader.unitWord(unit.symbol, inUnit) : unit.symbol,
  };
}

/** A time whose decimals somebody asks for is set on a display in seconds; beyond an hour nobody sets it so. */
function unitAsked(reader: Reader, kind: QuantityKind, value: number, { digits }: ShowOptions): Unit {
  const isSet = kind === 'time' && digits !== undefined && Math.abs(value) <= longestSet_s;
  return isSet ? unitTable.time[reader.units] : unitFor(reader, kind, [value]);
}

function unitFor(reader: Reader, kind: QuantityKind, values: readonly number[]): Unit {
  const row = unitTable[kind][reader.units];
  if (kind !== 'time') return row;
  const longest = Math.max(...values.map(Math.abs));
  if (longest < clockFrom_s) return row;
  return longest < hoursFrom_s
    ? { ...row, symbol: 'min', factor: 1 / 60 }
    : { ...row, symbol: 'h', factor: 1 / 3600, digits: 1 };
}

function showTime(reader: Reader, value: number, options: ShowOptions): Shown {
  const seconds = Math.round(Math.abs(value));
  if (!Number.isFinite(value) || seconds < clockFrom_s || seconds >= hoursFrom_s) {
    return showIn(reader, value, unitFor(reader, 'time', [value]), options);
  }
  const clock = `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
  return { value: (value < 0 ? '\u2212' : options.signed ? '+' : '') + clock, unit: 'min' };
}
