const stefanBoltzmann_W_m2K4 = 5.670374419e-8;
const kelvin = 273.15;

/**
 * Radiation of a small body to its surroundings as a heat transfer coefficient.
 * h = eps*sigma*(Ts^2 + Ta^2)*(Ts + Ta).
 *
 * @param emissivity - eps [1], 0 to 1: bare aluminium 0.05 to 0.1, anodised 0.8, from memory
 * @param surface_degC - temperature of the surface [degC]
 * @param around_degC - temperature of the surroundings [degC]
 * @returns heat transfer coefficient [W/m2K]
 * @validity grey body, surroundings much larger
 * @source derived: difference of fourth powers; constant CODATA 2018
 * @verified LOSS-05 radiation at emissivity 0.9
 */
export function radiation_W_m2K(emissivity: number, surface_degC: number, around_degC: number): number {
  const [hot, cold] = [surface_degC + kelvin, around_degC + kelvin];
  return emissivity * stefanBoltzmann_W_m2K4 * (hot ** 2 + cold ** 2) * (hot + cold);
}
