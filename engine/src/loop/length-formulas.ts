import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';
import { range, sym } from './symbols.ts';

export const endlessLengthRow = workedFormula({
  id: 'endless-length',
  expression: 'L0 = L / (1 + e)',
  result: { symbol: 'L0', ...sym.endlessLength },
  symbols: { L: sym.pathLength, e: sym.setElongation },
  compute: ({ L, e }) => L / (1 + e),
  range: { L: range.loop_m, e: range.elongation },
  source: 'derived: the slack belt is stretched by e until it fills the path',
  examples: [
    {
      inputs: { L: 13.602488483, e: 0.008 },
      expected: 13.4945322,
      tolerance: 5e-8,
      evidence: 'derived',
      source: 'eight-pulley live-roller loop, take-up 30 mm down: 13602.488483 mm / 1.008, worked by hand',
    },
  ],
});

export const stripTipToTipRow = workedFormula({
  id: 'strip-tip-to-tip',
  expression: 'S = L0 + lf + c',
  result: { symbol: 'S', kind: 'length', meaning: 'stripTipToTip' },
  symbols: {
    L0: sym.endlessLength,
    lf: sym.fingerLength,
    c: { kind: 'shortLength', meaning: 'cutOffset' },
  },
  compute: ({ L0, lf, c }) => L0 + lf + c,
  range: { L0: range.loop_m, lf: range.finger_m, c: [-0.1, 0.1] },
  source: 'derived: two congruent zig-zags overlap by one finger length when meshed',
  examples: [
    {
      inputs: { L0: 64.222, lf: 0.08, c: 0 },
      expected: 64.302,
      tolerance: 5e-7,
      evidence: 'practice',
      source: 'common practice, no source: endless and cut length differ by one finger length',
    },
  ],
});

export const squareCutRow = workedFormula({
  id: 'square-cut',
  expression: 'Q = S + 2 * w',
  result: { symbol: 'Q', kind: 'length', meaning: 'squareCut' },
  symbols: {
    S: { kind: 'length', meaning: 'stripTipToTip' },
    w: { kind: 'shortLength', meaning: 'dieWaste' },
  },
  compute: ({ S, w }) => S + 2 * w,
  range: { S: range.loop_m, w: [0, 1] },
  source: 'common practice, no source: the die needs some waste beyond the tips at both ends',
  examples: [
    {
      inputs: { S: 64.302, w: 0.025 },
      expected: 64.352,
      tolerance: 5e-7,
      evidence: 'practice',
      source: 'common practice, no source: 25 mm of waste at each end',
    },
  ],
});

export const oldBeltLengthRow = workedFormula({
  id: 'old-belt-length',
  expression: 'L0 = M / ((1 + e) * (1 + s))',
  result: { symbol: 'L0', ...sym.endlessLength },
  symbols: {
    M: { kind: 'length', meaning: 'measuredOldBelt' },
    e: { kind: 'percent', meaning: 'elongationWhenMeasured' },
    s: { kind: 'percent', meaning: 'permanentSet' },
  },
  compute: ({ M, e, s }) => M / ((1 + e) * (1 + s)),
  range: { M: range.loop_m, e: range.elongation, s: [0, 0.1] },
  source: 'derived: elastic stretch and set multiply',
  examples: [
    {
      inputs: { M: 20.4, e: 0, s: 0.02 },
      expected: 20,
      tolerance: 1e-12,
      evidence: 'derived',
      source: '20 m with 2 % set measures 20.4 m',
    },
  ],
});

export const elongationOfLoopRow = workedFormula({
  id: 'elongation-of-loop',
  expression: 'e = L / L0 - 1',
  result: { symbol: 'e', ...sym.elongation },
  symbols: { L: sym.pathLength, L0: sym.endlessLength },
  compute: ({ L, L0 }) => L / L0 - 1,
  range: { L: range.loop_m, L0: range.loop_m },
  source: 'derived: definition of elongation',
  examples: [
    {
      inputs: { L: 13.542517722, L0: 13.494532225 },
      expected: 0.0035559,
      tolerance: 5e-8,
      evidence: 'derived',
      source: 'eight-pulley live-roller loop, take-up at 0: 13542.517722 mm over 13494.532225 mm',
    },
  ],
});

export const elongationWithToleranceRow = workedFormula({
  id: 'elongation-with-tolerance',
  expression: 'e = (1 + e0) / (1 + t) - 1',
  result: { symbol: 'e', ...sym.elongation },
  symbols: { e0: sym.setElongation, t: { kind: 'percent', meaning: 'lengthDeviation' } },
  compute: ({ e0, t }) => (1 + e0) / (1 + t) - 1,
  range: { e0: range.elongation, t: [-0.1, 0.1] },
  source: 'derived: the path stays, the endless length is L0 (1 + t)',
  examples: [
    {
      inputs: { e0: 0.008, t: 0.003 },
      expected: 0.004985,
      tolerance: 5e-8,
      evidence: 'derived',
      source: '1.008 / 1.003 - 1, worked by hand',
    },
    {
      inputs: { e0: 0.008, t: -0.003 },
      expected: 0.0110331,
      tolerance: 5e-8,
      evidence: 'derived',
      source: '1.008 / 0.997 - 1, worked by hand',
    },
  ],
});

export const marksStretchedRow = workedFormula({
  id: 'marks-stretched',
  expression: 's = m * (1 + e)',
  result: { symbol: 's', kind: 'length', meaning: 'marksStretched' },
  symbols: { m: { kind: 'length', meaning: 'marksSlack' }, e: sym.setElongation },
  compute: ({ m, e }) => m * (1 + e),
  range: { m: [0.05, 100], e: range.elongation },
  source: 'derived: definition of elongation',
  examples: [
    {
      inputs: { m: 1, e: 0.008 },
      expected: 1.008,
      tolerance: 1e-12,
      evidence: 'practice',
      source: 'common practice, no source: 1000.0 mm becomes 1008.0 mm at 0.8 %',
    },
    {
      inputs: { m: 2, e: 0.009 },
      expected: 2.018,
      tolerance: 1e-12,
      evidence: 'practice',
      source: 'common practice, no source: 2000 mm becomes 2018 mm at 0.9 %',
    },
  ],
});

/** Lengths: what is cut, punched and marked. */
export const lengthFormulas: readonly WorkedFormula[] = [
  endlessLengthRow,
  stripTipToTipRow,
  squareCutRow,
  oldBeltLengthRow,
  elongationOfLoopRow,
  elongationWithToleranceRow,
  marksStretchedRow,
];
