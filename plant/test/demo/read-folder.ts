import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type PlantFolderReading, readPlantFolder } from '../../src/folder/read-plant-folder.ts';

const root = join(import.meta.dirname, '../../..');

/** Reads a plant folder of this repository, such as `demo`. */
export function readFolder(folder: string): PlantFolderReading {
  const path = join(root, folder);
  const files = readdirSync(path).filter((name) => name.endsWith('.csv'));
  return readPlantFolder(new Map(files.map((name) => [name, readFileSync(join(path, name))])));
}
