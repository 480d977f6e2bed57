import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pluralForm } from '../src/arguments-of.ts';
import { languages } from '../src/language.ts';
import { problemSentence } from '../src/problem-sentence.ts';
import { sentence } from '../src/sentence.ts';
import { unitSystems } from '../src/units.ts';
import { voice } from '../src/voice.ts';

const runs = { seed: 42, numRuns: Number(process.env.LW_RUNS ?? 2000) };
const readable = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
const en = voice('en', 'metric');

describe('plurals', () => {
  test('[WORDS-19] a counted word takes the form that the platform’s rules of the language give', () => {
    for (const language of languages) {
      const rules = new Intl.PluralRules(language);
      for (let count = 0; count < 2000; count += 1) expect(pluralForm(count)).toBe(rules.select(count));
    }
  });
});

describe('error sentences', () => {
  test('[WORDS-12] where, what with unit, allowed, next step', () => {
    const said = (data: Record<string, number | string>) =>
      readable(sentence(en, { code: 'out-of-range', path: 'layers[2].thickness_m', data }));
    expect(said({ value: 0, min: 0, max: 0.02, unit: 'm' })).toBe(
      'layers[2].thickness_m: got 0 m, must be > 0 m. Correct the value.',
    );
    expect(said({ value: 5, min: 0.0003, max: 0.02, unit: 'm' })).toContain('got 5 m, must be 0.0003 to 0.02 m.');
    expect(said({ value: -1, min: 0, max: Number.MAX_VALUE, unit: '1' })).toContain('got −1, must be ≥ 0.');
    expect(said({ value: 2.5, step: 1 })).toContain('got 2.5, must be a whole number.');
  });

  test('[WORDS-12] a value of a kind stands in the reader’s units', () => {
    const problem = {
      file: 'pulleys.csv',
      row: 5,
      field: 'diameter_mm',
      code: 'pulley-under-limit',
      data: { value: 0.04, min: 0.05, other: 'Alder-24', kind: 'length' },
    };
    expect(readable(problemSentence(en, problem))).toMatch(
      /^pulleys\.csv, row 5, diameter_mm: the diameter is 40 mm, belt Alder-24 needs at least 50 mm\./,
    );
    expect(readable(problemSentence(voice('de', 'us'), problem))).toContain('1,57 in');
  });

  test('[WORDS-12] the reason inside a problem is a sentence of its own', () => {
    const said = problemSentence(en, {
      file: 'lines.csv',
      code: 'path-refused',
      data: { reason: 'not-finite', value: 'NaN' },
    });
    expect(said).toBe(
      'lines.csv: no belt can run here as entered. Got NaN, a finite number is needed. Enter a number.',
    );
  });

  test('[WORDS-12] a code nobody has heard of still says where and with which values', () => {
    const said = sentence(en, { code: 'brand-new', path: 'a.b', data: { value: 3, unit: 'mm' } });
    expect(readable(said)).toBe(
      'a.b: cannot be computed with (brand-new, value 3 mm). Check this value and try again.',
    );
  });

  test('[WORDS-12] long input is cut before it is said back', () => {
    const said = sentence(en, { code: 'not-a-number', path: 'x', data: { value: 'z'.repeat(5000) } });
    expect(said.length).toBeLessThan(200);
  });

  test('[WORDS-13] a refused value never reads like its limit', () => {
    const data = fc.record({
      value: fc.double({ min: 0.001, max: 100, noNaN: true }),
      gap: fc.double({ min: 1e-5, max: 1, noNaN: true }),
      kind: fc.constantFrom('length', 'percent', 'temperature', 'force'),
    });
    fc.assert(
      fc.property(data, ({ value, gap, kind }) => {
        const said = problemSentence(en, {
          file: 'f',
          code: 'pulley-under-limit',
          data: { value, min: value + gap, other: 'B', kind },
        });
        const [, shown, limit] = /diameter is (.*), belt B needs at least (.*)\. The belt/.exec(said) ?? [];
        expect(shown).toBeDefined();
        expect(shown).not.toBe(limit);
      }),
      runs,
    );
  });

  test('[WORDS-12] any code with any data gives a sentence in every language', () => {
    const any = fc.record({
      code: fc.oneof(
        fc.string(),
        fc.constantFrom('out-of-range', 'path-refused', 'not-one-of', 'toString', '__proto__'),
      ),
      path: fc.string(),
      data: fc.dictionary(
        fc.oneof(fc.constantFrom('value', 'min', 'max', 'unit', 'kind', 'reason', 'allowed'), fc.string()),
        fc.oneof(fc.string(), fc.double(), fc.boolean(), fc.constant(null)),
      ),
    });
    fc.assert(
      fc.property(any, fc.constantFrom(...languages), fc.constantFrom(...unitSystems), (refused, language, units) => {
        expect(sentence(voice(language, units), refused).length).toBeGreaterThan(5);
      }),
      runs,
    );
  });
});
