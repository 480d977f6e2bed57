import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feetInches } from '../src/feet-inches.ts';
import { languages } from '../src/language.ts';
import { numberText } from '../src/number-text.ts';
import { plainNumber } from '../src/plain-number.ts';
import { quantityKinds, unitSystems, unitTable } from '../src/units.ts';
import { voice } from '../src/voice.ts';

const runs = { seed: 42, numRuns: Number(process.env.LW_RUNS ?? 2000) };
const thin = '\u202f';
const en = voice('en', 'metric');
const de = voice('de', 'metric');
const es = voice('es', 'metric');
const us = voice('en', 'us');

/** Reads a shown number back: what a person would type into a calculator. */
function readBack(text: string): number {
  return Number(text.replaceAll(thin, '').replace('\u2212', '-').replace(',', '.').replace('+', ''));
}

describe('numbers', () => {
  test('[WORDS-07] a belt length is grouped alike in all languages', () => {
    for (const speaker of [en, de, es]) {
      expect(speaker.show(64.302, 'length')).toEqual({ value: `64${thin}302`, unit: 'mm' });
      expect(speaker.show(2.018, 'length').value).toBe(`2${thin}018`);
    }
    expect(us.show(64.302, 'length')).toEqual({ value: `2${thin}531.57`, unit: 'in' });
  });

  test('[WORDS-07] decimal sign of the language', () => {
    expect(en.write(0.009, 'percent')).toBe('0.90\u00a0%');
    expect(de.write(0.009, 'percent')).toBe('0,90\u00a0%');
    expect(es.write(0.009, 'percent')).toBe('0,90\u00a0%');
  });

  test('[WORDS-07] real minus, plus only when asked', () => {
    expect(en.show(-0.0015, 'shortLength').value).toBe('\u22121.5');
    expect(en.show(0.0015, 'shortLength', { signed: true }).value).toBe('+1.5');
    expect(en.show(0, 'shortLength', { signed: true }).value).toBe('0.0');
    expect(en.show(-0, 'length').value).toBe('0');
  });

  test('[WORDS-07] a half in the last digit goes up, whatever the conversion leaves behind the point', () => {
    expect(en.show(0.00125, 'shortLength').value).toBe('1.3');
    expect(en.show(1.0005, 'length').value).toBe(`1${thin}001`);
  });

  test('[WORDS-07] no number becomes a word of the machine', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) expect(en.show(value, 'force').value).toBe('–');
  });

  test('[WORDS-08] a value that is not zero never shows as zero', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-8, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 3 }), (value, digits) => {
        expect(readBack(numberText(value, { language: 'en', digits }))).toBeGreaterThan(0);
      }),
      runs,
    );
  });

  test('[WORDS-08] shown and read back is within half the last digit', () => {
    const any = fc.record({
      value: fc.double({ min: -1e5, max: 1e5, noNaN: true }),
      kind: fc.constantFrom(...quantityKinds.filter((kind) => kind !== 'time')),
      language: fc.constantFrom(...languages),
      units: fc.constantFrom(...unitSystems),
    });
    fc.assert(
      fc.property(any, ({ value, kind, language, units }) => {
        const unit = unitTable[kind][units];
        const inUnit = value * unit.factor + unit.offset;
        const shown = readBack(voice(language, units).show(value, kind).value);
        expect(Math.abs(shown - inUnit)).toBeLessThanOrEqual(
          0.5 * 10 ** -unit.digits * 1.000001 + Math.abs(inUnit) * 1e-11,
        );
      }),
      runs,
    );
  });

  test('[WORDS-08] small friction keeps its digits', () => {
    expect(en.show(0.3, 'ratio').value).toBe('0.30');
    expect(en.show(0.025, 'ratio').value).toBe('0.025');
  });

  test('[WORDS-08] numbers of unknown size keep six significant digits', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e14, max: 1e14, noNaN: true }), (value) => {
        const text = plainNumber(value, 'en');
        expect(Math.abs(readBack(text.replace('e\u2212', 'e-')) - value)).toBeLessThanOrEqual(Math.abs(value) * 1e-5);
      }),
      runs,
    );
    expect(plainNumber(1e300, 'en')).toBe('1e300');
    expect(plainNumber(-2.5e-9, 'de')).toBe('\u22122,5e\u22129');
    expect(plainNumber(0, 'en')).toBe('0');
  });

  test('[WORDS-09] ranges and deviations', () => {
    expect(en.range(5400, 7800, 'minutes')).toBe('90–130');
    expect(en.range(5400, 7800, 'time')).toBe('90–130');
    expect(en.range(60, 90, 'time')).toBe('60–90');
    expect(en.range(0.009, 0.009, 'percent')).toBe('0.90');
    expect(en.plusMinus(0.019, 'length')).toBe('±\u00a019');
    expect(us.plusMinus(10, 'temperature')).toBe('±\u00a018');
    expect(us.show(10, 'temperature')).toEqual({ value: '50', unit: '°F' });
  });

  test('[WORDS-10] times by size', () => {
    expect(en.show(90, 'time')).toEqual({ value: '90', unit: 's' });
    expect(en.show(1050, 'time')).toEqual({ value: '17:30', unit: 'min' });
    expect(en.show(260, 'time', { digits: 0 })).toEqual({ value: '260', unit: 's' });
    expect(en.show(88 * 60, 'minutes')).toEqual({ value: '88', unit: 'min' });
    expect(de.show(6.7 * 3600, 'time')).toEqual({ value: '6,7', unit: 'h' });
  });

  test('[WORDS-10] one day, two days', () => {
    expect(en.write(1, 'days')).toBe('1\u00a0day');
    expect(en.write(2, 'days')).toBe('2\u00a0days');
    expect(de.write(1, 'revolutions')).toBe('1\u00a0Umlauf');
    expect(es.write(110_000, 'revolutions')).toBe(`110${thin}000\u00a0vueltas`);
  });

  test('[WORDS-10] days and moments', () => {
    const plain = (text: string) => text.replaceAll('\u00a0', ' ');
    expect(plain(en.day('2026-03-02'))).toBe('2 Mar 2026');
    expect(plain(de.day('2026-03-02'))).toBe('2. März 2026');
    expect(plain(es.day('2026-03-02'))).toBe('2 mar 2026');
    expect(plain(en.moment('2026-11-25T02:04:00Z'))).toBe('25 Nov 2026, 02:04 UTC');
    expect(en.day('yesterday')).toBe('yesterday');
  });

  test('[WORDS-07] lists', () => {
    expect(en.list(['die', 'template', 'press'])).toBe('die, template and press');
    expect(de.list(['A', 'B'])).toBe('A und B');
    expect(es.list(['troquel', 'indicador'])).toBe('troquel e indicador');
    expect(es.list(['agua', 'hielo'])).toBe('agua y hielo');
    expect(en.list([])).toBe('');
  });

  test('[WORDS-16] feet and inches to the nearest sixteenth', () => {
    const plain = (length_m: number) => feetInches(us, length_m).replaceAll('\u00a0', ' ');
    // Whole units by definition: 12 in a foot, 25.4 mm an inch.
    expect(plain(0.3048)).toBe('1 ft 0 in');
    expect(plain(0.0254 * 1.5)).toBe('1 1/2 in');
    expect(plain(0.0254 / 16)).toBe('1/16 in');
    expect(plain(0)).toBe('0 in');
    expect(plain(3.048 + 0.0254 * 11.999)).toBe('11 ft 0 in');
    fc.assert(
      fc.property(fc.double({ min: 0, max: 200, noNaN: true }), (length_m) => {
        const [, feet = '0', rest = ''] = /^(?:(\d+) ft )?(.*) in$/.exec(plain(length_m)) ?? [];
        const inches = rest.split(' ').reduce((sum, piece) => {
          const [top = 0, bottom = 1] = piece.split('/').map(Number);
          return sum + top / bottom;
        }, 0);
        expect(Math.abs((Number(feet) * 12 + inches) * 0.0254 - length_m)).toBeLessThanOrEqual(0.0254 / 32 + 1e-9);
      }),
      runs,
    );
  });
});
