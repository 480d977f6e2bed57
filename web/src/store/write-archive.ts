import { blobFolder, logName, witnessesName } from '@loopwright/records/archive';
import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';

/** Bytes packed at a time, so that the screen stays alive. */
const piece_bytes = 1 << 20;

/**
 * An archive with the log, packed, and blobs as they are. It is made in pieces on this thread: the page's content
 * policy allows no workers made of text.
 *
 * @param log - text of the export
 * @param names - SHA-256 of the blobs
 * @param beside - `blob`: the bytes of one, those that this device does not have are left out; `witnesses`: what others
 * said of the logs, as text
 */
export async function writeArchive(
  log: Uint8Array,
  names: readonly string[],
  { blob, witnesses }: Beside,
): Promise<Blob> {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  const zip = new Zip((problem, piece) => {
    if (problem !== null) throw problem;
    pieces.push(Uint8Array.from(piece));
  });
  const packed = new ZipDeflate(logName, { level: 6 });
  zip.add(packed);
  for (let start = 0; start < log.length; start += piece_bytes) {
    packed.push(log.subarray(start, start + piece_bytes), start + piece_bytes >= log.length);
    await nextTurn();
  }
  if (witnesses.length > 0) add(zip, witnessesName, witnesses);
  for (const name of names) {
    const bytes = await blob(name);
    if (bytes === undefined) continue;
    add(zip, blobFolder + name, new Uint8Array(await bytes.arrayBuffer()));
  }
  zip.end();
  return new Blob(pieces, { type: 'application/zip' });
}

interface Beside {
  readonly blob: (name: string) => Promise<Blob | undefined>;
  readonly witnesses: Uint8Array;
}

function add(zip: Zip, name: string, bytes: Uint8Array): void {
  const file = new ZipPassThrough(name);
  zip.add(file);
  file.push(bytes, true);
}

function nextTurn(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
