import { type Kind, type Source, sources } from '@loopwright/plant';
import type { Language, UnitSystem } from '@loopwright/words';
import type { FormField } from './form-field.ts';
import { unitNamed } from './unit-choice.ts';
import { rememberedUnit } from './unit-memory.ts';
import { typedNumber } from './write-number.ts';

/** What stands in a field of a form. */
export interface Entry {
  /** As typed, or the answer chosen; empty: nothing said. */
  readonly text: string;
  /** Name of the unit it is typed in. */
  readonly unit?: string;
  /** Where this one number comes from, when not from where all come. */
  readonly source?: Source;
  /** Nobody touched it: the value stands as it was, and `text` says nothing. */
  readonly kept?: boolean;
}

/** Everything in a form, by the key of the field. Plain data: it is kept as a draft. */
export type Entries = Readonly<Record<string, Entry>>;

/** A thing as plain data; fields are read by key. */
export type PlainThing = Readonly<Record<string, unknown>>;

/** Who types: decides marks and units. */
export interface Writer {
  readonly language: Language;
  readonly units: UnitSystem;
}

/** The form of a thing as it stands: nothing touched yet. */
export function keptEntries(kind: Kind, fields: readonly FormField[], thing: PlainThing, units: UnitSystem): Entries {
  const own = ownSources(thing);
  return Object.fromEntries(
    fields.map((field): [string, Entry] => {
      const source = own[field.key];
      return [field.key, { text: '', kept: true, ...unitEntry(kind, field, units), ...(source && { source }) }];
    }),
  );
}

/** The form of a new thing: what is proposed and the usual answers stand in it, numbers wait. */
export function newEntries(kind: Kind, fields: readonly FormField[], proposed: PlainThing, units: UnitSystem): Entries {
  return Object.fromEntries(
    fields.map((field): [string, Entry] => {
      const usual = field.asked === 'choice' || field.asked === 'yes-no' ? field.byDefault : undefined;
      const text = textOf(proposed[field.key] ?? usual, String);
      return [field.key, { text, ...unitEntry(kind, field, units) }];
    }),
  );
}

function unitEntry(kind: Kind, field: FormField, units: UnitSystem): Pick<Entry, 'unit'> {
  const unit = unitNamed(field, rememberedUnit(kind, field.key, units), units);
  return unit === undefined ? {} : { unit: unit.unit };
}

/** What the field shows: as typed, or the value that stands, in the unit chosen. */
export function shownText(field: FormField, entry: Entry, original: PlainThing | undefined, writer: Writer): string {
  if (entry.kept !== true) return entry.text;
  const unit = unitNamed(field, entry.unit, writer.units);
  const write = (value: number) =>
    field.asked === 'number' ? typedNumber(value, unit, writer.language) : String(value);
  return textOf(original?.[field.key], write);
}

function textOf(value: unknown, write: (value: number) => string): string {
  if (typeof value === 'number') return write(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'string' ? value : '';
}

/** The sources of single fields that a thing carries. */
export function ownSources(thing: PlainThing): Readonly<Record<string, Source>> {
  const own = thing['sources'];
  if (typeof own !== 'object' || own === null) return {};
  const known = (source: unknown): source is Source => sources.some((name) => name === source);
  return Object.fromEntries(Object.entries(own).filter((pair): pair is [string, Source] => known(pair[1])));
}
