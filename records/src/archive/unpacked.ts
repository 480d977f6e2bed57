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
  const read = inflated(packed, entry.size_bytes);
  if (read === undefined || crc32(read) !== entry.crc32) throw noArchive();
  return read;
}

/**
 * As many bytes as were announced, or nothing. A packing that is damaged only behind its last byte has given all of them:
 * their checksum judges them, like those of every other packing.
 */
function inflated(packed: Uint8Array, size: number): Uint8Array<ArrayBuffer> | undefined {
  const space = new Uint8Array(size + 1);
  try {
    const { length } = inflateSync(packed, { out: space });
    return length === size ? space.subarray(0, size) : undefined;
  } catch {
    return isOverfull(packed, space) ? undefined : space.subarray(0, size);
  }
}

/** Whether a damaged packing writes into the byte beyond what was announced; it may write there what stood before. */
function isOverfull(packed: Uint8Array, before: Uint8Array): boolean {
  const again = new Uint8Array(before.length).fill(255);
  try {
    inflateSync(packed, { out: again });
  } catch {
    return before.at(-1) !== 0 || again.at(-1) !== 255;
  }
  return true;
}
