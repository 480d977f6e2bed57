import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { FolderAccess } from '@loopwright/plant';

/** A folder of this computer, as a plant is read from it. */
export function diskFolder(folder: string): FolderAccess {
  return {
    list: async () => {
      const entries = await readdir(folder, { withFileTypes: true });
      const names = entries.filter((entry) => entry.isFile()).map((entry) => entry.name);
      return Promise.all(names.map(async (name) => ({ name, size_bytes: (await stat(join(folder, name))).size })));
    },
    read: (name) => readFile(join(folder, name)),
  };
}
