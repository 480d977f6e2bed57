import { fromInside, type Unit } from '@loopwright/plant';
import type { Language } from '@loopwright/words';

/** Twelve digits: more than anybody measures, without the dust of the conversion. */
const entered = 12;

/** A value as it would be typed into a field, ungrouped: `44158` or `2,4`. */
export function typedNumber(value: number, unit: Unit | undefined, language: Language): string {
  const inUnit = unit === undefined ? value : fromInside(value, unit);
  const text = plainDigits(Number(inUnit.toPrecision(entered)));
  return language === 'en' ? text : text.replace('.', ',');
}

/** A value as it is read, thousands set apart: exactly as entered, or to `digits` significant ones. */
export function readableNumber(value: number, unit: Unit | undefined, language: Language, digits = entered): string {
  const inUnit = unit === undefined ? value : fromInside(value, unit);
  const kept = Number(inUnit.toPrecision(digits));
  const [whole = '', decimals] = plainDigits(kept).replace('-', '\u2212').split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  return decimals === undefined ? grouped : `${grouped}${language === 'en' ? '.' : ','}${decimals}`;
}

/** Without an exponent, however small. */
function plainDigits(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}
