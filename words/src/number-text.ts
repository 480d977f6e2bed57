import type { Language } from './language.ts';

/** Narrow no-break space: groups thousands in every language, as ISO 80000-1 asks. */
export const thinSpace = '\u202f';
const minus = '\u2212';

/**
 * A number in figures: thousands grouped, decimal sign of the language, real minus. Written out here and not
 * left to the platform's locale data, so that a sheet is the same file on every machine.
 * @param digits - decimals shown; a value that is not zero never shows as zero, it gets a first significant digit
 */
export function numberText(value: number, digits: number, language: Language, signed = false): string {
  if (!Number.isFinite(value)) return '–';
  // Twelve digits drop the binary dust of a unit conversion, so that 0.0025 m is a half millimetre up, not down.
  const magnitude = Number(Math.abs(value).toPrecision(12));
  const figures = magnitude.toFixed(decimalsFor(magnitude, digits));
  return sign(value, Number(figures), signed) + written(figures, language);
}

function decimalsFor(magnitude: number, digits: number): number {
  if (magnitude < 1e-9 || magnitude >= 0.5 * 10 ** -digits) return digits;
  return Math.min(12, Math.ceil(-Math.log10(magnitude)));
}

function sign(value: number, rounded: number, signed: boolean): string {
  if (rounded === 0) return '';
  if (value < 0) return minus;
  return signed ? '+' : '';
}

function written(figures: string, language: Language): string {
  const [whole = '', decimals] = figures.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, thinSpace);
  return decimals === undefined ? grouped : grouped + (language === 'en' ? '.' : ',') + decimals;
}
