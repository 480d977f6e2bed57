import { verify as nobleVerify } from '@noble/ed25519';
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { describe, expect, it } from 'vitest';
import {
  nobleSigner,
  nobleVerifier,
  signatureIsStrict,
  type Verify,
  webCryptoSigner,
  webCryptoVerifier,
} from '../../src/log/index.ts';
import { edgeCases } from '../vectors/ed25519-edges.ts';
import { signatures } from '../vectors/rfc-8032.ts';

const { subtle } = globalThis.crypto;
const engines: readonly (readonly [string, Verify])[] = [
  ['WebCrypto', webCryptoVerifier(subtle)],
  ['bundled code', nobleVerifier()],
];
const pkcs8Prefix = hexToBytes('302e020100300506032b657004220420');

async function keyHalves(secret: string, publicKey: string) {
  const pkcs8 = Uint8Array.from([...pkcs8Prefix, ...hexToBytes(secret)]);
  return {
    privateKey: await subtle.importKey('pkcs8', pkcs8, 'Ed25519', false, ['sign']),
    publicKey: await subtle.importKey('raw', Uint8Array.from(hexToBytes(publicKey)), 'Ed25519', true, ['verify']),
  };
}

describe('Ed25519', () => {
  it.each(signatures)('[LOG-20] RFC 8032 7.1 $name: both engines sign as printed', async (vector) => {
    const message = hexToBytes(vector.message);
    const bundled = nobleSigner(hexToBytes(vector.secret));
    expect(bytesToHex(bundled.publicKey)).toBe(vector.publicKey);
    expect(bytesToHex(await bundled.sign(message))).toBe(vector.signature);
    const own = await webCryptoSigner(subtle, await keyHalves(vector.secret, vector.publicKey));
    expect(bytesToHex(own.publicKey)).toBe(vector.publicKey);
    expect(bytesToHex(await own.sign(message))).toBe(vector.signature);
  });

  it.each(engines)(
    '[LOG-20] RFC 8032 7.1: %s takes the printed signatures, and none with a bit changed',
    async (_, verify) => {
      for (const { message, signature, publicKey } of signatures) {
        const [text, sig, key] = [hexToBytes(message), hexToBytes(signature), hexToBytes(publicKey)];
        expect(await verify(text, sig, key)).toBe(true);
        for (const bit of [0, 77, 255, 256, 300, 511]) {
          const changed = Uint8Array.from(sig);
          changed[bit >> 3] = (changed[bit >> 3] ?? 0) ^ (1 << (bit & 7));
          expect(await verify(text, changed, key)).toBe(false);
        }
        expect(await verify(Uint8Array.of(...text, 0), sig, key)).toBe(false);
      }
    },
  );

  it('[LOG-21] a key of WebCrypto cannot be copied; one of plain bytes says that it can', async () => {
    const halves = (await subtle.generateKey('Ed25519', false, ['sign', 'verify'])) as CryptoKeyPair;
    expect((await webCryptoSigner(subtle, halves)).copyable).toBe(false);
    await expect(subtle.exportKey('pkcs8', halves.privateKey)).rejects.toThrow();
    expect(nobleSigner(hexToBytes(signatures[0].secret)).copyable).toBe(true);
  });

  it('[LOG-20] a public key that is no point has signed nothing', async () => {
    const [{ message, signature }] = signatures;
    const noPoint = Uint8Array.of(2, ...new Uint8Array(31));
    for (const [, verify] of engines)
      expect(await verify(hexToBytes(message), hexToBytes(signature), noPoint)).toBe(false);
  });

  it.each(edgeCases)(
    '[LOG-22] $what: one answer from every engine',
    async ({ message, publicKey, signature, accepted }) => {
      const [text, sig, key] = [hexToBytes(message), hexToBytes(signature), hexToBytes(publicKey)];
      for (const [name, verify] of engines) {
        const held = signatureIsStrict(sig, key) && (await verify(text, sig, key));
        expect(held, name).toBe(accepted);
      }
    },
  );

  it('[LOG-22] the bundled library by itself would take what WebCrypto refuses', () => {
    // This is why verification does not rest on its own check.
    const cofactor = edgeCases[4];
    if (cofactor === undefined) throw new Error('no such case');
    const { signature, message, publicKey } = cofactor;
    expect(nobleVerify(hexToBytes(signature), hexToBytes(message), hexToBytes(publicKey))).toBe(true);
  });

  it('[LOG-22] S is below the order, to the last bit', () => {
    const order = 'edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010';
    const [{ publicKey, signature }] = signatures;
    const r = signature.slice(0, 64);
    expect(signatureIsStrict(hexToBytes(`${r}${order}`), hexToBytes(publicKey))).toBe(false);
    expect(signatureIsStrict(hexToBytes(`${r}ec${order.slice(2)}`), hexToBytes(publicKey))).toBe(true);
  });
});
