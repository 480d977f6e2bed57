import { type FormulaSymbol, type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';

const fingerLength: FormulaSymbol = { kind: 'shortLength', meaning: 'fingerLength' };
const fingerPitch: FormulaSymbol = { kind: 'shortLength', meaning: 'fingerPitch' };
const beltWidth: FormulaSymbol = { kind: 'shortLength', meaning: 'beltWidth' };
const flankAngle: FormulaSymbol = { kind: 'angle', meaning: 'flankAngle' };

const triangle = 'derived: triangle of half a pitch and the finger length';
const table = 'closed form evaluated by a separate program';

/** Angle of a finger's flank against the belt's direction. */
export const flankAngleRow = workedFormula({
  id: 'flank-angle',
  expression: 'theta = atan(p / (2*l))',
  result: { symbol: 'theta', ...flankAngle },
  symbols: { l: fingerLength, p: fingerPitch },
  compute: ({ l, p }) => Math.atan(p / (2 * l)),
  range: { l: [0.001, 1], p: [0.001, 0.2] },
  source: triangle,
  examples: [
    ex({ l: 0.035, p: 0.0115 }, degrees(9.32954)),
    ex({ l: 0.07, p: 0.0115 }, degrees(4.6959)),
    ex({ l: 0.08, p: 0.02 }, degrees(7.12502)),
    ex({ l: 0.12, p: 0.02 }, degrees(4.76364)),
    ex({ l: 0.05, p: 0.01 }, degrees(5.71059)),
    ex({ l: 0.11, p: 0.0115 }, degrees(2.99228)),
  ],
});

/** Length of one flank, from tip to root. */
export const flankLengthRow = workedFormula({
  id: 'flank-length',
  expression: 's = sqrt(l^2 + (p/2)^2)',
  result: { symbol: 's', kind: 'shortLength', meaning: 'flankLength' },
  symbols: { l: fingerLength, p: fingerPitch },
  compute: ({ l, p }) => Math.hypot(l, p / 2),
  range: { l: [0.001, 1], p: [0.001, 0.2] },
  source: triangle,
  examples: [
    {
      inputs: { l: 0.035, p: 0.0115 },
      expected: 0.03546918,
      tolerance: 0.5e-8,
      evidence: 'independent',
      source: table,
    },
    { inputs: { l: 0.07, p: 0.0115 }, expected: 0.07023576, tolerance: 0.5e-8, evidence: 'independent', source: table },
    { inputs: { l: 0.02, p: 0.03 }, expected: 0.025, tolerance: 1e-12, evidence: 'derived', source: '3-4-5 triangle' },
  ],
});

/** Length of weld per width of belt. */
export const flankPerWidthRow = workedFormula({
  id: 'flank-per-width',
  expression: 'k = 2*s / p',
  result: { symbol: 'k', kind: 'ratio', meaning: 'flankPerWidth' },
  symbols: { s: { kind: 'shortLength', meaning: 'flankLength' }, p: fingerPitch },
  compute: ({ s, p }) => (2 * s) / p,
  range: { s: [0.001, 1], p: [0.001, 0.2] },
  source: 'derived: two flanks a pitch',
  examples: [
    {
      inputs: { s: 0.07023576, p: 0.0115 },
      expected: 12.21492,
      tolerance: 1e-5,
      evidence: 'independent',
      source: table,
    },
  ],
});

/** Fingers across the belt, whole and part. */
export const fingerCountRow = workedFormula({
  id: 'finger-count',
  expression: 'n = b / p',
  result: { symbol: 'n', kind: 'ratio', meaning: 'fingersAcross' },
  symbols: { b: beltWidth, p: fingerPitch },
  compute: ({ b, p }) => b / p,
  range: { b: [0.001, 10], p: [0.001, 0.2] },
  source: 'derived: division of the width',
  examples: [
    { inputs: { b: 0.03, p: 0.0115 }, expected: 2.6087, tolerance: 0.5e-5, evidence: 'independent', source: table },
    { inputs: { b: 0.03, p: 0.02 }, expected: 1.5, tolerance: 1e-12, evidence: 'derived', source: 'division' },
  ],
});

/** Gap, or overlap, at the tips when one end was cut to one side of where it should be. */
export const tipGapRow = workedFormula({
  id: 'misregistration-tip-gap',
  expression: 'g = e * 2*l / p',
  result: { symbol: 'g', kind: 'shortLength', meaning: 'tipGap' },
  symbols: { e: { kind: 'shortLength', meaning: 'sidewaysError' }, l: fingerLength, p: fingerPitch },
  compute: ({ e, l, p }) => (e * 2 * l) / p,
  range: { e: [0, 0.1], l: [0.001, 1], p: [0.001, 0.2] },
  source: 'derived: slope of a flank',
  examples: [
    {
      inputs: { e: 0.001, l: 0.07, p: 0.0115 },
      expected: 0.01217391,
      tolerance: 0.5e-8,
      evidence: 'independent',
      source: table,
    },
    { inputs: { e: 0.001, l: 0.08, p: 0.02 }, expected: 0.008, tolerance: 1e-12, evidence: 'derived', source: '1:8' },
  ],
});

/** How much longer a splice zone gets when the splice runs askew. */
export const biasGrowthRow = workedFormula({
  id: 'bias-growth',
  expression: 'z = b / tan(a)',
  result: { symbol: 'z', kind: 'shortLength', meaning: 'spliceZoneGrowth' },
  symbols: { b: beltWidth, a: { kind: 'angle', meaning: 'biasAngle' } },
  compute: ({ b, a }) => b / Math.tan(a),
  range: { b: [0.001, 10], a: [0.1, Math.PI / 2] },
  source: 'derived: right triangle across the belt',
  examples: [
    {
      inputs: { b: 0.03, a: degrees(75) },
      expected: 0.0080385,
      tolerance: 0.5e-7,
      evidence: 'independent',
      source: table,
    },
    {
      inputs: { b: 0.03, a: degrees(60) },
      expected: 0.0173205,
      tolerance: 0.5e-7,
      evidence: 'independent',
      source: table,
    },
  ],
});

/** First tip from the fence, belt centre in the middle of a flank: the same for both ends. */
export const firstTipFlankRow = workedFormula({
  id: 'first-tip-flank',
  expression: 'd = (b/2 - p/4) mod (p/2)',
  result: { symbol: 'd', kind: 'shortLength', meaning: 'firstTipFromFence' },
  symbols: { b: beltWidth, p: fingerPitch },
  compute: ({ b, p }) => remainder(b / 2 - p / 4, p / 2),
  range: { b: [0.001, 10], p: [0.001, 0.2] },
  source: 'derived: both ends are cut alike when the zigzag is point-symmetric about the belt centre',
  examples: [
    tipExample(30, 11.5, 0.625, 'extremum 0.625 mm from the edge'),
    tipExample(25, 11.5, 3.875, 'extremum 1.875 mm outside the edge, half a pitch less 1.875 mm inside'),
    tipExample(20, 20, 5, 'a quarter pitch'),
  ],
});

/** First tip from the fence, belt centre on a tip or root; the second end is cut with the fence half a pitch away. */
export const firstTipCentreRow = workedFormula({
  id: 'first-tip-centre',
  expression: 'd = (b/2) mod (p/2)',
  result: { symbol: 'd', kind: 'shortLength', meaning: 'firstTipFromFence' },
  symbols: { b: beltWidth, p: fingerPitch },
  compute: ({ b, p }) => remainder(b / 2, p / 2),
  range: { b: [0.001, 10], p: [0.001, 0.2] },
  source: 'derived: the zigzag is mirror-symmetric about the belt centre',
  examples: [
    tipExample(30, 11.5, 3.5, 'half a pitch less the score of 2.25 mm'),
    tipExample(40, 11.5, 2.75, 'the score itself'),
    tipExample(30, 20, 5, 'a quarter pitch'),
  ],
});

export const geometryFormulas: readonly WorkedFormula[] = [
  flankAngleRow,
  flankLengthRow,
  flankPerWidthRow,
  fingerCountRow,
  tipGapRow,
  biasGrowthRow,
  firstTipFlankRow,
  firstTipCentreRow,
];

/** Remainder from 0 up to the divisor; one that is full but for rounding counts as none. */
function remainder(value: number, divisor: number): number {
  const rest = value - divisor * Math.floor(value / divisor);
  return divisor - rest < 1e-12 ? 0 : rest;
}

function degrees(angle_deg: number): number {
  return (angle_deg / 180) * Math.PI;
}

function ex(inputs: { l: number; p: number }, expected: number) {
  return { inputs, expected, tolerance: degrees(0.5e-5), evidence: 'independent' as const, source: table };
}

function tipExample(width_mm: number, pitch_mm: number, expected_mm: number, source: string) {
  return {
    inputs: { b: width_mm / 1000, p: pitch_mm / 1000 },
    expected: expected_mm / 1000,
    tolerance: 1e-12,
    evidence: 'derived' as const,
    source: `by hand: ${source}`,
  };
}
