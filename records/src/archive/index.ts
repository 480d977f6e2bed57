export { type ArchiveEntry, archiveEntries } from './archive-entries.ts';
export {
  type ArchiveContent,
  archiveLimits,
  blobFolder,
  checkFileSize,
  logName,
  readArchive,
} from './read-archive.ts';
export { type ArchiveVerdict, verifyArchive } from './verify-archive.ts';
export { writeArchive } from './write-archive.ts';
