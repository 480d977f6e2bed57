export { type ArchiveEntry, archiveEntries } from './archive-entries.ts';
export {
  type ArchiveContent,
  archiveLimits,
  blobFolder,
  checkFileSize,
  logName,
  readArchive,
  witnessesName,
} from './read-archive.ts';
export { unpacked } from './unpacked.ts';
export { type ArchiveFailure, type ArchiveVerdict, type ArchiveWarning, verifyArchive } from './verify-archive.ts';
export { writeArchive } from './write-archive.ts';
