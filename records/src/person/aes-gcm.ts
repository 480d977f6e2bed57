import type { PersonCrypto } from './person-vault.ts';

type Bytes = Uint8Array<ArrayBuffer>;
interface Gcm {
  readonly name: 'AES-GCM';
  readonly iv: Bytes;
  readonly additionalData: Bytes;
}

/** The part of WebCrypto that is used. */
export interface SealingSubtle<Key> {
  importKey(
    format: 'raw',
    key: Bytes,
    name: 'AES-GCM',
    extractable: false,
    uses: ('encrypt' | 'decrypt')[],
  ): Promise<Key>;
  encrypt(how: Gcm, key: Key, text: Bytes): Promise<ArrayBuffer>;
  decrypt(how: Gcm, key: Key, sealed: Bytes): Promise<ArrayBuffer>;
}

/**
 * Sealing by WebCrypto.
 *
 * @param crypto - WebCrypto of the shell
 */
export function webPersonCrypto<Key>(crypto: {
  readonly subtle: SealingSubtle<Key>;
  getRandomValues(bytes: Bytes): Bytes;
}): PersonCrypto {
  const keyOf = (key: Uint8Array) =>
    crypto.subtle.importKey('raw', Uint8Array.from(key), 'AES-GCM', false, ['encrypt', 'decrypt']);
  const how = (nonce: Uint8Array, beside: Uint8Array): Gcm => ({
    name: 'AES-GCM',
    iv: Uint8Array.from(nonce),
    additionalData: Uint8Array.from(beside),
  });
  return {
    randomBytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
    seal: async (key, nonce, text, beside) =>
      new Uint8Array(await crypto.subtle.encrypt(how(nonce, beside), await keyOf(key), Uint8Array.from(text))),
    open: async (key, nonce, sealed, beside) =>
      new Uint8Array(await crypto.subtle.decrypt(how(nonce, beside), await keyOf(key), Uint8Array.from(sealed))),
  };
}
