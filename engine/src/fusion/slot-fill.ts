import { slotFillRow, slotFillTimeRow } from './fusion-formulas.ts';

/**
 * Depth to which melt runs into a gap between two flanks, driven by the pressure on the belt: flow between parallel plates.
 * l = g*sqrt(J/6), J = integral of p/eta dt.
 *
 * @param gap_m - width of the gap g [m], >= 0
 * @param flow - flow integral J [1], >= 0
 * @returns depth of fill [m]
 * @validity Newtonian, depth well above the gap's width, gap open at its far end
 * @source derived: lubrication flow
 * @verified FUSE-11 fill of 0.1 mm with 5000 Pa*s
 */
export function slotFill_m(gap_m: number, flow: number): number {
  return slotFillRow.compute({ g: gap_m, J: flow });
}

/**
 * Time to fill a gap to a depth under constant pressure and viscosity. t = 6*eta*(l/g)^2/p.
 *
 * @param input - gap_m, depth_m [m], viscosity_Pa_s [Pa*s], pressure_Pa [Pa], all > 0
 * @returns time [s]
 * @validity as slotFill_m
 * @source derived: slotFill_m solved for the time
 * @verified FUSE-11 time to fill 1.5 mm
 */
export function slotFillTime_s(input: {
  readonly gap_m: number;
  readonly depth_m: number;
  readonly viscosity_Pa_s: number;
  readonly pressure_Pa: number;
}): number {
  const { viscosity_Pa_s: eta, depth_m: l, gap_m: g, pressure_Pa: p } = input;
  return slotFillTimeRow.compute({ eta, l, g, p });
}

/** A melt whose shear stress is m*(shear rate)^n. */
export interface PowerLaw {
  /** Consistency m [Pa*s^n]. */
  readonly consistency: number;
  /** Exponent n; 1 is Newtonian. */
  readonly exponent: number;
}

/**
 * Depth to which a shear-thinning melt runs into a gap under constant pressure.
 * l^((n+1)/n) = ((n+1)/n)*(n*g/(2*(2n+1)))*(g*p/(2m))^(1/n)*t.
 *
 * @param melt - consistency m [Pa*s^n], exponent n [1], both > 0
 * @param input - gap_m [m], pressure_Pa [Pa], time_s [s], all > 0
 * @returns depth of fill [m]
 * @validity constant temperature; depth well above the gap's width
 * @source derived: lubrication flow of a power-law melt
 * @verified FUSE-11 fill with a power law
 */
export function slotFillPowerLaw_m(
  melt: PowerLaw,
  input: { readonly gap_m: number; readonly pressure_Pa: number; readonly time_s: number },
): number {
  const { consistency: m, exponent: n } = melt;
  const { gap_m: g, pressure_Pa: p, time_s: t } = input;
  const grown = ((n + 1) / n) * ((n * g) / (2 * (2 * n + 1))) * ((g * p) / (2 * m)) ** (1 / n) * t;
  return grown ** (n / (n + 1));
}
