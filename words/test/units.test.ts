import { describe, expect, test } from 'vitest';
import { checkAgainst } from '../../tools/validation/check.ts';
import { type QuantityKind, quantityKinds, unitTable } from '../src/units.ts';

const source = 'NIST SP 811 (2008), appendix B.8, factors for conversion to SI; exact ones printed in bold there';

interface Printed {
  readonly kind: QuantityKind;
  /** SI units (inside) for one US unit, as printed. */
  readonly inside: number;
  /** Printed exact; otherwise half the last printed digit is the tolerance. */
  readonly half: number;
  readonly what: string;
}

// SI inside value of one US unit. Inside units differ from plain SI for N/mm and MPa; stated in `what`.
const printed: readonly Printed[] = [
  { kind: 'length', inside: 0.0254, half: 0, what: 'inch to m, 2.54 E-02 exact' },
  { kind: 'shortLength', inside: 0.0254, half: 0, what: 'inch to m, 2.54 E-02 exact' },
  { kind: 'force', inside: 4.448222, half: 5e-7, what: 'pound-force to N, 4.448222 E+00' },
  { kind: 'stiffness', inside: 4.448222, half: 5e-7, what: 'pound-force to N, 4.448222 E+00' },
  { kind: 'forcePerWidth', inside: 0.1751268, half: 5e-8, what: 'lbf/in to N/m, 1.751268 E+02; N/mm is 1000 N/m' },
  { kind: 'modulus', inside: 0.1751268, half: 5e-8, what: 'lbf/in to N/m, 1.751268 E+02; N/mm is 1000 N/m' },
  { kind: 'pressure', inside: 6894.757, half: 5e-4, what: 'psi to Pa, 6.894757 E+03' },
  { kind: 'stress', inside: 6.894757e-3, half: 5e-10, what: 'psi to Pa, 6.894757 E+03; MPa is 1E+06 Pa' },
  { kind: 'speed', inside: 5.08e-3, half: 0, what: 'ft/min to m/s, 5.08 E-03 exact' },
  { kind: 'massPerLength', inside: 1.488164, half: 5e-7, what: 'lb/ft to kg/m, 1.488164 E+00' },
  { kind: 'massPerArea', inside: 4.882428, half: 5e-7, what: 'lb/ft2 to kg/m2, 4.882428 E+00' },
  { kind: 'mass', inside: 0.4535924, half: 5e-8, what: 'pound to kg, 4.535924 E-01' },
  { kind: 'heatTransfer', inside: 5.678263, half: 5e-7, what: 'Btu/(h ft2 degF) to W/(m2 K), 5.678263 E+00' },
  { kind: 'conductivity', inside: 0.1442279, half: 5e-8, what: 'Btu in/(h ft2 degF) to W/(m K), 1.442279 E-01' },
  { kind: 'area', inside: 6.4516e-4, half: 0, what: 'square inch to m2, 6.4516 E-04 exact' },
];

describe('units', () => {
  test.each(printed)('[WORDS-06] $kind: $what', ({ kind, inside, half, what }) => {
    checkAgainst({
      topic: 'units',
      id: `U-${kind}`,
      source,
      evidence: 'printed',
      inputs: what,
      unit: 'inside units per US unit',
      published: inside,
      ours: 1 / unitTable[kind].us.factor,
      tolerance: half === 0 ? inside * 1e-12 : half,
      why: half === 0 ? 'exact by definition; rounding of the machine only' : 'half the last printed digit',
    });
  });

  test.each([
    { celsius: -40, fahrenheit: -40 },
    { celsius: 0, fahrenheit: 32 },
    { celsius: 100, fahrenheit: 212 },
  ])('[WORDS-06] $celsius degC is $fahrenheit degF (fixed points of the scales)', ({ celsius, fahrenheit }) => {
    const { factor, offset } = unitTable.temperature.us;
    expect(celsius * factor + offset).toBeCloseTo(fahrenheit, 12);
  });

  test('[WORDS-06] the metric side is powers of ten, a degree, or the inside unit itself', () => {
    const others = quantityKinds.filter((kind) => !Number.isInteger(Math.log10(unitTable[kind].metric.factor)));
    expect(others).toEqual(['angle', 'minutes', 'energy']);
    expect(unitTable.angle.metric.factor * Math.PI).toBe(180);
  });
});
