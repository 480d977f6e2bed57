import { createHash } from 'node:crypto';
import {
  type Checkpoint,
  cardCode,
  countersignature,
  countersignatureFault,
  emptyLog,
  nobleSigner,
  nobleVerifier,
  signCheckpoint,
  signWitness,
  soundCheckpoint,
} from '@loopwright/records/log';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { base32OfHex, hexOfBase32 } from '../../src/code/base-32.ts';
import { checkpointCode, readCheckpointCode, readWitnessCode, witnessCode } from '../../src/code/checkpoint-code.ts';
import { readCode } from '../../src/code/read-code.ts';

const settings = { seed: 42, numRuns: Math.min(500, Number(process.env.LW_RUNS ?? 500)) };
const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');
const deviceOf = (key: string): string => createHash('sha256').update(Buffer.from(key, 'hex')).digest('hex');
const [phone, tablet] = [nobleSigner(new Uint8Array(32).fill(1)), nobleSigner(new Uint8Array(32).fill(2))];
const key = hex(phone.publicKey);

const state = { ...emptyLog('quillmoor', phone.publicKey), size: 1, head: 'ab'.repeat(32), peaks: ['ab'.repeat(32)] };
const checkpoint: Checkpoint = await signCheckpoint(state, '2026-11-25T02:00:00.000Z', phone.sign);
const statement = await signWitness(checkpoint, '2026-11-25T02:01:00.000Z', tablet);
const given = countersignature(statement, tablet.publicKey);

describe('codes of checkpoints and countersignatures', () => {
  it('[LABEL-06] a checkpoint comes whole through its code, so that its signature can be checked', async () => {
    const text = checkpointCode({ key, checkpoint });
    expect(text).toMatch(/^LW1C [0-9A-Z]{52} quillmoor 1 [0-9A-Z]{52} [0-9A-Z]{52} \S+ [0-9A-Z]{103} [0-9A-Z]{7}$/);
    const read = readCheckpointCode(` ${text}\n`, deviceOf);
    expect(read).toEqual({ key, checkpoint });
    const owner = { plant: 'quillmoor', device: deviceOf(key), publicKey: phone.publicKey, verify: nobleVerifier() };
    expect(await soundCheckpoint(read?.checkpoint, owner)).toEqual(checkpoint);
    expect(cardCode(read?.checkpoint ?? checkpoint)).toBe(cardCode(checkpoint));
  });

  it('[LABEL-06] so does a countersignature on its way back', async () => {
    const text = witnessCode(given);
    const read = readWitnessCode(text, deviceOf);
    expect(read).toEqual(given);
    expect(await countersignatureFault(read, 'quillmoor', nobleVerifier())).toBeUndefined();
    // The most that the densest code of version 40 holds is 2,953 bytes; a phone reads one of a tenth of that well.
    expect([checkpointCode({ key, checkpoint }).length, text.length].every((length) => length < 420)).toBe(true);
  });

  it('[LABEL-06] one is not taken for the other, and neither for a card or a label', () => {
    const [own, seen] = [checkpointCode({ key, checkpoint }), witnessCode(given)];
    expect([readCheckpointCode(seen, deviceOf), readWitnessCode(own, deviceOf)]).toEqual([undefined, undefined]);
    for (const text of [own, seen]) expect(readCode(text).is).toBe('refused');
    for (const text of ['', 'LW1C', 'LW1C x', 'https://example.test/LW1C', own.replace('LW1C', 'LW2C')])
      expect(readCheckpointCode(text, deviceOf)).toBeUndefined();
  });

  it('[LABEL-03] any one changed, lost or doubled letter of either is noticed', () => {
    const letter = fc.stringMatching(/^[ -~]$/);
    fc.assert(
      fc.property(
        fc.constantFrom(checkpointCode({ key, checkpoint }), witnessCode(given)),
        fc.nat(),
        letter,
        (text, n, other) => {
          const at = n % text.length;
          const texts = [text.slice(0, at) + other + text.slice(at + 1), text.slice(0, at) + text.slice(at + 1)];
          for (const each of [...texts, text.slice(0, at) + text.slice(at, at + 1) + text.slice(at)])
            if (each.trim() !== text)
              expect(readCheckpointCode(each, deviceOf) ?? readWitnessCode(each, deviceOf)).toBeUndefined();
        },
      ),
      settings,
    );
  });

  it('[LABEL-06] hex in letters of five bits: back the same, and only what was written so', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 70 }), (bytes) => {
        const text = base32OfHex(hex(bytes));
        expect(hexOfBase32(text, 2 * bytes.length)).toBe(hex(bytes));
        expect(hexOfBase32(`${text}0`, 2 * bytes.length)).toBeUndefined();
        expect(hexOfBase32(text.toLowerCase().replace(/^\d+$/, 'o'), 2 * bytes.length)).toBeUndefined();
      }),
      settings,
    );
    // 256 bits fill 51 letters and one bit of the next, whose other bits must be zero.
    expect(hexOfBase32(`${'0'.repeat(51)}1`, 64)).toBeUndefined();
  });
});
