import tQuantile from '@stdlib/stats-base-dists-t-quantile';
import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';

const standard = 'EN 1990 Annex D, Table D1, coefficient of variation unknown (from memory)';

/** Factor by which a small sample's spread is taken off its mean for a value that 5 % fall below. */
export const fractileFactorRow = workedFormula({
  id: 'fractile-factor',
  expression: 'k = t(0.95; n - 1) * sqrt(1 + 1/n)',
  result: { symbol: 'k', kind: 'ratio', meaning: 'fractileFactor' },
  symbols: { n: { kind: 'count', meaning: 'numberOfPulls' } },
  compute: ({ n }) => tQuantile(0.95, n - 1) * Math.sqrt(1 + 1 / n),
  range: { n: [2, 1e6] },
  source: `${standard}; prediction with Student's t`,
  examples: [
    { inputs: { n: 3 }, expected: 3.37, tolerance: 0.005, evidence: 'printed', source: standard },
    // The table prints 2.33 where the formula gives 2.3353: it does not round.
    { inputs: { n: 5 }, expected: 2.33, tolerance: 0.01, evidence: 'printed', source: standard },
    { inputs: { n: 6 }, expected: 2.18, tolerance: 0.005, evidence: 'printed', source: standard },
    { inputs: { n: 10 }, expected: 1.92, tolerance: 0.005, evidence: 'printed', source: standard },
    { inputs: { n: 30 }, expected: 1.73, tolerance: 0.005, evidence: 'printed', source: standard },
  ],
});

/** Strength that 19 of 20 such splices are expected to exceed. */
export const characteristicRow = workedFormula({
  id: 'characteristic-strength',
  expression: 'c = m - k*s',
  result: { symbol: 'c', kind: 'forcePerWidth', meaning: 'characteristicStrength' },
  symbols: {
    m: { kind: 'forcePerWidth', meaning: 'meanStrength' },
    k: { kind: 'ratio', meaning: 'fractileFactor' },
    s: { kind: 'forcePerWidth', meaning: 'standardDeviation' },
  },
  compute: ({ m, k, s }) => m - k * s,
  range: { m: [0, 1e5], k: [0, 100], s: [0, 1e5] },
  source: standard,
  examples: [
    {
      inputs: { m: 93.3, k: 2.335321, s: 3.189828 },
      expected: 85.8507,
      tolerance: 0.5e-4,
      evidence: 'derived',
      source: 'multiplication by hand',
    },
  ],
});

export const sampleFormulas: readonly WorkedFormula[] = [fractileFactorRow, characteristicRow];
