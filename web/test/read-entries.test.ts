import { thingSchemas, toInside, units } from '@loopwright/plant';
import { voice } from '@loopwright/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Entries, keptEntries, newEntries, type PlainThing } from '../src/form/entries.ts';
import { entrySentence } from '../src/form/entry-sentence.ts';
import { type FormField, formFields } from '../src/form/form-field.ts';
import {
  type EntryContext,
  type EntryProblem,
  type FormReading,
  readEntries,
  readEntry,
} from '../src/form/read-entries.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
const fields = formFields('belts');
const dayField = formFields('presses').filter(({ key }) => key === 'checkedOn')[0] as FormField;
const alone: EntryContext = { language: 'en', original: undefined, exists: () => false };

const typed: Entries = {
  ...newEntries('belts', fields, { source: 'data sheet' }, 'us'),
  id: { text: 'Reed-09' },
  thickness_m: { text: '0.09', unit: 'in' },
  areaMass_kg_m2: { text: '0.5', unit: 'lb_ft2' },
  minPulley_m: { text: '2', unit: 'in' },
  k1_N_mm_pct: { text: '60', unit: 'lbf_in_pct' },
  fingerPitch_m: { text: '0.5', unit: 'in' },
  fingerLength_m: { text: '3', unit: 'in' },
};

const read = (entries: Entries, context: EntryContext = alone): FormReading =>
  readEntries('belts', fields, entries, context);
const sentence = (entries: Entries, key: string, context = alone): string => {
  const problem = read(entries, context).problems[key];
  return problem === undefined ? '' : entrySentence(voice('en', 'metric'), problem).replaceAll('\u00a0', ' ');
};

describe('a form read whole', () => {
  // 1 in = 0.0254 m, 1 lbf = 4.4482216152605 N, 1 lb = 0.45359237 kg: exact (NIST SP 811, appendix B).
  test('[STORES-04] US units give SI to the last digit', () => {
    const { thing, problems } = read(typed);
    expect(problems).toEqual({});
    expect(thing?.['minPulley_m']).toBe(0.0508);
    expect(thing?.['fingerPitch_m']).toBe(0.0127);
    expect(thing?.['fingerLength_m']).toBe(0.0762);
    expect(thing?.['thickness_m']).toBe(0.002286);
    expect(thing?.['areaMass_kg_m2']).toBeCloseTo((0.5 * 0.45359237) / 0.3048 ** 2, 12);
    expect(thing?.['k1_N_mm_pct']).toBeCloseTo((60 * 4.4482216152605) / 25.4, 12);
  });

  test('[STORES-05] a number nobody entered says that it is an example, whatever the rest comes from', () => {
    const { thing } = read({ ...typed, friction: { text: '0.35', source: 'measured' } });
    const { source, sources, friction, frictionWet } = thing as PlainThing & { sources: Record<string, string> };
    expect({ source, friction, frictionWet }).toEqual({ source: 'data sheet', friction: 0.35, frictionWet: 0.2 });
    expect(sources['friction']).toBe('measured');
    expect(sources['frictionWet']).toBe('example');
    expect(sources['thickness_m']).toBeUndefined();
  });

  test('[STORES-06] out of range is said in the unit typed in, with what is allowed and what to do', () => {
    const said = sentence({ ...typed, minPulley_m: { text: '50', unit: 'in' } }, 'minPulley_m');
    expect(said).toMatch(/^Got 50 in, must be 0\.19\d* to 39\.37\d* in\. Check the number and its unit\.$/);
    expect(sentence({ ...typed, thickness_m: { text: 'thin', unit: 'mm' } }, 'thickness_m')).toContain('“thin”');
    expect(sentence({ ...typed, thickness_m: { text: '' } }, 'thickness_m')).toMatch(/^Nothing is entered\./);
  });

  test.each([
    ['<img src=x onerror=alert(1)>', 'entry-not-id'],
    ['two words', 'entry-not-id'],
    ['x'.repeat(41), 'entry-not-id'],
    ['A\u202eB', 'entry-hidden-signs'],
    ['taken', 'entry-taken'],
  ])('[STORES-06] the short name %j is refused', (id, code) => {
    const context = { ...alone, exists: (_: string, other: string) => other === 'taken' };
    expect(read({ ...typed, id: { text: id } }, context).problems['id']?.code).toBe(code);
  });

  // By hand: 5 mm = 0.19685 in, 1000 mm = 39.37008 in.
  test('[STORES-06] a limit in another unit is written to four digits and can be entered', () => {
    const pulley = (text: string) => ({ ...typed, minPulley_m: { text, unit: 'in' } });
    expect(sentence(pulley('50'), 'minPulley_m')).toContain('must be 0.1969 to 39.37 in');
    expect(read(pulley('0.1969')).problems).toEqual({});
    expect(read(pulley('39.37')).problems).toEqual({});
    expect(sentence({ ...typed, friction: { text: '7' } }, 'friction')).toMatch(/must be 0\.\d+ to \d(\.\d+)?\./);
  });

  test('[STORES-06] a unit that nobody can choose is said too', () => {
    const hours = formFields('lines').find(({ key }) => key === 'hoursPerDay') as FormField;
    const problem = readEntry('lines', hours, { text: '25' }, alone) as EntryProblem;
    const said = entrySentence(voice('en', 'metric'), problem, hours).replaceAll('\u00a0', ' ');
    expect(said).toBe('Got 25 h, must be 0.1 to 24 h. Check the number and its unit.');
  });

  test('[STORES-06] a day that is still to come is refused; the day that has begun furthest east is not', () => {
    const checked = (day: string) =>
      readEntry('presses', dayField, { text: day }, { ...alone, now: '2026-11-26T11:00:00Z' });
    expect(checked('2026-11-27')).toEqual({ value: '2026-11-27' });
    expect(checked('2027-11-20')).toEqual({ code: 'entry-day-ahead', data: { day: '2027-11-20' } });
    const said = entrySentence(voice('en', 'metric'), { code: 'entry-day-ahead', data: { day: '2027-11-20' } });
    expect(said).toMatch(/^20\sNov\s2027 is still to come\. Enter the day on which it was\.$/);
  });

  test('[STORES-06] a text of ten thousand characters, or one with hidden signs, is refused', () => {
    const note = (text: string) => read({ ...typed, note: { text } }).problems['note']?.code;
    expect(note('x'.repeat(10_000))).toBe('entry-too-long');
    expect(note('left \u202e right')).toBe('entry-hidden-signs');
    expect(note('=cmd() <b>fine as text</b>')).toBeUndefined();
  });

  test('[STORES-07] an untouched form gives the thing back to the last digit, whatever the unit shown', () => {
    const anyBelt = fc.record({
      thickness_m: fc.double({ min: 0.0003, max: 0.02, noNaN: true }),
      k1_N_mm_pct: fc.double({ min: 0.1, max: 200, noNaN: true }),
      minPulley_m: fc.double({ min: 0.005, max: 1, noNaN: true }),
      areaMass_kg_m2: fc.double({ min: 0.1, max: 30, noNaN: true }),
      fingerPitch_m: fc.double({ min: 0.002, max: 0.1, noNaN: true }),
      fingerLength_m: fc.double({ min: 0.005, max: 0.5, noNaN: true }),
      sources: fc.constantFrom(
        undefined,
        { thickness_m: 'measured' },
        { strength_N_mm: 'person', friction: 'example' },
      ),
    });
    fc.assert(
      fc.property(anyBelt, fc.constantFrom('metric' as const, 'us' as const), ({ sources, ...numbers }, system) => {
        const own = sources === undefined ? {} : { sources };
        const belt = thingSchemas.belts.parse({ id: 'B', source: 'data sheet', ...numbers, ...own }) as PlainThing;
        const context = { ...alone, original: belt };
        const { thing } = read(keptEntries('belts', fields, belt, system), context);
        const { sources: before = {}, ...values } = belt;
        const { sources: after = {}, ...valuesAfter } = thing ?? {};
        expect(valuesAfter).toEqual(values);
        expect(withoutAbsent(after, belt)).toEqual(withoutAbsent(before, belt));
      }),
      { ...runs, numRuns: Math.min(runs.numRuns, 500) },
    );
  });

  test('[STORES-04] a limit typed in any unit is within the limits', () => {
    for (const unit of units.length) {
      const text = String(Number(((0.005 / toInside(1, unit)) as number).toPrecision(15)));
      expect(read({ ...typed, minPulley_m: { text, unit: unit.unit } }).problems, unit.unit).toEqual({});
    }
  });
});

/** Sources of numbers that are not there say nothing. */
function withoutAbsent(sources: unknown, belt: PlainThing): Record<string, unknown> {
  return Object.fromEntries(Object.entries(sources as object).filter(([key]) => belt[key] !== undefined));
}
