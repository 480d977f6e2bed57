export const unitsEn = {
  'unit.days': 'days',
  'unit.revolutions': 'revolutions',
  'unit.modulus-metric': 'N/mm per 1 %',
  'unit.modulus-us': 'lbf/in per 1 %',
} as const;
