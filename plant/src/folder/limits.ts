/** What a plant folder may hold. Shells look at a file's size on disk before they read it. */
export const folderLimits = {
  fileSize_bytes: 20_000_000,
  rows: 100_000,
  columns: 200,
  /** Problems listed for one file; the rest is counted. */
  problems: 500,
} as const;
