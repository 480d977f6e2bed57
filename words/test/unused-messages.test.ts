import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { expect, test } from 'vitest';
import { catalogues } from '../src/messages/index.ts';

const root = join(import.meta.dirname, '../..');
const packages = ['engine', 'plant', 'records', 'jobs', 'words', 'sheets', 'server', 'cli', 'web'];
const skipped = new Set(['node_modules', 'dist', 'test', 'messages']);

function sourcesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (entry.isDirectory()) return skipped.has(entry.name) ? [] : sourcesUnder(join(folder, entry.name));
    return /\.tsx?$/.test(entry.name) ? [join(folder, entry.name)] : [];
  });
}

const files = packages.flatMap((name) => sourcesUnder(join(root, name, 'src')));
const source = files.map((file) => readFileSync(file, 'utf8')).join('\n');

/** Texts in quotes, names of fields, and templates up to their first gap: what a key can be made of. */
const quoted = new Set(source.match(/(?<=['"`])[\w.%-]+(?=['"`])/g));
const fields = new Set(source.match(/[\w-]+(?=\??['"]?:)/g));
const prefixes = new Set([...source.matchAll(/[`]([\w.-]+[.-])\$\{/g)].map((match) => match[1] ?? ''));

/** Labels of fields and of their answers are found by the names in the schemas of the plant. */
function namesField(key: string): boolean {
  const [family = '', ...parts] = key.split('.');
  const known = (part: string) =>
    quoted.has(part) ||
    fields.has(part) ||
    /^\d+$/.test(part) ||
    [...fields].some((name) => name.startsWith(`${part}_`));
  return prefixes.has(`${family}.`) && ['field', 'fieldHelp', 'choice'].includes(family) && parts.every(known);
}

function isUsed(key: string): boolean {
  if (quoted.has(key) || namesField(key)) return true;
  return [...prefixes].some((prefix) => {
    const rest = key.slice(prefix.length);
    return (
      key.startsWith(prefix) && (quoted.has(rest) || fields.has(rest) || quoted.has(`${rest}_m`) || /^\d+$/.test(rest))
    );
  });
}

test('[WORDS-05] enough sources were read to judge', () => {
  expect(files.length, files.map((file) => relative(root, file)).join(' ')).toBeGreaterThan(100);
  expect(prefixes.has('warning.')).toBe(true);
  expect(isUsed('warning.no-such-code')).toBe(false);
  expect(isUsed('card.no-such-title')).toBe(false);
  expect(isUsed('field.belts.noSuchField')).toBe(false);
});

test('[WORDS-05] every message is used somewhere', () => {
  expect(Object.keys(catalogues.en).filter((key) => !isUsed(key))).toEqual([]);
});
