import { type FormulaSymbol, type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';

const gap: FormulaSymbol = { kind: 'shortLength', meaning: 'gapWidth' };
const depth: FormulaSymbol = { kind: 'shortLength', meaning: 'fillDepth' };
const bond: FormulaSymbol = { kind: 'ratio', meaning: 'bond' };
const separate = 'closed form evaluated by a separate program';
const gap_m = [1e-6, 5e-3] as const;

/** Bond of two faces from their healing, capped at that of solid cover. */
export const bondRow = workedFormula({
  id: 'fused-bond',
  expression: 'D = min(1, Z^(1/4))',
  result: { symbol: 'D', ...bond },
  symbols: { Z: { kind: 'ratio', meaning: 'healing' } },
  compute: ({ Z }) => Math.min(1, Z ** 0.25),
  range: { Z: [0, 1e6] },
  source: 'Yang & Pitchumani, Macromolecules 35(8) 2002, 3213-3224 (from memory); on belts nobody has measured it',
  examples: [
    {
      inputs: { Z: 0.689530088651 },
      expected: 0.9112516034,
      tolerance: 1e-10,
      evidence: 'independent',
      source: separate,
    },
    { inputs: { Z: 16 }, expected: 1, tolerance: 0, evidence: 'derived', source: 'no better than solid' },
  ],
});

/** Depth to which melt runs into the gap that the die leaves. */
export const slotFillRow = workedFormula({
  id: 'slot-fill',
  expression: 'l = g * sqrt(J / 6)',
  result: { symbol: 'l', ...depth },
  symbols: { g: gap, J: { kind: 'ratio', meaning: 'flowIntegral' } },
  compute: ({ g, J }) => g * Math.sqrt(J / 6),
  range: { g: gap_m, J: [0, 1e9] },
  source: 'derived: flow between parallel plates',
  examples: [
    { inputs: { g: 1e-4, J: 2400 }, expected: 2e-3, tolerance: 1e-12, evidence: 'independent', source: separate },
    {
      inputs: { g: 5e-5, J: 12e6 / 1e4 },
      expected: 0.7071e-3,
      tolerance: 0.51e-7,
      evidence: 'independent',
      source: separate,
    },
  ],
});

/** How long it takes at one temperature and pressure. */
export const slotFillTimeRow = workedFormula({
  id: 'slot-fill-time',
  expression: 't = 6 * eta * (l / g)^2 / p',
  result: { symbol: 't', kind: 'time', meaning: 'fillTime' },
  symbols: {
    eta: { kind: 'viscosity', meaning: 'meltViscosity' },
    l: depth,
    g: gap,
    p: { kind: 'pressure', meaning: 'beltPressure' },
  },
  compute: ({ eta, l, g, p }) => (6 * eta * (l / g) ** 2) / p,
  range: { eta: [1, 1e8], l: [0, 0.1], g: gap_m, p: [1, 5e6] },
  source: 'derived: slot-fill solved for the time',
  examples: [
    {
      inputs: { eta: 5000, l: 1.5e-3, g: 1e-4, p: 2e5 },
      expected: 33.75,
      tolerance: 1e-9,
      evidence: 'derived',
      source: '6 * 5000 * 225 / 2e5',
    },
    {
      inputs: { eta: 5000, l: 2e-3, g: 1e-4, p: 2e5 },
      expected: 60,
      tolerance: 1e-9,
      evidence: 'independent',
      source: separate,
    },
  ],
});

/** Strength of a splice from how far its flanks fused. */
export const fusedStrengthRow = workedFormula({
  id: 'fused-strength',
  expression: 'S = min(Sb, S0 * min(1, F) * min(1, D) * M)',
  result: { symbol: 'S', kind: 'forcePerWidth', meaning: 'spliceStrength' },
  symbols: {
    Sb: { kind: 'forcePerWidth', meaning: 'beltStrength' },
    S0: { kind: 'forcePerWidth', meaning: 'bestStrength' },
    F: { kind: 'ratio', meaning: 'fillShare' },
    D: bond,
    M: { kind: 'ratio', meaning: 'molarMassShare' },
  },
  compute: ({ Sb, S0, F, D, M }) => Math.min(Sb, S0 * Math.min(1, F) * Math.min(1, D) * M),
  range: { Sb: [0, 1e5], S0: [0, 1e5], F: [0, 1e3], D: [0, 1e3], M: [0, 1] },
  source: 'engineering prior, no source: a closure that ranks recipes and predicts nothing until pulls were fitted',
  examples: [
    {
      inputs: { Sb: 120, S0: 100, F: 0.5, D: 0.8, M: 0.9 },
      expected: 36,
      tolerance: 1e-9,
      evidence: 'derived',
      source: 'product by hand',
    },
    {
      inputs: { Sb: 80, S0: 100, F: 2, D: 1, M: 0.9 },
      expected: 80,
      tolerance: 0,
      evidence: 'derived',
      source: 'no stronger than the belt',
    },
  ],
});

/** Worked formulas of this folder. */
export const fusionFormulas: readonly WorkedFormula[] = [bondRow, slotFillRow, slotFillTimeRow, fusedStrengthRow];
