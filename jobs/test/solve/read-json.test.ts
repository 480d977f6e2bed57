import { Refusal } from '@loopwright/engine/refusal';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkSize, largestInput_bytes, readJson } from '../../src/solve/index.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

function refusalOf(text: string): Refusal {
  try {
    readJson(text);
  } catch (cause) {
    if (cause instanceof Refusal) return cause;
  }
  throw new Error(`was read: ${text}`);
}

it.each([
  ['{"a": 1,}', 1, 9, '}'],
  ['{"a": 1\n "b": 2}', 2, 2, '"'],
  ['{"a": NaN}', 1, 7, 'NaN'],
  ['{"a": -Infinity}', 1, 7, '-Infinity'],
  ['{"a": 1,5}', 1, 9, '5'],
  ['{"a": 01}', 1, 7, '01'],
  ['{"a": .5}', 1, 7, '.5'],
  ["{'a': 1}", 1, 2, "'"],
  ['{"a": 1', 1, 8, ''],
  ['', 1, 1, ''],
  ['  \n', 2, 1, ''],
  ['[1, 2]]', 1, 7, ']'],
  ['{"a": "b\nc"}', 1, 7, '"'],
  ['{"a": tru}', 1, 7, 'tru'],
])('[SOLVE-20] %j stops at line %i, column %i', (text, line, column, found) => {
  expect(refusalOf(text)).toMatchObject({ code: 'not-json', data: { line, column, found } });
});

it('[SOLVE-21] what is JSON is read as it stands, with or without a byte order mark', () => {
  fc.assert(
    fc.property(fc.json(), (text) => {
      expect(readJson(text)).toEqual(JSON.parse(text));
      expect(readJson(`\uFEFF${text}`)).toEqual(JSON.parse(text));
    }),
    runs,
  );
});

it('[SOLVE-22] a spoilt text is refused at a place inside it', () => {
  fc.assert(
    fc.property(fc.json(), fc.nat(), fc.constantFrom('', ',', '}', 'x', '"', '0', '\n'), (text, at, put) => {
      const place = at % (text.length + 1);
      const spoilt = text.slice(0, place) + put + text.slice(place + (put === '' ? 1 : 0));
      if (isJson(spoilt)) return;
      const { line, column } = refusalOf(spoilt).data as { line: number; column: number };
      const lines = spoilt.split('\n');
      expect(line).toBeLessThanOrEqual(lines.length);
      expect(column).toBeLessThanOrEqual((lines[line - 1]?.length ?? 0) + 1);
    }),
    runs,
  );
});

it('[SOLVE-23] an input above the limit is refused by its size alone', () => {
  expect(() => checkSize(largestInput_bytes)).not.toThrow();
  expect(() => checkSize(200_000_000)).toThrow(expect.objectContaining({ code: 'too-large' }));
});

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
