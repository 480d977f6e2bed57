import { units } from '@loopwright/plant';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTypedNumber } from '../src/form/read-number.ts';
import { readableNumber, typedNumber } from '../src/form/write-number.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

describe('numbers as typed', () => {
  test.each([
    ['2.4', 2.4],
    ['2,4', 2.4],
    ['1 234.5', 1234.5],
    ['1\u202f234,5', 1234.5],
    ['64\u00a0302', 64302],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['1.234.567', 1234567],
    ['\u22120.5', -0.5],
    [' .5 ', 0.5],
    ['0,125', 0.125],
    ['0.125', 0.125],
    ['1 15/16', 1.9375],
    ['3/4', 0.75],
  ])('[STORES-03] %s reads the same in every language', (typed, value) => {
    for (const language of ['en', 'de', 'es'] as const) expect(readTypedNumber(typed, language)).toEqual({ value });
  });

  test('[STORES-03] the own decimal mark before three digits is a decimal, a foreign one is asked back', () => {
    expect(readTypedNumber('1.234', 'en')).toEqual({ value: 1.234 });
    expect(readTypedNumber('1,234', 'de')).toEqual({ value: 1.234 });
    expect(readTypedNumber('1,234', 'es')).toEqual({ value: 1.234 });
    expect(readTypedNumber('1,234', 'en')).toEqual({ code: 'entry-ambiguous' });
    expect(readTypedNumber('1.234', 'de')).toEqual({ code: 'entry-ambiguous' });
    expect(readTypedNumber('64.302', 'es')).toEqual({ code: 'entry-ambiguous' });
  });

  test.each(['', 'two', '2 mm', '1,2,3', '1 23', '12 34 56', '1e999', '--2', '1/0', '0x10', '=1+1', '1.234,567.8'])(
    '[STORES-03] “%s” is no number',
    (typed) => {
      for (const language of ['en', 'de', 'es'] as const)
        expect(readTypedNumber(typed, language)).toHaveProperty('code');
    },
  );

  test('[STORES-03] a number of nine digits, as it stands in a field and as it is read, reads back as it was', () => {
    const any = fc.record({
      value: fc.double({ min: -1e9, max: 1e9, noNaN: true }).map((value) => Number(value.toPrecision(9))),
      language: fc.constantFrom('en' as const, 'de' as const, 'es' as const),
    });
    fc.assert(
      fc.property(any, ({ value, language }) => {
        for (const text of [typedNumber(value, undefined, language), readableNumber(value, undefined, language)]) {
          const read = readTypedNumber(text, language);
          expect(read).toHaveProperty('value');
          const back = 'value' in read ? read.value : Number.NaN;
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-20);
        }
      }),
      runs,
    );
  });

  // Exact factors by hand: 50 mm / 25.4 = 1.968504 in, 96 m / 0.3048 = 314.9606 ft, 1 mm = 0.03937008 in.
  test.each([
    [0.05, 'in', '1.969'],
    [0.0762, 'in', '3'],
    [3.15625 * 0.0254, 'in', '3.15625'],
    [0.001, 'in', '0.03937'],
    [96, 'ft', '314.96'],
    [64.302, 'in', '2\u202f531.57'],
  ] as const)(
    '[STORES-18] %s m is read as it was entered, or to four digits or two decimals: %s %s',
    (value, unit, text) => {
      expect(
        readableNumber(
          value,
          units.length.find((known) => known.unit === unit),
          'en',
        ),
      ).toBe(text);
    },
  );
});
