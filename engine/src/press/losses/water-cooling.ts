/**
 * Heat transfer that a water circuit gives a platen, by the number of transfer units.
 * h = m*c*(1 - exp(-NTU))/A.
 *
 * @param flow_kg_s - water through the platen [kg/s], > 0
 * @param transferUnits - NTU of the channels [1], > 0
 * @param area_m2 - plan area of the platen [m2], > 0
 * @returns heat transfer coefficient on plan area against the entering water [W/m2K]
 * @validity water stays liquid: on a platen above 100 degC it flashes to steam
 * @source derived: heat exchanger with one wall temperature; specific heat of water 4180 J/kgK
 * @verified LOSS-10 water cooling at 2 L/min
 */
export function waterCooling_W_m2K(flow_kg_s: number, transferUnits: number, area_m2: number): number {
  return (flow_kg_s * 4180 * (1 - Math.exp(-transferUnits))) / area_m2;
}
