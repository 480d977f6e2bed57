import type { FormulaSymbol } from '../worked/worked-formula.ts';

/** Symbols that many rows share, so that one thing has one word everywhere. */
export const sym = {
  pathLength: { kind: 'length', meaning: 'pathLength' },
  endlessLength: { kind: 'length', meaning: 'endlessLength' },
  setElongation: { kind: 'percent', meaning: 'setElongation' },
  elongation: { kind: 'percent', meaning: 'elongation' },
  modulus: { kind: 'modulus', meaning: 'relaxedModulus' },
  beltWidth: { kind: 'shortLength', meaning: 'beltWidth' },
  beltThickness: { kind: 'shortLength', meaning: 'beltThickness' },
  fingerLength: { kind: 'shortLength', meaning: 'fingerLength' },
  fitSlack: { kind: 'shortLength', meaning: 'fitSlack' },
  trim: { kind: 'shortLength', meaning: 'trim' },
  wrap: { kind: 'angle', meaning: 'wrap' },
  takeUpWrap: { kind: 'angle', meaning: 'takeUpWrap' },
  takeUpTravel: { kind: 'shortLength', meaning: 'takeUpTravel' },
  tension: { kind: 'force', meaning: 'strandTension' },
  meanTension: { kind: 'force', meaning: 'meanTension' },
  tightTension: { kind: 'force', meaning: 'tightTension' },
  slackTension: { kind: 'force', meaning: 'slackTension' },
  centrifugalTension: { kind: 'force', meaning: 'centrifugalTension' },
  pull: { kind: 'force', meaning: 'pull' },
  friction: { kind: 'ratio', meaning: 'friction' },
  capstanRatio: { kind: 'ratio', meaning: 'capstanRatio' },
  beltMass: { kind: 'massPerLength', meaning: 'beltMass' },
  speed: { kind: 'speed', meaning: 'beltSpeed' },
  spanLength: { kind: 'length', meaning: 'spanLength' },
  stiffness: { kind: 'stiffness', meaning: 'tensileStiffness' },
} as const satisfies Record<string, FormulaSymbol>;

/** Ranges that many rows share, in the units of `kindUnit`. */
export const range = {
  loop_m: [0.05, 20_000],
  span_m: [0.001, 5_000],
  travel_m: [0, 100],
  elongation: [0, 0.5],
  finger_m: [0, 1],
  width_m: [0.001, 5],
  thickness_m: [0.0001, 0.1],
  modulus_N_mm_pct: [0.01, 1000],
  force_N: [0, 1e7],
  wrap_rad: [0.001, 6.283],
  friction: [0.001, 3],
  mass_kg_m: [0, 1000],
  speed_m_s: [0, 100],
} as const satisfies Record<string, readonly [number, number]>;
