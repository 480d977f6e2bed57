const kelvin = 273.15;
const atmosphere_Pa = 101325;
/** Water content at which the cover is in balance with steam of full vapour pressure. */
const saturation_share = 0.008;

/**
 * Vapour pressure of water from a two-parameter fit.
 * p_sat = 101325*4.962e5*exp(-4892/T).
 *
 * @param temperature_degC - temperature [degC], 100 to 220
 * @returns vapour pressure [Pa]
 * @validity 100 to 220 degC; 3 % above the steam table at 185 degC
 * @source Kardos, Dudukovic & Dave, Adv. Polym. Sci. 80 (1986) 101-123 (from memory)
 * @verified FUSE-07 vapour pressure at 185 degC
 */
export function waterVapourPressure_Pa(temperature_degC: number): number {
  return atmosphere_Pa * 4.962e5 * Math.exp(-4892 / (temperature_degC + kelvin));
}

/**
 * Vapour pressure of the water in the belt over the pressure that holds it down: above 1 bubbles grow.
 * v = (moisture/saturation)*p_sat(T)/(p + p_atm).
 *
 * @param input - moisture_share [1], hottest belt temperature [degC], pressure on the belt over ambient [Pa], saturation [1]
 * @returns void number [1]
 * @validity one bubble in a still melt; saturation 0.8 % is a prior
 * @source criterion of Kardos, Dudukovic & Dave 1986 (from memory)
 * @verified FUSE-07 void number of a wet belt
 */
export function voidNumber(input: {
  readonly moisture_share: number;
  readonly beltMax_degC: number;
  readonly pressure_Pa: number;
  readonly saturation_share?: number | undefined;
}): number {
  const activity = input.moisture_share / (input.saturation_share ?? saturation_share);
  return (activity * waterVapourPressure_Pa(input.beltMax_degC)) / (input.pressure_Pa + atmosphere_Pa);
}

/**
 * Water content above which bubbles grow in the melt. c = c_sat*(p + p_atm)/p_sat.
 *
 * @param input - saturation_share of water at full vapour pressure [1], pressure_Pa on the belt over ambient [Pa], vapourPressure_Pa [Pa]
 * @returns water content [1] by mass
 * @validity as voidNumber, which is content over this content
 * @source derived: voidNumber solved for the content
 * @verified DRY-04 critical water at 180 degC
 */
export function criticalWater_share(input: {
  readonly saturation_share: number;
  readonly pressure_Pa: number;
  readonly vapourPressure_Pa: number;
}): number {
  return (input.saturation_share * (input.pressure_Pa + atmosphere_Pa)) / input.vapourPressure_Pa;
}
