import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';
import { standardGravity_m_s2 } from './slip-formulas.ts';
import { range, sym } from './symbols.ts';

const frequency = { kind: 'frequency', meaning: 'frequency' } as const;
const bending = { kind: 'bendingStiffness', meaning: 'bendingStiffness' } as const;
const force = { kind: 'force', meaning: 'pushForce' } as const;
const deflection = { kind: 'shortLength', meaning: 'deflection' } as const;
const frequency_Hz = [0.01, 10_000] as const;
const mass_kg_m = [1e-4, 1000] as const;

export const tensionBySoundRow = workedFormula({
  id: 'tension-by-sound',
  expression: 'T = 4 * m * l^2 * f^2',
  result: { symbol: 'T', ...sym.tension },
  symbols: { m: sym.beltMass, l: sym.spanLength, f: frequency },
  compute: ({ m, l, f }) => 4 * m * l * l * f * f,
  range: { m: mass_kg_m, l: range.span_m, f: frequency_Hz },
  source: 'ideal string: Mersenne-Taylor law',
  examples: [
    {
      inputs: { m: 0.08, l: 0.58, f: 47.21746 },
      expected: 240,
      tolerance: 1e-4,
      evidence: 'derived',
      source: 'sqrt(240 / 0.08) / (2 * 0.58) = 47.21746 Hz',
    },
  ],
});

export const tensionBySoundHingedRow = workedFormula({
  id: 'tension-by-sound-hinged',
  expression: 'T = 4 * m * l^2 * f^2 - pi^2 * B / l^2',
  result: { symbol: 'T', ...sym.tension },
  symbols: { m: sym.beltMass, l: sym.spanLength, f: frequency, B: bending },
  compute: ({ m, l, f, B }) => 4 * m * l * l * f * f - (Math.PI ** 2 * B) / (l * l),
  range: { m: mass_kg_m, l: range.span_m, f: frequency_Hz, B: [0, 100] },
  source:
    'stiff string with hinged ends, f = f1 sqrt(1 + pi^2 x), x = B / (T l^2): Rayleigh, Theory of Sound (from memory)',
  examples: [
    {
      inputs: { m: 0.08, l: 0.58, f: 47.2261, B: 0.003 },
      expected: 240,
      tolerance: 2e-3,
      evidence: 'derived',
      source: '47.21746 Hz * sqrt(1 + pi^2 * 3.715815e-5) = 47.2261 Hz',
    },
  ],
});

export const tensionByPushRow = workedFormula({
  id: 'tension-by-push',
  expression: 'T = Q * l / (4 * d) - 2 * EA * k * (d / l)^2 - 12 * B / l^2',
  result: { symbol: 'T', ...sym.tension },
  symbols: {
    Q: force,
    l: sym.spanLength,
    d: deflection,
    EA: sym.stiffness,
    k: { kind: 'ratio', meaning: 'spanShareOfLoop' },
    B: bending,
  },
  compute: ({ Q, l, d, EA, k, B }) => (Q * l) / (4 * d) - 2 * EA * k * (d / l) ** 2 - (12 * B) / (l * l),
  range: { Q: range.force_N, l: range.span_m, d: [1e-6, 10], EA: [0, 1e9], k: [0, 1], B: [0, 100] },
  source: 'derived: Q = 4 T d / l + 8 EA k (d / l)^3 + 48 B d / l^3 solved for T',
  examples: [
    {
      inputs: { Q: 8.398868, l: 0.58, d: 0.005, EA: 24000, k: 1, B: 0 },
      expected: 240,
      tolerance: 1e-3,
      evidence: 'derived',
      source: '8.275862 + 8 * 24000 * (5 / 580)^3 N, worked by hand',
    },
  ],
});

export const tensionByPushFirstOrderRow = workedFormula({
  id: 'tension-by-push-first-order',
  expression: 'T = Q * l / (4 * d)',
  result: { symbol: 'T', ...sym.tension },
  symbols: { Q: force, l: sym.spanLength, d: deflection },
  compute: ({ Q, l, d }) => (Q * l) / (4 * d),
  range: { Q: range.force_N, l: range.span_m, d: [1e-6, 10] },
  source: 'derived: balance of a string pushed at mid-span, small angles',
  examples: [
    {
      inputs: { Q: 10, l: 0.58, d: 0.006041667 },
      expected: 240,
      tolerance: 2e-5,
      evidence: 'derived',
      source: '10 * 580 / (4 * 240) = 6.041667 mm',
    },
  ],
});

export const marksElongationRow = workedFormula({
  id: 'marks-elongation',
  expression: 'e = (s - m) / m',
  result: { symbol: 'e', ...sym.elongation },
  symbols: { s: { kind: 'length', meaning: 'marksStretched' }, m: { kind: 'length', meaning: 'marksSlack' } },
  compute: ({ s, m }) => (s - m) / m,
  range: { s: [0.05, 150], m: [0.05, 100] },
  source: 'derived: definition of elongation',
  examples: [
    {
      inputs: { s: 1.008, m: 1 },
      expected: 0.008,
      tolerance: 1e-12,
      evidence: 'practice',
      source: 'common practice, no source: 1000.0 to 1008.0 mm is 0.8 %',
    },
  ],
});

export const sagRow = workedFormula({
  id: 'sag',
  expression: 'd = m * g * l^2 / (8 * T)',
  result: { symbol: 'd', kind: 'shortLength', meaning: 'sag' },
  symbols: { m: sym.beltMass, l: sym.spanLength, T: sym.tension },
  compute: ({ m, l, T }) => (m * standardGravity_m_s2 * l * l) / (8 * T),
  range: { m: range.mass_kg_m, l: range.span_m, T: [1e-3, 1e7] },
  source: 'derived: flat parabola; Budynas & Nisbett, Shigley’s, eq. 17-13 in SI',
  examples: [
    {
      inputs: { m: 0.08, l: 0.58, T: 240 },
      expected: 0.000137457,
      tolerance: 5e-10,
      evidence: 'derived',
      source: '0.08 * 9.80665 * 0.58^2 / 1920 m, worked by hand',
    },
    {
      inputs: { m: 0.08, l: 2.09, T: 240 },
      expected: 0.001784851,
      tolerance: 5e-10,
      evidence: 'derived',
      source: '0.08 * 9.80665 * 2.09^2 / 1920 m, worked by hand',
    },
  ],
});

/** Checking a tension that is there: by ear, by hand, by tape. */
export const tensionCheckFormulas: readonly WorkedFormula[] = [
  tensionBySoundRow,
  tensionBySoundHingedRow,
  tensionByPushRow,
  tensionByPushFirstOrderRow,
  marksElongationRow,
  sagRow,
];
