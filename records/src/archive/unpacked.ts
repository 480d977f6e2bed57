import { inflateSync } from 'fflate';
import { type ArchiveEntry, noArchive } from './archive-entries.ts';
import { crc32 } from './crc32.ts';

/**
 * Unpacks a file into the space that was announced and one byte more, in which a file that says too little shows itself.
 *
 * Of packed files the checksum is compared, because programs differ on what they make of a damaged packing. Files stored
 * as they are need none: their own hashes and signatures say what is wrong, and where.
 *
 * @param bytes - of the archive
 * @param entry - the file, as its directory announces it
 * @throws Refusal `file-no-archive`
 */
export function unpacked(bytes: Uint8Array, entry: ArchiveEntry): Uint8Array<ArrayBuffer> {
  const packed = bytes.subarray(entry.start, entry.start + entry.packed_bytes);
  if (entry.method === 'stored') return Uint8Array.from(packed);
  const space = new Uint8Array(entry.size_bytes + 1);
  const read = space.subarray(0, inflatedLength(packed, space));
  if (read.length !== entry.size_bytes || crc32(read) !== entry.crc32) throw noArchive();
  return read;
}

function inflatedLength(packed: Uint8Array, space: Uint8Array): number {
  try {
    return inflateSync(packed, { out: space }).length;
  } catch {
    return 0;
  }
}
