/** How a body gives heat to what touches it. */
export interface Body {
  readonly conductivity_W_mK: number;
  readonly density_kg_m3: number;
  readonly specificHeat_J_kgK: number;
}

/** Skin, from memory. */
export const skin: Body = { conductivity_W_mK: 0.37, density_kg_m3: 1000, specificHeat_J_kgK: 3770 };

/**
 * Effusivity of a body. e = sqrt(k*rho*c).
 *
 * @param body - conductivity [W/mK], density [kg/m3], specific heat [J/kgK], all > 0
 * @returns effusivity [W*s^0.5/(m2*K)]
 * @source derived: half-space with a step at its face
 * @verified TOUCH-01 effusivity of skin
 */
export function effusivity(body: Body): number {
  return Math.sqrt(body.conductivity_W_mK * body.density_kg_m3 * body.specificHeat_J_kgK);
}

/**
 * Temperature at the face where two bodies meet, in the first instants.
 * T = (e1*T1 + e2*T2)/(e1 + e2).
 *
 * @param first - body and its temperature [degC]
 * @param second - body and its temperature [degC]
 * @returns temperature of the common face [degC]
 * @validity both thick against how far heat has come; no contact resistance. Whether it burns, the thresholds say
 * @source from memory: Incropera, DeWitt, Bergman & Lavine, chapter 5; Carslaw & Jaeger section 2.14
 * @verified TOUCH-01 aluminium of 80 degC on skin
 */
export function contactTemperature_degC(
  first: { readonly body: Body; readonly temperature_degC: number },
  second: { readonly body: Body; readonly temperature_degC: number },
): number {
  const [e1, e2] = [effusivity(first.body), effusivity(second.body)];
  return (e1 * first.temperature_degC + e2 * second.temperature_degC) / (e1 + e2);
}
