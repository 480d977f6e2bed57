/** How much the mixing of hard segments adds: part s0 without it, rising round a temperature. A closure, no source. */
export interface HardSegments {
  readonly centre_degC: number;
  readonly width_K: number;
  /** Share of the strength reached without it. */
  readonly without: number;
}

/** Engineering priors: centre 165 to 182 degC, share without 0.3 to 0.7. */
export const hardSegmentDefaults: HardSegments = { centre_degC: 175, width_K: 4, without: 0.5 };

/**
 * Factor of the strength for how hot the flank once was: below the melting of the hard segments only soft ones entangle.
 * s0 + (1 - s0)/(1 + exp(-(T - Th)/wh)).
 *
 * @param peak_degC - hottest the flank was [degC]
 * @param hard - centre [degC], width [K], share without [1]
 * @returns factor [1]
 * @validity a threshold near 180 degC was seen on coated fabric; on belts nobody has measured it
 * @source form: engineering prior, no source; threshold: Hollande, Laurent & Lebey, Polymer 39(22) 1998, 5343-5349, abstract
 * @verified FUSE-16 hard segments at 170 degC
 */
export function hardSegmentFactor(peak_degC: number, hard: HardSegments = hardSegmentDefaults): number {
  const mixed = 1 / (1 + Math.exp((hard.centre_degC - peak_degC) / hard.width_K));
  return hard.without + (1 - hard.without) * mixed;
}

/** State of one point of a flank that its strength depends on. */
export interface FlankState {
  /** Depth of fill over the one needed. */
  readonly fillShare: number;
  readonly bond: number;
  readonly molarMassShare: number;
  readonly peak_degC: number;
}

/** Options of the strength estimate. */
export interface FusedStrengthOptions {
  /** Exponent of the molar mass. */
  readonly molarMassExponent?: number | undefined;
  /** Left out, every flank counts as if its hard segments had mixed. */
  readonly hardSegments?: HardSegments | undefined;
}

/**
 * Share of the best strength that a flank reached: fill, bond and molar mass multiplied, the first two capped at 1.
 * min(1, F)*min(1, D)*(M/M0)^a, times the factor of hard segments where asked for.
 *
 * @param state - fill share, bond, molar mass share [1], peak temperature [degC]
 * @param options - exponent a [1], 1 by default; hard segments
 * @returns share of the best strength [1], 0 to 1
 * @validity an engineering closure: the product was not derived; ranks recipes, predicts nothing until pulls were fitted
 * @source engineering prior, no source
 * @verified FUSE-17 strength share of a half-filled flank
 */
export function fusedShare(state: FlankState, options: FusedStrengthOptions = {}): number {
  const { molarMassExponent = 1, hardSegments } = options;
  const chains = state.molarMassShare ** molarMassExponent;
  const hard = hardSegments ? hardSegmentFactor(state.peak_degC, hardSegments) : 1;
  return Math.min(1, state.fillShare) * Math.min(1, state.bond) * chains * hard;
}

/**
 * Estimated strength of a splice from how far its flanks fused, never above the belt's own.
 * S = min(S_belt, S_best*share).
 *
 * @param share - share of the best strength [1], 0 to 1
 * @param best_N_mm - strength of a perfectly fused splice of this finger geometry [N/mm]
 * @param belt_N_mm - strength of the belt [N/mm]
 * @returns strength [N/mm]
 * @validity one best strength per belt and finger geometry, fitted to pulls
 * @source engineering prior, no source
 * @verified FUSE-17 strength capped by the belt
 */
export function fusedStrength_N_mm(share: number, best_N_mm: number, belt_N_mm: number): number {
  return Math.min(belt_N_mm, best_N_mm * share);
}
