import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readArchive } from '../src/store/read-archive.ts';
import { StoreError } from '../src/store/store-error.ts';

async function faultOf(bytes: Uint8Array): Promise<string> {
  try {
    await readArchive(new Blob([Uint8Array.from(bytes)]));
    return 'none';
  } catch (cause) {
    return cause instanceof StoreError ? cause.code : String(cause);
  }
}

/** Where the directory of an archive with one file starts: PKWARE APPNOTE.TXT 6.3, 4.3.12. */
function directoryAt(bytes: Uint8Array): number {
  const at = Buffer.from(bytes).indexOf(Buffer.from([0x50, 0x4b, 1, 2]));
  expect(at).toBeGreaterThan(0);
  return at;
}

/** The archive with another size announced in its directory. */
function announcing(bytes: Uint8Array, size_bytes: number, packed_bytes?: number): Uint8Array {
  const copy = Uint8Array.from(bytes);
  const view = new DataView(copy.buffer);
  view.setUint32(directoryAt(copy) + 24, size_bytes, true);
  if (packed_bytes !== undefined) view.setUint32(directoryAt(copy) + 20, packed_bytes, true);
  return copy;
}

describe('archives', () => {
  const log = strToU8('{"a":1}\n'.repeat(50));

  test('[STORE-13] an honest archive is read to the byte, packed or not', async () => {
    for (const level of [0, 6] as const) {
      const content = await readArchive(new Blob([Uint8Array.from(zipSync({ 'log.jsonl': log }, { level }))]));
      expect(Buffer.from(content.log).equals(Buffer.from(log))).toBe(true);
    }
  });

  test('[STORE-13] what is announced above 512 MiB, or above 100 times its size, is refused before it is unpacked', async () => {
    const archive = zipSync({ 'log.jsonl': log });
    expect(await faultOf(announcing(archive, 600 * 2 ** 20))).toBe('file-too-large');
    expect(await faultOf(announcing(archive, 40_000))).toBe('file-ratio');
    expect(await faultOf(zipSync({ 'log.jsonl': new Uint8Array(1_000_000) }))).toBe('file-ratio');
  });

  test('[STORE-13] an archive that unpacks to more or less than it announces is refused and never unpacked further', async () => {
    const archive = zipSync({ 'log.jsonl': log });
    expect(await faultOf(announcing(archive, log.length - 100))).toBe('file-no-archive');
    expect(await faultOf(announcing(archive, log.length + 100))).toBe('file-no-archive');
  });

  test('[STORE-13] more than 10 000 files are refused, 10 000 are not', async () => {
    const files = (count: number) =>
      zipSync(
        Object.fromEntries([
          ['log.jsonl', log],
          ...Array.from({ length: count - 1 }, (_, i) => [`f${i}`, new Uint8Array()]),
        ]),
        { level: 0 },
      );
    expect(await faultOf(files(10_001))).toBe('file-many-entries');
    expect(await faultOf(files(10_000))).toBe('none');
  });

  test.each(['../log', 'a/../../b', '/etc/passwd', '\\\\host\\share', 'C:\\x', '..\\x'])(
    '[STORE-13] a path that leaves the folder is refused: %s',
    async (name) => {
      expect(await faultOf(zipSync({ 'log.jsonl': log, [name]: strToU8('x') }, { level: 0 }))).toBe('file-path');
    },
  );

  test('[STORE-13] cut off at any byte, an archive is refused', async () => {
    const archive = zipSync({ 'log.jsonl': log });
    const faults = new Set<string>();
    for (let length = 0; length < archive.length; length++) faults.add(await faultOf(archive.subarray(0, length)));
    expect([...faults]).toEqual(['file-no-archive']);
  });
});
