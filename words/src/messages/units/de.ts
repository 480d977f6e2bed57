import type { unitsEn } from './en.ts';

export const unitsDe: Readonly<Record<keyof typeof unitsEn, string>> = {
  'unit.days': 'Tage',
  'unit.revolutions': 'Umläufe',
  'unit.modulus-metric': 'N/mm je 1 %',
  'unit.modulus-us': 'lbf/in je 1 %',
};
