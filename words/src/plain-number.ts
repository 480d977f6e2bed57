import type { Language } from './language.ts';
import { numberText } from './number-text.ts';

/**
 * A number of unknown size as it came in, to six significant digits: `0.0005`, `64 302.5`, `1e300`. For error
 * sentences, which must show what somebody typed, however odd.
 */
export function plainNumber(value: number, language: Language): string {
  if (!Number.isFinite(value)) return String(value);
  const magnitude = Math.abs(value);
  if (magnitude !== 0 && (magnitude < 1e-6 || magnitude >= 1e15)) return exponentText(value, language);
  const decimals = magnitude === 0 ? 0 : Math.max(0, 5 - Math.floor(Math.log10(magnitude)));
  const rounded = Number(value.toFixed(Math.min(decimals, 12)));
  const digits = (String(Math.abs(rounded)).split('.')[1] ?? '').length;
  return numberText(rounded, { language, digits });
}

function exponentText(value: number, language: Language): string {
  const text = String(Number(value.toPrecision(6)))
    .replace('e+', 'e')
    .replaceAll('-', '\u2212');
  return language === 'en' ? text : text.replace('.', ',');
}
