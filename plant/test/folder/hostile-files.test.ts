import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { folderProblemCodes } from '../../src/folder/problem.ts';
import { readWith, sampleFiles } from '../sample-folder.ts';

// A whole folder a run: fewer runs than for a formula.
const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 300) };
const codes: ReadonlySet<string> = new Set(folderProblemCodes);

const pieces = [
  ',',
  ';',
  '"',
  '""',
  '\n',
  '\r',
  '#',
  '\t',
  '1e999',
  '\ufeff',
  'source:',
  '_mm',
  "'=1+1",
  '💥',
  '\u2028',
  '-',
  '0',
];
const anyFile = fc.constantFrom(...Object.keys(sampleFiles));

/** A file of the sample with pieces set in at random places. */
const brokenFile = fc
  .tuple(anyFile, fc.array(fc.tuple(fc.nat(), fc.constantFrom(...pieces)), { minLength: 1, maxLength: 5 }))
  .map(([file, insertions]) => {
    const content = insertions.reduce((text, [place, piece]) => {
      const at = place % (text.length + 1);
      return `${text.slice(0, at)}${piece}${text.slice(at)}`;
    }, sampleFiles[file] ?? '');
    return { [file]: content };
  });

const anyBytes = fc
  .tuple(anyFile, fc.uint8Array({ maxLength: 400 }))
  .map(([file, bytes]): Record<string, Uint8Array> => ({ [file]: bytes }));

describe('files nobody meant', () => {
  it('[PLANT-34] whatever stands in a file, the answer is a plant or problems that are known', () => {
    fc.assert(
      fc.property(fc.oneof(brokenFile, anyBytes), (changes) => {
        const { problems, plant } = readWith(changes);
        expect(plant === undefined).toBe(problems.some(({ level }) => level === 'error'));
        for (const problem of problems) expect(codes.has(problem.code), problem.code).toBe(true);
        expect(JSON.stringify(plant ?? {})).not.toMatch(/null|undefined/);
      }),
      runs,
    );
  });
});
