/** Temperatures and pressures of one point over time, straight lines between. */
export interface History {
  readonly times_s: readonly number[];
  readonly temperatures_degC: readonly number[];
  /** One per time. */
  readonly pressures_Pa: readonly number[];
}

/** Gauss-Legendre, four points on 0 to 1. */
const outer = Math.sqrt(3 / 7 + (2 / 7) * Math.sqrt(6 / 5));
const inner = Math.sqrt(3 / 7 - (2 / 7) * Math.sqrt(6 / 5));
const outerWeight = (18 - Math.sqrt(30)) / 72;
const innerWeight = (18 + Math.sqrt(30)) / 72;
const points = [(1 - outer) / 2, (1 - inner) / 2, (1 + inner) / 2, (1 + outer) / 2] as const;
const weights = [outerWeight, innerWeight, innerWeight, outerWeight] as const;
/** More pieces than this in one straight line would only follow what the line itself leaves out. */
const maxPieces = 100;

/**
 * Adds up a rate over a history whose temperature and pressure run straight between the given moments.
 * Four Gauss points on pieces over which the temperature changes by no more than a step.
 *
 * @param history - times [s] rising, temperatures [degC], pressures [Pa], all of one length
 * @param rate - what is added up, from temperature [degC] and pressure [Pa] [1/s]
 * @param step_K - largest change of temperature in one piece [K], > 0; about the width of the melt gate
 * @returns integral [1]
 * @validity smooth rates; at most 100 pieces in one line
 * @source derived: Gauss quadrature
 * @verified FUSE-18 integral of exp(-E/RT)
 */
export function historyIntegral(
  history: History,
  rate: (temperature_degC: number, pressure_Pa: number) => number,
  step_K: number,
): number {
  let total = 0;
  for (let i = 1; i < history.times_s.length; i += 1) {
    const [t0, t1] = [history.times_s[i - 1] ?? 0, history.times_s[i] ?? 0];
    const [from, to] = [history.temperatures_degC[i - 1] ?? 0, history.temperatures_degC[i] ?? 0];
    const [p0, p1] = [history.pressures_Pa[i - 1] ?? 0, history.pressures_Pa[i] ?? 0];
    const pieces = Math.min(maxPieces, Math.max(1, Math.ceil(Math.abs(to - from) / step_K)));
    let line = 0;
    for (let piece = 0; piece < pieces; piece += 1) {
      for (let k = 0; k < 4; k += 1) {
        const at = (piece + (points[k] ?? 0)) / pieces;
        line += (weights[k] ?? 0) * rate(from + at * (to - from), p0 + at * (p1 - p0));
      }
    }
    total += (line * (t1 - t0)) / pieces;
  }
  return total;
}
