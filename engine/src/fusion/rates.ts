import type { FusionParameters } from './parameters.ts';

const gasConstant_J_molK = 8.314462618;
const kelvin = 273.15;
/** Temperatures at which the parameters are stated. */
const weldingReference_K = 180 + kelvin;
const viscosityReference_K = 190 + kelvin;
const scissionReference_K = 210 + kelvin;
/** Water contents of the two measured series, and how much faster chains broke in the wetter one. */
const dry_share = 0.0005;
const moist_share = 0.002;
const moistFactor = 2.5;

/** exp[(E/R)(1/T - 1/T_ref)]: above 1 below the reference temperature. */
function arrhenius(energy_J_mol: number, temperature_degC: number, reference_K: number): number {
  return Math.exp((energy_J_mol / gasConstant_J_molK) * (1 / (temperature_degC + kelvin) - 1 / reference_K));
}

/**
 * Share of the hard segments that is molten, a logistic curve through one half at the melting peak.
 * phi = 1/(1 + exp(-(T - T50)/w)).
 *
 * @param temperature_degC - temperature T [degC]
 * @param centre_degC - melting peak T50 [degC]
 * @param width_K - width w [K], > 0
 * @returns molten share [1], 0 to 1
 * @validity a closure: no published curve of a belt's cover
 * @source engineering prior, no source
 * @verified FUSE-01 gate at the peak
 */
export function meltGate(temperature_degC: number, centre_degC: number, width_K: number): number {
  return 1 / (1 + Math.exp((centre_degC - temperature_degC) / width_K));
}

/**
 * Viscosity of the fully molten cover by Arrhenius; the melt gate is not in it.
 * eta = eta190*exp[(E/R)(1/T - 1/463.15)].
 *
 * @param temperature_degC - temperature T [degC], above -273.15
 * @param p - viscosityAt190_Pa_s [Pa*s], flowEnergy_J_mol [J/mol]
 * @returns viscosity [Pa*s]
 * @validity 160 to 220 degC; Newtonian, shear rate of a press gap 0.1 to 5 1/s (from memory)
 * @source from memory; energy between 43 and 131 kJ/mol, Hentschel & Muenstedt, Polymer 42(7) 2001, 3195-3203
 * @verified FUSE-02 viscosity at 170 degC with 43 kJ/mol
 */
export function viscosity_Pa_s(
  temperature_degC: number,
  p: Pick<FusionParameters, 'viscosityAt190_Pa_s' | 'flowEnergy_J_mol'>,
): number {
  return p.viscosityAt190_Pa_s * arrhenius(p.flowEnergy_J_mol, temperature_degC, viscosityReference_K);
}

/**
 * Welding time: how long two touching faces of molten cover need to become one.
 * t_w = t_ref*exp[(E/R)(1/T - 1/453.15)].
 *
 * @param temperature_degC - temperature T [degC], above -273.15
 * @param p - weldingTime_s at 180 degC [s], weldingEnergy_J_mol [J/mol]
 * @returns welding time [s]
 * @validity fitted per belt; the melt gate is not in it
 * @source form: Yang & Pitchumani, Macromolecules 35(8) 2002, 3213-3224 (from memory)
 * @verified FUSE-03 welding time at 160 degC
 */
export function weldingTime_s(
  temperature_degC: number,
  p: Pick<FusionParameters, 'weldingTime_s' | 'weldingEnergy_J_mol'>,
): number {
  return p.weldingTime_s * arrhenius(p.weldingEnergy_J_mol, temperature_degC, weldingReference_K);
}

/**
 * Rate at which the healing integral Z grows. dZ/dt = phi/t_w.
 *
 * @param temperature_degC - temperature [degC], above -273.15
 * @param p - melt gate and welding time [units in their names]
 * @returns rate of Z [1/s]
 * @validity where flanks touch
 * @source Yang & Pitchumani 2002 (from memory) with the melt gate as a closure
 */
export function healingRate_1_s(
  temperature_degC: number,
  p: Pick<FusionParameters, 'weldingTime_s' | 'weldingEnergy_J_mol' | 'meltCentre_degC' | 'meltWidth_K'>,
): number {
  return meltGate(temperature_degC, p.meltCentre_degC, p.meltWidth_K) / weldingTime_s(temperature_degC, p);
}

/**
 * Fluidity of the partly molten cover; times the pressure it is the rate of the flow integral J.
 * c*phi/eta, dJ/dt = p*c*phi/eta.
 *
 * @param temperature_degC - temperature [degC], above -273.15
 * @param p - melt gate, viscosity and fitted factor [units in their names]
 * @returns fluidity [1/(Pa*s)]
 * @validity Newtonian; see viscosity_Pa_s
 * @source derived: viscosity divided by the molten share is a closure, no source
 */
export function fluidity_1_Pa_s(
  temperature_degC: number,
  p: Pick<
    FusionParameters,
    'viscosityAt190_Pa_s' | 'flowEnergy_J_mol' | 'meltCentre_degC' | 'meltWidth_K' | 'fluidity'
  >,
): number {
  return (
    (p.fluidity * meltGate(temperature_degC, p.meltCentre_degC, p.meltWidth_K)) / viscosity_Pa_s(temperature_degC, p)
  );
}

/**
 * Rate of random chain scission. M0/M = 1 + integral of kappa; kappa = kappa210*f*exp[-(E/R)(1/T - 1/483.15)].
 * The factor f of moisture runs in a straight line through the two series measured: 1 up to 0.05 % water, 2.5 at 0.20 %.
 *
 * @param temperature_degC - temperature T [degC], above -273.15
 * @param p - scissionAt210_1_s dry [1/s], scissionEnergy_J_mol [J/mol], moisture_share [1]; unknown moisture counts as dry
 * @returns rate of broken chains per chain [1/s]
 * @validity melt at 180 to 230 degC, from 4 minutes on; extrapolated above 0.20 % water
 * @source fitted to Heneczkowski, Polimery 1993 no. 3, 120, read with a sign corrected; energy from Fambri et al. 2001
 * @verified FUSE-06 scission at 180 degC
 */
export function scissionRate_1_s(
  temperature_degC: number,
  p: Pick<FusionParameters, 'scissionAt210_1_s' | 'scissionEnergy_J_mol' | 'moisture_share'>,
): number {
  const rate_1_s = p.scissionAt210_1_s / arrhenius(p.scissionEnergy_J_mol, temperature_degC, scissionReference_K);
  return rate_1_s * moistureFactor(p.moisture_share ?? 0);
}

function moistureFactor(moisture_share: number): number {
  const beyondDry = Math.max(0, (moisture_share - dry_share) / (moist_share - dry_share));
  return 1 + (moistFactor - 1) * beyondDry;
}
