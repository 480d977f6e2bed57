import { inRange } from '../in-range.ts';
import { reinforcementCapacityRow, spliceStrengthRow, weldCapacityRow } from './strength-formulas.ts';

export interface SpliceStrengthInput {
  readonly fingerLength_m: number;
  readonly pitch_m: number;
  readonly thickness_m: number;
  readonly tipWidth_m: number;
  /** Length over which a cut yarn hands its load over. */
  readonly developmentLength_m: number;
  readonly beltStrength_N_mm: number;
  readonly weldShear_MPa: number;
  /** Below 1 for a thin edge finger. */
  readonly edgeFactor?: number | undefined;
  readonly temperatureFactor?: number | undefined;
  /** Belt split, the fingers of its two plies staggered along the belt. */
  readonly double?: boolean | undefined;
  /** How many tensile pulls the development length and weld shear strength were fitted to. */
  readonly calibrationPulls?: number | undefined;
}

export interface SpliceStrength {
  readonly reinforcement_N_mm: number;
  readonly weld_N_mm: number;
  readonly strength_N_mm: number;
  /** Splice against belt, before edge and temperature factor. */
  readonly efficiency: number;
  readonly governs: 'reinforcement' | 'weld';
  /** False until enough pulls of real splices stand behind the two fitted numbers. */
  readonly calibrated: boolean;
}

const pullsToCalibrate = 5;

/**
 * Estimated strength of a finger splice: the weaker of cut reinforcement and fused flanks, rounded off where near.
 *
 * A = (1 - w_t/p)*(1 - l_d/l)*f_belt; B = 2*l*t*tau/p; f = k_edge*k_T*(A^-4 + B^-4)^(-1/4);
 * staggered plies: efficiency (1 + efficiency of one)/2, an upper bound.
 *
 * @param input - lengths [m], belt strength [N/mm], weld shear strength [MPa], factors 0 to 1 (temperature to 2) [1]; tip width below the pitch, development length below the finger length
 * @returns capacities and strength [N/mm], efficiency [1], what governs
 * @throws not-finite, out-of-range
 * @validity short-term strength at 20 degC, dry; uncalibrated below 5 tensile pulls
 * @source derived: load transfer by shear; exponent 4 is common practice, no source
 * @verified T7.1 strength 70 x 11.5, T7.1 strength 80 x 20 cold weld, T7.1 double 70 x 11.5
 */
export function spliceStrength(input: SpliceStrengthInput): SpliceStrength {
  const { l, p, t, tip, develop, belt, shear, edge, warm } = checked(input);
  const reinforcement_N_mm = reinforcementCapacityRow.compute({ t: tip, p, d: develop, l, f: belt });
  const weld_N_mm = weldCapacityRow.compute({ l, t, tau: shear, p });
  const single = spliceStrengthRow.compute({ k: 1, c: 1, A: reinforcement_N_mm, B: weld_N_mm }) / belt;
  const efficiency = input.double ? (1 + single) / 2 : single;
  return {
    reinforcement_N_mm,
    weld_N_mm,
    strength_N_mm: edge * warm * efficiency * belt,
    efficiency,
    governs: weld_N_mm < reinforcement_N_mm ? 'weld' : 'reinforcement',
    calibrated: (input.calibrationPulls ?? 0) >= pullsToCalibrate,
  };
}

function checked(input: SpliceStrengthInput) {
  const l = inRange(input.fingerLength_m, 'fingerLength_m', { min: 0.001, max: 1, unit: 'm' });
  const p = inRange(input.pitch_m, 'pitch_m', { min: 0.001, max: 0.2, unit: 'm' });
  const above = true;
  inRange(input.calibrationPulls ?? 0, 'calibrationPulls', { min: 0, max: 1e6, unit: '1' });
  return {
    l,
    p,
    t: inRange(input.thickness_m, 'thickness_m', { min: 0.0001, max: 0.1, unit: 'm' }),
    tip: inRange(input.tipWidth_m, 'tipWidth_m', { min: 0, max: 0.9 * p, unit: 'm' }),
    develop: inRange(input.developmentLength_m, 'developmentLength_m', { min: 0, max: 0.99 * l, unit: 'm' }),
    belt: inRange(input.beltStrength_N_mm, 'beltStrength_N_mm', { min: 0, max: 1e5, unit: 'N/mm', above }),
    shear: inRange(input.weldShear_MPa, 'weldShear_MPa', { min: 0, max: 1000, unit: 'MPa', above }),
    edge: inRange(input.edgeFactor ?? 1, 'edgeFactor', { min: 0, max: 1, unit: '1', above }),
    warm: inRange(input.temperatureFactor ?? 1, 'temperatureFactor', { min: 0, max: 2, unit: '1', above }),
  };
}
