import type { Voice } from '@loopwright/words';
import { ownSources, type PlainThing } from '../../form/entries.ts';
import { choiceWord, fieldLabel } from '../../form/field-words.ts';
import { type FormField, formFields } from '../../form/form-field.ts';
import type { StoreKind } from '../../form/thing-layout.ts';
import { changeTexts } from '../../form/value-text.ts';
import type { WrittenKind } from './keep.ts';

/** One field that a change touched, in the reader's words and units. */
export interface FieldChange {
  readonly label: string;
  /** Empty: it was not there. */
  readonly from: string;
  readonly to: string;
}

const asThing = (value: unknown): PlainThing =>
  typeof value === 'object' && value !== null ? (value as PlainThing) : {};

/**
 * What differs between a thing before and after a change.
 *
 * @param voice - of the reader
 * @param kind - of the thing
 * @param before - the thing, or nothing
 * @param after - the thing, or nothing
 */
export function thingChanges(voice: Voice, kind: WrittenKind, before: unknown, after: unknown): readonly FieldChange[] {
  const [was, is] = [asThing(before), asThing(after)];
  if (kind === 'plant') return nameChange(voice, was, is);
  const fields = formFields(kind);
  const values = fields.flatMap((field): FieldChange[] => {
    if (was[field.key] === is[field.key]) return [];
    const [from, to] = changeTexts(voice, kind, field, was[field.key], is[field.key]);
    return [{ label: fieldLabel(voice, kind, field.name), from, to }];
  });
  return [...values, ...sourceChanges(voice, kind, fields, was, is)];
}

function nameChange(voice: Voice, was: PlainThing, is: PlainThing): readonly FieldChange[] {
  const [from, to] = [asText(was['name']) ?? '', asText(is['name']) ?? ''];
  return from === to ? [] : [{ label: voice.say('store.plant-name'), from, to }];
}

function sourceChanges(
  voice: Voice,
  kind: StoreKind,
  fields: readonly FormField[],
  was: PlainThing,
  is: PlainThing,
): readonly FieldChange[] {
  const [before, after] = [ownSources(was), ownSources(is)];
  const word = (source: string | undefined) => (source === undefined ? '' : choiceWord(voice, 'source', source));
  return fields
    .filter(({ key }) => before[key] !== after[key])
    .map(({ key, name }) => ({
      label: voice.say('stores.source-of', { field: fieldLabel(voice, kind, name) }),
      from: word(before[key] ?? asText(was['source'])),
      to: word(after[key] ?? asText(is['source'])),
    }))
    .filter(({ from, to }) => from !== to);
}

const asText = (value: unknown) => (typeof value === 'string' ? value : undefined);
