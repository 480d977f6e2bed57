import { Refusal } from '@loopwright/engine/refusal';
import { textOfUtf8 } from '../log/strict-json.ts';

/** A file in an archive as its directory announces it. */
export interface ArchiveEntry {
  readonly name: string;
  readonly method: 'stored' | 'deflated';
  readonly packed_bytes: number;
  readonly size_bytes: number;
  /** Checksum of the unpacked bytes. */
  readonly crc32: number;
  /** Where its packed bytes start. */
  readonly start: number;
  readonly isLink: boolean;
}

// Signatures and lengths of PKWARE's APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12 and 4.3.16.
const [localSignature, entrySignature, endSignature] = [0x04034b50, 0x02014b50, 0x06054b50];
const [localLength, entryLength, endLength] = [30, 46, 22];
const longestComment = 0xffff;
const methods: ReadonlyMap<number, ArchiveEntry['method']> = new Map([
  [0, 'stored'],
  [8, 'deflated'],
]);

/** Anything that is not a plain archive: encrypted, split, longer than 4 GiB, cut off. */
export function noArchive(): Refusal {
  return new Refusal('file-no-archive', '');
}

/**
 * The files that the directory of an archive announces. Nothing is unpacked.
 *
 * @param bytes - of the archive
 * @throws Refusal `file-no-archive`
 */
export function archiveEntries(bytes: Uint8Array): readonly ArchiveEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  try {
    return readDirectory(view, endOfDirectory(view));
  } catch {
    // Whatever lies beyond the end of the file is no directory.
    throw noArchive();
  }
}

function endOfDirectory(view: DataView): number {
  const first = Math.max(0, view.byteLength - endLength - longestComment);
  for (let at = view.byteLength - endLength; at >= first; at--)
    if (view.getUint32(at, true) === endSignature) return at;
  throw noArchive();
}

function readDirectory(view: DataView, end: number): readonly ArchiveEntry[] {
  const count = view.getUint16(end + 10, true);
  const entries: ArchiveEntry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count; i++) {
    const { entry, next } = readEntry(view, at);
    entries.push(entry);
    at = next;
  }
  if (at > end) throw noArchive();
  return entries;
}

function readEntry(view: DataView, at: number): { readonly entry: ArchiveEntry; readonly next: number } {
  const method = methods.get(view.getUint16(at + 10, true));
  const isEncrypted = (view.getUint16(at + 8, true) & 1) === 1;
  if (view.getUint32(at, true) !== entrySignature || method === undefined || isEncrypted) throw noArchive();
  const [packed_bytes, size_bytes] = [view.getUint32(at + 20, true), view.getUint32(at + 24, true)];
  const nameLength = view.getUint16(at + 28, true);
  const start = startOf(view, view.getUint32(at + 42, true));
  const name = textOfUtf8(new Uint8Array(view.buffer, view.byteOffset + at + entryLength, nameLength));
  const isWrong = method === 'stored' && packed_bytes !== size_bytes;
  if (name === undefined || isWrong || start + packed_bytes > view.byteLength) throw noArchive();
  const next = at + entryLength + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  const crc32 = view.getUint32(at + 16, true);
  return { entry: { name, method, packed_bytes, size_bytes, crc32, start, isLink: isLink(view, at) }, next };
}

function startOf(view: DataView, local: number): number {
  if (view.getUint32(local, true) !== localSignature) throw noArchive();
  return local + localLength + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
}

/** Unix writes the kind of a file into the upper half of its attributes; 0xa is a link. */
function isLink(view: DataView, at: number): boolean {
  return view.getUint32(at + 38, true) >>> 28 === 0xa;
}
