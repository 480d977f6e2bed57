import type { Language } from './language.ts';

/** Narrow no-break space: groups thousands in every language, as ISO 80000-1 asks. */
const thinSpace = '\u202f';
const minus = '\u2212';

export interface NumberStyle {
  readonly language: Language;
  /** Decimals shown. */
  readonly digits: number;
  /** Significant digits kept at least, so that a value that is not zero never shows as zero. Default 1. */
  readonly significant?: number;
  /** Write a plus before a positive number. */
  readonly signed?: boolean;
}

/**
 * A number in figures: thousands grouped, decimal sign of the language, real minus. Written out here and not
 * left to the platform's locale data, so that a sheet is the same file on every machine.
 */
export function numberText(value: number, style: NumberStyle): string {
  if (!Number.isFinite(value)) return '–';
  // Twelve digits drop the binary dust of a unit conversion, so that 0.0025 m is a half millimetre up, not down.
  const magnitude = Number(Math.abs(value).toPrecision(12));
  const figures = magnitude.toFixed(decimalsFor(magnitude, style.digits, style.significant ?? 1));
  return sign(value, Number(figures), style.signed ?? false) + written(figures, style.language);
}

function decimalsFor(magnitude: number, digits: number, significant: number): number {
  if (magnitude < 1e-9) return digits;
  const needed = significant - 1 - Math.floor(Math.log10(magnitude));
  return Math.max(digits, Math.min(12, needed));
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
