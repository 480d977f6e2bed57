import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { happening, plantId, sampleLog } from '../../../records/test/log/sample-log.ts';
import { solve, topicOf } from '../../src/solve/index.ts';

const say = ({ code, path }: { readonly code: string; readonly path: string }) => `${path}: ${code}`;

async function answer(id: string, input: unknown) {
  const topic = topicOf(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  return solve(topic, input, { say });
}

interface Made {
  readonly lines: readonly string[];
  readonly publicKey_hex: string;
  readonly plant: string;
  readonly checkpoints: readonly { readonly size: number }[];
}

// A log made by another program, see make-log.py beside it.
const file = join(import.meta.dirname, '../../../records/test/fixtures/independent/log.json');
const { lines, publicKey_hex, plant, checkpoints } = JSON.parse(readFileSync(file, 'utf8')) as Made;
const hexOf = (text: string) => Buffer.from(text).toString('hex');

describe('records', () => {
  it('[SOLVE-24] a question about a log is answered with status ok, whatever the verdict', async () => {
    const asked = { lines, publicKey_hex, plant, checkpoints };
    expect(await answer('log', asked)).toMatchObject({ status: 'ok', verdict: 'ok', size: 7, witnessed: 7 });
    const cut = { ...asked, lines: lines.slice(0, 5) };
    expect(await answer('log', cut)).toMatchObject({ status: 'ok', verdict: 'truncated', at: 5, witnessed: 7 });
    const wrong = [{ ...checkpoints[0], colour: 'red' }];
    const bad = await answer('log', { ...asked, checkpoints: wrong });
    expect(bad).toMatchObject({ status: 'ok', verdict: 'bad-checkpoint', at: 3 });
    expect(await answer('log', { ...asked, plant: 'other' })).toMatchObject({ verdict: 'wrong-plant', at: 0, size: 0 });
  });

  it('[SOLVE-25] each code of the strict reader is a refusal', async () => {
    const cases = [
      ['efbbbf31', 'byte-order-mark'],
      ['22ff22', 'not-utf8'],
      [hexOf('{"a":1,"a":2}'), 'duplicate-name'],
      [hexOf('{"a":}'), 'not-json'],
      [hexOf(`${'['.repeat(33)}${']'.repeat(33)}`), 'too-deep'],
      [hexOf('1e999'), 'number-not-finite'],
      [hexOf('"\\ud800"'), 'lone-surrogate'],
      ['abc', 'not-hex'],
    ] as const;
    for (const [bytes_hex, code] of cases)
      expect(await answer('canonical', { bytes_hex })).toMatchObject({ status: 'refused', code, path: 'bytes_hex' });
  });

  it('[SOLVE-26] what is no key, hash or proof is refused by its place', async () => {
    const key = await answer('log', { lines: [], publicKey_hex: '00', plant });
    expect(key).toMatchObject({ status: 'refused', code: 'wrong-length', path: 'publicKey_hex' });
    const root = '0'.repeat(64);
    const proof = { entry_hex: '', index: 0, size: 1, proof: [root, 'x'], root };
    expect(await answer('inclusion', proof)).toMatchObject({ code: 'not-a-hash', path: 'proof[1]' });
    expect(await answer('inclusion', { ...proof, proof: [] })).toMatchObject({ status: 'ok', holds: false });
  });

  it('[SOLVE-27] a clock set back is a warning with its line', async () => {
    const change = (n: number) => happening(n, n === 2 ? { at: '2026-11-25T01:00:00Z' } : {});
    const back = await sampleLog(4, { change });
    const asked = { lines: back.lines, publicKey_hex: Buffer.from(back.key.publicKey).toString('hex'), plant: plantId };
    const answered = await answer('log', asked);
    expect(answered).toMatchObject({
      verdict: 'ok',
      warnings: [{ code: 'clock-back', at: 2 }],
      used: { checkpoints: [] },
    });
  });
});
