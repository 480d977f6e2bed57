import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';

const table =
  'closed form of the inner tangent, evaluated by a separate program; carriers 25 mm, pressure rollers 20 mm';

/** Angle by which the strand leaves the straight line between a carrying and a pressure roller. */
export const pressUpAngleRow = workedFormula({
  id: 'press-up-angle',
  expression: 'a = atan2(p/2, S - u) - atan2(sqrt((p/2)^2 + (S - u)^2 - S^2), S)',
  result: { symbol: 'a', kind: 'angle', meaning: 'strandAngle' },
  symbols: {
    S: { kind: 'shortLength', meaning: 'bothRadiiAndThickness' },
    u: { kind: 'shortLength', meaning: 'pressUp' },
    p: { kind: 'shortLength', meaning: 'carrierPitch' },
  },
  compute: ({ S, u, p }) => Math.atan2(p / 2, S - u) - Math.atan2(Math.sqrt(p * p * 0.25 - u * (2 * S - u)), S),
  range: { S: [1e-6, 10], u: [0, 10], p: [1e-6, 10] },
  source: 'derived: inner tangent of a carrying and a pressure roller half a pitch apart',
  examples: [0.5, 1, 2, 3].map((u_mm, i) => ({
    inputs: { S: 0.047, u: u_mm / 1000, p: 0.1 },
    expected: [0.010047, 0.020189, 0.040759, 0.061714][i] ?? Number.NaN,
    tolerance: 0.5e-6,
    evidence: 'independent' as const,
    source: table,
  })),
});

/** Normal force of the belt on one carrying roller. */
export const pressUpForceRow = workedFormula({
  id: 'press-up-force',
  expression: 'N = 2*T*sin(a)',
  result: { symbol: 'N', kind: 'force', meaning: 'forcePerCarrier' },
  symbols: {
    T: { kind: 'force', meaning: 'strandTension' },
    a: { kind: 'angle', meaning: 'strandAngle' },
  },
  compute: ({ T, a }) => 2 * T * Math.sin(a),
  range: { T: [0, 1e6], a: [0, Math.PI / 2] },
  source: 'derived: two equal strand pulls, each at the angle a',
  examples: [
    {
      inputs: { T: 200, a: Math.PI / 6 },
      expected: 200,
      tolerance: 1e-9,
      evidence: 'derived',
      source: 'sin(30 degrees) = 1/2',
    },
    { inputs: { T: 200, a: 0.020189 }, expected: 8.075, tolerance: 3e-4, evidence: 'independent', source: table },
  ],
});

/** The same force for small press-up. */
export const pressUpForceFirstOrderRow = workedFormula({
  id: 'press-up-force-first-order',
  expression: 'N = 4*T*u / p',
  result: { symbol: 'N', kind: 'force', meaning: 'forcePerCarrier' },
  symbols: {
    T: { kind: 'force', meaning: 'strandTension' },
    u: { kind: 'shortLength', meaning: 'pressUp' },
    p: { kind: 'shortLength', meaning: 'carrierPitch' },
  },
  compute: ({ T, u, p }) => (4 * T * u) / p,
  range: { T: [0, 1e6], u: [0, 10], p: [1e-6, 10] },
  source: 'derived: first order in u/p of press-up-force',
  examples: [
    {
      inputs: { T: 200, u: 0.001, p: 0.1 },
      expected: 8,
      tolerance: 1e-9,
      evidence: 'derived',
      source: 'limit of press-up-force',
    },
  ],
});

export const pressUpFormulas: readonly WorkedFormula[] = [pressUpAngleRow, pressUpForceRow, pressUpForceFirstOrderRow];
