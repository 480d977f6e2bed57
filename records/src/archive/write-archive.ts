import { zipSync } from 'fflate';
import { blobFolder, logName } from './read-archive.ts';

/**
 * An archive with a log, packed, and the blobs as they are.
 *
 * @param log - text of an export, as UTF-8
 * @param blobs - bytes by their SHA-256
 * @param at - wall clock, UTC; archives keep it to two seconds, from 1980 on
 */
export function writeArchive(log: Uint8Array, blobs: ReadonlyMap<string, Uint8Array>, at: string): Uint8Array {
  const beside = [...blobs].map(([sha256, bytes]) => [`${blobFolder}${sha256}`, [bytes, { level: 0 }]] as const);
  return zipSync({ [logName]: log, ...Object.fromEntries(beside) }, { level: 6, mtime: at });
}
