import type { Layer, MeltRange } from './layer.ts';

/** How heat rises with temperature. */
export type HeatCurve = Pick<
  Layer,
  'specificHeat_J_kgK' | 'specificHeatSlope_J_kgK2' | 'specificHeatCap_J_kgK' | 'melt'
>;

/** Where the specific heat is stated and the enthalpy counts from. */
const reference_degC = 20;

/**
 * Specific heat at a temperature: a straight line up to a cap, and the melting on top as a raised cosine.
 * c = min(cap, c20 + slope*(T - 20)) + (H/w)*[1 + cos(2 pi (T - Tm)/w)] within Tm +- w/2.
 *
 * @param curve - specific heat, slope, cap and melting range [units in their names]
 * @param temperature_degC - temperature T [degC]
 * @returns specific heat [J/(kg*K)]
 * @source derived: the cosine encloses exactly the melting heat H
 * @verified STACK-01 specific heat at the melting peak
 */
export function specificHeat_J_kgK(curve: HeatCurve, temperature_degC: number): number {
  const { specificHeatSlope_J_kgK2: slope = 0, specificHeatCap_J_kgK: cap = Number.POSITIVE_INFINITY, melt } = curve;
  const plain = Math.min(cap, curve.specificHeat_J_kgK + slope * (temperature_degC - reference_degC));
  if (melt === undefined) return plain;
  const turns = (temperature_degC - melt.centre_degC) / melt.width_K;
  if (Math.abs(turns) >= 0.5) return plain;
  return plain + (melt.heat_J_kg / melt.width_K) * (1 + Math.cos(2 * Math.PI * turns));
}

/**
 * Enthalpy above 20 degC, the integral of the specific heat.
 * h = integral of c dT; melting adds H*(1/2 + u + sin(2 pi u)/(2 pi)), u = (T - Tm)/w.
 *
 * @param curve - specific heat, slope, cap and melting range [units in their names]
 * @param temperature_degC - temperature T [degC]
 * @returns enthalpy [J/kg]; the melting heat counts from the cold end of its range
 * @source derived: integral of the specific heat
 * @verified STACK-01 enthalpy over the melting range
 */
export function enthalpy_J_kg(curve: HeatCurve, temperature_degC: number): number {
  const { specificHeatSlope_J_kgK2: slope = 0, specificHeatCap_J_kgK: cap, melt } = curve;
  const above = temperature_degC - reference_degC;
  let plain = curve.specificHeat_J_kgK * above + 0.5 * slope * above * above;
  if (cap !== undefined && curve.specificHeat_J_kgK + slope * above > cap) {
    const toCap = slope === 0 ? 0 : (cap - curve.specificHeat_J_kgK) / slope;
    plain = curve.specificHeat_J_kgK * toCap + 0.5 * slope * toCap * toCap + cap * (above - toCap);
  }
  if (melt === undefined) return plain;
  return plain + melt.heat_J_kg * meltedShare(melt, temperature_degC);
}

/**
 * Share that has melted at a temperature. phi = 1/2 + u + sin(2 pi u)/(2 pi), u = (T - Tm)/w within -1/2..1/2.
 *
 * @param melt - range of melting, its width w > 0 [K]
 * @param temperature_degC - temperature T [degC]
 * @returns share [1], 0 below the range and 1 above it
 * @source derived: integral of the raised cosine
 * @verified STACK-01 enthalpy over the melting range
 */
export function meltedShare({ centre_degC, width_K }: MeltRange, temperature_degC: number): number {
  const turns = Math.max(-0.5, Math.min(0.5, (temperature_degC - centre_degC) / width_K));
  return 0.5 + turns + Math.sin(2 * Math.PI * turns) / (2 * Math.PI);
}

/**
 * How fast the melted share grows. dphi/dT = [1 + cos(2 pi u)]/w.
 *
 * @param melt - range of melting, its width w > 0 [K]
 * @param temperature_degC - temperature [degC]
 * @returns slope [1/K], 0 outside the range
 * @source derived: the raised cosine
 * @verified STACK-01 specific heat at the melting peak
 */
export function meltedSlope_1_K({ centre_degC, width_K }: MeltRange, temperature_degC: number): number {
  const turns = (temperature_degC - centre_degC) / width_K;
  return Math.abs(turns) >= 0.5 ? 0 : (1 + Math.cos(2 * Math.PI * turns)) / width_K;
}
