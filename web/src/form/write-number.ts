import { fromInside, type Unit } from '@loopwright/plant';
import type { Language } from '@loopwright/words';

/** More than anybody types: a value that these digits give back exactly was entered in this unit. */
const mostEntered = 9;
/** Enough to read a value by that was entered in another unit: as fine as a tape, a caliper or a gauge. */
const readable = { least: 4, most: 6, decimals: 2 } as const;
const dust = 1e-12;

/** A value as it would be typed into a field, ungrouped: `44158` or `2,4`. */
export function typedNumber(value: number, unit: Unit | undefined, language: Language): string {
  const inUnit = unit === undefined ? value : fromInside(value, unit);
  const text = plainDigits(entered(inUnit) ?? Number(inUnit.toPrecision(readable.most)));
  return language === 'en' ? text : text.replace('.', ',');
}

/**
 * A value as it is read, thousands set apart: as entered where it was entered in this unit, else to four digits or two
 * decimals, whichever is finer, or to as many digits as are asked for.
 */
export function readableNumber(value: number, unit: Unit | undefined, language: Language, digits?: number): string {
  const inUnit = unit === undefined ? value : fromInside(value, unit);
  const short = digits === undefined ? entered(inUnit) : undefined;
  const shown = short ?? Number(inUnit.toPrecision(digits ?? readableDigits(inUnit)));
  const [whole = '', decimals] = plainDigits(shown).replace('-', '\u2212').split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  return decimals === undefined ? grouped : `${grouped}${language === 'en' ? '.' : ','}${decimals}`;
}

function entered(value: number): number | undefined {
  const short = Number(value.toPrecision(mostEntered));
  return Math.abs(short - value) <= dust * Math.abs(value) ? short : undefined;
}

function readableDigits(value: number): number {
  const whole = Math.floor(Math.log10(Math.abs(value))) + 1;
  return Math.min(readable.most, Math.max(readable.least, whole + readable.decimals));
}

/** Without an exponent, however small. */
function plainDigits(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}
