import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

export const root = join(import.meta.dirname, '../..');

/** Our packages, from what may import nothing of ours to what may import the rest. */
export const packages = ['engine', 'plant', 'records', 'jobs', 'words', 'sheets', 'server', 'cli', 'web'] as const;
export type Package = (typeof packages)[number];

/** Every file below a folder, as paths from the repository with `/`, without what is made or installed. */
export function filesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    if (['node_modules', 'dist', '.cache', '.git'].includes(entry.name)) return [];
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesIn(path) : [relative('.', path).split(sep).join('/')];
  });
}

export function textOf(file: string): string {
  return readFileSync(join(root, file), 'utf8');
}

/** The TypeScript sources of a package, tests excluded. */
export function sourcesOf(name: Package): string[] {
  return filesIn(`${name}/src`).filter((file) => /\.tsx?$/.test(file));
}

const specifier = /(?:\bfrom\s*|\bimport\s*\(\s*|\bimport\s+)['"]([^'"\n]+)['"]/g;

/** What a source imports, types included, as written. */
export function importsOf(source: string): string[] {
  return [...source.matchAll(specifier)].map((match) => match[1] ?? '');
}
