import { computeInRange } from '../../worked/compute-in-range.ts';
import { leakedBagRow, leakTimeRow, warmedBagRow } from './sharing-formulas.ts';

/**
 * Gauge pressure of a bag that was shut and then warmed: air follows absolute temperature.
 * p = (p0 + p_atm)*T/T0 - p_atm.
 *
 * @param filled - gauge pressure when shut [Pa], temperature then [degC]
 * @param now_degC - temperature of the air in the bag now [degC]
 * @returns gauge pressure [Pa]
 * @throws not-finite, out-of-range
 * @validity bag keeps its volume; sea level
 * @source derived: ideal gas
 * @verified SHARE-03 bag warmed to 80 degC
 */
export function warmedBag_Pa(
  filled: { readonly gaugePressure_Pa: number; readonly temperature_degC: number },
  now_degC: number,
): number {
  return computeInRange(
    warmedBagRow,
    {
      p0: filled.gaugePressure_Pa,
      dT: now_degC - filled.temperature_degC,
      T0: filled.temperature_degC + 273.15,
    },
    { p0: 'gaugePressure_Pa', dT: 'now_degC', T0: 'filled_degC' },
  );
}

/**
 * Time constant of a leak from two readings of the gauge. tau = t/ln(p0/p).
 *
 * @param input - gaugePressure_Pa at first and later_Pa after after_s; pressures [Pa], time [s]
 * @returns time constant [s]; infinite when nothing was lost
 * @throws not-finite, out-of-range, no-result
 * @validity no pump, constant temperature
 * @source derived: outflow in proportion to the gauge pressure
 * @verified SHARE-04 leak time
 */
export function leakTime_s(input: {
  readonly gaugePressure_Pa: number;
  readonly later_Pa: number;
  readonly after_s: number;
}): number {
  if (input.later_Pa >= input.gaugePressure_Pa) return Number.POSITIVE_INFINITY;
  return computeInRange(
    leakTimeRow,
    { t: input.after_s, p0: input.gaugePressure_Pa, p: input.later_Pa },
    { t: 'after_s', p0: 'gaugePressure_Pa', p: 'later_Pa' },
  );
}

/**
 * Gauge pressure that a leak leaves. p = p0*exp(-t/tau).
 *
 * @param gaugePressure_Pa - at the start [Pa], 0 to 5e6
 * @param after_s - time since then [s], >= 0
 * @param leakTime_s - time constant [s]; infinite for none
 * @returns gauge pressure [Pa]
 * @throws not-finite, out-of-range
 * @validity no pump, constant temperature
 * @source derived: outflow in proportion to the gauge pressure
 * @verified SHARE-04 bag after a cycle
 */
export function leakedBag_Pa(gaugePressure_Pa: number, after_s: number, leakTime_s: number): number {
  const tau = Math.min(leakTime_s, 1e9);
  return computeInRange(
    leakedBagRow,
    { p0: gaugePressure_Pa, t: after_s, tau },
    { p0: 'gaugePressure_Pa', t: 'after_s', tau: 'leakTime_s' },
  );
}

/**
 * Mean over a time of the pressure that a leak leaves, against the pressure at the start.
 * (tau/t)*(1 - exp(-t/tau)).
 *
 * @param after_s - time [s], >= 0
 * @param leakTime_s - time constant [s], > 0
 * @returns share [1], 0 to 1
 * @source derived: integral of an exponential
 * @verified SHARE-04 mean over a cycle
 */
export function leakMean(after_s: number, leakTime_s: number): number {
  return after_s === 0 || leakTime_s === Number.POSITIVE_INFINITY
    ? 1
    : -Math.expm1(-after_s / leakTime_s) / (after_s / leakTime_s);
}
