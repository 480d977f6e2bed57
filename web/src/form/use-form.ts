import type { Plant } from '@loopwright/plant';
import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import { useBusy } from '../offline/busy.ts';
import { useSpeech } from '../speech/use-speech.tsx';
import { draftName, dropDraft, keepDraft, readDraft } from './draft-store.ts';
import {
  type Entries,
  type Entry,
  keptEntries,
  newEntries,
  type PlainThing,
  shownText,
  type Writer,
} from './entries.ts';
import { type Findings, findingsOf } from './findings.ts';
import { type FormField, formFields } from './form-field.ts';
import { type FormReading, readEntries } from './read-entries.ts';
import { type StoreKind, thingLayouts } from './thing-layout.ts';

export interface FormState {
  readonly fields: readonly FormField[];
  readonly original: PlainThing | undefined;
  /** The entry of a field; an empty one where the draft knows nothing of it. */
  entry(field: FormField): Entry;
  text(field: FormField): string;
  readonly reading: FormReading;
  readonly findings: Findings;
  /** The same for what stands in the form this moment, not a moment ago. */
  findingsNow(): Findings;
  /** Whether anything differs from what is saved. */
  readonly changed: boolean;
  /** Whether what differs outlives a reload; undefined while nothing differs. */
  readonly draftKept: boolean | undefined;
  /** Whether the thing was changed elsewhere while the form was open. */
  readonly overtaken: boolean;
  change(field: FormField, entry: Entry): void;
  /** Forgets what is not saved. */
  discard(): void;
}

const noFindings: Findings = { errors: [], cares: [] };
const nothing: Entry = { text: '' };

/**
 * A form of one thing: what is typed, read as one types, held against the plant, and kept as a draft.
 *
 * @param plant - as it stands
 * @param kind - of the thing
 * @param id - of the thing; undefined for a new one
 * @param proposed - what stands in the form of a new thing
 */
export function useForm(plant: Plant, kind: StoreKind, id: string | undefined, proposed: PlainThing): FormState {
  const writer = useSpeech();
  const { language, units } = writer;
  const fields = useMemo(() => formFields(kind), [kind]);
  const original: PlainThing | undefined = id === undefined ? undefined : plant[kind][id];
  const name = draftName(plant.id, kind, id);
  const [draft] = useState(() => readDraft(name));
  const [opened, setOpened] = useState(draft?.original ?? original);
  const [typed, setTyped] = useState<Entries>(draft?.entries ?? {});
  const fresh = useMemo(
    () =>
      original === undefined ? newEntries(kind, fields, proposed, units) : keptEntries(kind, fields, original, units),
    [kind, fields, original, proposed, units],
  );
  const entries = useMemo(() => ({ ...fresh, ...typed }), [fresh, typed]);
  const changed = useMemo(() => Object.keys(typed).some((key) => differs(typed[key], fresh[key])), [typed, fresh]);
  useBusy(changed);
  const draftKept = useDraft(name, changed, typed, opened);
  const reading = useMemo(
    () =>
      readEntries(kind, fields, entries, {
        language,
        original,
        exists: (other, otherId) => Object.hasOwn(Reflect.get(plant, other) ?? {}, otherId),
        now: new Date().toISOString(),
      }),
    [kind, fields, entries, language, original, plant],
  );
  const checked = useFindings(plant, kind, reading.thing);
  return {
    fields,
    original,
    entry: (field) => entries[field.key] ?? nothing,
    text: (field) => shownText(field, entries[field.key] ?? nothing, original, writer),
    reading,
    ...checked,
    changed,
    draftKept,
    overtaken: changed && opened !== undefined && JSON.stringify(opened) !== JSON.stringify(original),
    change: (field, entry) => {
      const next = keptAgain(field, entry, original, writer);
      setTyped((now) => withId(kind, fields, { ...fresh, ...now }, { ...now, [field.key]: next }));
    },
    discard: () => {
      dropDraft(name);
      setTyped({});
      setOpened(original);
    },
  };
}

/** A unit is a way of reading, not a change. */
function differs(typed: Entry | undefined, fresh: Entry | undefined): boolean {
  const { unit: _, ...one } = typed ?? nothing;
  const { unit: __, ...other } = fresh ?? nothing;
  return one.text !== other.text || one.kept !== other.kept || one.source !== other.source;
}

/** Typed back to what stood there: then it stands as it was, to the last digit. */
function keptAgain(field: FormField, entry: Entry, original: PlainThing | undefined, writer: Writer): Entry {
  const kept: Entry = { ...entry, text: '', kept: true };
  return original !== undefined && entry.text === shownText(field, kept, original, writer) ? kept : entry;
}

/** Keeps what is typed on this device; tells whether that worked. */
function useDraft(name: string, changed: boolean, entries: Entries, original: PlainThing | undefined) {
  const [isKept, setKept] = useState<boolean>();
  useEffect(() => {
    setKept(changed ? keepDraft(name, { entries, ...(original === undefined ? {} : { original }) }) : undefined);
  }, [name, changed, entries, original]);
  return isKept;
}

/** Held against the plant a moment after the typing, so that typing stays quick. */
function useFindings(plant: Plant, kind: StoreKind, thing: PlainThing | undefined) {
  const late = useDeferredValue(thing);
  const findings = useMemo(() => held(plant, kind, late), [plant, kind, late]);
  return { findings, findingsNow: () => (thing === late ? findings : held(plant, kind, thing)) };
}

function held(plant: Plant, kind: StoreKind, thing: PlainThing | undefined): Findings {
  return thing === undefined ? noFindings : findingsOf(plant, kind, thing);
}

/** Makes the short name out of other fields until somebody types one. */
function withId(kind: StoreKind, fields: readonly FormField[], before: Entries, typed: Entries): Entries {
  const parts = thingLayouts[kind].idFrom;
  const own = before['id'];
  if (parts === undefined || own === undefined || own.kept === true) return typed;
  const made = (entries: Entries) =>
    parts.map((part) => entries[fields.find(({ name }) => name === part)?.key ?? part]?.text ?? '').join('-');
  const isOurs = own.text === '' || own.text === made(before);
  const next = made({ ...before, ...typed });
  const ready = !next.split('-').includes('') && isOurs && typed['id']?.text === before['id']?.text;
  return ready ? { ...typed, id: { text: next } } : typed;
}
