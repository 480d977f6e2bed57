/** A cell read as a number, with the decimal mark it shows; or why it is none. */
export type NumberCell =
  | { readonly value: number; readonly mark: 'none' | 'comma' | 'point' }
  | { readonly code: 'not-a-number' | 'thousands-separator' };

const plain = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d{1,4})?$/;
// Digits grouped by any mark people use: point, comma, apostrophe, space, no-break space, narrow space.
const grouped = /^[+-]?\d{1,3}(?:[.,'’ \u00a0\u202f\u2009]\d{3})+(?:[.,]\d*)?$/;

/**
 * Reads a number as people and spreadsheets write it: a decimal point or comma, an exponent, never grouped digits.
 * `1e999` reads as infinite; the range of the field refuses it.
 *
 * @param cell - trimmed, not empty
 */
export function readNumber(cell: string): NumberCell {
  const text = cell.replace(/^\u2212/, '-');
  if (plain.test(text)) {
    const mark = text.includes(',') ? 'comma' : text.includes('.') ? 'point' : 'none';
    return { value: Number(text.replace(',', '.')), mark };
  }
  const bothMarks = /^[+-]?[\d.,]+$/.test(text) && text.includes(',') && text.includes('.');
  return { code: bothMarks || grouped.test(text) ? 'thousands-separator' : 'not-a-number' };
}
