import { inflateSync } from 'fflate';
import type { ArchiveEntry } from './archive-entries.ts';
import { StoreError } from './store-error.ts';

/**
 * Unpacks into exactly the space that was announced; what does not fit it is no such file.
 *
 * @throws StoreError `file-no-archive`
 */
export function unpacked(bytes: Uint8Array, entry: ArchiveEntry): Uint8Array<ArrayBuffer> {
  const packed = bytes.subarray(entry.start, entry.start + entry.packed_bytes);
  if (entry.method === 'stored') return Uint8Array.from(packed);
  try {
    // One byte more shows a file that would go on; the packing never writes past the space it is given.
    const space = new Uint8Array(entry.size_bytes + 1);
    const read = inflateSync(packed, { out: space });
    if (read.length === entry.size_bytes) return space.subarray(0, entry.size_bytes);
  } catch {
    // Not what the packing is said to be.
  }
  throw new StoreError('file-no-archive');
}
