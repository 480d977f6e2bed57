import { type ArgumentUse, argumentsOf, compileMessage } from './arguments-of.ts';
import { dayText, momentText } from './calendar.ts';
import type { Language } from './language.ts';
import { listText } from './list-text.ts';
import type { Catalogue, MessageKey } from './messages/en.ts';
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

interface Reading {
  readonly language: Language;
  readonly units: UnitSystem;
  /** The sentences of that language as far as they are there; of those that are still being fetched nothing is said. */
  readonly sentences: () => Partial<Catalogue>;
}

/** The voice for one language, whose sentences are given, and one unit system. */
export function speak({ language, units, sentences }: Reading): Voice {
  const say = (key: MessageKey, params: Params = {}) => sentenceOf(sentences()[key], language, params);
  const has = (key: string): key is MessageKey => Object.hasOwn(sentences(), key);
  const reader: Reader = {
    language,
    units,
    unitWord: (symbol, count) => (has(symbol) ? say(symbol, { count }) : symbol),
  };
  return {
    language,
    units,
    say,
    has,
    show: (value, kind, options) => show(reader, value, kind, options),
    write: (value, kind, options) => joined(show(reader, value, kind, options)),
    range: (low, high, kind) => showRange(reader, low, high, kind).value,
    plusMinus: (delta, kind) => showDeviation(reader, delta, kind).value,
    number: (value, digits = Number.isInteger(value) ? 0 : 2) => numberText(value, { language, digits }),
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

interface Compiled {
  readonly format: ReturnType<typeof compileMessage>;
  readonly uses: ReadonlyMap<string, ArgumentUse>;
}
const compiled = new Map<string, Compiled>();

/** Signs with a meaning in a message; most messages have none and are said as they stand. */
const signs = /[{}'#]/;

function compiledMessage(text: string, language: Language): Compiled {
  const id = `${language} ${text}`;
  const known = compiled.get(id);
  if (known !== undefined) return known;
  const format = compileMessage(text, language);
  const fresh = { format, uses: argumentsOf(format) };
  compiled.set(id, fresh);
  return fresh;
}

function sentenceOf(text: string | undefined, language: Language, params: Params): string {
  if (text === undefined) return '';
  if (!signs.test(text)) return text;
  const { format, uses } = compiledMessage(text, language);
  return String(format.format(plainValues(language, params, uses)));
}

// A value nobody knows reads as a dash, or takes the variant `none`: a card with a gap beats no card at night.
function plainValues(language: Language, params: Params, uses: Compiled['uses']): Record<string, string | number> {
  const entries = [...uses].map(([name, use]) => {
    const value = Object.hasOwn(params, name) ? params[name] : undefined;
    if (value === undefined) return [name, use === 'select' ? 'none' : '–'] as const;
    if (use === 'plural') return [name, Number(value)] as const;
    return [name, typeof value === 'number' ? numberParam(language, value) : String(value)] as const;
  });
  return Object.fromEntries(entries);
}

const numberParam = (language: Language, value: number) =>
  numberText(value, { language, digits: Number.isInteger(value) ? 0 : 2 });
