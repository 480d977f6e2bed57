import type { Language } from './language.ts';
import { numberText } from './number-text.ts';

/**
 * A number of unknown size as it came in, to `significant` digits (6): `0.0005`, `64 302.5`, `1e300`. For error
 * sentences, which must show what somebody typed, however odd.
 */
export function plainNumber(value: number, language: Language, significant = 6): string {
  if (!Number.isFinite(value)) return String(value);
  const magnitude = Math.abs(value);
  if (magnitude !== 0 && (magnitude < 1e-6 || magnitude >= 1e15)) return exponentText(value, language, significant);
  const decimals = magnitude === 0 ? 0 : Math.max(0, significant - 1 - Math.floor(Math.log10(magnitude)));
  const rounded = Number(value.toFixed(Math.min(decimals, 20)));
  const digits = (String(Math.abs(rounded)).split('.')[1] ?? '').length;
  return numberText(rounded, { language, digits });
}

function exponentText(value: number, language: Language, significant: number): string {
  const text = String(Number(value.toPrecision(significant)))
    .replace('e+', 'e')
    .replaceAll('-', '\u2212');
  return language === 'en' ? text : text.replace('.', ',');
}
