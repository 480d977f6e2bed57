import { getPublicKey, hashes, sign as nobleSign, Point } from '@noble/ed25519';
import { sha512 } from '@noble/hashes/sha2.js';
import { concatBytes } from '@noble/hashes/utils.js';
import type { Sign, Verify } from './signing.ts';

hashes.sha512 = sha512;

/** A key as a device holds it. */
export interface DeviceKey {
  readonly publicKey: Uint8Array;
  readonly sign: Sign;
  /** True where the key is plain bytes, which whoever reads the device's storage can copy; the device says so. */
  readonly copyable: boolean;
}

const algorithm = 'Ed25519';
type Bytes = Uint8Array<ArrayBuffer>;

/** The part of WebCrypto that is used; handed in, so that this package needs no browser and no Node. */
export interface Subtle<Key> {
  importKey(format: 'raw', bytes: Bytes, name: string, extractable: boolean, uses: ('sign' | 'verify')[]): Promise<Key>;
  exportKey(format: 'raw', key: Key): Promise<ArrayBuffer>;
  sign(name: string, key: Key, message: Bytes): Promise<ArrayBuffer>;
  verify(name: string, key: Key, signature: Bytes, message: Bytes): Promise<boolean>;
}

/** Two halves of a key in WebCrypto; the private one is made not extractable. */
export interface KeyHalves<Key> {
  readonly privateKey: Key;
  readonly publicKey: Key;
}

/**
 * A device's key that lies in WebCrypto.
 *
 * @param subtle - WebCrypto of the shell
 * @param halves - from `generateKey('Ed25519', false, ['sign', 'verify'])`
 */
export async function webCryptoSigner<Key>(subtle: Subtle<Key>, halves: KeyHalves<Key>): Promise<DeviceKey> {
  return {
    publicKey: new Uint8Array(await subtle.exportKey('raw', halves.publicKey)),
    sign: async (message) => new Uint8Array(await subtle.sign(algorithm, halves.privateKey, Uint8Array.from(message))),
    copyable: false,
  };
}

/**
 * Verification by WebCrypto; each public key is imported once.
 *
 * @param subtle - WebCrypto of the shell
 */
export function webCryptoVerifier<Key>(subtle: Subtle<Key>): Verify {
  const imported = new Map<string, Promise<Key>>();
  const keyOf = (publicKey: Uint8Array): Promise<Key> => {
    const name = publicKey.join();
    const known = imported.get(name);
    if (known !== undefined) return known;
    const key = subtle.importKey('raw', Uint8Array.from(publicKey), algorithm, false, ['verify']);
    imported.set(name, key);
    return key;
  };
  return async (message, signature, publicKey) => {
    const key = await keyOf(publicKey).catch(() => undefined);
    // A public key that is no point of the curve has signed nothing.
    if (key === undefined) return false;
    return subtle.verify(algorithm, key, Uint8Array.from(signature), Uint8Array.from(message));
  };
}

/**
 * A device's key as plain bytes, where WebCrypto has no Ed25519.
 *
 * @param secret - 32 random bytes
 */
export function nobleSigner(secret: Uint8Array): DeviceKey {
  return {
    publicKey: getPublicKey(secret),
    sign: async (message) => nobleSign(message, secret),
    copyable: true,
  };
}

/**
 * Verification without WebCrypto: R = SB − kA, compared as bytes. The library's own check multiplies by the cofactor
 * and so takes signatures that WebCrypto refuses; one record must not be whole on one device and broken on another.
 *
 * @source RFC 8032, 5.1.7
 */
export function nobleVerifier(): Verify {
  return async (message, signature, publicKey) => {
    const [r, s] = [signature.subarray(0, 32), signature.subarray(32)];
    try {
      const a = Point.fromBytes(publicKey, false);
      const k = numberOf(sha512(concatBytes(r, publicKey, message))) % Point.CURVE().n;
      const expected = Point.BASE.multiply(numberOf(s), false).subtract(a.multiply(k, false)).toBytes();
      return expected.every((byte, i) => byte === r[i]);
    } catch {
      return false;
    }
  };
}

/** A number from its bytes, lowest first. */
function numberOf(bytes: Uint8Array): bigint {
  return bytes.reduceRight((number, byte) => number * 256n + BigInt(byte), 0n);
}
