import { type FormulaSymbol, type WorkedFormula, workedFormula } from '../../worked/worked-formula.ts';

const lead: FormulaSymbol = { kind: 'resistance', meaning: 'leadResistance' };
const outlet: FormulaSymbol = { kind: 'voltage', meaning: 'outletVoltage' };
const heater: FormulaSymbol = { kind: 'resistance', meaning: 'heaterResistance' };
const separate = 'closed form evaluated by a separate program';
const resistance_ohm = [0, 1e4] as const;
const volts_V = [1, 1000] as const;

/** Out and back, warmer than 20 degC if it lies in the sun. */
export const leadResistanceRow = workedFormula({
  id: 'lead-resistance',
  expression: 'R = 2 * l * r * (1 + 0.00393 * dT)',
  result: { symbol: 'R', ...lead },
  symbols: {
    l: { kind: 'length', meaning: 'leadLength' },
    r: { kind: 'resistancePerLength', meaning: 'conductorResistance' },
    dT: { kind: 'temperatureDifference', meaning: 'leadAbove20' },
  },
  compute: ({ l, r, dT }) => 2 * l * r * (1 + 0.00393 * dT),
  range: { l: [0, 1000], r: [0, 1], dT: [-60, 100] },
  source: 'derived: copper, 0.00393 1/K from memory; resistance per length from IEC 60228 class 5',
  examples: [
    {
      inputs: { l: 30, r: 0.0133, dT: 0 },
      expected: 0.798,
      tolerance: 1e-9,
      evidence: 'independent',
      source: separate,
    },
    {
      inputs: { l: 30, r: 0.0133, dT: 30 },
      expected: 0.892084,
      tolerance: 0.51e-6,
      evidence: 'independent',
      source: separate,
    },
  ],
});

/** What flows through lead and heaters. */
export const heaterCurrentRow = workedFormula({
  id: 'heater-current',
  expression: 'I = V / (Rh + R)',
  result: { symbol: 'I', kind: 'current', meaning: 'heaterCurrent' },
  symbols: { V: outlet, Rh: heater, R: lead },
  compute: ({ V, Rh, R }) => V / (Rh + R),
  range: { V: volts_V, Rh: [0.01, 1e6], R: resistance_ohm },
  source: 'derived: Ohm; a heater is a resistor',
  examples: [
    {
      inputs: { V: 230, Rh: 26.45, R: 0.798 },
      expected: 8.440986,
      tolerance: 0.51e-6,
      evidence: 'independent',
      source: separate,
    },
  ],
});

/** What is left for the heaters at the end of the lead. */
export const heaterVoltsRow = workedFormula({
  id: 'heater-volts',
  expression: 'U = V * Rh / (Rh + R)',
  result: { symbol: 'U', kind: 'voltage', meaning: 'heaterVoltage' },
  symbols: { V: outlet, Rh: heater, R: lead },
  compute: ({ V, Rh, R }) => (V * Rh) / (Rh + R),
  range: { V: volts_V, Rh: [0.01, 1e6], R: resistance_ohm },
  source: 'derived: Ohm',
  examples: [
    {
      inputs: { V: 230, Rh: 26.45, R: 0.798 },
      expected: 223.264093,
      tolerance: 0.51e-6,
      evidence: 'independent',
      source: separate,
    },
  ],
});

/** A heater's power goes with the square of its voltage. */
export const heaterPowerRow = workedFormula({
  id: 'heater-power',
  expression: 'P = Pn * (U / Un)^2',
  result: { symbol: 'P', kind: 'power', meaning: 'heaterPower' },
  symbols: {
    Pn: { kind: 'power', meaning: 'nominalPower' },
    U: { kind: 'voltage', meaning: 'heaterVoltage' },
    Un: { kind: 'voltage', meaning: 'nominalVoltage' },
  },
  compute: ({ Pn, U, Un }) => Pn * (U / Un) ** 2,
  range: { Pn: [0.1, 1e5], U: [0, 1000], Un: volts_V },
  source: 'derived: Ohm',
  examples: [
    {
      inputs: { Pn: 2000, U: 223.264093, Un: 230 },
      expected: 1884.569,
      tolerance: 0.51e-3,
      evidence: 'independent',
      source: separate,
    },
    { inputs: { Pn: 100, U: 207, Un: 230 }, expected: 81, tolerance: 1e-9, evidence: 'derived', source: '0.9 squared' },
    {
      inputs: { Pn: 100, U: 253, Un: 230 },
      expected: 121,
      tolerance: 1e-9,
      evidence: 'derived',
      source: '1.1 squared',
    },
  ],
});

/** What a press with a plug may draw from a circuit. */
export const outletLimitRow = workedFormula({
  id: 'outlet-limit',
  expression: 'I = s * B',
  result: { symbol: 'I', kind: 'current', meaning: 'outletLimit' },
  symbols: { s: { kind: 'percent', meaning: 'plugShare' }, B: { kind: 'current', meaning: 'breakerCurrent' } },
  compute: ({ s, B }) => s * B,
  range: { s: [0.1, 1], B: [0.1, 1000] },
  source:
    'NEC 210.23(A)(1): a plugged appliance draws at most 80 % of the circuit (seen quoted, not in the code itself)',
  examples: [
    {
      inputs: { s: 0.8, B: 15 },
      expected: 12,
      tolerance: 1e-12,
      evidence: 'printed',
      source: 'as quoted: 12 A on a circuit of 15 A',
    },
    {
      inputs: { s: 0.8, B: 20 },
      expected: 16,
      tolerance: 1e-12,
      evidence: 'printed',
      source: 'as quoted: 16 A on a circuit of 20 A',
    },
  ],
});

export const supplyFormulas: readonly WorkedFormula[] = [
  leadResistanceRow,
  heaterCurrentRow,
  heaterVoltsRow,
  heaterPowerRow,
  outletLimitRow,
];
