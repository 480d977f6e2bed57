import { IntlMessageFormat } from 'intl-messageformat';
import { dayText, momentText } from './calendar.ts';
import type { Language } from './language.ts';
import { listText } from './list-text.ts';
import { catalogues, type MessageKey } from './messages/index.ts';
import { numberText } from './number-text.ts';
import { type Reader, type Shown, type ShowOptions, show, showDeviation, showRange } from './shown.ts';
import type { QuantityKind, UnitSystem } from './units.ts';

/** Values of a sentence. Numbers that carry a unit come already formatted, as text. */
export type Params = Readonly<Record<string, string | number | boolean>>;

/** How one reader is spoken to: language and units. */
export interface Voice {
  readonly language: Language;
  readonly units: UnitSystem;
  /** A sentence of the catalogue with its values in place. */
  say(key: MessageKey, params?: Params): string;
  /** True for a key of the catalogue; for keys made from codes that may be newer than the catalogue. */
  has(key: string): key is MessageKey;
  /** A value in its inside unit, in the reader's unit. */
  show(value: number, kind: QuantityKind, options?: ShowOptions): Shown;
  /** The same as one text, held together by a no-break space: `64 302 mm`. */
  write(value: number, kind: QuantityKind, options?: ShowOptions): string;
  /** `90–130`, in the unit that `show` gives for the upper bound. */
  range(low: number, high: number, kind: QuantityKind): string;
  /** `± 19`. */
  plusMinus(delta: number, kind: QuantityKind): string;
  /** A bare number without unit. */
  number(value: number, digits?: number): string;
  day(iso: string): string;
  moment(iso: string): string;
  list(items: readonly string[]): string;
}

/** The voice for one language and one unit system. */
export function voice(language: Language, units: UnitSystem): Voice {
  const say = (key: MessageKey, params: Params = {}) => sentenceOf(language, key, params);
  const has = (key: string): key is MessageKey => Object.hasOwn(catalogues[language], key);
  const reader: Reader = { language, units, unitWord: (symbol) => (has(symbol) ? say(symbol) : symbol) };
  return {
    language,
    units,
    say,
    has,
    show: (value, kind, options) => show(reader, value, kind, options),
    write: (value, kind, options) => joined(show(reader, value, kind, options)),
    range: (low, high, kind) => showRange(reader, low, high, kind).value,
    plusMinus: (delta, kind) => showDeviation(reader, delta, kind).value,
    number: (value, digits = Number.isInteger(value) ? 0 : 2) => numberText(value, digits, language),
    day: (iso) => dayText(iso, language),
    moment: (iso) => momentText(iso, language),
    list: (items) => listText(items, language),
  };
}

/** Number and unit as one text; a degree sign stands at its number without a space. */
export function joined(shown: Shown): string {
  if (shown.unit === '') return shown.value;
  return shown.unit === '°' ? `${shown.value}°` : `${shown.value}\u00a0${shown.unit}`;
}

const compiled = new Map<string, IntlMessageFormat>();

function sentenceOf(language: Language, key: MessageKey, params: Params): string {
  const id = `${language} ${key}`;
  const message =
    compiled.get(id) ?? new IntlMessageFormat(catalogues[language][key], language, {}, { ignoreTag: true });
  compiled.set(id, message);
  return String(message.format(plainValues(language, params)));
}

// Plural rules want small whole numbers as numbers; every other number is written the reader's way.
function plainValues(language: Language, params: Params): Record<string, string | number> {
  const entries = Object.entries(params).map(([name, value]) => {
    if (typeof value !== 'number') return [name, String(value)] as const;
    const plain = Number.isInteger(value) && Math.abs(value) < 1000;
    return [name, plain ? value : numberText(value, Number.isInteger(value) ? 0 : 2, language)] as const;
  });
  return Object.fromEntries(entries);
}
