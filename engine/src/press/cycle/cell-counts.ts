import type { Layer } from '../stack/layer.ts';

/** Ramp of the platens for which the cells are sized, and the error that a cell may then make. */
const ramp_K_s = 0.6;
const error_K = 0.02;
const fewest = 1;
const fewestInBelt = 5;
const mostInLayer = 60;

/**
 * Cells of each layer, so that a cell's temperature under a steady ramp bends by no more than a small error.
 * bend = ramp * d^2 * rho * c / (8 k).
 *
 * @param layers - layers from the top
 * @returns odd numbers of cells [1], so that the middle of a layer is the middle of a cell
 * @source derived: parabola of a steady ramp
 * @verified CYCLE-05 halved cells
 */
export function cellCounts(layers: readonly Layer[]): number[] {
  return layers.map((layer) => {
    const diffusivity_m2_s = layer.conductivity_W_mK / (layer.density_kg_m3 * heaviest(layer));
    const cell_m = Math.sqrt((8 * error_K * diffusivity_m2_s) / ramp_K_s);
    const wanted = Math.ceil(layer.thickness_m / cell_m);
    const bounded = Math.min(mostInLayer, Math.max(layer.belt === true ? fewestInBelt : fewest, wanted));
    return bounded + (bounded % 2 === 0 ? 1 : 0);
  });
}

/** Specific heat where it is highest, melting left out. */
function heaviest({
  specificHeat_J_kgK,
  specificHeatSlope_J_kgK2: slope = 0,
  specificHeatCap_J_kgK: cap,
}: Layer): number {
  return Math.min(cap ?? Number.POSITIVE_INFINITY, specificHeat_J_kgK + 160 * slope);
}
