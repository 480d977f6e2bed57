import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** All files below a folder with a given ending, in a fixed order. */
export function filesUnder(folder: string, ending: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}
