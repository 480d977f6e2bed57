import Papa from 'papaparse';
import type * as z from 'zod';
import { kinds } from '../empty-plant.ts';
import { type Kind, type Plant, plantSchema, thingSchemas } from '../plant.ts';
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

/**
 * Writes the things of one kind as a table `readPlantTable` reads. Without things it is a heading to fill in below.
 *
 * @param plant - any plant
 * @param kind - which of its things
 * @param style - as of `writePlantFolder`
 */
export function writePlantTable(plant: Plant, kind: Kind, style: Partial<WritingStyle> = {}): string {
  return writeTable(thingSchemas[kind], Object.values(plant[kind]), { ...usual, ...style });
}

/** What may stand in a cell of a workbook. */
export type CellValue = string | number | boolean;

/**
 * The same table as cells for a workbook, numbers as numbers; an empty cell is undefined.
 *
 * @param plant - any plant
 * @param kind - which of its things
 * @param unitOf - the unit of a kind of number
 */
export function plantTableCells(
  plant: Plant,
  kind: Kind,
  unitOf: WritingStyle['unitOf'] = usual.unitOf,
): readonly (readonly (CellValue | undefined)[])[] {
  const things: readonly Thing[] = Object.values(plant[kind]);
  const columns = columnsOf(thingSchemas[kind], things, unitOf);
  return [columns.map(({ heading }) => heading), ...things.map((thing) => columns.map(({ value }) => value(thing)))];
}

type Thing = Readonly<Record<string, unknown>>;

interface WrittenColumn {
  readonly heading: string;
  readonly isSource: boolean;
  value(thing: Thing): CellValue | undefined;
}

function writeTable(schema: z.ZodObject, things: readonly Thing[], style: WritingStyle): string {
  const columns = columnsOf(schema, things, style.unitOf);
  const cells = (thing: Thing) => columns.map(({ value }) => cellText(value(thing), style.decimal));
  const rows = [columns.map(({ heading }) => heading), ...things.map(cells)];
  return `${Papa.unparse(rows, { delimiter: style.delimiter, newline: '\n' })}\n`;
}

/** The columns in which something stands; where there is nothing yet, all that somebody could fill in. */
function columnsOf(
  schema: z.ZodObject,
  things: readonly Thing[],
  unitOf: WritingStyle['unitOf'],
): readonly WrittenColumn[] {
  const columns = fieldsOf(schema).flatMap((field) => [valueColumn(field, unitOf), sourceColumn(field)]);
  if (things.length === 0) return columns.filter(({ isSource }) => !isSource);
  return columns.filter(({ value }) => things.some((thing) => value(thing) !== undefined));
}

function valueColumn(field: Field, unitOf: WritingStyle['unitOf']): WrittenColumn {
  const { unitKind, name, key } = field;
  const choices = unitKind ? units[unitKind] : [];
  const unit = choices.find((u) => unitKind && u.unit === unitOf(unitKind)) ?? choices[0];
  return {
    heading: unit ? `${name}_${unit.unit}` : key,
    isSource: false,
    value: (thing) => {
      const value = thing[key];
      if (typeof value === 'number') return fifteenDigits(unit ? fromInside(value, unit) : value);
      if (typeof value === 'boolean') return value;
      return typeof value === 'string' && value !== '' ? withoutFormula(value) : undefined;
    },
  };
}

function sourceColumn({ name, key }: Field): WrittenColumn {
  return {
    heading: `source:${name}`,
    isSource: true,
    value: ({ sources }) => {
      const own = typeof sources === 'object' && sources !== null ? Reflect.get(sources, key) : undefined;
      return typeof own === 'string' ? own : undefined;
    },
  };
}

function cellText(value: CellValue | undefined, decimal: '.' | ','): string {
  if (typeof value === 'number') return String(value).replace('.', decimal);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value ?? '';
}

/** What a double surely carries, without the noise of the conversion. */
function fifteenDigits(value: number): number {
  return Number(value.toPrecision(15));
}

/** A spreadsheet would run a cell that starts like a formula; the reader takes the apostrophe off again. */
function withoutFormula(text: string): string {
  return /^'*[=+\-@\t\r\n\0]/.test(text) ? `'${text}` : text;
}
