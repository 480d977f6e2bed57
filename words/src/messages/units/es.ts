import type { unitsEn } from './en.ts';

export const unitsEs: Readonly<Record<keyof typeof unitsEn, string>> = {
  'unit.days': '{count, plural, one {día} other {días}}',
  'unit.revolutions': '{count, plural, one {vuelta} other {vueltas}}',
  'unit.modulus-metric': 'N/mm por 1 %',
  'unit.modulus-us': 'lbf/in por 1 %',
};
