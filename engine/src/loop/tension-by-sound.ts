import { inRange } from '../in-range.ts';
import type { Warning } from '../refusal.ts';
import { computeInRange } from '../worked/compute-in-range.ts';
import { clampedTension } from './stiff-string.ts';
import { tensionBySoundHingedRow, tensionBySoundRow } from './tension-check-formulas.ts';

export interface TensionBySoundInput {
  readonly frequency_Hz: number;
  readonly span_m: number;
  readonly beltMass_kg_m: number;
  /** Default 0: an ideal string. */
  readonly bendingStiffness_Nm2?: number;
  /** Default 0: machine off. */
  readonly speed_m_s?: number;
}

export interface TensionBySound {
  /** Ideal string at rest. */
  readonly string_N: number;
  /** Stiff string on hinges: what to go by. Null when bending alone sounds higher than what was heard. */
  readonly hinged_N: number | null;
  /** Stiff string clamped at both ends: the lower end of the error band. Null as above. */
  readonly clamped_N: number | null;
  /** Ideal string that travels at the belt's speed. */
  readonly moving_N: number;
  readonly warnings: readonly Warning[];
  readonly used: Readonly<Record<string, number>>;
}

/** Shorter spans are ruled by bending and not by tension: at 0.58 m 2.5 % too high, at 0.25 m 6 %, at 0.10 m 17 %. */
export const shortestSoundSpan_m = 0.3;

/**
 * Tension of a span from the frequency of its first mode.
 *
 * String T = 4 m l^2 f^2; hinged T = 4 m l^2 f^2 - pi^2 EI/l^2; clamped from the exact eigenvalue; moving string
 * f = (c^2 - v^2)/(2 l c), T = m c^2. A belt on pulleys lies between hinged and clamped.
 *
 * @param input.frequency_Hz - first mode [Hz], 0.01 to 10000
 * @param input.span_m - free span [m], 0.001 to 5000
 * @param input.beltMass_kg_m - mass of the belt [kg/m], 1e-4 to 1000
 * @param input.bendingStiffness_Nm2 - EI [N m2], 0 to 100, default 0
 * @param input.speed_m_s - belt speed [m/s], 0 to 100, default 0
 * @returns four tensions [N]; warning `span-too-short` under 0.3 m
 * @throws not-finite, out-of-range
 * @validity small amplitude; span at least 0.3 m
 * @source Rayleigh, Theory of Sound (from memory); clamped: derived
 * @verified T6.1 string, T6.1 hinged, T6.1 clamped, T6.1 moving
 */
export function tensionBySound(input: TensionBySoundInput): TensionBySound {
  const { frequency_Hz: f, span_m: l, beltMass_kg_m: m, bendingStiffness_Nm2: B = 0, speed_m_s = 0 } = input;
  const paths = { f: 'frequency_Hz', l: 'span_m', m: 'beltMass_kg_m', B: 'bendingStiffness_Nm2' };
  inRange(speed_m_s, 'speed_m_s', { min: 0, max: 100, unit: 'm/s' });
  const string_N = computeInRange(tensionBySoundRow, { m, l, f }, paths);
  const hinged_N = computeInRange(tensionBySoundHingedRow, { m, l, f, B }, paths);
  const clamped_N = clampedTension({ frequency_Hz: f, span_m: l, beltMass_kg_m: m, bendingStiffness_Nm2: B });
  const waveSpeed_m_s = l * f + Math.hypot(l * f, speed_m_s);
  const warnings: Warning[] = [];
  if (l < shortestSoundSpan_m) {
    warnings.push({ code: 'span-too-short', path: 'span_m', data: { value: l, min: shortestSoundSpan_m, unit: 'm' } });
  }
  if (hinged_N <= 0 || clamped_N === null) {
    warnings.push({
      code: 'bending-outweighs-tension',
      path: 'bendingStiffness_Nm2',
      data: { value: B, unit: 'N*m2' },
    });
  }
  return {
    string_N,
    hinged_N: hinged_N > 0 ? hinged_N : null,
    clamped_N,
    moving_N: m * waveSpeed_m_s ** 2,
    warnings,
    used: {
      ...(input.bendingStiffness_Nm2 === undefined ? { bendingStiffness_Nm2: 0 } : {}),
      ...(input.speed_m_s === undefined ? { speed_m_s: 0 } : {}),
    },
  };
}
