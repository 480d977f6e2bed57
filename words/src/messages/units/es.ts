import type { unitsEn } from './en.ts';

export const unitsEs: Readonly<Record<keyof typeof unitsEn, string>> = {
  'unit.days': 'días',
  'unit.revolutions': 'vueltas',
  'unit.modulus-metric': 'N/mm por 1 %',
  'unit.modulus-us': 'lbf/in por 1 %',
};
