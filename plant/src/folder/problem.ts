import type { RefusalData } from '@loopwright/engine/refusal';
import { type CheckCode, checkCodes } from '../check/check-codes.ts';

/**
 * What may be wrong with the files themselves. In `data`, `value` is the text as written; `min` and `max` are in
 * `unit`, the unit of the column, so that a sentence speaks as the person does; `nearest` is a guess at what was
 * meant; `allowed` lists what may stand there, separated by `, `.
 */
export const readingCodes = [
  /** A file that is needed is not there; `other` is the file that refers to it, when one does. */
  'file-missing',
  /** `value` bytes, at most `max`. */
  'file-too-large',
  /** More than `max` rows. */
  'too-many-rows',
  /** `value` columns, at most `max`. */
  'too-many-columns',
  /** Not readable as text: byte `value` (hexadecimal) at offset `at`. */
  'not-text',
  /** A spreadsheet workbook, not CSV; must be saved as CSV. */
  'workbook',
  /** A quotation mark opens in this row and never closes. */
  'open-quote',
  /** No heading row. */
  'no-header',
  /** The same field in two columns: `value` and `other`. */
  'duplicate-column',
  /** A column that nothing here knows: `value`; `nearest` when something is close. */
  'unknown-column',
  /** A column that every row needs is not there; `allowed` lists the names it may have. */
  'missing-column',
  /** The heading `value` says no unit; `allowed` lists the headings it may have. */
  'unit-missing',
  /** The heading `value` ends in `unit`, which is none of this field's units; `allowed` lists the headings. */
  'unknown-unit',
  /** The row has `value` cells, the heading `max`. */
  'ragged-row',
  /** plant.csv has `value` rows; exactly one is expected. */
  'not-one-row',
  /** The cell may not be empty. */
  'missing-value',
  'not-a-number',
  /** `value` has a decimal comma in a file whose columns are separated by commas. */
  'decimal-comma',
  /** The file has a decimal comma in `value` (row `row`) and a decimal point in `other` (row `otherRow`). */
  'mixed-decimals',
  /** `value` groups its digits; which mark is the decimal one cannot be known. */
  'thousands-separator',
  /** `value` is not within `min` to `max` `unit`. */
  'out-of-range',
  'not-one-of',
  /** `value` is neither yes nor no. */
  'not-yes-or-no',
  /** Not a calendar day like 2026-03-02. */
  'not-a-day',
  /** Not a moment in UTC like 2026-11-25T02:04:00Z. */
  'not-a-moment',
  /** `value` is longer than `max` characters; it has `length`. */
  'too-long',
  /** The text holds a sign that cannot be seen: `value` like `U+202E`. */
  'hidden-signs',
  /** Letters, digits, `-`, `_`, `.`; starts with a letter or digit; at most 40. */
  'bad-id',
  /** `value` stands already in row `otherRow`. */
  'duplicate-id',
  /** `value` is not in file `other`; `nearest` when something is close. */
  'dangling-reference',
  /** `value` more problems in this file than can be listed. */
  'more-problems',
] as const;

/** Every code a problem of a plant folder may have. */
export const folderProblemCodes = [...readingCodes, ...checkCodes] as const;
export type FolderProblemCode = (typeof readingCodes)[number] | CheckCode;

/** One thing wrong in a plant folder: where, what, and the values a sentence needs. An `error` stops the import. */
export interface FolderProblem {
  readonly file: string;
  /** Row as a spreadsheet counts, the heading included, from 1. */
  readonly row?: number;
  /** Column as the person wrote it, or the field's name without unit. */
  readonly field?: string;
  readonly code: FolderProblemCode;
  readonly level: 'error' | 'care';
  readonly data: RefusalData;
}

export const folderNoteCodes = [
  /** Not UTF-8: read as `value` (Windows-1252). Look at the umlauts and accents. */
  'encoding-assumed',
  /** A file that nothing here reads; `nearest` when a known name is close. */
  'unknown-file',
] as const;
export type FolderNoteCode = (typeof folderNoteCodes)[number];

/** Something worth knowing that stops nothing. */
export interface FolderNote {
  readonly file: string;
  readonly code: FolderNoteCode;
  readonly data: RefusalData;
}
