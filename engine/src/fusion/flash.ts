/**
 * Melt that leaves through the clearance between template and belt edge, per length of edge.
 * Q = d^3*p/(12*eta*L).
 *
 * @param input - clearance_m, land_m (length of the narrow passage) [m], pressure_Pa [Pa], viscosity_Pa_s [Pa*s], all > 0
 * @returns flow [m2/s]: volume per length of edge and time
 * @validity Newtonian; passage long against its clearance
 * @source derived: lubrication flow
 * @verified FUSE-13 flash through 0.1 mm
 */
export function flashFlow_m2_s(input: {
  readonly clearance_m: number;
  readonly land_m: number;
  readonly pressure_Pa: number;
  readonly viscosity_Pa_s: number;
}): number {
  return (input.clearance_m ** 3 * input.pressure_Pa) / (12 * input.viscosity_Pa_s * input.land_m);
}

/**
 * Share of the cover that must give way to fill the gaps of the die and to feed the flash, less what swelling supplies.
 * (V_gaps + V_flash - V_swelling)/V_cover.
 *
 * @param input - volumes in one splice [m3], cover > 0, the others >= 0
 * @returns share of the cover squeezed out [1]; below 0 the swelling alone fills
 * @validity melt is not compressed
 * @source derived: balance of volumes
 * @verified FUSE-13 cover that fills the gaps
 */
export function coverLoss(input: {
  readonly gaps_m3: number;
  readonly flash_m3: number;
  readonly swelling_m3: number;
  readonly cover_m3: number;
}): number {
  return (input.gaps_m3 + input.flash_m3 - input.swelling_m3) / input.cover_m3;
}
