/** Die and piston of the melt-flow instrument, ISO 1133 (dimensions from memory). */
const die = { radius_m: 1.0475e-3, length_m: 8e-3, piston_m: 9.55e-3 } as const;
const g_m_s2 = 9.80665;

/** A melt-flow rate as a data sheet states it, and the state of shear in the die. */
export interface MeltFlow {
  readonly shearStress_Pa: number;
  readonly shearRate_1_s: number;
  readonly viscosity_Pa_s: number;
}

/**
 * Viscosity behind a melt-flow rate of a data sheet, at the temperature of that test.
 * tau = (F/A)*R/(2L), rate = 4Q/(pi*R^3), Q = MFR/rho, eta = tau/rate.
 *
 * @param input - meltFlow_g_10min [g/10 min], load_kg [kg], density_kg_m3 of the melt [kg/m3], all > 0
 * @returns shear stress [Pa], apparent shear rate [1/s], apparent viscosity [Pa*s]
 * @validity apparent: without end and shear-thinning corrections; at low shear it is higher, see lowShearViscosity_Pa_s
 * @source ISO 1133 (die from memory); Hagen-Poiseuille
 * @verified FUSE-15 viscosity from 20 g/10 min at 8.7 kg
 */
export function meltFlow(input: {
  readonly meltFlow_g_10min: number;
  readonly load_kg: number;
  readonly density_kg_m3: number;
}): MeltFlow {
  const piston_m2 = (Math.PI / 4) * die.piston_m ** 2;
  const shearStress_Pa = ((input.load_kg * g_m_s2) / piston_m2) * (die.radius_m / (2 * die.length_m));
  const flow_m3_s = input.meltFlow_g_10min / 1000 / 600 / input.density_kg_m3;
  const shearRate_1_s = (4 * flow_m3_s) / (Math.PI * die.radius_m ** 3);
  return { shearStress_Pa, shearRate_1_s, viscosity_Pa_s: shearStress_Pa / shearRate_1_s };
}

/**
 * Viscosity at the low shear of a press gap from the one at the shear of the melt-flow die.
 * eta0 = eta*rate^(1 - n), rate in 1/s against 1 1/s.
 *
 * @param flow - apparent viscosity [Pa*s] and shear rate [1/s]
 * @param exponent - power-law exponent n [1], 0 to 1; 0.7 where nothing is known
 * @returns viscosity at 1 1/s [Pa*s]
 * @validity a power law from 1 1/s to the die's shear rate
 * @source engineering prior, no source
 * @verified FUSE-15 low-shear viscosity
 */
export function lowShearViscosity_Pa_s(
  flow: Pick<MeltFlow, 'viscosity_Pa_s' | 'shearRate_1_s'>,
  exponent = 0.7,
): number {
  return flow.viscosity_Pa_s * flow.shearRate_1_s ** (1 - exponent);
}
