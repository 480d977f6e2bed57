import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';
import { range, sym } from './symbols.ts';

export const strandTensionRow = workedFormula({
  id: 'strand-tension',
  expression: 'F = k1 * e * b',
  result: { symbol: 'F', ...sym.tension },
  symbols: { k1: sym.modulus, e: sym.elongation, b: sym.beltWidth },
  // N/mm per 1 %, share, m: 1e5 = 1000 mm/m * 100 %.
  compute: ({ k1, e, b }) => 1e5 * k1 * e * b,
  range: { k1: range.modulus_N_mm_pct, e: range.elongation, b: range.width_m },
  source: 'definition of the relaxed modulus k1%, ISO 21181:2013',
  examples: [
    {
      inputs: { k1: 8, e: 0.008, b: 0.03 },
      expected: 192,
      tolerance: 1e-9,
      evidence: 'derived',
      source: '8 N/mm per 1 % * 0.8 % * 30 mm',
    },
  ],
});

export const freshTensionRow = workedFormula({
  id: 'fresh-tension',
  expression: 'Fn = c * F',
  result: { symbol: 'Fn', kind: 'force', meaning: 'freshTension' },
  symbols: { c: { kind: 'ratio', meaning: 'freshFactor' }, F: sym.tension },
  compute: ({ c, F }) => c * F,
  range: { c: [1, 5], F: range.force_N },
  source: 'from memory: freshly tensioned textile belts pull 1.4 to 2 times the relaxed value',
  examples: [
    {
      inputs: { c: 1.8, F: 192 },
      expected: 345.6,
      tolerance: 1e-9,
      evidence: 'derived',
      source: '1.8 * 192 N',
    },
  ],
});

export const tensileStiffnessRow = workedFormula({
  id: 'tensile-stiffness',
  expression: 'EA = 100 % * k1 * b',
  result: { symbol: 'EA', ...sym.stiffness },
  symbols: { k1: sym.modulus, b: sym.beltWidth },
  compute: ({ k1, b }) => 1e5 * k1 * b,
  range: { k1: range.modulus_N_mm_pct, b: range.width_m },
  source: 'definition of the relaxed modulus k1%, ISO 21181:2013',
  examples: [
    {
      inputs: { k1: 8, b: 0.03 },
      expected: 24000,
      tolerance: 1e-9,
      evidence: 'derived',
      source: '100 % * 8 N/mm per 1 % * 30 mm',
    },
  ],
});

export const elongationForTensionRow = workedFormula({
  id: 'elongation-for-tension',
  expression: 'e = F / (k1 * b)',
  result: { symbol: 'e', ...sym.elongation },
  symbols: { F: sym.tension, k1: sym.modulus, b: sym.beltWidth },
  compute: ({ F, k1, b }) => F / (1e5 * k1 * b),
  range: { F: range.force_N, k1: range.modulus_N_mm_pct, b: range.width_m },
  source: 'definition of the relaxed modulus k1%, ISO 21181:2013',
  examples: [
    {
      inputs: { F: 192, k1: 8, b: 0.03 },
      expected: 0.008,
      tolerance: 1e-12,
      evidence: 'derived',
      source: '192 N / (8 N/mm per 1 % * 30 mm) = 0.8 %',
    },
  ],
});

export const shaftLoadRow = workedFormula({
  id: 'shaft-load',
  expression: 'R = sqrt(T1^2 + T2^2 - 2 * T1 * T2 * cos(w))',
  result: { symbol: 'R', kind: 'force', meaning: 'shaftLoad' },
  symbols: { T1: sym.tightTension, T2: sym.slackTension, w: sym.wrap },
  // The same vector sum, written so that it keeps its digits when T1 = T2 and w is small.
  compute: ({ T1, T2, w }) => Math.sqrt((T1 - T2) ** 2 + 4 * T1 * T2 * Math.sin(w / 2) ** 2),
  range: { T1: range.force_N, T2: range.force_N, w: [0, 6.283185307] },
  source: 'derived: vector sum of the two strand tensions',
  examples: [
    {
      inputs: { T1: 324.0591, T2: 144.0591, w: 3.2428095 },
      expected: 467.6075,
      tolerance: 1e-3,
      evidence: 'derived',
      source: 'wrap 185.7993 degrees, 324.0591 N and 144.0591 N, worked by hand',
    },
  ],
});

export const idleShaftLoadRow = workedFormula({
  id: 'idle-shaft-load',
  expression: 'R = 2 * T * sin(w / 2)',
  result: { symbol: 'R', kind: 'force', meaning: 'shaftLoad' },
  symbols: { T: sym.tension, w: sym.wrap },
  compute: ({ T, w }) => 2 * T * Math.sin(w / 2),
  range: { T: range.force_N, w: [0, 6.283185307] },
  source: 'derived: vector sum of two equal strand tensions',
  examples: [
    {
      inputs: { T: 192, w: 3.2428095 },
      expected: 383.5084,
      tolerance: 1e-4,
      evidence: 'derived',
      source: '192 N at 185.7993 degrees, worked by hand',
    },
  ],
});

export const takeUpTensionRow = workedFormula({
  id: 'take-up-tension',
  expression: 'T = W / (2 * sin(w / 2))',
  result: { symbol: 'T', ...sym.tension },
  symbols: { W: { kind: 'force', meaning: 'takeUpForce' }, w: sym.takeUpWrap },
  compute: ({ W, w }) => W / (2 * Math.sin(w / 2)),
  range: { W: range.force_N, w: range.wrap_rad },
  source: 'derived: force balance of an idle pulley on a slide along its bisector',
  examples: [
    {
      inputs: { W: 383.6727, w: 3.0590171 },
      expected: 192,
      tolerance: 5e-5,
      evidence: 'derived',
      source: 'wrap 175.268767 degrees, worked by hand',
    },
  ],
});

export const elasticCreepRow = workedFormula({
  id: 'elastic-creep',
  expression: 's = (T1 - T2) / EA',
  result: { symbol: 's', kind: 'percent', meaning: 'elasticCreep' },
  symbols: { T1: sym.tightTension, T2: sym.slackTension, EA: sym.stiffness },
  compute: ({ T1, T2, EA }) => (T1 - T2) / EA,
  range: { T1: range.force_N, T2: range.force_N, EA: [1, 1e9] },
  source: 'Firbank, Int. J. Mech. Sci. 12 (1970) 1053; Gerbert, J. Mech. Des. 118 (1996) 432',
  examples: [
    {
      inputs: { T1: 324, T2: 144, EA: 24000 },
      expected: 0.0075,
      tolerance: 1e-12,
      evidence: 'derived',
      source: '180 N / 24 000 N = 0.75 %',
    },
  ],
});

/** Stretch, pull of a strand, load on a shaft. */
export const tensionFormulas: readonly WorkedFormula[] = [
  strandTensionRow,
  freshTensionRow,
  tensileStiffnessRow,
  elongationForTensionRow,
  shaftLoadRow,
  idleShaftLoadRow,
  takeUpTensionRow,
  elasticCreepRow,
];
