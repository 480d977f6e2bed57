import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesIn, packages, root, sourcesOf, textOf } from './sources.ts';

const sources = packages.flatMap(sourcesOf);
const longestFile = 300;

describe('files', () => {
  it('[HOUSE-05] a file says in its name what it holds', () => {
    expect(sources.length).toBeGreaterThan(100);
    const vague = filesIn('.').filter((file) => /(^|\/)(utils?|helpers?|common|misc|shared)(\.|\/|$)/i.test(file));
    expect(vague).toEqual([]);
  });

  it('[HOUSE-06] names of sources are kebab-case', () => {
    const names = sources.map((file) => file.slice(file.lastIndexOf('/') + 1));
    expect(names.filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*(\.d)?\.tsx?$/.test(name))).toEqual([]);
  });

  it('[HOUSE-07] no source is longer than what one can keep in mind, tables of words and formulas aside', () => {
    const isTable = (file: string) => /\/messages\/|formulas\.ts$/.test(file);
    const long = sources
      .filter((file) => !isTable(file))
      .map((file) => ({ file, lines: textOf(file).split('\n').length }))
      .filter(({ lines }) => lines > longestFile);
    expect(long).toEqual([]);
  });

  it('[HOUSE-08] nothing is left over: no note to oneself, no silenced rule, no loose type', () => {
    const marks = new RegExp(
      `\\b(${['TO', 'FIX'].map((word) => `${word}${word === 'TO' ? 'DO' : 'ME'}`).join('|')})\\b`,
    );
    const silenced = new RegExp(`${'biome'}-ignore|@ts-(ignore|expect-error|nocheck)|:\\s*any\\b|as any\\b`);
    const code = sources.filter((file) => !file.includes('/messages/'));
    const left = code.filter((file) => marks.test(textOf(file)) || silenced.test(textOf(file)));
    expect(left).toEqual([]);
  });
});

describe('documents', () => {
  const readme = textOf('README.md');

  it('[HOUSE-09] two commands set everything up, and the readme names no third', () => {
    const blocks = [...readme.matchAll(/```sh\n([\s\S]*?)```/g)].map((match) => match[1] ?? '');
    const commands = blocks.flatMap((block) =>
      block
        .trim()
        .split('\n')
        .map((line) => line.split('#')[0]?.trim()),
    );
    expect(commands).toEqual(['npm start', 'npm test']);
  });

  it('[HOUSE-10] every link between the documents leads somewhere', () => {
    const documents = filesIn('.').filter((file) => file.endsWith('.md'));
    const broken = documents.flatMap((file) =>
      [...textOf(file).matchAll(/\]\(([^)\s]+)\)/g)]
        .map((match) => (match[1] ?? '').split('#')[0] ?? '')
        .filter((link) => link !== '' && !/^[a-z]+:/.test(link))
        .filter((link) => !existsSync(join(root, file, '..', link)))
        .map((link) => `${file}: ${link}`),
    );
    expect(documents.length).toBeGreaterThan(5);
    expect(broken).toEqual([]);
  });

  it('[HOUSE-11] each package says what it is for', () => {
    for (const name of packages) expect(textOf(`${name}/README.md`)).toContain('```');
  });

  it('[HOUSE-12] nothing promises what a computation cannot', () => {
    const promise = /\b(is|are|perfectly|absolutely) safe\b|\bguaranteed to\b|\bcertified\b/i;
    const documents = filesIn('.').filter((file) => /\.md$|\/messages\/.*\.ts$/.test(file));
    const promising = documents.filter((file) => promise.test(textOf(file)) && !/CONTRIBUTING/.test(file));
    expect(promising).toEqual([]);
  });
});
