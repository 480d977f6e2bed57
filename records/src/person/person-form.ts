import { bytesToHex, concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import type { AnyEvent } from '../event.ts';
import { isHash, sha256Hex } from '../log/hash.ts';

/** Length of a salt [bytes]. Without it a commitment to a name could be found by trying names. */
export const salt_bytes = 32;

/**
 * What the log holds in place of a text about a person: SHA-256(salt ‖ text). Who has salt and text can show that it is
 * the one meant; who has neither learns nothing, and cannot find it by guessing.
 *
 * @param salt - 32 random bytes, kept outside the log
 * @param text - name or note, hashed as UTF-8
 */
export function commitment(salt: Uint8Array, text: string): string {
  return sha256Hex(concatBytes(salt, utf8ToBytes(text)));
}

/** Says that something is known about a person; the log holds alias and commitment only. */
export interface PersonNoted extends AnyEvent {
  readonly type: 'person.noted';
  readonly body: { readonly schema: 1; readonly thing: { readonly alias: string; readonly commitment: string } };
}

/** Says that what was known about a person is gone for good. */
export interface PersonErased extends AnyEvent {
  readonly type: 'person.erased';
  readonly body: { readonly schema: 1; readonly thing: { readonly alias: string } };
}

/** Whether a type is one of an event about a person. */
export function isPersonType(type: string): boolean {
  return type === 'person.noted' || type === 'person.erased';
}

export function personNoted(alias: string, committed: string): PersonNoted {
  return { type: 'person.noted', body: { schema: 1, thing: { alias, commitment: committed } } };
}

export function personErased(alias: string): PersonErased {
  return { type: 'person.erased', body: { schema: 1, thing: { alias } } };
}

/** An alias that says nothing of whom it stands for: 128 random bits. */
export function newAlias(randomBytes: (count: number) => Uint8Array): string {
  return bytesToHex(randomBytes(16));
}

/** What the log says of persons. */
export interface PersonsInLog {
  /** By alias: commitments in the order in which they came. */
  readonly commitments: ReadonlyMap<string, readonly string[]>;
  /** Aliases whose persons were erased. */
  readonly erased: ReadonlySet<string>;
}

/**
 * What events say of persons. Erasing is for good: what comes after it from a device that did not know yet stays a
 * commitment that nobody can open, and the person stays erased.
 *
 * @param events - of all devices, in the order of folding; nothing is taken for granted of them
 */
export function personsIn(events: Iterable<AnyEvent>): PersonsInLog {
  const commitments = new Map<string, string[]>();
  const erased = new Set<string>();
  for (const { type, body } of events) {
    const thing = thingOf(body);
    if (typeof thing?.['alias'] !== 'string') continue;
    const { alias, commitment: committed } = thing as { alias: string; commitment?: unknown };
    if (type === 'person.erased') erased.add(alias);
    if (type === 'person.noted' && isHash(committed))
      commitments.set(alias, [...(commitments.get(alias) ?? []), committed]);
  }
  return { commitments, erased };
}

function thingOf(body: unknown): Readonly<Record<string, unknown>> | undefined {
  if (typeof body !== 'object' || body === null || !('schema' in body) || body.schema !== 1) return undefined;
  if (!('thing' in body) || typeof body.thing !== 'object' || body.thing === null) return undefined;
  return body.thing as Readonly<Record<string, unknown>>;
}
