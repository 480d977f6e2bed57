import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type DocumentedFunction, exportedFunctions } from './doc-comments/exported-functions.ts';
import { filesUnder } from './doc-comments/files-under.ts';
import { testTexts } from './doc-comments/test-texts.ts';

const src = join(import.meta.dirname, '../src');
const sources = filesUnder(src, '.ts');
const functions = sources.flatMap((file) => exportedFunctions(relative(src, file), readFileSync(file, 'utf8')));
const rows = functions.map((one): [string, DocumentedFunction] => [`${one.file}: ${one.name}`, one]);
const hasUnit = /\[[^\]]+\]/;
const named = testTexts(import.meta.dirname);

/** Plumbing of the table of formulas: computes nothing of its own. */
const plumbing = (one: DocumentedFunction) => one.file.startsWith('worked/');
const computing = rows.filter(([, one]) => !plumbing(one));

/** Several ids stand one after the other; an id may hold a comma itself. */
function idsOf(verified: string): string[] {
  return verified.split(/,\s+(?=[A-Z]+[0-9.]*[ -])/).map((id) => id.trim());
}

describe('doc comments of exported functions', () => {
  it('[DOC-01] the functions of every room are seen', () => {
    for (const room of ['loop', 'splice']) {
      expect(functions.filter(({ file }) => file.startsWith(`${room}/`)).length, room).toBeGreaterThan(5);
    }
  });

  it.each(rows)('[DOC-02] %s says in a sentence what it does', (_, { summary }) => {
    expect(summary).toMatch(/^[A-Z]/);
    expect(summary).toMatch(/[.:]$/);
  });

  it.each(computing)('[DOC-03] %s describes every parameter, numbers with their unit', (_, { parameters, tags }) => {
    const lines = tags.filter(({ tag }) => tag === 'param').map(({ text }) => text);
    for (const { name, numeric } of parameters) {
      // A destructured parameter has no name of its own: any line will do.
      const own = lines.filter((line) => name === undefined || line.split(/[ .]/)[0] === name);
      expect(own.length, name).toBeGreaterThan(0);
      for (const line of own) expect(line).toMatch(/^\S+ - \S/);
      if (numeric) expect(own.join(' ')).toMatch(hasUnit);
    }
  });

  it.each(computing)('[DOC-04] %s says what it returns, numbers with their unit', (_, { returns, tags }) => {
    const lines = tags.filter(({ tag }) => tag === 'returns').map(({ text }) => text);
    if (returns !== 'void') expect(lines.length).toBe(1);
    if (/\bnumber\b/.test(returns)) expect(lines[0]).toMatch(hasUnit);
  });

  it.each(computing)('[DOC-05] %s names its source, and its refusals when it makes any', (_, { refuses, tags }) => {
    expect(tags.some(({ tag, text }) => tag === 'source' && text.length > 5)).toBe(true);
    if (refuses) expect(tags.some(({ tag, text }) => tag === 'throws' && /^[a-z]+(-[a-z]+)*/.test(text))).toBe(true);
  });

  it.each(computing.filter(([, { tags }]) => tags.some(({ tag }) => tag === 'verified')))(
    '[DOC-06] %s: each check it names exists among the tests',
    (_, { tags }) => {
      for (const { text } of tags.filter(({ tag }) => tag === 'verified')) {
        for (const id of idsOf(text)) expect(named(id), id).toBe(true);
      }
    },
  );

  it('[DOC-06] an invented check would be noticed', () => {
    // Put together here, so that the text itself stands in no test.
    expect(named(['T2', 'never', 'tested'].join(' '))).toBe(false);
    expect(functions.filter(({ tags }) => tags.some(({ tag }) => tag === 'verified')).length).toBeGreaterThan(10);
  });
});
