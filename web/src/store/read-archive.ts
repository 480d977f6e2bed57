import { type ArchiveEntry, archiveEntries } from './archive-entries.ts';
import { archiveLimits, blobFolder, logName } from './archive-form.ts';
import { StoreError } from './store-error.ts';
import { unpacked } from './unpacked.ts';

/** What an export file holds. */
export interface ArchiveContent {
  readonly log: Uint8Array;
  /** Bytes by the SHA-256 that their names say; not yet compared with it. */
  readonly blobs: ReadonlyMap<string, Uint8Array<ArrayBuffer>>;
}

const blobName = /^[0-9a-f]{64}$/;

/**
 * Reads an export file: an archive, or the log alone. Sizes, names and ratios are looked at before anything is
 * unpacked, and nothing is ever unpacked beyond the size that was looked at.
 *
 * @throws StoreError `file-too-large`, `file-many-entries`, `file-ratio`, `file-path`, `file-no-archive`, `file-no-log`
 */
export async function readArchive(file: Blob): Promise<ArchiveContent> {
  if (file.size > archiveLimits.total_bytes) throw tooLarge(file.size);
  const bytes = new Uint8Array(await file.arrayBuffer());
  // The log alone starts with the brace of its header.
  if (bytes[0] === 0x7b) return { log: bytes, blobs: new Map() };
  const entries = archiveEntries(bytes);
  checkEntries(entries);
  const log = entries.find((entry) => entry.name === logName);
  if (log === undefined) throw new StoreError('file-no-log');
  const blobs = entries.flatMap((entry) => {
    const name = entry.name.startsWith(blobFolder) ? entry.name.slice(blobFolder.length) : '';
    return blobName.test(name) ? [[name, unpacked(bytes, entry)] as const] : [];
  });
  return { log: unpacked(bytes, log), blobs: new Map(blobs) };
}

function checkEntries(entries: readonly ArchiveEntry[]): void {
  const { files, total_bytes, ratio } = archiveLimits;
  if (entries.length > files) throw new StoreError('file-many-entries', { value: entries.length, max: files });
  const total = entries.reduce((sum, entry) => sum + entry.size_bytes, 0);
  if (total > total_bytes) throw tooLarge(total);
  const steep = entries.find((entry) => entry.size_bytes > ratio * Math.max(entry.packed_bytes, 1));
  if (steep !== undefined) throw new StoreError('file-ratio', { name: shortName(steep.name), max: ratio });
  const stray = entries.find((entry) => entry.isLink || leavesFolder(entry.name));
  if (stray !== undefined) throw new StoreError('file-path', { name: shortName(stray.name) });
  if (new Set(entries.map((entry) => entry.name)).size !== entries.length) throw new StoreError('file-no-archive');
}

function leavesFolder(name: string): boolean {
  return name.split(/[/\\]/).includes('..') || /^[/\\]|^[a-z]:/i.test(name) || name.includes('\0');
}

function shortName(name: string): string {
  return name.length > 60 ? `${name.slice(0, 60)}…` : name;
}

function tooLarge(value: number): StoreError {
  const [value_MB, max_MB] = [Math.ceil(value / 2 ** 20), archiveLimits.total_bytes / 2 ** 20];
  return new StoreError('file-too-large', { value: value_MB, max: max_MB });
}
