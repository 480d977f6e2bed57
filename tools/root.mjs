import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Folder of the repository. */
export const root = join(dirname(fileURLToPath(import.meta.url)), '..');

/** A path inside the repository. */
export function at(...parts) {
  return join(root, ...parts);
}

/** A program that an installed package brings. */
export function program(packageAndFile) {
  return at('node_modules', packageAndFile);
}
