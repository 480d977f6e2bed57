import Papa from 'papaparse';
import type * as z from 'zod';
import { kinds } from '../empty-plant.ts';
import { type Plant, plantSchema, thingSchemas } from '../plant.ts';
import { type Field, fieldsOf } from './fields.ts';
import type { Delimiter } from './table.ts';
import { fromInside, type UnitKind, units } from './units.ts';

/** How the files are written: for a spreadsheet set to German, for one, `;` and a decimal comma. */
export interface WritingStyle {
  readonly delimiter: Delimiter;
  readonly decimal: '.' | ',';
  /** The unit of a kind of number; a name out of `units`. */
  readonly unitOf: (kind: UnitKind) => string;
}

const usual: WritingStyle = { delimiter: ',', decimal: '.', unitOf: (kind) => workshopUnit[kind] ?? '' };

/** Units people read off a tape or a display; the kinds not named keep their SI unit. */
const workshopUnit: Readonly<Partial<Record<UnitKind, string>>> = { length: 'mm', percent: 'pct', pressure: 'bar' };

/**
 * Writes a plant as the files `readPlantFolder` reads. Kinds without things have no file.
 *
 * @param plant - any plant
 * @param style - delimiter, decimal mark and units; a decimal comma wants another delimiter than a comma
 * @returns text by file name
 */
export function writePlantFolder(plant: Plant, style: WritingStyle = usual): ReadonlyMap<string, string> {
  const { id, name, note } = plant;
  const files = new Map([['plant.csv', writeTable(plantSchema, [{ id, name, note }], style)]]);
  for (const kind of kinds) {
    const things = Object.values(plant[kind]);
    if (things.length > 0) files.set(`${kind}.csv`, writeTable(thingSchemas[kind], things, style));
  }
  return files;
}

type Thing = Readonly<Record<string, unknown>>;

interface WrittenColumn {
  readonly heading: string;
  cell(thing: Thing): string;
}

function writeTable(schema: z.ZodObject, things: readonly Thing[], style: WritingStyle): string {
  const columns = fieldsOf(schema).flatMap((field) => [valueColumn(field, style), sourceColumn(field)]);
  const used = columns.filter(({ cell }) => things.some((thing) => cell(thing) !== ''));
  const rows = [used.map(({ heading }) => heading), ...things.map((thing) => used.map(({ cell }) => cell(thing)))];
  return `${Papa.unparse(rows, { delimiter: style.delimiter, newline: '\n' })}\n`;
}

function valueColumn(field: Field, style: WritingStyle): WrittenColumn {
  const { unitKind, name, key } = field;
  const choices = unitKind ? units[unitKind] : [];
  const unit = choices.find((u) => unitKind && u.unit === style.unitOf(unitKind)) ?? choices[0];
  return {
    heading: unit ? `${name}_${unit.unit}` : key,
    cell: (thing) => {
      const value = thing[key];
      if (typeof value === 'number') return numberText(unit ? fromInside(value, unit) : value, style.decimal);
      if (typeof value === 'boolean') return value ? 'yes' : 'no';
      return typeof value === 'string' ? withoutFormula(value) : '';
    },
  };
}

function sourceColumn({ name, key }: Field): WrittenColumn {
  return {
    heading: `source:${name}`,
    cell: ({ sources }) => {
      const own = typeof sources === 'object' && sources !== null ? Reflect.get(sources, key) : undefined;
      return typeof own === 'string' ? own : '';
    },
  };
}

/** Fifteen digits: what a double surely carries, without the noise of the conversion. */
function numberText(value: number, decimal: '.' | ','): string {
  return String(Number(value.toPrecision(15))).replace('.', decimal);
}

/** A spreadsheet would run a cell that starts like a formula; the reader takes the apostrophe off again. */
function withoutFormula(text: string): string {
  return /^'*[=+\-@]/.test(text) ? `'${text}` : text;
}
