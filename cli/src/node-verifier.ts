import { createPublicKey, type KeyObject, verify } from 'node:crypto';
import type { Verify } from '@loopwright/records/log';

// DER of an Ed25519 public key up to the key itself (RFC 8410).
const prefix = Buffer.from('302a300506032b6570032100', 'hex');

/** Verification by this computer's own crypto; each public key is read once. */
export function nodeVerifier(): Verify {
  const known = new Map<string, KeyObject>();
  return async (message, signature, publicKey) => {
    const name = Buffer.from(publicKey).toString('hex');
    const key = known.get(name) ?? readKey(publicKey);
    known.set(name, key);
    return verify(null, message, key, signature);
  };
}

function readKey(publicKey: Uint8Array): KeyObject {
  return createPublicKey({ key: Buffer.concat([prefix, publicKey]), format: 'der', type: 'spki' });
}
