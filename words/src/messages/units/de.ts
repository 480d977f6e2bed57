import type { unitsEn } from './en.ts';

export const unitsDe: Readonly<Record<keyof typeof unitsEn, string>> = {
  'unit.days': '{count, plural, one {Tag} other {Tage}}',
  'unit.revolutions': '{count, plural, one {Umlauf} other {Umläufe}}',
  'unit.modulus-metric': 'N/mm je 1 %',
  'unit.modulus-us': 'lbf/in je 1 %',
};
