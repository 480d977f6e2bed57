import type { PlainThing } from './entries.ts';
import type { StoreKind } from './thing-layout.ts';

/** What a thing is called in a list: its short name, and the name people gave it. */
export function titleOf(kind: StoreKind, thing: PlainThing): string {
  const name = thing[kind === 'badges' ? 'word' : 'name'];
  const id = String(thing['id']);
  return typeof name === 'string' && name !== '' ? `${id} ${name}` : id;
}
