import { type FormulaSymbol, type WorkedFormula, workedFormula } from '../worked/worked-formula.ts';

const mm = 1000;
const fingerLength: FormulaSymbol = { kind: 'shortLength', meaning: 'fingerLength' };
const fingerPitch: FormulaSymbol = { kind: 'shortLength', meaning: 'fingerPitch' };
const thickness: FormulaSymbol = { kind: 'shortLength', meaning: 'beltThickness' };
const flankAngle: FormulaSymbol = { kind: 'angle', meaning: 'flankAngle' };
const spliceTension: FormulaSymbol = { kind: 'forcePerWidth', meaning: 'tensionPerWidth' };

const separate = 'closed form evaluated by a separate program';
const model = 'derived: every yarn is cut once at a flank; load handed over as in Kelly & Tyson 1965 (from memory)';
const degree = Math.PI / 180;
// Half the last digit of a figure printed with four decimals.
const fourDecimals = 0.501e-4;

/** What the cut reinforcement can still carry. */
export const reinforcementCapacityRow = workedFormula({
  id: 'reinforcement-capacity',
  expression: 'A = (1 - t / p) * (1 - d / l) * f',
  result: { symbol: 'A', kind: 'forcePerWidth', meaning: 'reinforcementCapacity' },
  symbols: {
    t: { kind: 'shortLength', meaning: 'tipWidth' },
    p: fingerPitch,
    d: { kind: 'shortLength', meaning: 'developmentLength' },
    l: fingerLength,
    f: { kind: 'forcePerWidth', meaning: 'beltStrength' },
  },
  compute: ({ t, p, d, l, f }) => (1 - t / p) * (1 - d / l) * f,
  range: { t: [0, 0.1], p: [0.001, 0.2], d: [0, 1], l: [0.001, 1], f: [0, 1e5] },
  source: model,
  examples: [
    reinforcement(35, 11.5, 77.8882),
    reinforcement(70, 11.5, 96.3354),
    reinforcement(80, 20, 100.5469),
    reinforcement(120, 20, 106.0312),
    reinforcement(50, 10, 88.35),
  ],
});

/** What the fused flanks can carry in shear. */
export const weldCapacityRow = workedFormula({
  id: 'weld-capacity',
  expression: 'B = 2 * l * t * tau / p',
  result: { symbol: 'B', kind: 'forcePerWidth', meaning: 'weldCapacity' },
  symbols: { l: fingerLength, t: thickness, tau: { kind: 'stress', meaning: 'weldShearStrength' }, p: fingerPitch },
  compute: ({ l, t, tau, p }) => (2 * l * (t * mm) * tau) / p,
  range: { l: [0.001, 1], t: [0.0001, 0.1], tau: [0, 1000], p: [0.001, 0.2] },
  source: 'derived: shear on the flanks, projected on the belt direction',
  examples: [
    weld(35, 11.5, 8, 97.3913),
    weld(70, 11.5, 8, 194.7826),
    weld(80, 20, 8, 128),
    weld(120, 20, 3, 72),
    weld(50, 10, 3, 60),
  ],
});

/** Strength where two ways of failing compete, with the factors of edge and temperature. */
export const spliceStrengthRow = workedFormula({
  id: 'splice-strength',
  expression: 'f = k * c * (A^-4 + B^-4)^(-1/4)',
  result: { symbol: 'f', kind: 'forcePerWidth', meaning: 'spliceStrength' },
  symbols: {
    k: { kind: 'ratio', meaning: 'edgeFactor' },
    c: { kind: 'ratio', meaning: 'temperatureFactor' },
    A: { kind: 'forcePerWidth', meaning: 'reinforcementCapacity' },
    B: { kind: 'forcePerWidth', meaning: 'weldCapacity' },
  },
  // Divided by the smaller first, so that neither power overflows.
  compute: ({ k, c, A, B }) => {
    const low = Math.min(A, B);
    return k * c * low * (1 + (low / Math.max(A, B)) ** 4) ** -0.25;
  },
  range: { k: [0, 1], c: [0, 2], A: [0, 1e5], B: [0, 1e6] },
  source: 'derived: smooth minimum with exponent 4, which is common practice, no source; uncalibrated',
  examples: [
    combined(77.8882, 97.3913, 71.4888),
    combined(77.8882, 36.5217, 36.0932),
    combined(96.3354, 194.7826, 94.946),
    combined(106.0312, 72, 68.6123),
    {
      inputs: { k: 1, c: 1, A: 100, B: 100 },
      expected: 100 / 2 ** 0.25,
      tolerance: 1e-9,
      evidence: 'derived',
      source: 'two equal capacities: a fourth root of 2 below either',
    },
  ],
});

/** Shear along a flank under a tension per width. */
export const flankShearRow = workedFormula({
  id: 'flank-shear',
  expression: 'tau = N / t * sin(theta) * cos(theta)',
  result: { symbol: 'tau', kind: 'stress', meaning: 'flankShear' },
  symbols: { N: spliceTension, t: thickness, theta: flankAngle },
  compute: ({ N, t, theta }) => (N / (t * mm)) * Math.sin(theta) * Math.cos(theta),
  range: { N: [0, 1e5], t: [0.0001, 0.1], theta: [0, Math.PI / 2] },
  source: 'derived: stress on an oblique plane',
  examples: [flankStress(9.32954, 0.89002), flankStress(4.6959, 0.45396), flankStress(7.12502, 0.68476)],
});

/** Pull square to a flank under a tension per width. */
export const flankPullRow = workedFormula({
  id: 'flank-pull',
  expression: 'sigma = N / t * sin(theta)^2',
  result: { symbol: 'sigma', kind: 'stress', meaning: 'flankPull' },
  symbols: { N: spliceTension, t: thickness, theta: flankAngle },
  compute: ({ N, t, theta }) => (N / (t * mm)) * Math.sin(theta) ** 2,
  range: { N: [0, 1e5], t: [0.0001, 0.1], theta: [0, Math.PI / 2] },
  source: 'derived: stress on an oblique plane',
  examples: [
    flankStress(9.32954, 0.146217, 0.9e-6),
    flankStress(4.6959, 0.037289, 0.9e-6),
    flankStress(7.12502, 0.085596, 0.9e-6),
  ],
});

/** Mean belt stress at which a flank fails under shear and pull together. */
export const flankCapacityRow = workedFormula({
  id: 'flank-capacity',
  expression: 'S = ((sin(theta)*cos(theta) / tau)^2 + (sin(theta)^2 / sigma)^2)^(-1/2)',
  result: { symbol: 'S', kind: 'stress', meaning: 'beltStressAtFlankFailure' },
  symbols: {
    theta: flankAngle,
    tau: { kind: 'stress', meaning: 'weldShearStrength' },
    sigma: { kind: 'stress', meaning: 'weldPullStrength' },
  },
  compute: ({ theta, tau, sigma }) =>
    1 / Math.hypot((Math.sin(theta) * Math.cos(theta)) / tau, Math.sin(theta) ** 2 / sigma),
  range: { theta: [0.001, Math.PI / 2], tau: [0.001, 1000], sigma: [0.001, 1000] },
  source: 'derived: quadratic interaction of shear and pull',
  examples: [flankFailure(35, 11.5, 49.7127), flankFailure(70, 11.5, 97.9018), flankFailure(80, 20, 64.7755)],
});

export const strengthFormulas: readonly WorkedFormula[] = [
  reinforcementCapacityRow,
  weldCapacityRow,
  spliceStrengthRow,
  flankShearRow,
  flankPullRow,
  flankCapacityRow,
];

function reinforcement(l_mm: number, p_mm: number, expected: number) {
  return {
    inputs: { t: 0.0005, p: p_mm / mm, d: 0.01125, l: l_mm / mm, f: 120 },
    expected,
    tolerance: fourDecimals,
    evidence: 'independent' as const,
    source: separate,
  };
}

function weld(l_mm: number, p_mm: number, tau: number, expected: number) {
  return {
    inputs: { l: l_mm / mm, t: 0.002, tau, p: p_mm / mm },
    expected,
    tolerance: fourDecimals,
    evidence: 'independent' as const,
    source: separate,
  };
}

function combined(A: number, B: number, expected: number) {
  return {
    inputs: { k: 1, c: 1, A, B },
    expected,
    // Inputs rounded to four decimals as well.
    tolerance: 2 * fourDecimals,
    evidence: 'independent' as const,
    source: separate,
  };
}

function flankStress(theta_deg: number, expected: number, tolerance = 1e-5) {
  return {
    inputs: { N: 11.1274, t: 0.002, theta: theta_deg * degree },
    expected,
    tolerance,
    evidence: 'independent' as const,
    source: separate,
  };
}

function flankFailure(l_mm: number, p_mm: number, expected: number) {
  return {
    inputs: { theta: Math.atan(p_mm / (2 * l_mm)), tau: 8, sigma: 12 },
    expected,
    tolerance: fourDecimals,
    evidence: 'independent' as const,
    source: separate,
  };
}
