import { type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';

const shigley = 'Budynas & Nisbett, Mechanical Engineering Design, section 17-2, eqs 17-1 and 17-2';
const shigleyExample = 'Mechanical Engineering Design, example 17-1: d 6 in, D 18 in, C 96 in; length computed apart';
const inch = 0.0254;
const half = 0.5e-6;

/** Distance of the belt's neutral line from the axis where the running face touches. */
export const neutralRadiusRunningRow = workedFormula({
  id: 'neutral-radius-running',
  expression: 'r = R + y',
  result: { symbol: 'r', kind: 'shortLength', meaning: 'neutralRadius' },
  symbols: {
    R: { kind: 'shortLength', meaning: 'pulleyRadius' },
    y: { kind: 'shortLength', meaning: 'neutralLineFromRunningFace' },
  },
  compute: ({ R, y }) => R + y,
  range: { R: [0, 1e4], y: [0, 10] },
  source: 'derived: section of a belt on a pulley',
  examples: [
    { inputs: { R: 0.05, y: 0.0006 }, expected: 0.0506, tolerance: 1e-12, evidence: 'derived', source: 'addition' },
  ],
});

/** Distance of the neutral line from the axis where the back touches. */
export const neutralRadiusBackRow = workedFormula({
  id: 'neutral-radius-back',
  expression: 'r = R + t - y',
  result: { symbol: 'r', kind: 'shortLength', meaning: 'neutralRadius' },
  symbols: {
    R: { kind: 'shortLength', meaning: 'pulleyRadius' },
    t: { kind: 'shortLength', meaning: 'beltThickness' },
    y: { kind: 'shortLength', meaning: 'neutralLineFromRunningFace' },
  },
  compute: ({ R, t, y }) => R + t - y,
  range: { R: [0, 1e4], t: [0, 10], y: [0, 10] },
  source: 'derived: section of a belt on a pulley',
  examples: [
    {
      inputs: { R: 0.04, t: 0.002, y: 0.0006 },
      expected: 0.0414,
      tolerance: 1e-12,
      evidence: 'derived',
      source: 'addition and subtraction',
    },
  ],
});

/** Free span between two pulleys that the belt turns round in the same sense. */
export const openSpanRow = workedFormula({
  id: 'open-span',
  expression: 'l = sqrt(C^2 - (r1 - r2)^2)',
  result: { symbol: 'l', kind: 'length', meaning: 'span' },
  symbols: {
    C: { kind: 'length', meaning: 'centreDistance' },
    r1: { kind: 'shortLength', meaning: 'neutralRadiusFirst' },
    r2: { kind: 'shortLength', meaning: 'neutralRadiusSecond' },
  },
  compute: ({ C, r1, r2 }) => Math.sqrt(C * C - (r1 - r2) ** 2),
  range: { C: [0, 1e6], r1: [0, 1e4], r2: [0, 1e4] },
  source: 'derived: outer tangent of two circles',
  examples: [
    {
      inputs: { C: 0.5, r1: 0.1, r2: 0.05 },
      expected: 0.497493719,
      tolerance: 1e-9,
      evidence: 'independent',
      source: 'separate program for tangents of circles, layout B, printed to 1e-6 mm',
    },
    { inputs: { C: 0.5, r1: 0.4, r2: 0.1 }, expected: 0.4, tolerance: 1e-12, evidence: 'derived', source: '3-4-5' },
  ],
});

/** Free span between two pulleys that the belt turns round in opposite senses. */
export const innerSpanRow = workedFormula({
  id: 'inner-span',
  expression: 'l = sqrt(C^2 - (r1 + r2)^2)',
  result: { symbol: 'l', kind: 'length', meaning: 'span' },
  symbols: {
    C: { kind: 'length', meaning: 'centreDistance' },
    r1: { kind: 'shortLength', meaning: 'neutralRadiusFirst' },
    r2: { kind: 'shortLength', meaning: 'neutralRadiusSecond' },
  },
  compute: ({ C, r1, r2 }) => Math.sqrt(C * C - (r1 + r2) ** 2),
  range: { C: [0, 1e6], r1: [0, 1e4], r2: [0, 1e4] },
  source: 'derived: inner tangent of two circles',
  examples: [
    {
      inputs: { C: 0.5, r1: 0.1, r2: 0.05 },
      expected: 0.476969601,
      tolerance: 1e-9,
      evidence: 'independent',
      source: 'separate program for tangents of circles, layout C, printed to 1e-6 mm',
    },
    { inputs: { C: 0.5, r1: 0.2, r2: 0.1 }, expected: 0.4, tolerance: 1e-12, evidence: 'derived', source: '3-4-5' },
  ],
});

/** Belt lying on a pulley. */
export const arcRow = workedFormula({
  id: 'belt-arc',
  expression: 'a = r * w',
  result: { symbol: 'a', kind: 'length', meaning: 'beltOnPulley' },
  symbols: {
    r: { kind: 'shortLength', meaning: 'neutralRadius' },
    w: { kind: 'angle', meaning: 'wrap' },
  },
  compute: ({ r, w }) => r * w,
  range: { r: [0, 1e4], w: [0, 2 * Math.PI] },
  source: 'derived: arc of a circle',
  examples: [
    {
      inputs: { r: 0.05, w: Math.PI },
      expected: 0.15707963267948966,
      tolerance: 1e-12,
      evidence: 'derived',
      source: 'half a circle',
    },
  ],
});

/** Wrap of the smaller of two pulleys under an open belt. */
export const openWrapSmallRow = workedFormula({
  id: 'open-wrap-small',
  expression: 'w = pi - 2*asin((D - d) / (2*C))',
  result: { symbol: 'w', kind: 'angle', meaning: 'wrapSmallPulley' },
  symbols: {
    D: { kind: 'length', meaning: 'diameterLarge' },
    d: { kind: 'length', meaning: 'diameterSmall' },
    C: { kind: 'length', meaning: 'centreDistance' },
  },
  compute: ({ D, d, C }) => Math.PI - 2 * Math.asin((D - d) / (2 * C)),
  range: { D: [0, 1e4], d: [0, 1e4], C: [0, 1e6] },
  source: shigley,
  examples: [
    {
      inputs: { D: 18 * inch, d: 6 * inch, C: 96 * inch },
      expected: 3.016511,
      tolerance: half,
      evidence: 'independent',
      source: shigleyExample,
    },
  ],
});

/** Length of an open belt round two pulleys; the book's diameters, so the belt is thin. */
export const openLengthRow = workedFormula({
  id: 'open-length',
  expression: 'L = sqrt(4*C^2 - (D - d)^2) + pi*(D + d)/2 + (D - d)*asin((D - d) / (2*C))',
  result: { symbol: 'L', kind: 'length', meaning: 'pathLength' },
  symbols: {
    D: { kind: 'length', meaning: 'diameterLarge' },
    d: { kind: 'length', meaning: 'diameterSmall' },
    C: { kind: 'length', meaning: 'centreDistance' },
  },
  compute: ({ D, d, C }) =>
    Math.sqrt(4 * C * C - (D - d) ** 2) + (Math.PI * (D + d)) / 2 + (D - d) * Math.asin((D - d) / (2 * C)),
  range: { D: [0, 1e4], d: [0, 1e4], C: [0, 1e6] },
  source: shigley,
  examples: [
    {
      inputs: { D: 18 * inch, d: 6 * inch, C: 96 * inch },
      expected: 230.074234 * inch,
      tolerance: half * inch,
      evidence: 'independent',
      source: shigleyExample,
    },
    {
      inputs: { D: 0.1, d: 0.1, C: 1 },
      expected: 2 + 0.1 * Math.PI,
      tolerance: 1e-12,
      evidence: 'derived',
      source: 'two equal pulleys: 2*C + pi*D',
    },
  ],
});

/** Length of a crossed belt round two pulleys. */
export const crossedLengthRow = workedFormula({
  id: 'crossed-length',
  expression: 'L = sqrt(4*C^2 - (D + d)^2) + (D + d)/2 * (pi + 2*asin((D + d) / (2*C)))',
  result: { symbol: 'L', kind: 'length', meaning: 'pathLength' },
  symbols: {
    D: { kind: 'length', meaning: 'diameterLarge' },
    d: { kind: 'length', meaning: 'diameterSmall' },
    C: { kind: 'length', meaning: 'centreDistance' },
  },
  compute: ({ D, d, C }) =>
    Math.sqrt(4 * C * C - (D + d) ** 2) + ((D + d) / 2) * (Math.PI + 2 * Math.asin((D + d) / (2 * C))),
  range: { D: [0, 1e4], d: [0, 1e4], C: [0, 1e6] },
  source: shigley,
  examples: [
    {
      inputs: { D: 0.2, d: 0.1, C: 0.5 },
      expected: 1.516585896,
      tolerance: 1e-9,
      evidence: 'independent',
      source: 'separate program for tangents of circles, layout C, printed to 1e-6 mm',
    },
  ],
});

/** How much belt a take-up takes in per travel along the bisector of its wrap. */
export const takeUpGainRow = workedFormula({
  id: 'take-up-gain',
  expression: 'g = 2*sin(w/2)',
  result: { symbol: 'g', kind: 'ratio', meaning: 'beltPerTakeUpTravel' },
  symbols: { w: { kind: 'angle', meaning: 'wrap' } },
  compute: ({ w }) => 2 * Math.sin(w / 2),
  range: { w: [0, 2 * Math.PI] },
  source: 'derived: derivative of the path length by the centre of a pulley',
  examples: [
    {
      inputs: { w: Math.PI },
      expected: 2,
      tolerance: 1e-12,
      evidence: 'derived',
      source: 'both strands grow alike at half a turn',
    },
    {
      inputs: { w: (175.268767 / 180) * Math.PI },
      expected: 1.99829556,
      tolerance: 1e-9,
      evidence: 'independent',
      source: 'separate program, layout G, take-up',
    },
  ],
});

export const pathFormulas: readonly WorkedFormula[] = [
  neutralRadiusRunningRow,
  neutralRadiusBackRow,
  openSpanRow,
  innerSpanRow,
  arcRow,
  openWrapSmallRow,
  openLengthRow,
  crossedLengthRow,
  takeUpGainRow,
];
