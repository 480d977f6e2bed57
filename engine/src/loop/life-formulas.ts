import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';
import { range, sym } from './symbols.ts';

const neutralLine = { kind: 'shortLength', meaning: 'neutralLine' } as const;
const radius = { kind: 'shortLength', meaning: 'pulleyRadius' } as const;
const time = (meaning: string) => ({ kind: 'time', meaning }) as const;
const relaxed = (meaning: string) => ({ kind: 'percent', meaning }) as const;
const time_s = [1e-3, 1e10] as const;
const share = [0.01, 1] as const;
const radius_m = [0.001, 5] as const;
const yarns =
  'Milašius & Laureckienė, Prediction of Long-lasting Relaxation Properties of Polyester Yarns and Fabrics, Autex Res. J. 2017';

export const bendingStrainRow = workedFormula({
  id: 'bending-strain',
  expression: 'eb = (t - y) / (R + y)',
  result: { symbol: 'eb', kind: 'percent', meaning: 'bendingStrain' },
  symbols: { t: sym.beltThickness, y: neutralLine, R: radius },
  compute: ({ t, y, R }) => (t - y) / (R + y),
  range: { t: range.thickness_m, y: [0, 0.1], R: radius_m },
  source: 'derived: plane sections; running face on the pulley, outer face stretched',
  examples: [
    {
      inputs: { t: 0.002, y: 0.0006, R: 0.015 },
      expected: 0.089744,
      tolerance: 5e-7,
      evidence: 'derived',
      source: '1.4 / 15.6, a 30 mm pulley',
    },
  ],
});

export const bendingStrainBackRow = workedFormula({
  id: 'bending-strain-counter-bend',
  expression: 'eb = y / (R + t - y)',
  result: { symbol: 'eb', kind: 'percent', meaning: 'bendingStrain' },
  symbols: { t: sym.beltThickness, y: neutralLine, R: radius },
  compute: ({ t, y, R }) => y / (R + t - y),
  range: { t: range.thickness_m, y: [0, 0.1], R: radius_m },
  source: 'derived: plane sections; back of the belt on the pulley, running face stretched',
  examples: [
    {
      inputs: { t: 0.002, y: 0.0006, R: 0.0186 },
      expected: 0.03,
      tolerance: 1e-12,
      evidence: 'derived',
      source: '0.6 / (18.6 + 1.4)',
    },
  ],
});

export const pulleyByFabricRow = workedFormula({
  id: 'smallest-pulley-by-fabric',
  expression: 'D = c * d',
  result: { symbol: 'D', kind: 'shortLength', meaning: 'smallestPulley' },
  symbols: {
    c: { kind: 'ratio', meaning: 'fabricFactor' },
    d: { kind: 'shortLength', meaning: 'fabricThickness' },
  },
  compute: ({ c, d }) => c * d,
  range: { c: [50, 200], d: [1e-5, 0.05] },
  source: 'structure of ISO 3684:1990 with the factors of DIN 22101 (from memory)',
  examples: [
    {
      inputs: { c: 108, d: 0.0006 },
      expected: 0.0648,
      tolerance: 1e-12,
      evidence: 'derived',
      source: '108 * 0.6 mm, polyester',
    },
  ],
});

export const loopRevolutionsRow = workedFormula({
  id: 'loop-revolutions',
  expression: 'N = v * t / L',
  result: { symbol: 'N', kind: 'revolutions', meaning: 'revolutions' },
  symbols: { v: sym.speed, t: time('runningTime'), L: sym.pathLength },
  compute: ({ v, t, L }) => (v * t) / L,
  range: { v: range.speed_m_s, t: [0, 1e10], L: range.loop_m },
  source: 'derived: definition of a revolution of the belt',
  examples: [
    {
      inputs: { v: 0.75, t: 6000 * 3600, L: 13.526143179 },
      expected: 1_197_681,
      tolerance: 0.5,
      evidence: 'derived',
      source: '0.75 m/s for 6000 h over 13 526.143 mm, worked by hand',
    },
  ],
});

export const beltFlexesRow = workedFormula({
  id: 'belt-flexes',
  expression: 'n = p * N',
  result: { symbol: 'n', kind: 'count', meaning: 'flexes' },
  symbols: { p: { kind: 'count', meaning: 'pulleyCount' }, N: { kind: 'revolutions', meaning: 'revolutions' } },
  compute: ({ p, N }) => p * N,
  range: { p: [1, 100_000], N: [0, 1e12] },
  source: 'derived: each pulley bends every piece of belt once a revolution',
  examples: [
    {
      inputs: { p: 8, N: 1_197_681 },
      expected: 9_581_448,
      tolerance: 1e-6,
      evidence: 'derived',
      source: '8 * 1 197 681',
    },
  ],
});

export const relaxedShareRow = workedFormula({
  id: 'relaxed-share',
  expression: 'r = r1 - (r1 - r2) * ln(t / t1) / ln(t2 / t1)',
  result: { symbol: 'r', ...relaxed('shareLeft') },
  symbols: {
    r1: relaxed('firstReading'),
    r2: relaxed('secondReading'),
    t1: time('firstReadingTime'),
    t2: time('secondReadingTime'),
    t: time('elapsedTime'),
  },
  compute: ({ r1, r2, t1, t2, t }) => r1 - ((r1 - r2) * Math.log(t / t1)) / Math.log(t2 / t1),
  range: { r1: share, r2: share, t1: time_s, t2: time_s, t: time_s },
  source: `${yarns}: straight line over log time from 100 s on`,
  examples: [
    {
      inputs: { r1: 0.88, r2: 0.86, t1: 100, t2: 500, t: 200_000 },
      expected: 0.785546,
      tolerance: 5e-7,
      evidence: 'derived',
      source: 'slope -0.0286135 a decade, 3.30103 decades, worked by hand',
    },
  ],
});

export const relaxationTimeRow = workedFormula({
  id: 'relaxation-time',
  expression: 't = t1 * (t2 / t1)^((r1 - r) / (r1 - r2))',
  result: { symbol: 't', ...time('timeToShare') },
  symbols: {
    r1: relaxed('firstReading'),
    r2: relaxed('secondReading'),
    t1: time('firstReadingTime'),
    t2: time('secondReadingTime'),
    r: relaxed('shareNeeded'),
  },
  compute: ({ r1, r2, t1, t2, r }) => t1 * (t2 / t1) ** ((r1 - r) / (r1 - r2)),
  range: { r1: share, r2: share, t1: time_s, t2: time_s, r: share },
  source: `${yarns}: straight line over log time from 100 s on`,
  examples: [
    {
      inputs: { r1: 0.88, r2: 0.86, t1: 100, t2: 500, r: 0.8 },
      expected: 62_500,
      tolerance: 1e-6,
      evidence: 'derived',
      source: '100 s * 5^4, exact',
    },
  ],
});

export const retensionDaysRow = workedFormula({
  id: 'retension-days',
  expression: 'd = t1 * (t2 / t1)^((r1 - r) / (r1 - r2))',
  result: { symbol: 'd', kind: 'days', meaning: 'retensionAfter' },
  symbols: relaxationTimeRow.symbols,
  compute: (inputs) => relaxationTimeRow.compute(inputs) / 86_400,
  range: relaxationTimeRow.range,
  source: relaxationTimeRow.source,
  examples: [
    {
      inputs: { r1: 0.88, r2: 0.86, t1: 100, t2: 500, r: 0.8 },
      expected: 0.7234,
      tolerance: 5e-5,
      evidence: 'derived',
      source: '62 500 s are 17.36 h',
    },
  ],
});

/** What wears the belt: bending, revolutions, relaxation. */
export const lifeFormulas: readonly WorkedFormula[] = [
  bendingStrainRow,
  bendingStrainBackRow,
  pulleyByFabricRow,
  loopRevolutionsRow,
  beltFlexesRow,
  relaxedShareRow,
  relaxationTimeRow,
  retensionDaysRow,
];
