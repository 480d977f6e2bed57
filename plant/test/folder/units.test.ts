import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { fromInside, toInside, type UnitKind, units } from '../../src/folder/units.ts';

interface Published {
  readonly kind: UnitKind;
  readonly unit: string;
  readonly value: number;
  readonly inside: number;
  readonly tolerance: number;
}

// NIST SP 811 (2008), appendix B.8; tolerance: half the last printed digit, or the exact value where it prints one.
const published: readonly Published[] = [
  { kind: 'length', unit: 'in', value: 1, inside: 2.54e-2, tolerance: 1e-17 },
  { kind: 'length', unit: 'ft', value: 1, inside: 3.048e-1, tolerance: 1e-16 },
  { kind: 'force', unit: 'lbf', value: 1, inside: 4.448222, tolerance: 5e-7 },
  { kind: 'modulus', unit: 'lbf_in_pct', value: 1, inside: 0.1751268, tolerance: 5e-8 },
  { kind: 'forcePerWidth', unit: 'lbf_in', value: 1, inside: 0.1751268, tolerance: 5e-8 },
  { kind: 'massPerArea', unit: 'lb_ft2', value: 1, inside: 4.882428, tolerance: 5e-7 },
  { kind: 'massPerLength', unit: 'lb_ft', value: 1, inside: 1.488164, tolerance: 5e-7 },
  { kind: 'speed', unit: 'ft_min', value: 1, inside: 5.08e-3, tolerance: 1e-17 },
  { kind: 'pressure', unit: 'psi', value: 1, inside: 6894.757, tolerance: 5e-4 },
  { kind: 'pressure', unit: 'bar', value: 1, inside: 1e5, tolerance: 0 },
  { kind: 'heatTransfer', unit: 'Btu_hft2F', value: 1, inside: 5.678263, tolerance: 5e-7 },
  { kind: 'conductivity', unit: 'Btu_in_hft2F', value: 1, inside: 0.1442279, tolerance: 5e-8 },
  { kind: 'temperature', unit: 'degF', value: 212, inside: 100, tolerance: 1e-13 },
  { kind: 'temperature', unit: 'degF', value: 32, inside: 0, tolerance: 0 },
  { kind: 'temperature', unit: 'K', value: 273.15, inside: 0, tolerance: 0 },
];

function unitNamed(kind: UnitKind, name: string) {
  const found = units[kind].find(({ unit }) => unit === name);
  if (!found) throw new Error(`no unit ${name}`);
  return found;
}

describe('units of plant files', () => {
  it('[PLANT-10] factors are those of NIST SP 811', () => {
    for (const { kind, unit, value, inside, tolerance } of published) {
      checkAgainst({
        topic: 'units',
        id: `UNIT ${value} ${unit}`,
        source: 'NIST SP 811 (2008), appendix B.8',
        evidence: 'printed',
        inputs: `${value} ${unit}`,
        unit: units[kind][0]?.unit ?? '',
        published: inside,
        ours: toInside(value, unitNamed(kind, unit)),
        tolerance,
        why: tolerance < 1e-10 ? 'exact by definition' : 'half the last printed digit',
      });
    }
  });

  it('[PLANT-10] metric prefixes and clock units are whole powers and multiples', () => {
    const rows: readonly (readonly [UnitKind, string, number, number])[] = [
      ['length', 'mm', 2.4, 0.0024],
      ['length', 'cm', 2.4, 0.024],
      ['percent', 'pct', 0.55, 0.0055],
      ['force', 'kN', 1.2, 1200],
      ['forcePerWidth', 'kN_m', 70, 70],
      ['massPerArea', 'g_m2', 2700, 2.7],
      ['speed', 'm_min', 45, 0.75],
      ['speed', 'mm_s', 500, 0.5],
      ['speed', 'ft_s', 1, 0.3048],
      ['pressure', 'kPa', 200, 2e5],
      ['pressure', 'MPa', 0.2, 2e5],
      ['pressure', 'mbar', 2000, 2e5],
      ['time', 'min', 2.5, 150],
      ['time', 'h', 6.7, 24120],
      ['power', 'kW', 1.4, 1400],
      ['voltage', 'mV', 12, 0.012],
      ['current', 'mA', 30, 0.03],
      ['resistance', 'mohm', 80, 0.08],
      ['crossSection', 'mm2', 2.5, 2.5e-6],
      ['heatCapacityPerArea', 'kJ_m2K', 25.3, 25_300],
    ];
    for (const [kind, unit, value, inside] of rows) {
      expect(toInside(value, unitNamed(kind, unit)), unit).toBeCloseTo(inside, 12);
    }
  });

  it('[PLANT-11] every unit of every kind goes there and back, and the first one is the one inside', () => {
    for (const [kind, list] of Object.entries(units)) {
      expect(toInside(3.7, list[0] ?? list[1] ?? { unit: '', times: 0, over: 1 }), kind).toBe(3.7);
      expect(new Set(list.map(({ unit }) => unit)).size).toBe(list.length);
      for (const unit of list) expect(fromInside(toInside(41.3, unit), unit), unit.unit).toBeCloseTo(41.3, 10);
    }
  });
});
