import { utf8ToBytes } from '@noble/hashes/utils.js';
import { zipSync } from 'fflate';
import { type Countersignature, writeCountersignatures } from '../log/countersignatures.ts';
import { blobFolder, logName, witnessesName } from './read-archive.ts';

/**
 * An archive with a log, packed, the blobs as they are, and countersignatures where there are any.
 *
 * @param log - text of an export, as UTF-8
 * @param beside - bytes by their SHA-256; what witnesses said of the log
 * @param at - wall clock, UTC; archives keep it to two seconds, from 1980 on
 */
export function writeArchive(
  log: Uint8Array,
  { blobs = new Map(), countersignatures = [] }: Beside,
  at: string,
): Uint8Array {
  const pictures = [...blobs].map(([sha256, bytes]) => [`${blobFolder}${sha256}`, [bytes, { level: 0 }]] as const);
  const witnesses = utf8ToBytes(writeCountersignatures(countersignatures));
  const files = { [logName]: log, ...(witnesses.length === 0 ? {} : { [witnessesName]: witnesses }) };
  return zipSync({ ...files, ...Object.fromEntries(pictures) }, { level: 6, mtime: at });
}

interface Beside {
  readonly blobs?: ReadonlyMap<string, Uint8Array>;
  readonly countersignatures?: readonly Countersignature[];
}
