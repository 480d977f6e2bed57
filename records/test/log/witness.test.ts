import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blobReference,
  canonicalText,
  cardCode,
  consistencyProof,
  deviceOf,
  meetCheckpoint,
  readCardCode,
  sha256Hex,
  signWitness,
  soundCheckpoint,
  soundWitness,
} from '../../src/log/index.ts';
import { checkpointAt, deviceKey, happening, plantId, sampleLog, verify } from './sample-log.ts';

const log = await sampleLog(20);
const proof = (to: number, from: number) => consistencyProof(log.ids.slice(0, to), from);

describe('witness', () => {
  it('[LOG-44] a log that grew shows that it contains what was known', async () => {
    const known = await checkpointAt(log, 7);
    const offered = await checkpointAt(log, 20);
    expect(meetCheckpoint(undefined, offered, [])).toBe('first-seen');
    expect(meetCheckpoint(known, offered, proof(20, 7))).toBe('grown');
    expect(meetCheckpoint(known, offered, [])).toBe('not-proved');
    expect(meetCheckpoint(known, offered, proof(20, 8))).toBe('not-proved');
    expect(meetCheckpoint(known, known, [])).toBe('same');
  });

  it('[LOG-44] a log rolled back, or written anew, is never taken for the one known', async () => {
    const known = await checkpointAt(log, 7);
    expect(meetCheckpoint(known, await checkpointAt(log, 3), [])).toBe('older');
    const other = await sampleLog(20, { change: (n) => happening(n, { by: 'b7' }) });
    expect(meetCheckpoint(known, await checkpointAt(other, 7), [])).toBe('fork');
    const proofs = [[], proof(20, 7), consistencyProof(other.ids, 7)];
    for (const each of proofs) expect(meetCheckpoint(known, await checkpointAt(other, 20), each)).toBe('not-proved');
  });

  it('[LOG-45] a countersignature names the witness and holds for nothing else', async () => {
    const server = deviceKey('server');
    const checkpoint = await checkpointAt(log, 7);
    const statement = await signWitness(checkpoint, '2026-11-26T00:00:01Z', server);
    expect(statement).toMatchObject({ size: 7, root: checkpoint.root, witness: deviceOf(server.publicKey) });
    expect(await soundWitness(statement, server.publicKey, verify)).toEqual(statement);
    const wrong: readonly unknown[] = [
      null,
      checkpoint,
      { ...statement, size: 8 },
      { ...statement, extra: 1 },
      { ...statement, sig: checkpoint.sig },
      { ...statement, witness: deviceOf(log.key.publicKey) },
    ];
    for (const each of wrong) expect(await soundWitness(each, server.publicKey, verify)).toBeUndefined();
    expect(await soundWitness(statement, log.key.publicKey, verify)).toBeUndefined();
    const owner = { plant: plantId, device: deviceOf(log.key.publicKey), publicKey: log.key.publicKey, verify };
    expect(await soundCheckpoint(statement, owner)).toBeUndefined();
    expect(await soundCheckpoint(checkpoint, owner)).toEqual(checkpoint);
  });
});

describe('code on the card', () => {
  it('[LOG-46] is the first 80 bits of the hash, in digits that nobody misreads', async () => {
    for (let size = 0; size <= 20; size++) {
      const checkpoint = await checkpointAt(log, size);
      const code = cardCode(checkpoint);
      expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}(-[0-9A-HJKMNP-TV-Z]{4}){3}$/);
      // Written out apart from the code under test: sixteen groups of five bits.
      const bits = [...sha256Hex(canonicalText(checkpoint)).slice(0, 20)].map((digit) => Number.parseInt(digit, 16));
      const all = bits.map((nibble) => nibble.toString(2).padStart(4, '0')).join('');
      const values = Array.from({ length: 16 }, (_, i) => Number.parseInt(all.slice(5 * i, 5 * i + 5), 2));
      expect([...code.replaceAll('-', '')].map((c) => '0123456789ABCDEFGHJKMNPQRSTVWXYZ'.indexOf(c))).toEqual(values);
    }
  });

  it('[LOG-46] is read as people type it', () => {
    expect(readCardCode('7q0c m4xn-2b9t ke5w')).toBe('7Q0C-M4XN-2B9T-KE5W');
    expect(readCardCode('7QOC-M4XN-2B9T-KEIL')).toBe('7Q0C-M4XN-2B9T-KE11');
    for (const wrong of ['', '7Q0C', '7Q0C-M4XN-2B9T-KE5U', '7Q0C-M4XN-2B9T-KE5W-1'])
      expect(readCardCode(wrong)).toBeUndefined();
  });

  it('[LOG-46] another checkpoint has another code', async () => {
    const codes = await Promise.all(log.ids.map(async (_, size) => cardCode(await checkpointAt(log, size))));
    expect(new Set(codes).size).toBe(codes.length);
  });
});

it('[LOG-47] bytes beside an event are named by hash, number and kind', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      const { sha256, bytes: count, kind } = blobReference(bytes, 'curve');
      expect([sha256, count, kind]).toEqual([sha256Hex(bytes), bytes.length, 'curve']);
    }),
    { seed: 42, numRuns: 100 },
  );
  // NIST FIPS 180-4, example "abc".
  const abc = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
  expect(blobReference(utf8ToBytes('abc'), 'photo').sha256).toBe(abc);
  expect(bytesToHex(utf8ToBytes('abc'))).toBe('616263');
});
