import type { TemperatureUnit, TimeUnit } from './logger-codes.ts';
import { unitOf } from './read-cell.ts';

/** What a column can be. */
export type Role = 'time' | 'date' | 'index' | 'top' | 'bottom' | 'belt' | 'other';

const words: readonly (readonly [Role, RegExp])[] = [
  ['index', /^\s*(no|nr|#|index|row|zeile|scan|sample|n[º°])\.?\s*$/i],
  ['other', /set\s*-?point|\bset\b|soll|consigna|\bbar\b|%|volt|\[v\]|\bhum|feucht|alarm|status/i],
  ['top', /\btop|upper|\boben|\bober|superior|arriba/i],
  ['bottom', /bottom|lower|\bunten|\bunter|inferior|abajo/i],
  ['belt', /belt|riemen|correa|core|kern|joint|naht|splice|empalme/i],
  ['time', /time|zeit|hora|tiempo|elapsed|timestamp|^\s*\[?(t|s|sec|min)\]?\s*$/i],
  ['date', /date|datum|fecha/i],
];

/**
 * What the words over a column say that it is.
 *
 * @param header - words, empty where there are none
 */
export function roleOf(header: string): Role | undefined {
  return words.find(([, pattern]) => pattern.test(header))?.[0];
}

/** The unit of temperature in the words over a column. */
export function temperatureUnitOf(header: string): TemperatureUnit | undefined {
  const letter = /(?:°|º|\uFFFD|deg\.?\s*)\s*([CF])\b/i.exec(header)?.[1] ?? /[[(]\s*([CFK])\s*[\])]/.exec(header)?.[1];
  if (letter !== undefined) return unitOf(letter);
  if (/fahrenheit/i.test(header)) return 'degF';
  if (/kelvin/i.test(header) || /(^|[\s_])K\s*$/.test(header)) return 'K';
  return /celsius/i.test(header) || /(^|[\s_])C\s*$/.test(header) ? 'degC' : undefined;
}

const units: readonly (readonly [TimeUnit, RegExp])[] = [
  ['mm:ss', /\bmm:ss\b|\bm:ss\b/i],
  ['hh:mm', /\bhh:mm\b(?!:)|\bh:mm\b(?!:)/i],
  ['ms', /\bms\b|milli/i],
  ['min', /\bmin/i],
  ['h', /\bh\b|\bhours?\b|stunden|horas/i],
  ['s', /\bs\b|\bsec|\bsek|\bseg|second/i],
  ['day', /\bdays?\b|\btage?\b|\bd[ií]as?\b/i],
];

/** The unit of time in the words over a column. */
export function timeUnitOf(header: string): TimeUnit | undefined {
  return units.find(([, pattern]) => pattern.test(header.replace(/_/g, ' ')))?.[0];
}
