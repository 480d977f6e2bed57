import { type FormulaSymbol, type WorkedFormula, workedFormula } from '../../worked/worked-formula.ts';

const gauge: FormulaSymbol = { kind: 'pressure', meaning: 'gaugePressure' };
const short = (meaning: string): FormulaSymbol => ({ kind: 'shortLength', meaning });
const modulus = (meaning: string): FormulaSymbol => ({ kind: 'stress', meaning });
const separate = 'closed form evaluated by a separate program';
const width_m = [0, 5] as const;
const height_m = [1e-4, 0.1] as const;
const modulus_MPa = [0.01, 1e5] as const;
const MPa = 1e6;

/** How far a stiff plate goes down while belt and strips both carry it. */
export const plateTravelRow = workedFormula({
  id: 'plate-travel',
  expression: 'd = (p * wb + b * E * g / h + ws * Es * gs / hs) / (b * E / h + ws * Es / hs)',
  result: { symbol: 'd', ...short('plateTravel') },
  symbols: {
    p: gauge,
    wb: short('bagWidth'),
    b: short('beltWidth'),
    E: modulus('beltModulus'),
    g: short('beltBelowHighest'),
    h: short('beltThickness'),
    ws: short('stripsWidth'),
    Es: modulus('stripsModulus'),
    gs: short('stripsBelowHighest'),
    hs: short('stripsThickness'),
  },
  compute: ({ p, wb, b, E, g, h, ws, Es, gs, hs }) => {
    const [belt, strips] = [(b * E * MPa) / h, (ws * Es * MPa) / hs];
    return (p * wb + belt * g + strips * gs) / (belt + strips);
  },
  range: {
    p: [0, 5e6],
    wb: width_m,
    b: [0.001, 5],
    E: modulus_MPa,
    g: [0, 0.1],
    h: height_m,
    ws: width_m,
    Es: modulus_MPa,
    gs: [0, 0.1],
    hs: height_m,
  },
  source: 'derived: one travel for both, forces add up',
  examples: [
    {
      inputs: { p: 2e5, wb: 0.11, b: 0.05, E: 20, g: 0, h: 2.4e-3, ws: 0.06, Es: 5, gs: 0, hs: 2.4e-3 },
      expected: 4.0615e-5,
      tolerance: 1e-9,
      evidence: 'derived',
      source: '22 kN/m over 416.67 and 125 MN/m2 together',
    },
  ],
});

/** Pressure in what a stiff plate squeezes by its travel less the gap above it. */
export const squeezePressureRow = workedFormula({
  id: 'squeeze-pressure',
  expression: 'p = E * max(0, d - g) / h',
  result: { symbol: 'p', kind: 'pressure', meaning: 'beltPressure' },
  symbols: {
    E: modulus('beltModulus'),
    d: short('plateTravel'),
    g: short('beltBelowHighest'),
    h: short('beltThickness'),
  },
  compute: ({ E, d, g, h }) => (E * MPa * Math.max(0, d - g)) / h,
  range: { E: modulus_MPa, d: [0, 0.1], g: [0, 0.1], h: height_m },
  source: 'derived: taken linear',
  examples: [
    {
      inputs: { E: 20, d: 4.0615385e-5, g: 0, h: 2.4e-3 },
      expected: 3.385e5,
      tolerance: 0.51e2,
      evidence: 'independent',
      source: separate,
    },
    {
      inputs: { E: 20, d: 5e-5, g: 1e-4, h: 2.4e-3 },
      expected: 0,
      tolerance: 0,
      evidence: 'derived',
      source: 'plate above the belt',
    },
  ],
});

/** Air shut in a bag that warms up. */
export const warmedBagRow = workedFormula({
  id: 'warmed-bag',
  expression: 'p = (p0 + 101325) * (1 + dT / T0) - 101325',
  result: { symbol: 'p', ...gauge },
  symbols: {
    p0: { kind: 'pressure', meaning: 'pressureWhenFilled' },
    dT: { kind: 'temperatureDifference', meaning: 'bagWarmer' },
    T0: { kind: 'temperatureDifference', meaning: 'absoluteWhenFilled' },
  },
  compute: ({ p0, dT, T0 }) => (p0 + 101325) * (1 + dT / T0) - 101325,
  range: { p0: [0, 5e6], dT: [-100, 300], T0: [213.15, 400] },
  source: 'derived: ideal gas in a bag that keeps its volume, at sea level',
  examples: [
    {
      inputs: { p0: 2e5, dT: 55, T0: 298.15 },
      expected: 2.556e5,
      tolerance: 0.51e2,
      evidence: 'independent',
      source: separate,
    },
  ],
});

/** What a leak leaves in a bag without a pump. */
export const leakedBagRow = workedFormula({
  id: 'leaked-bag',
  expression: 'p = p0 * exp(-t / tau)',
  result: { symbol: 'p', ...gauge },
  symbols: {
    p0: { kind: 'pressure', meaning: 'pressureWhenFilled' },
    t: { kind: 'time', meaning: 'timeSinceFilled' },
    tau: { kind: 'time', meaning: 'leakTime' },
  },
  compute: ({ p0, t, tau }) => p0 * Math.exp(-t / tau),
  range: { p0: [0, 5e6], t: [0, 1e6], tau: [1, 1e9] },
  source: 'derived: outflow in proportion to the gauge pressure',
  examples: [
    {
      inputs: { p0: 2e5, t: 1040, tau: 1169.7 },
      expected: 0.822e5,
      tolerance: 0.51e2,
      evidence: 'independent',
      source: separate,
    },
  ],
});

/** Time constant of a leak from a reading of the gauge. */
export const leakTimeRow = workedFormula({
  id: 'leak-time',
  expression: 'tau = t / ln(p0 / p)',
  result: { symbol: 'tau', kind: 'time', meaning: 'leakTime' },
  symbols: {
    t: { kind: 'time', meaning: 'timeSinceFilled' },
    p0: { kind: 'pressure', meaning: 'pressureWhenFilled' },
    p: gauge,
  },
  compute: ({ t, p0, p }) => t / Math.log(p0 / p),
  range: { t: [0.1, 1e6], p0: [1, 5e6], p: [1, 5e6] },
  source: 'derived: leaked-bag solved for the time constant',
  examples: [
    {
      inputs: { t: 60, p0: 2e5, p: 1.9e5 },
      expected: 1169.7,
      tolerance: 0.051,
      evidence: 'independent',
      source: separate,
    },
  ],
});

export const sharingFormulas: readonly WorkedFormula[] = [
  plateTravelRow,
  squeezePressureRow,
  warmedBagRow,
  leakedBagRow,
  leakTimeRow,
];
