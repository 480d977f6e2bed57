/** Names inside an export file, and what it may measure. */
export const logName = 'log.jsonl';
export const blobFolder = 'blobs/';

/** Limits looked at before anything is unpacked. */
export const archiveLimits = {
  /** Unpacked, all files together [bytes]. */
  total_bytes: 512 * 2 ** 20,
  files: 10_000,
  /** Unpacked to packed, each file and all together. */
  ratio: 100,
} as const;
