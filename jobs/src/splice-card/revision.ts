import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

const crockford = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * Short fingerprint of the inputs of a result: the first 40 bits of the SHA-256 of their canonical JSON (RFC 8785).
 *
 * @param inputs - plain data, finite numbers
 * @returns eight Crockford base-32 characters; same inputs, same text
 */
export function revisionOf(inputs: unknown): string {
  const digest = sha256(utf8ToBytes(canonicalize(inputs) ?? ''));
  let bits = 0n;
  for (const byte of digest.subarray(0, 5)) bits = (bits << 8n) | BigInt(byte);
  let text = '';
  for (let i = 0; i < 8; i += 1) {
    text = (crockford[Number(bits & 31n)] ?? '0') + text;
    bits >>= 5n;
  }
  return text;
}
