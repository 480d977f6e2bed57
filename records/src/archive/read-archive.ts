import { Refusal } from '@loopwright/engine/refusal';
import { type ArchiveEntry, archiveEntries, noArchive } from './archive-entries.ts';
import { unpacked } from './unpacked.ts';

/** Names inside an exported archive. */
export const logName = 'log.jsonl';
export const blobFolder = 'blobs/';
export const witnessesName = 'witnesses.jsonl';

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
  readonly blobs: ReadonlyMap<string, Uint8Array<ArrayBuffer>>;
  /** Countersignatures of the log, one a line, where there are any. */
  readonly witnesses?: Uint8Array;
  /** Names of whatever else lies in the archive; none of it is read. */
  readonly others?: readonly string[];
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
  const files = new Map(entries.map((entry) => [entry.name, entry]));
  const [log, witnesses] = [files.get(logName), files.get(witnessesName)];
  if (log === undefined) throw new Refusal('file-no-log', '');
  const blobs = entries.flatMap((entry) => {
    const name = blobNameOf(entry);
    return name === undefined ? [] : [[name, unpacked(bytes, entry)] as const];
  });
  return {
    log: unpacked(bytes, log),
    blobs: new Map(blobs),
    ...(witnesses === undefined ? {} : { witnesses: unpacked(bytes, witnesses) }),
    others: entries.filter((entry) => entry !== log && entry !== witnesses && isOther(entry)).map(({ name }) => name),
  };
}

function blobNameOf({ name }: ArchiveEntry): string | undefined {
  const below = name.startsWith(blobFolder) ? name.slice(blobFolder.length) : '';
  return blobName.test(below) ? below : undefined;
}

/** Folders may stand in an archive by themselves; they hold nothing. */
function isOther(entry: ArchiveEntry): boolean {
  return blobNameOf(entry) === undefined && !(entry.name.endsWith('/') && entry.size_bytes === 0);
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
