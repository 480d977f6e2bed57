import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { voice } from '../src/voice.ts';
import { type FormulaSource, numbersInPlace, workedText } from '../src/worked-text.ts';

const runs = { seed: 42, numRuns: Number(process.env.LW_RUNS ?? 2000) };
const readable = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');

const cut: FormulaSource = {
  id: 'test-row',
  expression: 'L0 = L / (1 + e)',
  result: { symbol: 'L0', kind: 'length', meaning: 'a' },
  symbols: { L: { kind: 'length', meaning: 'b' }, e: { kind: 'percent', meaning: 'c' } },
  source: 'Euler 1775',
};

describe('worked formulas', () => {
  test('[WORDS-11] numbers stand in place of the symbols, in the reader’s units', () => {
    const text = workedText(voice('en', 'metric'), cut, { L: 64.8, e: 0.009 }, 64.8 / 1.009);
    expect(readable(text.withNumbers)).toBe('L0 = 64 800 mm / (1 + 0.90 %) = 64 222 mm');
    expect(text.source).toBe('Euler 1775');
    expect(text.symbols.map((row) => `${row.symbol} ${readable(row.value)}`)).toEqual([
      'L 64 800 mm',
      'e 0.90 %',
      'L0 64 222 mm',
    ]);
    const german = workedText(voice('de', 'us'), cut, { L: 64.8, e: 0.009 }, 64.8 / 1.009);
    expect(readable(german.withNumbers)).toBe('L0 = 2 551,18 in / (1 + 0,90 %) = 2 528,43 in');
  });

  const written = (values: Record<string, string>) => new Map(Object.entries(values));

  test.each([
    ['e * exp(f) + e_max', { e: '1', f: '2' }, '1 * exp(2) + e_max'],
    ['100 * k1% * b', { 'k1%': 'K', b: 'B', k1: 'no' }, '100 * K * B'],
    ['m * v²', { m: '3\u00a0kg/m', v: '2\u00a0m/s' }, '3 kg/m * (2 m/s)²'],
    ['m * v^2', { m: '3\u00a0kg/m', v: '2\u00a0m/s' }, '3 kg/m * (2 m/s)^2'],
    ['F / k', { F: '240\u00a0N', k: '8.0\u00a0N/mm per 1 %' }, '240 N / (8.0 N/mm per 1 %)'],
    ['2T * sin(w / 2)', { T: '200\u00a0N', w: '180.0°' }, '2 · 200 N * sin(180.0° / 2)'],
    ['a - b', { a: '1', b: '\u22122' }, '1 - (\u22122)'],
    ["m' * x", { "m'": '0.08', x: '3' }, '0.08 * 3'],
    ['x1 + x10 + x', { x: 'A', x1: 'B', x10: 'C' }, 'B + C + A'],
    ['1e-3 * e', { e: '7' }, '1e-3 * 7'],
    ['ε · L₀', { ε: '1', 'L₀': '2' }, '1 · 2'],
  ])('[WORDS-11] %s', (expression, values, expected) => {
    expect(readable(numbersInPlace(expression, written(values)))).toBe(expected);
  });

  test('[WORDS-11] every whole symbol is replaced, nothing else is touched', () => {
    const name = fc.stringMatching(/^[a-zA-Zα-ω][a-zA-Z0-9_]{0,4}$/);
    const names = fc.uniqueArray(name, { minLength: 2, maxLength: 8 });
    const operators = fc.array(fc.constantFrom(' + ', ' * ', ', ', ' + (', ') * '), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(names, operators, fc.integer({ min: 1, max: 7 }), (all, between, known) => {
        const values = written(Object.fromEntries(all.slice(0, known).map((symbol, i) => [symbol, `«${i}»`])));
        const join = (parts: readonly string[]) => parts.map((part, i) => part + (between[i] ?? '')).join('');
        expect(numbersInPlace(join(all), values)).toBe(join(all.map((symbol) => values.get(symbol) ?? symbol)));
      }),
      runs,
    );
  });

  test('[WORDS-11] a time stands in seconds, whatever its size, so that one can compute with it', () => {
    const row: FormulaSource = {
      id: 'r',
      expression: 'N = v * t / L',
      result: { symbol: 'N', kind: 'revolutions', meaning: 'n' },
      symbols: {
        v: { kind: 'speed', meaning: 'v' },
        t: { kind: 'time', meaning: 't' },
        L: { kind: 'length', meaning: 'l' },
      },
      source: '',
    };
    const text = workedText(voice('en', 'metric'), row, { v: 0.8, t: 72_000, L: 64.8 }, 889);
    expect(readable(text.withNumbers)).toBe('N = 0.80 m/s · 72 000 s / 64 800 mm = 889 revolutions');
    expect(readable(text.symbols[1]?.value ?? '')).toBe('20.0 h');
  });

  test('[WORDS-11] an angle under an exponential stands in radians, under a sine in degrees', () => {
    const row = (expression: string): FormulaSource => ({
      id: 'r',
      expression,
      result: { symbol: 'y', kind: 'ratio', meaning: 'y' },
      symbols: { w: { kind: 'angle', meaning: 'w' } },
      source: '',
    });
    const spoken = (expression: string) =>
      readable(workedText(voice('en', 'metric'), row(expression), { w: Math.PI }, 1).withNumbers);
    expect(spoken('y = exp(w)')).toBe('y = exp(3.1416 rad) = 1.00');
    expect(spoken('y = 2 * cos(w)')).toBe('y = 2 · cos(180.0°) = 1.00');
    expect(spoken('y = 2 * sin(w / 2)')).toBe('y = 2 · sin(180.0° / 2) = 1.00');
  });
});
