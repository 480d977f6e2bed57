/** Words of units that have no sign of their own; `count` is the number before them. */
export const unitsEn = {
  'unit.days': '{count, plural, one {day} other {days}}',
  'unit.revolutions': '{count, plural, one {revolution} other {revolutions}}',
  'unit.modulus-metric': 'N/mm per 1 %',
  'unit.modulus-us': 'lbf/in per 1 %',
} as const;
