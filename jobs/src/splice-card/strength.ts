import { spliceStrength, spliceStrengthRow } from '@loopwright/engine/splice';
import { work } from '@loopwright/engine/worked';
import type { Belt, Die } from '@loopwright/plant';
import { computed, type Quantity } from '../quantity.ts';

/** Uncalibrated priors, from memory: length a cut yarn needs to hand its load over, shear strength of a good weld. */
const developmentLength_m = 0.01125;
const weldShear_MPa = 8;
const usualTip_m = 0.0005;
/** A finger thinner at the belt's edge than it should be costs about a tenth: from memory, uncalibrated. */
const thinEdgeFactor = 0.9;

/** Strength to expect of the splice, where the belt's own is known; uncalibrated until somebody pulls samples. */
export function expectedStrength(belt: Belt, die: Die | undefined, thinEdge: boolean): Quantity | undefined {
  if (belt.strength_N_mm === undefined) return undefined;
  const estimate = spliceStrength({
    fingerLength_m: belt.fingerLength_m,
    pitch_m: belt.fingerPitch_m,
    thickness_m: belt.thickness_m,
    tipWidth_m: die?.tipWidth_m ?? usualTip_m,
    developmentLength_m,
    beltStrength_N_mm: belt.strength_N_mm,
    weldShear_MPa,
  });
  const k = thinEdge ? thinEdgeFactor : 1;
  const worked = work(spliceStrengthRow, { k, c: 1, A: estimate.reinforcement_N_mm, B: estimate.weld_N_mm });
  return { ...computed('forcePerWidth', worked), uncalibrated: true };
}
