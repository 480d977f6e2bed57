import { utf8ToBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../src/archive/crc32.ts';
import { archiveEntries, readArchive, verifyArchive, writeArchive } from '../../src/archive/index.ts';
import { blobReference, sha256Hex } from '../../src/log/index.ts';
import { exportOf, happening, sampleLog, verify } from '../log/sample-log.ts';

const at = '2026-11-25T02:00:00.000Z';
const [curve, photo] = [
  utf8ToBytes('time_s,temperature_degC\n0,20\n'),
  Uint8Array.from({ length: 5000 }, (_, i) => i * 7),
];
const blobs = new Map([curve, photo].map((bytes) => [sha256Hex(bytes), bytes] as const));
const references = [blobReference(curve, 'curve'), blobReference(photo, 'photo')];
const log = await exportOf([await sampleLog(6, { change: (n) => happening(n, n === 3 ? { blobs: references } : {}) })]);
const packed = writeArchive(log, { blobs }, at);

const codeOf = (bytes: Uint8Array): unknown => {
  try {
    return readArchive(bytes);
  } catch (cause) {
    return (cause as { code?: unknown }).code;
  }
};

describe('archive', () => {
  it('[LOG-85] holds the log beside its blobs, and reads back to the same bytes', () => {
    const names = archiveEntries(packed).map(({ name }) => name);
    expect(names).toEqual(['log.jsonl', ...[...blobs.keys()].map((name) => `blobs/${name}`)]);
    const read = readArchive(packed);
    expect([read.log, read.blobs]).toEqual([log, blobs]);
    expect(readArchive(log)).toEqual({ log, blobs: new Map() });
  });

  it('[LOG-86] its verdict is that of its log; a changed blob is named by its event, a missing one is a warning', async () => {
    expect((await verifyArchive(readArchive(packed), verify)).failure).toBeUndefined();
    const [first, second] = [...blobs.keys()];
    const changed = new Map(blobs).set(second ?? '', Uint8Array.of(1));
    const verdict = await verifyArchive({ log, blobs: changed }, verify);
    expect(verdict.failure).toEqual({ verdict: 'blob-changed', at: 4, blob: second, field: 'sha256' });
    const without = await verifyArchive({ log, blobs: new Map([[first ?? '', curve]]) }, verify);
    expect([without.failure, without.warnings]).toEqual([undefined, [{ code: 'blob-missing', at: 4, blob: second }]]);
  });

  it('[LOG-86] an event that says another size of a blob is named; what no event names is a warning', async () => {
    const [first = '', second = ''] = [...blobs.keys()];
    const wrong = [{ sha256: first, bytes: curve.length + 1, kind: 'curve' }];
    const odd = await exportOf([await sampleLog(3, { change: (n) => happening(n, n === 1 ? { blobs: wrong } : {}) })]);
    const { failure, warnings } = await verifyArchive({ log: odd, blobs, others: ['readme.txt'] }, verify);
    expect(failure).toEqual({ verdict: 'blob-changed', at: 2, blob: first, field: 'bytes' });
    expect(warnings).toEqual([
      { code: 'blob-unnamed', blob: second },
      { code: 'file-unknown', name: 'readme.txt' },
    ]);
  });

  it('[LOG-86] an event whose blobs are no list of blobs breaks nothing', async () => {
    for (const wrong of [null, 'x', [null], [{ sha256: 7 }], {}]) {
      const odd = await sampleLog(1, { change: (n) => happening(n, { body: { wrong } }) });
      expect((await verifyArchive({ log: await exportOf([odd]), blobs: new Map() }, verify)).failure).toBeUndefined();
    }
  });

  it('[LOG-87] is refused before anything is unpacked: too steep, out of its folder, twice one name, no log', () => {
    const small = Uint8Array.of(1);
    expect(codeOf(zipSync({ 'log.jsonl': new Uint8Array(2_000_000) }))).toBe('file-ratio');
    for (const name of ['../log.jsonl', '/log.jsonl', 'a/../../b', 'C:\\x', 'a\0b'])
      expect(codeOf(zipSync({ 'log.jsonl': small, [name]: small })), name).toBe('file-path');
    expect(codeOf(zipSync({ 'readme.txt': small }))).toBe('file-no-log');
    const many = Object.fromEntries(Array.from({ length: 10_001 }, (_, i) => [`f${i}`, new Uint8Array(0)]));
    expect(codeOf(zipSync(many, { level: 0 }))).toBe('file-many-entries');
    const twice = zipSync({ 'log.jsonl': small, 'log.jsonm': small });
    const at = Buffer.from(twice).lastIndexOf('log.jsonm');
    expect(codeOf(twice.with(at + 8, 'l'.charCodeAt(0)))).toBe('file-no-archive');
  });

  it('[LOG-87] an archive that announces another size than it holds is refused', () => {
    const directory = Buffer.from(packed).lastIndexOf(Buffer.from([0x50, 0x4b, 0x01, 0x02]));
    expect(directory).toBeGreaterThan(0);
    const first = Buffer.from(packed).indexOf(Buffer.from([0x50, 0x4b, 0x01, 0x02]));
    for (const step of [1, -1]) {
      const copy = Uint8Array.from(packed);
      new DataView(copy.buffer).setUint32(first + 24, log.length + step, true);
      expect(codeOf(copy)).toBe('file-no-archive');
    }
  });

  it('[LOG-87] a packed file whose checksum is not the announced one is refused', () => {
    const first = Buffer.from(packed).indexOf(Buffer.from([0x50, 0x4b, 0x01, 0x02]));
    expect(codeOf(packed.with(first + 16, (packed[first + 16] ?? 0) ^ 1))).toBe('file-no-archive');
    // ISO 3309 check value, as every catalogue of checksums gives it.
    expect(crc32(utf8ToBytes('123456789'))).toBe(0xcbf43926);
  });

  it('[LOG-87] cut off anywhere, or with any byte changed, it is refused or reads as what its log then is', async () => {
    for (let end = 0; end < packed.length; end += 7) expect(typeof codeOf(packed.subarray(0, end))).toBe('string');
    await fc.assert(
      fc.asyncProperty(fc.nat({ max: packed.length - 1 }), fc.integer({ min: 1, max: 255 }), async (place, change) => {
        const read = codeOf(packed.with(place, (packed[place] ?? 0) ^ change));
        if (typeof read === 'string') return;
        const { log: text, blobs: given } = read as ReturnType<typeof readArchive>;
        const { failure } = await verifyArchive({ log: text, blobs: given }, verify);
        const same =
          Buffer.from(text).equals(Buffer.from(log)) && [...given].every(([name, bytes]) => sha256Hex(bytes) === name);
        expect(failure === undefined).toBe(same);
      }),
      { seed: 42, numRuns: 500 },
    );
  });
});
