import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';
import { range, sym } from './symbols.ts';

/** Standard gravity, exact by definition (3rd CGPM, 1901) [m/s2]. */
export const standardGravity_m_s2 = 9.80665;

const massPerLength = (meaning: string) => ({ kind: 'massPerLength', meaning }) as const;
const capstan = [1.0001, 1e6] as const;
const share = { kind: 'ratio', meaning: 'pullShare' } as const;
const shigley = 'Budynas & Nisbett, Shigley’s Mechanical Engineering Design, chapter 17-2';

export const capstanRatioRow = workedFormula({
  id: 'capstan-ratio',
  expression: 'E = exp(f * w)',
  result: { symbol: 'E', ...sym.capstanRatio },
  symbols: { f: sym.friction, w: { kind: 'angle', meaning: 'driveWrap' } },
  compute: ({ f, w }) => Math.exp(f * w),
  range: { f: range.friction, w: range.wrap_rad },
  source: `Euler-Eytelwein; ${shigley}, eq. 17-7`,
  examples: [
    {
      inputs: { f: 0.8, w: 3.016511 },
      expected: 11.17,
      tolerance: 0.005,
      evidence: 'printed',
      source: `${shigley}, example 17-1`,
    },
    {
      inputs: { f: 0.25, w: (185.7993 * Math.PI) / 180 },
      expected: 2.249487,
      tolerance: 1e-6,
      evidence: 'derived',
      source: 'exp(0.25 * 3.242809), worked by hand',
    },
  ],
});

export const centrifugalTensionRow = workedFormula({
  id: 'centrifugal-tension',
  expression: 'Fc = m * v^2',
  result: { symbol: 'Fc', ...sym.centrifugalTension },
  symbols: { m: sym.beltMass, v: sym.speed },
  compute: ({ m, v }) => m * v * v,
  range: { m: range.mass_kg_m, v: range.speed_m_s },
  source: `${shigley}, eq. e`,
  examples: [
    {
      inputs: { m: 0.08, v: 0.75 },
      expected: 0.045,
      tolerance: 1e-12,
      evidence: 'derived',
      source: '0.08 kg/m * (0.75 m/s)^2',
    },
  ],
});

export const slackMinimumRow = workedFormula({
  id: 'slack-minimum',
  expression: 'F2 = P / (E - 1) + Fc',
  result: { symbol: 'F2', kind: 'force', meaning: 'slackMinimum' },
  symbols: { P: sym.pull, E: sym.capstanRatio, Fc: sym.centrifugalTension },
  compute: ({ P, E, Fc }) => P / (E - 1) + Fc,
  range: { P: range.force_N, E: capstan, Fc: range.force_N },
  source: `${shigley}, eq. 17-7 solved for the slack side`,
  examples: [
    {
      inputs: { P: 180, E: 2.249487, Fc: 0.045 },
      expected: 144.1041,
      tolerance: 1e-4,
      evidence: 'derived',
      source: '180 / 1.249487 + 0.045 N, worked by hand',
    },
  ],
});

export const slipFromSlackRow = workedFormula({
  id: 'slip-from-slack-tension',
  expression: 'P = (F2 - Fc) * (E - 1)',
  result: { symbol: 'P', kind: 'force', meaning: 'pullAtSlip' },
  symbols: { F2: sym.slackTension, Fc: sym.centrifugalTension, E: sym.capstanRatio },
  compute: ({ F2, Fc, E }) => (F2 - Fc) * (E - 1),
  range: { F2: range.force_N, Fc: range.force_N, E: capstan },
  source: `${shigley}, eq. 17-7 with the slack side held`,
  examples: [
    {
      inputs: { F2: 153.8231, Fc: 0, E: 2.239922 },
      expected: 190.7285,
      tolerance: 5e-4,
      evidence: 'derived',
      source: '153.8231 N * 1.239922, worked by hand',
    },
  ],
});

export const slipFromMeanTensionRow = workedFormula({
  id: 'slip-from-mean-tension',
  expression: 'P = 2 * (F0 - Fc) * (E - 1) / (E + 1)',
  result: { symbol: 'P', kind: 'force', meaning: 'pullAtSlip' },
  symbols: { F0: sym.meanTension, Fc: sym.centrifugalTension, E: sym.capstanRatio },
  compute: ({ F0, Fc, E }) => (2 * (F0 - Fc) * (E - 1)) / (E + 1),
  range: { F0: range.force_N, Fc: range.force_N, E: capstan },
  source: `${shigley}, eq. 17-9, with F1 + F2 = 2 F0`,
  examples: [
    {
      inputs: { F0: 240, Fc: 0.045, E: 2.249487 },
      expected: 184.5342,
      tolerance: 2e-4,
      evidence: 'derived',
      source: '2 * 239.955 N * 1.249487 / 3.249487, worked by hand',
    },
  ],
});

export const slipLimitedPullRow = workedFormula({
  id: 'slip-limited-pull',
  expression: 'P = (F0 - Fc) * (E - 1) / (1 + k * (E - 1))',
  result: { symbol: 'P', kind: 'force', meaning: 'pullAtSlip' },
  symbols: { F0: sym.meanTension, Fc: sym.centrifugalTension, E: sym.capstanRatio, k: share },
  compute: ({ F0, Fc, E, k }) => ((F0 - Fc) * (E - 1)) / (1 + k * (E - 1)),
  range: { F0: range.force_N, Fc: range.force_N, E: capstan, k: [0, 1] },
  source: 'derived: eq. 17-7 with the slack side F0 - k P of a loop with fixed centres',
  examples: [
    {
      inputs: { F0: 240, Fc: 0, E: 2.239922, k: 0.478761 },
      expected: 186.7321,
      tolerance: 5e-4,
      evidence: 'derived',
      source: '240 N * 1.239922 / (1 + 0.478761 * 1.239922), worked by hand',
    },
  ],
});

export const slackOfFixedCentresRow = workedFormula({
  id: 'slack-of-fixed-centres',
  expression: 'F2 = F0 - k * P',
  result: { symbol: 'F2', ...sym.slackTension },
  symbols: { F0: sym.meanTension, k: share, P: sym.pull },
  compute: ({ F0, k, P }) => F0 - k * P,
  range: { F0: range.force_N, k: [0, 1], P: range.force_N },
  source: 'derived: the stretch of a linear belt on fixed centres is conserved',
  examples: [
    {
      inputs: { F0: 240, k: 0.478761, P: 180 },
      expected: 153.8231,
      tolerance: 1e-4,
      evidence: 'derived',
      source: '240 - 0.478761 * 180 N, worked by hand',
    },
  ],
});

export const slipReserveRow = workedFormula({
  id: 'slip-reserve',
  expression: 'S = Ps / P',
  result: { symbol: 'S', kind: 'ratio', meaning: 'slipReserve' },
  symbols: { Ps: { kind: 'force', meaning: 'pullAtSlip' }, P: sym.pull },
  compute: ({ Ps, P }) => Ps / P,
  range: { Ps: range.force_N, P: [1e-6, 1e7] },
  source: 'definition',
  examples: [
    {
      inputs: { Ps: 186.7321, P: 180 },
      expected: 1.0374,
      tolerance: 5e-5,
      evidence: 'derived',
      source: '186.7321 N / 180 N',
    },
  ],
});

export const frictionNeededRow = workedFormula({
  id: 'friction-needed',
  expression: 'f = ln((F1 - Fc) / (F2 - Fc)) / w',
  result: { symbol: 'f', kind: 'ratio', meaning: 'frictionNeeded' },
  symbols: {
    F1: sym.tightTension,
    F2: sym.slackTension,
    Fc: sym.centrifugalTension,
    w: { kind: 'angle', meaning: 'driveWrap' },
  },
  compute: ({ F1, F2, Fc, w }) => Math.log((F1 - Fc) / (F2 - Fc)) / w,
  range: { F1: range.force_N, F2: range.force_N, Fc: range.force_N, w: range.wrap_rad },
  source: `${shigley}, developed friction`,
  examples: [
    {
      inputs: { F1: 420, F2: 172.4, Fc: 25.6, w: 3.016511 },
      expected: 0.328,
      tolerance: 0.0005,
      evidence: 'printed',
      source: `${shigley}, example 17-1`,
    },
  ],
});

export const meanTensionForNoSlipRow = workedFormula({
  id: 'mean-tension-for-no-slip',
  expression: 'F0 = P * (E + 1) / (2 * (E - 1)) + Fc',
  result: { symbol: 'F0', kind: 'force', meaning: 'meanTensionForNoSlip' },
  symbols: { P: sym.pull, E: sym.capstanRatio, Fc: sym.centrifugalTension },
  compute: ({ P, E, Fc }) => (P * (E + 1)) / (2 * (E - 1)) + Fc,
  range: { P: range.force_N, E: capstan, Fc: range.force_N },
  source: 'slip-from-mean-tension solved for the mean tension',
  examples: [
    {
      inputs: { P: 184.5342, E: 2.249487, Fc: 0.045 },
      expected: 240,
      tolerance: 3e-4,
      evidence: 'derived',
      source: 'inverse of the pull at slip at 240 N, worked by hand',
    },
  ],
});

export const pullOnLiveRollersRow = workedFormula({
  id: 'pull-on-live-rollers',
  expression: 'P = f * (ml + mr + mb) * l * g',
  result: { symbol: 'P', ...sym.pull },
  symbols: {
    f: { kind: 'ratio', meaning: 'lumpedFriction' },
    ml: massPerLength('loadMass'),
    mr: massPerLength('rollerMass'),
    mb: massPerLength('beltMass'),
    l: { kind: 'length', meaning: 'bedLength' },
  },
  compute: ({ f, ml, mr, mb, l }) => f * (ml + mr + mb) * l * standardGravity_m_s2,
  range: { f: [0.001, 1], ml: [0, 5000], mr: [0, 5000], mb: [0, 100], l: [0.01, 5000] },
  source: 'common practice, no source: one lumped friction of 0.05 (new, light) to 0.10 (design)',
  examples: [
    {
      inputs: { f: 0.05, ml: 200 / 6, mr: 12, mb: 1.08206 / 6, l: 6 },
      expected: 133.901,
      tolerance: 1e-3,
      evidence: 'derived',
      source: '0.05 * (200 + 72 + 1.08206) kg * 9.80665 m/s2, worked by hand',
    },
  ],
});

/** Grip of the drive and the pull it must give. */
export const slipFormulas: readonly WorkedFormula[] = [
  capstanRatioRow,
  centrifugalTensionRow,
  slackMinimumRow,
  slipFromSlackRow,
  slipFromMeanTensionRow,
  slipLimitedPullRow,
  slackOfFixedCentresRow,
  slipReserveRow,
  frictionNeededRow,
  meanTensionForNoSlipRow,
  pullOnLiveRollersRow,
];
