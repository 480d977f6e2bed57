import type { WatchLimits } from './watch-codes.ts';

/**
 * Factor for a band that holds a whole new good curve in 93 of 100 cases: 95 % quantile of the largest |z| along it,
 * from simulated cycles; a pointwise 1.96 holds 74 of 100.
 */
export const simultaneousFactor = 3.01;
/** Least standard deviation of a shown value: displays show whole degrees [K]. */
const display_K = 0.5;
/** Standard deviation of a sensor's offset, each side its own [K]; an example until a thermocouple has shown it. */
const offset_K = 1.5;

/** What is judged by, unless somebody says otherwise. */
export const watchLimits: WatchLimits = {
  ramp_K: simultaneousFactor * Math.hypot(display_K, offset_K),
  sides_K: simultaneousFactor * Math.SQRT2 * Math.hypot(display_K, offset_K),
  plateau_K: simultaneousFactor * display_K,
  late_s: 60,
  hold_s: 15,
  hold_share: 0.1,
  never: 1.5,
  cap_degC: 215,
  openCore_degC: 60,
  unsteady_K: 2,
  fastest_K_s: 5,
  tap_s: 5,
  gap_s: 120,
};
