import { workInRange } from '../worked/compute-in-range.ts';
import type { Worked } from '../worked/worked-formula.ts';
import { oldBeltLengthRow } from './length-formulas.ts';

/** Within what share the length of a used belt tells that of a new one, in about 95 of 100 cases: common practice, no source. */
export const oldBeltUncertaintyShare = 0.003;

export interface OldBeltInput {
  /** Loop measured flat, along the neutral line. */
  readonly measured_m: number;
  /** Lasting stretch from its life, as a share. */
  readonly permanentSet: number;
  /** Elastic elongation while it was measured; 0 for a slack belt. Default 0. */
  readonly elongation?: number;
}

/** One source of the endless length. */
export interface LengthEstimate {
  readonly length: Worked;
  readonly standardUncertainty_m: number;
}

/**
 * Endless length of a new belt from the measured old one, slack or under tension.
 *
 * L0 = M / ((1 + e)(1 + set)); it lies within 0.3 %, because nobody knows the set of a life, not within a tape's error;
 * the standard uncertainty is half of that.
 *
 * @param input.measured_m - measured loop [m], 0.05 to 20000
 * @param input.permanentSet - lasting stretch [1], 0 to 0.1
 * @param input.elongation - elastic elongation while measured [1], 0 to 0.5, default 0
 * @returns endless length and its standard uncertainty [m]
 * @throws not-finite, out-of-range
 * @validity a belt that was not cut shorter since
 * @source common practice, no source
 * @verified T8 old belt
 */
export function oldBeltEndless(input: OldBeltInput): LengthEstimate {
  const length = workInRange(
    oldBeltLengthRow,
    { M: input.measured_m, e: input.elongation ?? 0, s: input.permanentSet },
    { M: 'measured_m', e: 'elongation', s: 'permanentSet' },
  );
  return { length, standardUncertainty_m: (oldBeltUncertaintyShare / 2) * length.value };
}
