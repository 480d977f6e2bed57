import { Refusal } from '@loopwright/engine/refusal';
import { inflateSync } from 'fflate';
import { type ArchiveEntry, archiveEntries, noArchive } from './archive-entries.ts';

/** Names inside an exported archive. */
export const logName = 'log.jsonl';
export const blobFolder = 'blobs/';

/** Limits looked at before anything is unpacked. */
export const archiveLimits = {
  /** Unpacked, all files together [bytes]. */
  total_bytes: 512 * 2 ** 20,
  files: 10_000,
  /** Unpacked to packed, of each file. */
  ratio: 100,
} as const;

/** What an exported file holds. */
export interface ArchiveContent {
  readonly log: Uint8Array;
  /** Bytes by the SHA-256 that their names say; not yet compared with it. */
  readonly blobs: ReadonlyMap<string, Uint8Array>;
}

const blobName = /^[0-9a-f]{64}$/;
const brace = 0x7b;

/**
 * Reads an exported file: an archive, or the log alone. Sizes, names and ratios are looked at before anything is
 * unpacked, and nothing is ever unpacked beyond the size that was looked at.
 *
 * @param bytes - of the file
 * @throws Refusal `file-too-large`, `file-many-entries`, `file-ratio`, `file-path`, `file-no-archive`, `file-no-log`
 */
export function readArchive(bytes: Uint8Array): ArchiveContent {
  checkFileSize(bytes.length);
  // The log alone starts with the brace of its header.
  if (bytes[0] === brace) return { log: bytes, blobs: new Map() };
  const entries = archiveEntries(bytes);
  checkEntries(entries);
  const log = entries.find((entry) => entry.name === logName);
  if (log === undefined) throw new Refusal('file-no-log', '');
  const blobs = entries.flatMap((entry) => {
    const name = entry.name.startsWith(blobFolder) ? entry.name.slice(blobFolder.length) : '';
    return blobName.test(name) ? [[name, unpacked(bytes, entry)] as const] : [];
  });
  return { log: unpacked(bytes, log), blobs: new Map(blobs) };
}

/**
 * Refuses a file that is too large before anybody reads it.
 *
 * @param size_bytes - of the file, or of all that it holds
 * @throws Refusal `file-too-large`
 */
export function checkFileSize(size_bytes: number): void {
  if (size_bytes > archiveLimits.total_bytes)
    throw new Refusal('file-too-large', '', { value: size_bytes, max: archiveLimits.total_bytes, unit: 'bytes' });
}

function checkEntries(entries: readonly ArchiveEntry[]): void {
  const { files, ratio } = archiveLimits;
  if (entries.length > files) throw new Refusal('file-many-entries', '', { value: entries.length, max: files });
  checkFileSize(entries.reduce((sum, entry) => sum + entry.size_bytes, 0));
  const steep = entries.find((entry) => entry.size_bytes > ratio * Math.max(entry.packed_bytes, 1));
  if (steep !== undefined) throw new Refusal('file-ratio', '', { name: steep.name, max: ratio });
  const stray = entries.find((entry) => entry.isLink || leavesFolder(entry.name));
  if (stray !== undefined) throw new Refusal('file-path', '', { name: stray.name });
  if (new Set(entries.map((entry) => entry.name)).size !== entries.length) throw noArchive();
}

function leavesFolder(name: string): boolean {
  return name.split(/[/\\]/).includes('..') || /^[/\\]|^[a-z]:/i.test(name) || name.includes('\0');
}

/** Unpacks into the space that was announced and one byte more, in which a file that says too little shows itself. */
function unpacked(bytes: Uint8Array, entry: ArchiveEntry): Uint8Array {
  const packed = bytes.subarray(entry.start, entry.start + entry.packed_bytes);
  if (entry.method === 'stored') return Uint8Array.from(packed);
  const read = inflated(packed, new Uint8Array(entry.size_bytes + 1));
  if (read?.length !== entry.size_bytes) throw noArchive();
  return read;
}

function inflated(packed: Uint8Array, out: Uint8Array): Uint8Array | undefined {
  try {
    return inflateSync(packed, { out });
  } catch {
    return undefined;
  }
}
