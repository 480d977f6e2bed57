import { fromInside, type Kind, type Source, sources, thingSchemas, toInside } from '@loopwright/plant';
import type { Language } from '@loopwright/words';
import { isAhead } from './day-ahead.ts';
import { type Entries, type Entry, ownSources, type PlainThing } from './entries.ts';
import { type FormField, hasSource } from './form-field.ts';
import { readTypedNumber } from './read-number.ts';
import { unitNamed } from './unit-choice.ts';

/** What is wrong with one field: a code with its sentence, and the numbers of the sentence in the unit typed in. */
export interface EntryProblem {
  readonly code: string;
  readonly data: Readonly<Record<string, string | number>>;
}

type ReadEntry = { readonly value: unknown } | EntryProblem;

/** A conversion may miss a limit by a rounding; nobody meant that. */
const rounding = 1e-12;

export interface EntryContext {
  readonly language: Language;
  /** The thing as it stood when the form was opened; absent for a new one. */
  readonly original: PlainThing | undefined;
  /** Whether a thing of this kind has this id. */
  exists(kind: string, id: string): boolean;
  /** The moment, in UTC: what a form asks a day of has happened. Left out, no day is refused. */
  readonly now?: string;
}

/**
 * Reads one field of a form.
 *
 * @param kind - of the thing
 * @param field - of its schema
 * @param entry - what stands in the form
 * @param context - language, the thing before, other things
 * @returns the value inside, undefined for nothing said; or the problem
 */
export function readEntry(kind: Kind, field: FormField, entry: Entry, context: EntryContext): ReadEntry {
  const { original } = context;
  if (entry.kept === true && original !== undefined) return { value: original[field.key] };
  const text = entry.text.trim();
  if (text === '') return field.required ? { code: 'entry-missing', data: {} } : { value: undefined };
  if (field.asked === 'number') return readNumberEntry(field, entry, context.language);
  if (field.asked === 'choice') return { value: field.form === 'number' ? Number(text) : text };
  if (field.asked === 'yes-no') return { value: text === 'yes' };
  return readText(kind, field, text, context);
}

function readText(kind: Kind, field: FormField, text: string, { original, exists, now }: EntryContext): ReadEntry {
  const value = text.normalize('NFC');
  const { maxLength = Number.POSITIVE_INFINITY, to } = field;
  if (value.length > maxLength) return { code: 'entry-too-long', data: { length: value.length, max: maxLength } };
  if (hiddenSigns.test(value)) return { code: 'entry-hidden-signs', data: {} };
  if (to !== undefined && !exists(to, value)) return { code: 'entry-not-there', data: { value } };
  const schema = Reflect.get(thingSchemas[kind].shape, field.key);
  if (!schema.safeParse(value).success) return { code: notAsAsked(field), data: { value } };
  if (field.asked === 'day' && now !== undefined && isAhead(value, now)) {
    return { code: 'entry-day-ahead', data: { day: value } };
  }
  if (field.asked === 'id' && original === undefined && exists(kind, value)) {
    return { code: 'entry-taken', data: { value } };
  }
  return { value };
}

function notAsAsked({ asked }: FormField): string {
  if (asked === 'day') return 'entry-not-day';
  return asked === 'moment' ? 'entry-not-moment' : 'entry-not-id';
}

// Signs without a shape of their own can turn a name round or make two names look alike.
export const hiddenSigns = /(?![\u200c\u200d])[\p{Cc}\p{Cf}\u2028\u2029]/u;

function readNumberEntry(field: FormField, entry: Entry, language: Language): ReadEntry {
  const read = readTypedNumber(entry.text, language);
  if ('code' in read) return { code: read.code, data: { value: entry.text.trim() } };
  const unit = unitNamed(field, entry.unit, 'metric');
  const value = unit === undefined ? read.value : toInside(read.value, unit);
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = field;
  const slack = (limit: number) => rounding * Math.max(1e-3, Math.abs(limit));
  if (value < min && value >= min - slack(min)) return { value: min };
  if (value > max && value <= max + slack(max)) return { value: max };
  if (value >= min && value <= max) return { value };
  const asTyped = (limit: number) => (unit === undefined ? limit : fromInside(limit, unit));
  const limits = {
    ...(field.min === undefined ? {} : { min: readableLimit(asTyped(min), Math.ceil) }),
    ...(field.max === undefined ? {} : { max: readableLimit(asTyped(max), Math.floor) }),
  };
  return { code: 'entry-out-of-range', data: { value: read.value, ...limits, ...(unit ? { unit: unit.unit } : {}) } };
}

/** A limit to four digits, rounded to the side that is allowed: what the sentence names can be entered. */
function readableLimit(limit: number, inward: (value: number) => number): number {
  if (limit === 0) return 0;
  const exact = Number(limit.toPrecision(12));
  const decimals = Math.max(0, 3 - Math.floor(Math.log10(Math.abs(exact))));
  const scale = 10 ** decimals;
  return Number((inward(Number((exact * scale).toPrecision(12))) / scale).toPrecision(12));
}

/** A form read whole: the thing, when nothing is wrong with it; and what is wrong, by the key of the field. */
export interface FormReading {
  readonly thing: PlainThing | undefined;
  readonly problems: Readonly<Record<string, EntryProblem>>;
}

/** Reads every field of a form and makes the thing of it. */
export function readEntries(
  kind: Kind,
  fields: readonly FormField[],
  entries: Entries,
  context: EntryContext,
): FormReading {
  const thing: Record<string, unknown> = {};
  const problems: Record<string, EntryProblem> = {};
  for (const field of fields) {
    const read = readEntry(kind, field, entries[field.key] ?? { text: '' }, context);
    if ('code' in read) problems[field.key] = read;
    else if (read.value !== undefined) thing[field.key] = read.value;
  }
  if (Object.keys(problems).length > 0) return { thing: undefined, problems };
  const parsed = thingSchemas[kind].safeParse({ ...thing, ...sourcesOf(fields, entries, context) });
  if (parsed.success) return { thing: parsed.data as PlainThing, problems };
  const key = String(parsed.error.issues[0]?.path[0] ?? 'id');
  return { thing: undefined, problems: { [key]: { code: 'entry-refused', data: {} } } };
}

/**
 * The sources of single fields. A number that nobody entered and that stands at the usual value is an example of
 * ours, whatever the rest comes from.
 */
function sourcesOf(fields: readonly FormField[], entries: Entries, { original }: EntryContext): PlainThing {
  const source = entries['source'];
  const all = source?.kept === true && original !== undefined ? original['source'] : source?.text;
  const known = new Set(fields.map(({ key }) => key));
  const foreign = Object.entries(ownSources(original ?? {})).filter(([key]) => !known.has(key));
  const own = fields.flatMap((field): [string, Source][] => {
    const source = sourceOfEntry(field, entries[field.key], original);
    return source === undefined || source === all ? [] : [[field.key, source]];
  });
  const found = Object.fromEntries([...foreign, ...own]);
  return Object.keys(found).length === 0 ? {} : { sources: found };
}

function sourceOfEntry(
  field: FormField,
  entry: Entry | undefined,
  original: PlainThing | undefined,
): Source | undefined {
  if (!hasSource(field)) return undefined;
  const kept = entry?.kept === true && original !== undefined;
  const nothing = kept ? original[field.key] === undefined : (entry?.text ?? '').trim() === '';
  if (nothing) return typeof field.byDefault === 'number' ? 'example' : undefined;
  return sources.find((source) => source === entry?.source);
}
