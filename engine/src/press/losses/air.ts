/** Properties of air that convection depends on. */
export interface Air {
  readonly kinematicViscosity_m2_s: number;
  readonly diffusivity_m2_s: number;
  readonly prandtl: number;
  readonly conductivity_W_mK: number;
  /** Volume expansion, 1/T of an ideal gas. */
  readonly expansion_1_K: number;
}

const kelvin = 273.15;
const pressure_Pa = 101325;
const gasConstant_J_kgK = 287.053;
const specificHeat_J_kgK = 1009;

/**
 * Dry air at sea level by the formulas of the standard atmosphere.
 * mu = 1.458e-6*T^1.5/(T + 110.4), k = 2.64638e-3*T^1.5/(T + 245.4*10^(-12/T)), density p/(R*T).
 *
 * @param temperature_degC - temperature of the film: mean of wall and air [degC], -50 to 400
 * @returns kinematic viscosity, diffusivity [m2/s], Prandtl number [1], conductivity [W/mK], expansion [1/K]
 * @validity dry, 101325 Pa; specific heat taken as 1009 J/kgK
 * @source U.S. Standard Atmosphere 1976, equations 51 and 53 (from memory)
 * @verified LOSS-01 conductivity of air at 102 degC
 */
export function airAt(temperature_degC: number): Air {
  const T = temperature_degC + kelvin;
  const density_kg_m3 = pressure_Pa / (gasConstant_J_kgK * T);
  const conductivity_W_mK = (2.64638e-3 * T ** 1.5) / (T + 245.4 * 10 ** (-12 / T));
  const kinematicViscosity_m2_s = (1.458e-6 * T ** 1.5) / (T + 110.4) / density_kg_m3;
  const diffusivity_m2_s = conductivity_W_mK / (density_kg_m3 * specificHeat_J_kgK);
  return {
    kinematicViscosity_m2_s,
    diffusivity_m2_s,
    prandtl: kinematicViscosity_m2_s / diffusivity_m2_s,
    conductivity_W_mK,
    expansion_1_K: 1 / T,
  };
}
