import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type * as z from 'zod';
import { byId, emptyPlant, kinds } from '../../src/empty-plant.ts';
import { type Field, fieldsOf } from '../../src/folder/fields.ts';
import { type Findings, readFile } from '../../src/folder/read-file.ts';
import { readPlantFolder } from '../../src/folder/read-plant-folder.ts';
import { units } from '../../src/folder/units.ts';
import { type WritingStyle, writePlantFolder } from '../../src/folder/write-plant-folder.ts';
import { type Kind, type Plant, thingSchemas } from '../../src/plant.ts';
import { sources } from '../../src/things/source.ts';
import { readWith } from '../sample-folder.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

const style: fc.Arbitrary<WritingStyle> = fc
  .record({
    marks: fc.constantFrom([',', '.'], [';', ','], [';', '.'], ['\t', ','], ['\t', '.']) as fc.Arbitrary<
      [WritingStyle['delimiter'], WritingStyle['decimal']]
    >,
    pick: fc.nat(1000),
  })
  .map(({ marks: [delimiter, decimal], pick }) => ({
    delimiter,
    decimal,
    unitOf: (kind) => units[kind][pick % units[kind].length]?.unit ?? '',
  }));

const anyId = fc.oneof(
  fc.constantFrom('constructor', 'toString', 'QM-04.12', 'Größe_1', '7'),
  fc.stringMatching(/^[A-Za-zäß0-9][A-Za-z0-9._-]{0,20}$/),
);
const anyText = fc
  .oneof(
    fc.string({ unit: 'grapheme', maxLength: 60 }),
    fc.constantFrom('=1+1', "'=x", '-5', 'a\nb', 'say "x"', '#1', '3,5'),
  )
  .map((text) => text.normalize('NFC').trim())
  // Signs without a shape are refused by a rule of their own.
  .filter((text) => text !== '' && text.length <= 300 && !/[\p{Cf}\u180e\u2028\u2029]/u.test(text));
const time = fc.integer({ min: 0, max: 4_000_000_000 }).map((s) => new Date(s * 1000).toISOString());

/** A value that a field takes; `undefined` where it may be left out. */
function fieldValue(schema: z.ZodObject, field: Field): fc.Arbitrary<unknown> {
  const type = schema.shape[field.key] as z.ZodType;
  const right = someValue(field).filter((value) => type.safeParse(value).success);
  // A field with a default always has a value once a thing is read.
  const filled = field.required || type.safeParse(undefined).data !== undefined;
  return filled ? right : fc.option(right, { nil: undefined });
}

function someValue({ key, form, allowed, min, max }: Field): fc.Arbitrary<unknown> {
  if (form === 'yes-no') return fc.boolean();
  if (form === 'number') {
    return allowed ? fc.constantFrom(...allowed.map(Number)) : fc.double({ min: min ?? 0, max: max ?? 1, noNaN: true });
  }
  if (allowed) return fc.constantFrom(...allowed);
  if (key.endsWith('On')) return time.map((moment) => moment.slice(0, 10));
  if (key === 'since') return time;
  return fc.oneof(anyText, anyId);
}

/** A thing of any kind that meets its schema; nothing more is asked of it. */
function thing(kind: Kind): fc.Arbitrary<{ readonly id: string }> {
  const schema: z.ZodObject = thingSchemas[kind];
  const fields = fieldsOf(schema);
  const record = Object.fromEntries(fields.map((field) => [field.key, fieldValue(schema, field)]));
  const own = fc.dictionary(fc.constantFrom(...fields.map(({ key }) => key)), fc.constantFrom(...sources), {
    maxKeys: 3,
  });
  return fc.tuple(fc.record(record), own).map(([values, sourcesOf]) =>
    Object.fromEntries(
      Object.entries({
        ...values,
        ...(Object.keys(sourcesOf).length > 0 ? { sources: { ...sourcesOf } } : {}),
      }).filter(([, value]) => value !== undefined),
    ),
  ) as unknown as fc.Arbitrary<{ readonly id: string }>;
}

const someThings = fc
  .constantFrom(...kinds)
  .chain((kind) =>
    fc.record({ kind: fc.constant(kind), things: fc.array(thing(kind), { minLength: 1, maxLength: 3 }) }),
  );

/** Equal but for the rounding of numbers: 1e-12 of their size; of a temperature, whose zero moves, of its kelvin. */
function expectSame(ours: unknown, wanted: unknown, path: string): void {
  if (typeof wanted === 'number' && typeof ours === 'number') {
    expect(Math.abs(ours - wanted), `${path}: ${ours} for ${wanted}`).toBeLessThanOrEqual(
      Math.max(1e-12 * Math.abs(wanted), path.endsWith('_degC') ? 1e-12 * 273.15 : 1e-300),
    );
  } else if (typeof wanted === 'object' && wanted !== null) {
    expect(Object.keys(ours ?? {}).sort(), path).toEqual(Object.keys(wanted).sort());
    for (const [key, value] of Object.entries(wanted))
      expectSame(Reflect.get(ours ?? {}, key), value, `${path}.${key}`);
  } else expect(ours, path).toBe(wanted);
}

const bytesOf = (texts: ReadonlyMap<string, string>) =>
  new Map([...texts].map(([name, text]) => [name, new TextEncoder().encode(text)]));

describe('written and read again', () => {
  it('[PLANT-40] any thing in any units, delimiter and decimal mark comes back within 1e-12', () => {
    fc.assert(
      fc.property(someThings, style, ({ kind, things }, how) => {
        const wanted = byId(things);
        const plant = { ...emptyPlant('p', 'P'), [kind]: wanted } as Plant;
        const findings: Findings = { problems: [], notes: [] };
        const read = readFile(bytesOf(writePlantFolder(plant, how)), `${kind}.csv`, thingSchemas[kind], findings);
        expect(findings.problems).toEqual([]);
        expectSame(byId(read.rows.flatMap((row) => row.thing ?? [])), wanted, kind);
      }),
      runs,
    );
  });

  it('[PLANT-40] a whole plant comes back, in its usual units exactly', () => {
    const { plant } = readWith();
    if (!plant) throw new Error('the sample has mistakes');
    const { plant: again, problems } = readPlantFolder(bytesOf(writePlantFolder(plant)));
    expect(problems).toEqual([]);
    expect(again).toEqual(plant);
  });
});
