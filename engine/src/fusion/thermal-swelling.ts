/**
 * How much thicker a belt gets when warmed between walls that hold its width and length.
 * dt = t*beta*(T1 - T0).
 *
 * @param thickness_m - thickness t when cold [m], > 0
 * @param expansion_1_K - volume expansion beta [1/K]: 3.9e-4 to 5.4e-4 for the covers, from memory
 * @param rise_K - temperature rise T1 - T0 [K]
 * @returns growth of the thickness [m]
 * @validity cover held sideways; a bag press is load-controlled, so the pressure stays where it was set
 * @source derived: volume expansion; coefficient from public material data (from memory)
 * @verified FUSE-14 swelling of 2 mm
 */
export function swelling_m(thickness_m: number, expansion_1_K: number, rise_K: number): number {
  return thickness_m * expansion_1_K * rise_K;
}
