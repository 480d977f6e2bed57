import type { RefusalData } from '@loopwright/engine/refusal';
import { sources } from '../things/source.ts';
import type { Column } from './columns.ts';
import { readNumber } from './number-cell.ts';
import type { FolderProblemCode } from './problem.ts';
import type { Delimiter } from './table.ts';
import { fromInside, toInside } from './units.ts';

/** A cell's value as the schema wants it, or what is wrong with the cell. */
export type ReadCell = { readonly value: unknown } | { readonly code: FolderProblemCode; readonly data: RefusalData };

// As typed, and as spreadsheets in German and Spanish export their own true and false.
const yes = new Set(['yes', 'y', 'true', '1', 'ja', 'wahr', 'sí', 'si', 'verdadero']);
const no = new Set(['no', 'n', 'false', '0', 'nein', 'falsch', 'falso']);

// An apostrophe keeps a spreadsheet from running a text as a formula; it is not part of the text.
const quotedFormula = /^'('*[=+\-@\t\r\n\0])/;

/**
 * Reads one cell that is not empty.
 *
 * @param cell - trimmed
 * @param column - what it fills
 * @param delimiter - of the file: decides whether a decimal comma can be meant
 */
export function readCell(cell: string, column: Column, delimiter: Delimiter): ReadCell {
  if (column.isSource) return oneOf(cell, sources);
  const { form, allowed } = column.field;
  if (form === 'number') return numberCell(cell, column, delimiter);
  if (form === 'yes-no') return yesOrNo(cell);
  return allowed ? oneOf(cell, allowed) : text(cell);
}

// Signs without a shape that turn a text round or make two names look alike: marks of direction, spaces of no width,
// separators of lines. Joiners inside a sign and marks of writing are left alone.
const hidden = /[\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u2069\ufeff]/;

function text(cell: string): ReadCell {
  const sign = hidden.exec(cell)?.[0].charCodeAt(0);
  if (sign === undefined) return { value: cell.replace(quotedFormula, '$1').normalize('NFC') };
  return { code: 'hidden-signs', data: { value: `U+${sign.toString(16).toUpperCase().padStart(4, '0')}` } };
}

function numberCell(cell: string, column: Column, delimiter: Delimiter): ReadCell {
  const read = readNumber(cell);
  if ('code' in read) return { code: read.code, data: { value: cell } };
  if (read.mark === 'comma' && delimiter === ',') return { code: 'decimal-comma', data: { value: cell } };
  const value = column.unit ? toInside(read.value, column.unit) : read.value;
  return withinRange(value, cell, column);
}

/** A conversion may miss a limit by a rounding; nobody meant that. */
const rounding = 1e-12;

function withinRange(value: number, cell: string, column: Column): ReadCell {
  const { min = -Infinity, max = Infinity, allowed } = column.field;
  if (allowed) return allowed.includes(String(value)) ? { value } : oneOf(cell, allowed);
  const slack = (limit: number) => rounding * Math.max(1e-3, Math.abs(limit));
  if (value < min && value >= min - slack(min)) return { value: min };
  if (value > max && value <= max + slack(max)) return { value: max };
  if (value >= min && value <= max) return { value };
  return { code: 'out-of-range', data: { value: cell, ...rangeData(column) } };
}

/** The limits as the person would write them in this column. */
function rangeData(column: Column): RefusalData {
  const asWritten = (limit: number) => Number((column.unit ? fromInside(limit, column.unit) : limit).toPrecision(12));
  const { min, max } = column.field;
  return {
    ...(min === undefined ? {} : { min: asWritten(min) }),
    ...(max === undefined ? {} : { max: asWritten(max) }),
    ...(column.unit ? { unit: column.unit.unit } : {}),
  };
}

function oneOf(cell: string, allowed: readonly string[]): ReadCell {
  const value = allowed.find((choice) => choice.toLowerCase() === cell.toLowerCase());
  return value === undefined ? { code: 'not-one-of', data: { value: cell, allowed: allowed.join(', ') } } : { value };
}

function yesOrNo(cell: string): ReadCell {
  const word = cell.toLowerCase().normalize('NFC');
  if (yes.has(word)) return { value: true };
  if (no.has(word)) return { value: false };
  return { code: 'not-yes-or-no', data: { value: cell } };
}
