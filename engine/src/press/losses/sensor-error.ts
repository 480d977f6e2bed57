/**
 * How far a sensor lags behind a steady ramp. dT = tau*(dT/dt).
 *
 * @param lag_s - time constant tau of the sensor [s], >= 0
 * @param ramp_K_s - how fast the platen warms [K/s]
 * @returns how much the shown temperature is behind [K]
 * @validity ramp longer than three time constants
 * @source derived: first-order lag
 * @verified LOSS-09 lag at 0.5 K/s
 */
export function sensorLag_K(lag_s: number, ramp_K_s: number): number {
  return lag_s * ramp_K_s;
}

/**
 * How much warmer the back of a platen is than its working face while it warms, heated from behind.
 * dT = q*d/(2k).
 *
 * @param flux_W_m2 - heat flux q of the heater [W/m2]
 * @param thickness_m - thickness d of the platen [m], > 0
 * @param conductivity_W_mK - conductivity k [W/mK], > 0
 * @returns difference between back and face [K]
 * @validity steady ramp, all of the heat stays in the platen
 * @source derived: plate with a flux on one side, insulated on the other, in steady rise
 * @verified LOSS-09 back against face
 */
export function backToFace_K(flux_W_m2: number, thickness_m: number, conductivity_W_mK: number): number {
  return (flux_W_m2 * thickness_m) / (2 * conductivity_W_mK);
}
