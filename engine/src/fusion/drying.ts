import { inRange } from '../in-range.ts';
import { bracketedRoot } from '../numbers/bracketed-root.ts';

const gasConstant_J_molK = 8.314462618;
const kelvin = 273.15;
/** Diffusion of water in the cover at 23 degC: a prior, 1e-12 to 5e-11; and its activation energy. */
const diffusion_m2_s = 1e-11;
const diffusionReference_K = 23 + kelvin;
const diffusionEnergy_J_mol = 46e3;

/**
 * Diffusion of water in the cover. D = D23*exp[-(E/R)(1/T - 1/296.15)], E = 46 kJ/mol.
 *
 * @param temperature_degC - temperature T [degC], 0 to 120
 * @param at23_m2_s - diffusion at 23 degC [m2/s]; prior 1e-11, could be 1e-12 to 5e-11
 * @returns diffusion [m2/s]
 * @validity low water content; a factor of 5 to 10 either way
 * @source energy: Schneider, Dusablon, Spano, Hopfenberg & Votta, J. Appl. Polym. Sci. 12 (1968), DOI 10.1002/app.1968.070120311, abstract
 * @verified DRY-01 diffusion at 80 degC
 */
export function waterDiffusion_m2_s(temperature_degC: number, at23_m2_s: number = diffusion_m2_s): number {
  const inverse = 1 / (temperature_degC + kelvin) - 1 / diffusionReference_K;
  return at23_m2_s * Math.exp(-(diffusionEnergy_J_mol / gasConstant_J_molK) * inverse);
}

/**
 * Share of the water still in a belt that dries from both faces.
 * Sum of 8/((2n+1)^2*pi^2)*exp(-(2n+1)^2*pi^2*Fo); early on 1 - (4/sqrt(pi))*sqrt(Fo).
 *
 * @param fourier - D*t/thickness^2 [1], >= 0; with one face closed take twice the thickness
 * @returns share left [1], 0 to 1
 * @validity Fick's law, dry air at the open faces
 * @source Crank, The Mathematics of Diffusion, 2nd ed. 1975 (from memory)
 * @verified DRY-02 half of the water left
 */
export function waterLeft(fourier: number): number {
  // Both forms are exact here to rounding; the series would need many terms below.
  if (fourier < 0.005) return 1 - (4 / Math.sqrt(Math.PI)) * Math.sqrt(Math.max(0, fourier));
  let left = 0;
  for (let n = 0; n < 40; n += 1) {
    const k = ((2 * n + 1) * Math.PI) ** 2;
    left += (8 / k) * Math.exp(-k * fourier);
  }
  return left;
}

export interface DryingInput {
  readonly thickness_m: number;
  readonly temperature_degC: number;
  /** Share of the water that may be left, above 0 and below 1. */
  readonly left: number;
  readonly openFaces: 1 | 2;
  readonly diffusionAt23_m2_s?: number | undefined;
}

/**
 * Time to dry a belt until only a share of its water is left.
 * D*t/L^2 = Fo(left), L = thickness with both faces open, twice that with one.
 *
 * @param input - thickness [m] 1e-4 to 0.05, temperature [degC] 0 to 120, share left [1] 0.001 to 0.999, open faces, diffusion at 23 degC [m2/s]
 * @returns time [s]
 * @throws not-finite, out-of-range
 * @validity Fick's law, dry air at the open faces; the diffusion is a prior, a factor of 5 to 10 either way
 * @source derived: inverse of waterLeft
 * @verified DRY-03 hours to a tenth at 80 degC and 2.4 mm
 */
export function dryingTime_s(input: DryingInput): number {
  const left = inRange(input.left, 'left', { min: 0.001, max: 0.999, unit: '1' });
  const thickness_m = inRange(input.thickness_m, 'thickness_m', { min: 1e-4, max: 0.05, unit: 'm' });
  const temperature = inRange(input.temperature_degC, 'temperature_degC', { min: 0, max: 120, unit: 'degC' });
  const at23 = inRange(input.diffusionAt23_m2_s ?? diffusion_m2_s, 'diffusionAt23_m2_s', {
    min: 1e-14,
    max: 1e-8,
    unit: 'm2/s',
  });
  const path_m = thickness_m * (input.openFaces === 1 ? 2 : 1);
  const fourier = bracketedRoot((fo) => waterLeft(fo) - left, [0, 1], { tolerance: 1e-14 });
  return (fourier.value * path_m ** 2) / waterDiffusion_m2_s(temperature, at23);
}
