import { folderLimits } from './limits.ts';
import type { FolderProblem } from './problem.ts';
import { type PlantFolderReading, plantFiles, readPlantFolder } from './read-plant-folder.ts';

/** A folder wherever it lies: on a disk, in a browser. Sizes are known before anything is read. */
export interface FolderAccess {
  list(): Promise<readonly { readonly name: string; readonly size_bytes: number }[]>;
  read(name: string): Promise<Uint8Array>;
}

/**
 * Reads a plant from a folder; a file that is too large is refused without being read.
 *
 * @param folder - how to list and read it
 * @returns as `readPlantFolder`; with too large a file, only that
 */
export async function readPlantFolderFrom(folder: FolderAccess): Promise<PlantFolderReading> {
  const files = await folder.list();
  const isPlantFile = (name: string) => plantFiles.includes(name.toLowerCase());
  const problems = files
    .filter(({ name, size_bytes }) => isPlantFile(name) && size_bytes > folderLimits.fileSize_bytes)
    .map(tooLarge);
  if (problems.length > 0) return { definitions: [], problems, notes: [] };
  const contents = await Promise.all(
    files.map(async ({ name }) => [name, isPlantFile(name) ? await folder.read(name) : new Uint8Array()] as const),
  );
  return readPlantFolder(new Map(contents));
}

function tooLarge({ name, size_bytes }: { readonly name: string; readonly size_bytes: number }): FolderProblem {
  const data = { value: size_bytes, max: folderLimits.fileSize_bytes };
  return { file: name, level: 'error', code: 'file-too-large', data };
}
