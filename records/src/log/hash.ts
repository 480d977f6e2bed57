import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** SHA-256 in lower-case hex; a text is hashed as UTF-8. */
export function sha256Hex(data: Uint8Array | string): string {
  return bytesToHex(sha256(typeof data === 'string' ? utf8ToBytes(data) : data));
}

const hash = /^[0-9a-f]{64}$/;

/** Whether something is a SHA-256 in the form records use: 64 lower-case hex digits. */
export function isHash(value: unknown): value is string {
  return typeof value === 'string' && hash.test(value);
}
