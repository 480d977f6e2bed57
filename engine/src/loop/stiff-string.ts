import { inRange } from '../in-range.ts';
import { bracketedRoot } from '../numbers/bracketed-root.ts';

export interface StiffString {
  readonly span_m: number;
  readonly beltMass_kg_m: number;
  readonly bendingStiffness_Nm2: number;
}

/**
 * First frequency of a stiff string under tension, by end condition.
 *
 * f1 = sqrt(T/m)/(2 l); x = EI/(T l^2); hinged f1 sqrt(1 + pi^2 x); clamped, series f1 (1 + 2 sqrt x + (4 + pi^2/2) x)
 * and exact: b tan(b l/2) + a tanh(a l/2) = 0 with a^2 - b^2 = T/EI, a b = 2 pi f sqrt(m/EI).
 *
 * @param tension_N - belt tension [N], 1e-3 to 1e7
 * @param string.span_m - free span [m], 0.001 to 5000
 * @param string.beltMass_kg_m - mass of the belt [kg/m], 1e-4 to 1000
 * @param string.bendingStiffness_Nm2 - EI [N m2], 0 to 100
 * @returns frequencies [Hz]
 * @throws not-finite, out-of-range
 * @validity small amplitude, at rest; the series for x well under 1e-3
 * @source hinged: Rayleigh; series: Fletcher & Rossing, The Physics of Musical Instruments (from memory); exact: derived
 * @verified T6.1 clamped, exact, 0.58 m, T6.1 clamped, series, 0.58 m
 */
export function stiffStringFrequency(
  tension_N: number,
  string: StiffString,
): {
  readonly string_Hz: number;
  readonly hinged_Hz: number;
  readonly clampedSeries_Hz: number;
  readonly clamped_Hz: number;
} {
  inRange(tension_N, 'tension_N', { min: 1e-3, max: 1e7, unit: 'N' });
  checkString(string);
  const { span_m, beltMass_kg_m, bendingStiffness_Nm2: EI } = string;
  const string_Hz = Math.sqrt(tension_N / beltMass_kg_m) / (2 * span_m);
  const x = EI / (tension_N * span_m ** 2);
  return {
    string_Hz,
    hinged_Hz: string_Hz * Math.sqrt(1 + Math.PI ** 2 * x),
    clampedSeries_Hz: string_Hz * (1 + 2 * Math.sqrt(x) + (4 + Math.PI ** 2 / 2) * x),
    clamped_Hz: EI === 0 ? string_Hz : clampedFrequency(tension_N, string),
  };
}

/**
 * Tension of a stiff string clamped at both ends from its first frequency, by the exact characteristic equation.
 *
 * @param input.frequency_Hz - first mode [Hz], 0.01 to 10000
 * @param input.span_m - free span [m], 0.001 to 5000
 * @param input.beltMass_kg_m - mass of the belt [kg/m], 1e-4 to 1000
 * @param input.bendingStiffness_Nm2 - EI [N m2], 0 to 100
 * @returns tension [N]; null when the bare beam sounds at least that high
 * @throws not-finite, out-of-range
 * @validity small amplitude, at rest
 * @source derived: first symmetric mode of EI w'''' - T w'' = m (2 pi f)^2 w
 * @verified T6.1 clamped
 */
export function clampedTension(input: StiffString & { readonly frequency_Hz: number }): number | null {
  const { frequency_Hz, span_m, beltMass_kg_m, bendingStiffness_Nm2: EI } = input;
  inRange(frequency_Hz, 'frequency_Hz', { min: 0.01, max: 10_000, unit: 'Hz' });
  checkString(input);
  if (EI === 0) return 4 * beltMass_kg_m * (span_m * frequency_Hz) ** 2;
  const half = span_m / 2;
  const product = 2 * Math.PI * frequency_Hz * Math.sqrt(beltMass_kg_m / EI) * half * half;
  const root = bracketedRoot((beta) => mismatch(product / beta, beta), firstMode, { tolerance: 1e-15 });
  const beta = root.value;
  const tension_N = (EI / (half * half)) * ((product / beta) ** 2 - beta * beta);
  return root.status === 'ok' && tension_N > 0 ? tension_N : null;
}

function clampedFrequency(tension_N: number, { span_m, beltMass_kg_m, bendingStiffness_Nm2: EI }: StiffString): number {
  const half = span_m / 2;
  const alphaOf = (beta: number) => Math.sqrt((tension_N * half * half) / EI + beta * beta);
  const { value: beta } = bracketedRoot((b) => mismatch(alphaOf(b), b), firstMode, { tolerance: 1e-15 });
  return (alphaOf(beta) * beta * Math.sqrt(EI / beltMass_kg_m)) / (2 * Math.PI * half * half);
}

/** With beta = b l/2 the first mode lies between the string (pi/2) and the second branch of the tangent (pi). */
const firstMode = [Math.PI / 2, Math.PI] as const;

/** beta tan(beta) + alpha tanh(alpha) = 0, multiplied by cos(beta) so that it stays finite. */
function mismatch(alpha: number, beta: number): number {
  return beta * Math.sin(beta) + alpha * Math.tanh(alpha) * Math.cos(beta);
}

function checkString(string: StiffString): void {
  inRange(string.span_m, 'span_m', { min: 0.001, max: 5000, unit: 'm' });
  inRange(string.beltMass_kg_m, 'beltMass_kg_m', { min: 1e-4, max: 1000, unit: 'kg/m' });
  inRange(string.bendingStiffness_Nm2, 'bendingStiffness_Nm2', { min: 0, max: 100, unit: 'N*m2' });
}
