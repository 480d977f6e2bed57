import type { Plant } from '@loopwright/plant';
import type { Voice } from '@loopwright/words';
import type { PlainThing } from '../../form/entries.ts';
import { choiceWord } from '../../form/field-words.ts';
import { formFields } from '../../form/form-field.ts';
import { type StoreKind, storeKinds } from '../../form/thing-layout.ts';
import { type Searchable, searchPositions } from '../lines/search-positions.ts';

/** A thing with its kind and the words it answers to. */
export interface FoundThing extends Searchable {
  readonly kind: StoreKind;
  readonly thing: PlainThing;
}

/** The things of some kinds, ready to be searched in the words of the reader, in the order of the stores. */
export function searchableThings(
  voice: Voice,
  plant: Plant,
  kinds: readonly StoreKind[] = storeKinds,
): readonly FoundThing[] {
  return kinds.flatMap((kind) => {
    const wordsOf = thingWords(voice, kind);
    return Object.values(plant[kind]).map((thing) => ({ kind, thing, id: thing.id, words: wordsOf(thing) }));
  });
}

/** Things that answer to everything typed. */
export function searchThings(things: readonly FoundThing[], typed: string): readonly FoundThing[] {
  return searchPositions(things, typed);
}

/** Every text of a thing, its answers in words, and what its kind is called. */
function thingWords(voice: Voice, kind: StoreKind): (thing: PlainThing) => readonly string[] {
  const fields = formFields(kind).filter(
    ({ asked, name }) => asked !== 'number' && asked !== 'id' && name !== 'source',
  );
  const called = [voice.say(`stores.one.${kind}`), voice.say(`stores.kind.${kind}`)];
  return (thing) => [
    ...called,
    ...fields.flatMap(({ key, name, asked }) => {
      const value = thing[key];
      if (typeof value !== 'string') return [];
      return asked === 'choice' ? [choiceWord(voice, name, value)] : [value];
    }),
  ];
}
