import { type FormulaSymbol, type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';
import { range, sym } from './symbols.ts';

const length = (meaning: string): FormulaSymbol => ({ kind: 'length', meaning });
const uncertainty = (meaning: string): FormulaSymbol => ({ kind: 'shortLength', meaning });
const uncertainty_m = [1e-6, 100] as const;

export const estimateOfTwoRow = workedFormula({
  id: 'length-estimate-of-two',
  expression: 'L0 = (L1 / u1^2 + L2 / u2^2) / (1 / u1^2 + 1 / u2^2)',
  result: { symbol: 'L0', ...sym.endlessLength },
  symbols: {
    L1: length('firstSourceLength'),
    L2: length('secondSourceLength'),
    u1: uncertainty('firstSourceUncertainty'),
    u2: uncertainty('secondSourceUncertainty'),
  },
  compute: ({ L1, L2, u1, u2 }) => (L1 / u1 ** 2 + L2 / u2 ** 2) / (1 / u1 ** 2 + 1 / u2 ** 2),
  range: { L1: range.loop_m, L2: range.loop_m, u1: uncertainty_m, u2: uncertainty_m },
  source: 'inverse-variance weighted mean (from memory; Review of Particle Physics, Statistics)',
  examples: [
    {
      inputs: { L1: 10, L2: 10.03, u1: 0.01, u2: 0.02 },
      expected: 10.006,
      tolerance: 1e-12,
      evidence: 'derived',
      source: 'weights 4 : 1, so one fifth of 30 mm above the first',
    },
  ],
});

export const estimateOfThreeRow = workedFormula({
  id: 'length-estimate-of-three',
  expression: 'L0 = (L1 / u1^2 + L2 / u2^2 + L3 / u3^2) / (1 / u1^2 + 1 / u2^2 + 1 / u3^2)',
  result: { symbol: 'L0', ...sym.endlessLength },
  symbols: {
    L1: length('firstSourceLength'),
    L2: length('secondSourceLength'),
    L3: length('thirdSourceLength'),
    u1: uncertainty('firstSourceUncertainty'),
    u2: uncertainty('secondSourceUncertainty'),
    u3: uncertainty('thirdSourceUncertainty'),
  },
  compute: ({ L1, L2, L3, u1, u2, u3 }) =>
    (L1 / u1 ** 2 + L2 / u2 ** 2 + L3 / u3 ** 2) / (1 / u1 ** 2 + 1 / u2 ** 2 + 1 / u3 ** 2),
  range: {
    L1: range.loop_m,
    L2: range.loop_m,
    L3: range.loop_m,
    u1: uncertainty_m,
    u2: uncertainty_m,
    u3: uncertainty_m,
  },
  source: 'inverse-variance weighted mean (from memory; Review of Particle Physics, Statistics)',
  examples: [
    {
      inputs: { L1: 10, L2: 10.03, L3: 10.06, u1: 0.01, u2: 0.02, u3: 0.02 },
      expected: 10.015,
      tolerance: 1e-12,
      evidence: 'derived',
      source: 'weights 4 : 1 : 1, so (30 + 60) / 6 mm above the first',
    },
  ],
});

export const estimateUncertaintyOfTwoRow = workedFormula({
  id: 'length-uncertainty-of-two',
  expression: 'u = 1 / sqrt(1 / u1^2 + 1 / u2^2)',
  result: { symbol: 'u', ...uncertainty('lengthUncertainty') },
  symbols: { u1: uncertainty('firstSourceUncertainty'), u2: uncertainty('secondSourceUncertainty') },
  compute: ({ u1, u2 }) => 1 / Math.sqrt(1 / u1 ** 2 + 1 / u2 ** 2),
  range: { u1: uncertainty_m, u2: uncertainty_m },
  source: 'inverse-variance weighted mean (from memory; Review of Particle Physics, Statistics)',
  examples: [
    {
      inputs: { u1: 0.03, u2: 0.04 },
      expected: 0.024,
      tolerance: 1e-12,
      evidence: 'derived',
      source: '30 * 40 / sqrt(30^2 + 40^2) = 24 mm',
    },
  ],
});

export const estimateUncertaintyOfThreeRow = workedFormula({
  id: 'length-uncertainty-of-three',
  expression: 'u = 1 / sqrt(1 / u1^2 + 1 / u2^2 + 1 / u3^2)',
  result: { symbol: 'u', ...uncertainty('lengthUncertainty') },
  symbols: {
    u1: uncertainty('firstSourceUncertainty'),
    u2: uncertainty('secondSourceUncertainty'),
    u3: uncertainty('thirdSourceUncertainty'),
  },
  compute: ({ u1, u2, u3 }) => 1 / Math.sqrt(1 / u1 ** 2 + 1 / u2 ** 2 + 1 / u3 ** 2),
  range: { u1: uncertainty_m, u2: uncertainty_m, u3: uncertainty_m },
  source: 'inverse-variance weighted mean (from memory; Review of Particle Physics, Statistics)',
  examples: [
    {
      inputs: { u1: 0.03, u2: 0.03, u3: 0.03 },
      expected: 0.0173205081,
      tolerance: 5e-11,
      evidence: 'derived',
      source: '30 mm / sqrt 3',
    },
  ],
});

/** Several sources of one length, weighted. */
export const estimateFormulas: readonly WorkedFormula[] = [
  estimateOfTwoRow,
  estimateOfThreeRow,
  estimateUncertaintyOfTwoRow,
  estimateUncertaintyOfThreeRow,
];
