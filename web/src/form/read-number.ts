import { readNumber } from '@loopwright/plant';
import type { Language } from '@loopwright/words';

/** A number as typed into a field, or why it is none. */
export type TypedNumber = { readonly value: number } | { readonly code: 'entry-not-a-number' | 'entry-ambiguous' };

const spaces = " \u00a0\u202f\u2009’'";
const spaced = new RegExp(`^([+-]?)(\\d{1,3}(?:[${spaces}]\\d{3})+)((?:[.,]\\d*)?)$`);
/** Groups by one mark, decimals behind the other: which is which shows. */
const bothMarks = /^([+-]?)(\d{1,3}([.,])\d{3}(?:\3\d{3})*)(?!\3)[.,](\d*)$/;
const oneMark = /^[+-]?([1-9]\d{0,2})([.,])\d{3}$/;
const groupsOnly = /^[+-]?\d{1,3}(?:([.,])\d{3})(?:\1\d{3})+$/;
const inchFraction = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/;

/**
 * Reads a number as people type it: decimal point or comma, thousands set apart by spaces, a real minus, and a
 * fraction as a tape in inches shows it (`1 15/16`). One foreign mark before exactly three digits (`1.234` in German)
 * could be a thousand or one and a bit; that is asked back, not guessed.
 *
 * @param typed - as typed
 * @param language - whose decimal mark is beyond doubt
 */
export function readTypedNumber(typed: string, language: Language): TypedNumber {
  const text = typed.trim().replace(/^\u2212/, '-');
  const fraction = readFraction(text);
  if (fraction !== undefined) return { value: fraction };
  const ungrouped = withoutGroups(text);
  const decimal = language === 'en' ? '.' : ',';
  const [, , mark] = oneMark.exec(ungrouped) ?? [];
  if (mark !== undefined && mark !== decimal) return { code: 'entry-ambiguous' };
  const read = readNumber(ungrouped);
  return 'value' in read && Number.isFinite(read.value) ? { value: read.value } : { code: 'entry-not-a-number' };
}

function withoutGroups(text: string): string {
  const [, sign = '', whole, decimals = ''] = spaced.exec(text) ?? [];
  if (whole !== undefined) return sign + whole.replace(/\D/g, '') + decimals;
  const both = bothMarks.exec(text);
  if (both !== null) return `${both[1]}${both[2]?.replace(/\D/g, '')}.${both[4]}`;
  return groupsOnly.test(text) ? text.replace(/[.,]/g, '') : text;
}

function readFraction(text: string): number | undefined {
  const [, whole = '0', top, bottom] = inchFraction.exec(text) ?? [];
  if (top === undefined || Number(bottom) === 0) return undefined;
  return Number(whole) + Number(top) / Number(bottom);
}
