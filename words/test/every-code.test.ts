import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { catalogues } from '../src/messages/index.ts';

const root = join(import.meta.dirname, '../..');

function sourcesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sourcesUnder(path);
    return entry.name.endsWith('.ts') ? [readFileSync(path, 'utf8')] : [];
  });
}

const sources = ['engine', 'plant', 'jobs'].flatMap((name) => sourcesUnder(join(root, name, 'src'))).join('\n');
const found = (pattern: RegExp) => [...new Set([...sources.matchAll(pattern)].map((match) => match[1] ?? ''))];
const listed = (file: string) =>
  [...readFileSync(join(root, file), 'utf8').matchAll(/^ {2}'([a-z-]+)',$/gm)].map((match) => match[1] ?? '');
const without = (codes: readonly string[], ...families: readonly string[]) =>
  codes.filter((code) => !families.some((family) => Object.hasOwn(catalogues.en, `${family}.${code}`)));

describe('codes', () => {
  test('[WORDS-12] every refusal that the sources throw has its sentence', () => {
    const thrown = found(/new Refusal\(\s*'([a-z-]+)'/g);
    expect(thrown.length).toBeGreaterThan(20);
    expect(without(thrown, 'refusal')).toEqual([]);
  });

  test('[WORDS-12] every refusal that reading an input gives has its sentence', () => {
    const read = readFileSync(join(root, 'jobs/src/solve/read-input.ts'), 'utf8');
    const codes = [...read.matchAll(/code(?:: | = value === undefined \? )'([a-z-]+)'/g)].map(
      (match) => match[1] ?? '',
    );
    expect(codes.length).toBeGreaterThan(4);
    expect(without(codes, 'refusal')).toEqual([]);
  });

  test('[WORDS-12] every note of the engine has its sentence', () => {
    const engine = sourcesUnder(join(root, 'engine/src')).join('\n');
    const noted = [...engine.matchAll(/code: '([a-z-]+)'/g)].map((match) => match[1] ?? '');
    expect(noted.length).toBeGreaterThan(2);
    expect(without(noted, 'note')).toEqual([]);
  });

  test('[WORDS-12] every problem and note of a plant folder has its sentence', () => {
    const codes = [...listed('plant/src/folder/problem.ts'), ...listed('plant/src/check/check-codes.ts')];
    expect(codes.length).toBeGreaterThan(50);
    expect(without(codes, 'problem')).toEqual([]);
  });

  test('[WORDS-12] every formula has a title and every symbol a meaning', () => {
    const engine = sourcesUnder(join(root, 'engine/src')).join('\n');
    const ids = [...engine.matchAll(/workedFormula\(\{\s*id: '([a-z-]+)'/g)].map((match) => match[1] ?? '');
    const meanings = [...engine.matchAll(/meaning: '(\w+)'/g)].map((match) => match[1] ?? '');
    expect(ids.length).toBeGreaterThan(50);
    expect(without(ids, 'formula')).toEqual([]);
    expect(without(meanings, 'meaning')).toEqual([]);
  });
});
