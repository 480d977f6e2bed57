import { fromInside, type Unit } from '@loopwright/plant';
import type { Language } from '@loopwright/words';

/** More than anybody types: a value that these digits give back exactly was entered in this unit. */
const mostEntered = 9;
/** Enough to read a value by that was entered in another unit. */
const readable = 6;
const dust = 1e-12;

/** A value as it would be typed into a field, ungrouped: `44158` or `2,4`. */
export function typedNumber(value: number, unit: Unit | undefined, language: Language): string {
  const text = plainDigits(rounded(value, unit));
  return language === 'en' ? text : text.replace('.', ',');
}

/**
 * A value as it is read, thousands set apart: as entered where it was entered in this unit, else to six digits, or to
 * as many as are asked for.
 */
export function readableNumber(value: number, unit: Unit | undefined, language: Language, digits?: number): string {
  const [whole = '', decimals] = plainDigits(rounded(value, unit, digits))
    .replace('-', '\u2212')
    .split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  return decimals === undefined ? grouped : `${grouped}${language === 'en' ? '.' : ','}${decimals}`;
}

function rounded(value: number, unit: Unit | undefined, digits?: number): number {
  const inUnit = unit === undefined ? value : fromInside(value, unit);
  if (digits !== undefined) return Number(inUnit.toPrecision(digits));
  const entered = Number(inUnit.toPrecision(mostEntered));
  const isEntered = Math.abs(entered - inUnit) <= dust * Math.abs(inUnit);
  return isEntered ? entered : Number(inUnit.toPrecision(readable));
}

/** Without an exponent, however small. */
function plainDigits(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}
