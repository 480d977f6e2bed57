import { bytesToHex, concatBytes, hexToBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from './canonical.ts';
import { signatureIsStrict } from './strict-signature.ts';

/** Signs a message with a key that never leaves its place. */
export type Sign = (message: Uint8Array) => Promise<Uint8Array>;

/** Tells whether a signature of 64 bytes belongs to a message and a public key. */
export type Verify = (message: Uint8Array, signature: Uint8Array, publicKey: Uint8Array) => Promise<boolean>;

/** What is signed; the word goes in front of it, so that a signature of one kind never passes for another. */
export type Signed = 'event' | 'checkpoint' | 'witness' | 'export';

const contexts: Readonly<Record<Signed, Uint8Array>> = {
  event: utf8ToBytes('splice-record/event/1\0'),
  checkpoint: utf8ToBytes('splice-record/checkpoint/1\0'),
  witness: utf8ToBytes('splice-record/witness/1\0'),
  export: utf8ToBytes('splice-record/export/1\0'),
};

/**
 * The bytes that a signature covers: the word of its kind, a zero byte, the canonical form.
 *
 * @param kind - of what is signed
 * @param entry - canonical form without the field `sig`, as UTF-8
 */
export function messageOf(kind: Signed, entry: Uint8Array): Uint8Array {
  return concatBytes(contexts[kind], entry);
}

/**
 * The signature of a thing, in hex.
 *
 * @param kind - of the thing
 * @param thing - without the field `sig`
 * @param sign - with the key of the device
 */
export async function signatureOf(kind: Signed, thing: object, sign: Sign): Promise<string> {
  return bytesToHex(await sign(messageOf(kind, utf8ToBytes(canonicalText(thing)))));
}

// 128 hex digits carry exactly 512 bits. In an encoding with spare bits some could be flipped unseen.
const signatureForm = /^[0-9a-f]{128}$/;

/** What is needed to check a signature. */
export interface SignatureCheck {
  readonly kind: Signed;
  /** Canonical form without the field `sig`, as UTF-8. */
  readonly entry: Uint8Array;
  readonly sig: unknown;
  readonly publicKey: Uint8Array;
  readonly verify: Verify;
}

/** Whether a signature has the form, is one that every engine judges alike, and belongs to text and key. */
export async function signatureHolds({ kind, entry, sig, publicKey, verify }: SignatureCheck): Promise<boolean> {
  if (typeof sig !== 'string' || !signatureForm.test(sig)) return false;
  const signature = hexToBytes(sig);
  return signatureIsStrict(signature, publicKey) && verify(messageOf(kind, entry), signature, publicKey);
}
