import type { RefusalData } from '@loopwright/engine/refusal';
import type { Field } from './fields.ts';
import { nearest } from './nearest.ts';
import { type Unit, units } from './units.ts';

/** What a column of the file fills. */
export interface Column {
  /** Its place in the row, from 0. */
  readonly at: number;
  /** As the person wrote it. */
  readonly heading: string;
  readonly field: Field;
  readonly unit?: Unit;
  /** True for `source:<field>`, which says where the field's number comes from. */
  readonly isSource: boolean;
}

export interface ColumnProblem {
  readonly code: 'unknown-column' | 'duplicate-column' | 'missing-column' | 'unit-missing' | 'unknown-unit';
  readonly field: string;
  readonly data: RefusalData;
  /** Name of the field that was meant, when that is clear. */
  readonly meant?: string;
}

export interface Columns {
  readonly columns: readonly Column[];
  readonly problems: readonly ColumnProblem[];
}

/**
 * Finds the field and unit of each heading of a table.
 *
 * @param headings - as written
 * @param fields - of the schema the table is for
 * @param derived - keys of required fields that need no column, because the reader can make them
 */
export function bindColumns(
  headings: readonly string[],
  fields: readonly Field[],
  derived: readonly string[] = [],
): Columns {
  const columns: Column[] = [];
  const problems: ColumnProblem[] = [];
  for (const [at, heading] of headings.entries()) {
    const bound = bind(heading, at, fields);
    const twin = 'at' in bound && columns.find((c) => c.field === bound.field && c.isSource === bound.isSource);
    if (!('at' in bound)) problems.push(bound);
    else if (twin) problems.push(duplicate(heading, twin.heading));
    else columns.push(bound);
  }
  return { columns, problems: [...problems, ...missing(fields, columns, problems, derived)] };
}

function duplicate(heading: string, other: string): ColumnProblem {
  return { code: 'duplicate-column', field: heading, data: { value: heading, other } };
}

/** Required fields without a column, but for those whose heading was already found wrong. */
function missing(
  fields: readonly Field[],
  columns: readonly Column[],
  problems: readonly ColumnProblem[],
  derived: readonly string[],
): ColumnProblem[] {
  const found = new Set(columns.filter((c) => !c.isSource).map((c) => c.field.key));
  const misspelt = new Set(problems.map((p) => p.meant));
  return fields
    .filter((f) => f.required && !found.has(f.key) && !misspelt.has(f.name) && !derived.includes(f.key))
    .map((f) => ({ code: 'missing-column', field: f.name, data: { allowed: allowed(f) } }));
}

const sourcePrefix = 'source:';

function bind(heading: string, at: number, fields: readonly Field[]): Column | ColumnProblem {
  if (heading.toLowerCase().startsWith(sourcePrefix)) return bindSource(heading, at, fields);
  const written = heading.toLowerCase();
  for (const field of fields) {
    const unit = unitOf(heading, field);
    if (unit) return { at, heading, field, unit, isSource: false };
    if (!field.unitKind && written === field.key.toLowerCase()) return { at, heading, field, isSource: false };
  }
  return unbound(heading, fields);
}

function bindSource(heading: string, at: number, fields: readonly Field[]): Column | ColumnProblem {
  const written = heading.slice(sourcePrefix.length).trim();
  const field = fields.find(
    (f) => [f.name, f.key].some((name) => name.toLowerCase() === written.toLowerCase()) || unitOf(written, f),
  );
  if (field) return { at, heading, field, isSource: true };
  const close = nearest(
    written,
    fields.map((f) => f.name),
  );
  return unknown(heading, close === undefined ? undefined : `${sourcePrefix}${close}`);
}

/** The unit a heading names for this field: `thickness_mm` is `thickness` in `mm`. Units keep their case. */
function unitOf(heading: string, field: Field): Unit | undefined {
  if (!field.unitKind) return undefined;
  const start = `${field.name}_`.toLowerCase();
  if (!heading.toLowerCase().startsWith(start)) return undefined;
  return units[field.unitKind].find((u) => u.unit === heading.slice(start.length));
}

function unbound(heading: string, fields: readonly Field[]): ColumnProblem {
  const written = heading.toLowerCase();
  const bare = fields.find((f) => f.unitKind && f.name.toLowerCase() === written);
  if (bare) return unitProblem('unit-missing', heading, bare);
  const longestFirst = [...fields].sort((a, b) => b.name.length - a.name.length);
  const other = longestFirst.find((f) => f.unitKind && written.startsWith(`${f.name.toLowerCase()}_`));
  if (other) return unitProblem('unknown-unit', heading, other);
  const close = nearest(heading, fields.flatMap(headingsOf));
  const meant = fields.find((f) => close !== undefined && headingsOf(f).includes(close))?.name;
  return { ...unknown(heading, close), ...(meant === undefined ? {} : { meant }) };
}

function unitProblem(code: 'unit-missing' | 'unknown-unit', heading: string, field: Field): ColumnProblem {
  const unit = code === 'unknown-unit' ? { unit: heading.slice(field.name.length + 1) } : {};
  return { code, field: heading, meant: field.name, data: { value: heading, ...unit, allowed: allowed(field) } };
}

function unknown(heading: string, close: string | undefined): ColumnProblem {
  const guess = close === undefined ? {} : { nearest: close };
  return { code: 'unknown-column', field: heading, data: { value: heading, ...guess } };
}

function allowed(field: Field): string {
  return headingsOf(field).join(', ');
}

/** The headings a field may have: `thickness_m, thickness_mm …`. */
function headingsOf(field: Field): string[] {
  return field.unitKind ? units[field.unitKind].map((u) => `${field.name}_${u.unit}`) : [field.key];
}
