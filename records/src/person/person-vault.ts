import { Refusal } from '@loopwright/engine/refusal';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { textOfUtf8 } from '../log/strict-json.ts';
import {
  commitment,
  newAlias,
  type PersonErased,
  type PersonNoted,
  type PersonsInLog,
  personErased,
  personNoted,
  salt_bytes,
} from './person-form.ts';

/** Randomness and AES-256-GCM of the shell; handed in, so that this package needs no browser and no Node. */
export interface PersonCrypto {
  readonly randomBytes: (count: number) => Uint8Array;
  /** With the tag behind the text, as WebCrypto gives it. */
  readonly seal: (key: Uint8Array, nonce: Uint8Array, text: Uint8Array, beside: Uint8Array) => Promise<Uint8Array>;
  /** Rejects where key, nonce, `beside` or a bit of the text is another. */
  readonly open: (key: Uint8Array, nonce: Uint8Array, sealed: Uint8Array, beside: Uint8Array) => Promise<Uint8Array>;
}

/** A text about a person, sealed; the log holds its commitment. */
export interface SealedText {
  readonly commitment: string;
  readonly salt: Uint8Array;
  readonly nonce: Uint8Array;
  readonly sealed: Uint8Array;
}

/** Everything outside the log about one person of one plant. The key seals nothing else. */
export interface PersonRow {
  readonly plant: string;
  readonly alias: string;
  readonly key: Uint8Array;
  readonly texts: readonly SealedText[];
}

/** Where rows about persons lie: apart from the log, in no export, in backups for thirty days at most. */
export interface PersonStore {
  get(plant: string, alias: string): Promise<PersonRow | undefined>;
  put(row: PersonRow): Promise<void>;
  /** Resolves when key, salts, texts and alias are off the disk. */
  destroy(plant: string, alias: string): Promise<void>;
}

export interface PersonKeeping {
  readonly plant: string;
  readonly store: PersonStore;
  readonly crypto: PersonCrypto;
}

const [key_bytes, nonce_bytes] = [32, 12];

/**
 * Keeps a text about a person outside the log.
 *
 * @param keeping - of which plant, where, and with what
 * @param text - name or note
 * @param alias - of the person; a new one without it
 * @returns the event to append once this has resolved, and the alias
 * @throws Refusal `empty`
 */
export async function notePerson(
  { plant, store, crypto }: PersonKeeping,
  text: string,
  alias = newAlias(crypto.randomBytes),
): Promise<{ readonly alias: string; readonly event: PersonNoted }> {
  if (text.trim() === '') throw new Refusal('empty', 'text', {});
  const row = (await store.get(plant, alias)) ?? { plant, alias, key: crypto.randomBytes(key_bytes), texts: [] };
  const [salt, nonce] = [crypto.randomBytes(salt_bytes), crypto.randomBytes(nonce_bytes)];
  const committed = commitment(salt, text);
  const sealed = await crypto.seal(row.key, nonce, utf8ToBytes(text), placeOf(plant, alias, committed));
  await store.put({ ...row, texts: [...row.texts, { commitment: committed, salt, nonce, sealed }] });
  return { alias, event: personNoted(alias, committed) };
}

/** What can be said of a person: the texts that log and store agree on, that they were erased, or nothing. */
export type PersonKnown =
  | { readonly is: 'known'; readonly texts: readonly string[] }
  | { readonly is: 'erased' }
  /** The log speaks of them and this device has no texts, or other ones than were committed to. */
  | { readonly is: 'not-here' };

/**
 * What is known about a person.
 *
 * @param keeping - of which plant, where, and with what
 * @param alias - of the person
 * @param log - what the log says of persons
 */
export async function readPerson(
  { plant, store, crypto }: PersonKeeping,
  alias: string,
  log: PersonsInLog,
): Promise<PersonKnown> {
  if (log.erased.has(alias)) return { is: 'erased' };
  const row = await store.get(plant, alias);
  const committed = log.commitments.get(alias) ?? [];
  const texts: string[] = [];
  for (const each of row?.texts ?? []) {
    const text = committed.includes(each.commitment) ? await opened(each, row, crypto) : undefined;
    if (text !== undefined) texts.push(text);
  }
  return texts.length === 0 ? { is: 'not-here' } : { is: 'known', texts };
}

/**
 * Erases a person: key, salts, texts and alias are destroyed, and the log says so. Its chain still holds, since it never
 * held anything else than the commitments, which nobody can open now.
 *
 * @param keeping - of which plant, and where
 * @param alias - of the person
 * @returns the event to append once this has resolved
 */
export async function erasePerson(
  { plant, store }: Pick<PersonKeeping, 'plant' | 'store'>,
  alias: string,
): Promise<PersonErased> {
  await store.destroy(plant, alias);
  return personErased(alias);
}

async function opened(
  { nonce, sealed, salt, commitment: committed }: SealedText,
  row: PersonRow | undefined,
  crypto: PersonCrypto,
): Promise<string | undefined> {
  if (row === undefined) return undefined;
  try {
    const beside = placeOf(row.plant, row.alias, committed);
    const text = textOfUtf8(await crypto.open(row.key, nonce, sealed, beside));
    return text !== undefined && commitment(salt, text) === committed ? text : undefined;
  } catch {
    return undefined;
  }
}

/** What a sealed text belongs to: moved to another person, plant or commitment it does not open. */
function placeOf(plant: string, alias: string, committed: string): Uint8Array {
  return utf8ToBytes(`splice-record/person/1\0${plant}\0${alias}\0${committed}`);
}
