import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';
import { range, sym } from './symbols.ts';

const halfTurn = Math.PI;

export const takeUpTravelForStretchRow = workedFormula({
  id: 'take-up-travel-for-stretch',
  expression: 'x = e * L0 / (2 * sin(w / 2))',
  result: { symbol: 'x', ...sym.takeUpTravel },
  symbols: { e: sym.setElongation, L0: sym.endlessLength, w: sym.takeUpWrap },
  compute: ({ e, L0, w }) => (e * L0) / (2 * Math.sin(w / 2)),
  range: { e: range.elongation, L0: range.loop_m, w: range.wrap_rad },
  source: 'derived: dL/dx = 2 sin(w/2) along the bisector of the wrap',
  examples: [
    {
      inputs: { e: 0.0095, L0: 24.368, w: halfTurn },
      expected: 0.1157,
      tolerance: 5e-5,
      evidence: 'derived',
      source: '0.95 % of 24 368 mm is 231.5 mm of loop, half of it as travel',
    },
  ],
});

export const takeUpTravelToMeshRow = workedFormula({
  id: 'take-up-travel-to-mesh',
  expression: 'x = (e * L0 + s) / (2 * sin(w / 2))',
  result: { symbol: 'x', kind: 'shortLength', meaning: 'travelToMesh' },
  symbols: { e: sym.setElongation, L0: sym.endlessLength, s: sym.fitSlack, w: sym.takeUpWrap },
  compute: ({ e, L0, s, w }) => (e * L0 + s) / (2 * Math.sin(w / 2)),
  range: { e: range.elongation, L0: range.loop_m, s: [0, 5], w: range.wrap_rad },
  source: 'derived: the loop must close slack, with some length to spare for the hands',
  examples: [
    {
      inputs: { e: 0.009, L0: 64.222, s: 0, w: halfTurn },
      expected: 0.289,
      tolerance: 5e-4,
      evidence: 'practice',
      source: 'common practice, no source: 0.90 % of 64.2 m is 578 mm of loop, 289 mm of travel',
    },
  ],
});

export const respliceLengthRow = workedFormula({
  id: 'resplice-length',
  expression: 'L1 = L0 - 2 * lf - 2 * t',
  result: { symbol: 'L1', kind: 'length', meaning: 'endlessAfterResplice' },
  symbols: { L0: sym.endlessLength, lf: sym.fingerLength, t: sym.trim },
  compute: ({ L0, lf, t }) => L0 - 2 * lf - 2 * t,
  range: { L0: range.loop_m, lf: range.finger_m, t: [0, 10] },
  source: 'common practice, no source: both old finger zones and both trims are lost',
  examples: [
    {
      inputs: { L0: 24.368, lf: 0.08, t: 0.025 },
      expected: 24.158,
      tolerance: 1e-9,
      evidence: 'derived',
      source: '24 368 - 160 - 50 mm',
    },
  ],
});

export const respliceGivenBackRow = workedFormula({
  id: 'resplice-given-back',
  expression: 'x = (2 * lf + 2 * t) * (1 + e) / (2 * sin(w / 2))',
  result: { symbol: 'x', kind: 'shortLength', meaning: 'travelGivenBack' },
  symbols: { lf: sym.fingerLength, t: sym.trim, e: sym.setElongation, w: sym.takeUpWrap },
  compute: ({ lf, t, e, w }) => ((2 * lf + 2 * t) * (1 + e)) / (2 * Math.sin(w / 2)),
  range: { lf: range.finger_m, t: [0, 10], e: range.elongation, w: range.wrap_rad },
  source: 'derived: the shorter belt at the same elongation fills a shorter path',
  examples: [
    {
      inputs: { lf: 0.08, t: 0.025, e: 0.0095, w: halfTurn },
      expected: 0.105998,
      tolerance: 5e-7,
      evidence: 'derived',
      source: '210 mm * 1.0095 / 2, worked by hand',
    },
  ],
});

export const respliceTravelToMeshRow = workedFormula({
  id: 'resplice-travel-to-mesh',
  expression: 'x = (2 * lf + 2 * t + e * L0 + s) / (2 * sin(w / 2))',
  result: { symbol: 'x', kind: 'shortLength', meaning: 'respliceTravelToMesh' },
  symbols: {
    lf: sym.fingerLength,
    t: sym.trim,
    e: sym.setElongation,
    L0: sym.endlessLength,
    s: sym.fitSlack,
    w: sym.takeUpWrap,
  },
  compute: ({ lf, t, e, L0, s, w }) => (2 * lf + 2 * t + e * L0 + s) / (2 * Math.sin(w / 2)),
  range: {
    lf: range.finger_m,
    t: [0, 10],
    e: range.elongation,
    L0: range.loop_m,
    s: [0, 5],
    w: range.wrap_rad,
  },
  source: 'derived: from L0 (1 + e) down to L0 - 2 lf - 2 t - s',
  examples: [
    {
      inputs: { lf: 0.08, t: 0.025, e: 0.0095, L0: 24.368, s: 0.024, w: halfTurn },
      expected: 0.232748,
      tolerance: 5e-7,
      evidence: 'derived',
      source: '(210 + 231.496 + 24) mm / 2, worked by hand',
    },
  ],
});

export const elongationWhenShortRow = workedFormula({
  id: 'elongation-when-travel-is-short',
  expression: 'e = e0 + 2 * s * sin(w / 2) / L0',
  result: { symbol: 'e', ...sym.elongation },
  symbols: {
    e0: sym.setElongation,
    s: { kind: 'shortLength', meaning: 'travelMissing' },
    L0: sym.endlessLength,
    w: sym.takeUpWrap,
  },
  compute: ({ e0, s, L0, w }) => e0 + (2 * s * Math.sin(w / 2)) / L0,
  range: { e0: range.elongation, s: range.travel_m, L0: range.loop_m, w: range.wrap_rad },
  source: 'derived: travel that is missing stays in the belt as stretch',
  examples: [
    {
      inputs: { e0: 0, s: 0.022, L0: 24.6, w: halfTurn },
      expected: 0.00179,
      tolerance: 5e-6,
      evidence: 'derived',
      source: '44 mm in 24 600 mm is 0.179 %',
    },
  ],
});

export const takeUpFitReserveRow = workedFormula({
  id: 'take-up-fit-reserve',
  expression: 'x = (L * t + s) / (2 * sin(w / 2))',
  result: { symbol: 'x', kind: 'shortLength', meaning: 'fitReserve' },
  symbols: {
    L: sym.endlessLength,
    t: { kind: 'percent', meaning: 'lengthTolerance' },
    s: sym.fitSlack,
    w: sym.takeUpWrap,
  },
  compute: ({ L, t, s, w }) => (L * t + s) / (2 * Math.sin(w / 2)),
  range: { L: range.loop_m, t: [0, 0.1], s: [0, 5], w: range.wrap_rad },
  source: 'derived; structure of ISO 155:2019 (lower limit E - i)',
  examples: [
    {
      inputs: { L: 13.4945322, t: 0.003, s: 0, w: halfTurn },
      expected: 0.02024,
      tolerance: 5e-6,
      evidence: 'derived',
      source: '0.3 % of 13 494.5 mm is 40.48 mm of loop, half of it as travel',
    },
  ],
});

export const takeUpTensionReserveRow = workedFormula({
  id: 'take-up-tension-reserve',
  expression: 'x = L * (t + e + p) / (2 * sin(w / 2))',
  result: { symbol: 'x', kind: 'shortLength', meaning: 'tensionReserve' },
  symbols: {
    L: sym.endlessLength,
    t: { kind: 'percent', meaning: 'lengthTolerance' },
    e: sym.setElongation,
    p: { kind: 'percent', meaning: 'permanentSet' },
    w: sym.takeUpWrap,
  },
  compute: ({ L, t, e, p, w }) => (L * (t + e + p)) / (2 * Math.sin(w / 2)),
  range: { L: range.loop_m, t: [0, 0.1], e: range.elongation, p: [0, 0.1], w: range.wrap_rad },
  source: 'derived; structure of ISO 155:2019 (upper limit E + s)',
  examples: [
    {
      inputs: { L: 13.4945322, t: 0, e: 0, p: 0.01, w: halfTurn },
      expected: 0.0675,
      tolerance: 5e-5,
      evidence: 'derived',
      source: '1.0 % of 13 494.5 mm is 134.95 mm of loop, 67.5 mm of travel',
    },
  ],
});

/** What the take-up must give and keep. */
export const takeUpFormulas: readonly WorkedFormula[] = [
  takeUpTravelForStretchRow,
  takeUpTravelToMeshRow,
  respliceLengthRow,
  respliceGivenBackRow,
  respliceTravelToMeshRow,
  elongationWhenShortRow,
  takeUpFitReserveRow,
  takeUpTensionReserveRow,
];
