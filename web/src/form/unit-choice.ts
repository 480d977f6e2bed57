import { type Unit, type UnitKind, units } from '@loopwright/plant';
import type { UnitSystem, Voice } from '@loopwright/words';
import type { FormField } from './form-field.ts';

// A share of one is how the numbers are kept, not how anybody reads them off.
const unasked = new Set(['ratio']);

const usual: Readonly<Record<UnitKind, Readonly<Record<UnitSystem, string>>>> = {
  length: { metric: 'mm', us: 'in' },
  percent: { metric: 'pct', us: 'pct' },
  force: { metric: 'N', us: 'lbf' },
  modulus: { metric: 'N_mm_pct', us: 'lbf_in_pct' },
  forcePerWidth: { metric: 'N_mm', us: 'lbf_in' },
  massPerArea: { metric: 'kg_m2', us: 'lb_ft2' },
  massPerLength: { metric: 'kg_m', us: 'lb_ft' },
  speed: { metric: 'm_s', us: 'ft_min' },
  temperature: { metric: 'degC', us: 'degF' },
  pressure: { metric: 'bar', us: 'psi' },
  time: { metric: 's', us: 's' },
  voltage: { metric: 'V', us: 'V' },
  power: { metric: 'W', us: 'W' },
  current: { metric: 'A', us: 'A' },
  resistance: { metric: 'ohm', us: 'ohm' },
  crossSection: { metric: 'mm2', us: 'mm2' },
  heatTransfer: { metric: 'W_m2K', us: 'Btu_hft2F' },
  heatCapacityPerArea: { metric: 'kJ_m2K', us: 'kJ_m2K' },
  conductivity: { metric: 'W_mK', us: 'Btu_in_hft2F' },
};

// Read off a long tape or a clock, not off a caliper or a stop watch.
const usualOf: Readonly<Record<string, Readonly<Record<UnitSystem, string>>>> = {
  bed: { metric: 'm', us: 'ft' },
  left: { metric: 'm', us: 'ft' },
  dryTime: { metric: 'h', us: 'h' },
  leadLength: { metric: 'm', us: 'ft' },
  outletLead: { metric: 'm', us: 'ft' },
};

const signs: Readonly<Record<string, string>> = {
  pct: '%',
  N_mm: 'N/mm',
  kN_m: 'kN/m',
  lbf_in: 'lbf/in',
  kg_m2: 'kg/m²',
  g_m2: 'g/m²',
  lb_ft2: 'lb/ft²',
  kg_m: 'kg/m',
  lb_ft: 'lb/ft',
  m_s: 'm/s',
  m_min: 'm/min',
  mm_s: 'mm/s',
  ft_s: 'ft/s',
  ft_min: 'ft/min',
  degC: '°C',
  degF: '°F',
  ohm: 'Ω',
  mohm: 'mΩ',
  m2: 'm²',
  mm2: 'mm²',
  W_m2K: 'W/m²K',
  Btu_hft2F: 'Btu/h·ft²·°F',
  J_m2K: 'J/m²K',
  kJ_m2K: 'kJ/m²K',
  W_mK: 'W/mK',
  Btu_in_hft2F: 'Btu·in/h·ft²·°F',
};

/** The units a number may be entered in; none for a bare number. */
export function unitsOf(field: FormField): readonly Unit[] {
  return field.unitKind === undefined ? [] : units[field.unitKind].filter(({ unit }) => !unasked.has(unit));
}

/** The unit of a name among those of the field, else the usual one of the reader's system. */
export function unitNamed(field: FormField, name: string | undefined, system: UnitSystem): Unit | undefined {
  if (field.unitKind === undefined) return undefined;
  const choices = unitsOf(field);
  const fallback = usualOf[field.name]?.[system] ?? usual[field.unitKind][system];
  return choices.find(({ unit }) => unit === name) ?? choices.find(({ unit }) => unit === fallback) ?? choices[0];
}

/** How a unit is written beside a number. */
export function unitSign(voice: Voice, unit: string): string {
  if (unit === 'N_mm_pct') return voice.say('unit.modulus-metric');
  if (unit === 'lbf_in_pct') return voice.say('unit.modulus-us');
  return signs[unit] ?? unit;
}

/** What stands behind a number that has no choice of units: days, kelvin, hours a day. */
export function bareSign(voice: Voice, { name }: FormField, count: number): string {
  if (name.endsWith('_days')) return voice.say('unit.days', { count });
  if (name.endsWith('_1_K')) return '1/K';
  if (name.endsWith('_K')) return 'K';
  if (name === 'hoursPerDay') return 'h';
  return /revolutions$/i.test(name) ? voice.say('unit.revolutions', { count }) : '';
}
