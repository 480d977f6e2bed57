import type { Grid } from './grid.ts';

/** A place in the stack as a mixture of the temperatures of two neighbouring unknowns. */
export interface Place {
  readonly upper: number;
  readonly lower: number;
  /** Weight of the lower one. */
  readonly share: number;
}

/**
 * Place in a layer, at or between cell centres; between a face and the next cell centre along the flux through it.
 *
 * @param grid - cells of the stack
 * @param layer - index of the layer from the top [1]
 * @param fraction - 0 at the layer's upper face, 1 at its lower face [1]
 * @returns two unknowns and the weight of the lower [1]
 * @validity temperature in a straight line between neighbours; conductivities at 25 degC
 * @source cell-centred finite volumes
 * @verified STACK-03 steady composite
 */
export function probePlace(grid: Grid, layer: number, fraction: number): Place {
  const cells = grid.layers[layer];
  if (cells === undefined) return { upper: 0, lower: 1, share: 0 };
  const position = fraction * cells.count - 0.5;
  const last = cells.count - 1;
  if (position <= 0 && last >= 0) return beside(grid, cells.first - 1, 2 * (position + 0.5));
  if (position >= last) return beside(grid, cells.first + last, 2 * (position - last), true);
  const whole = Math.floor(position);
  return { upper: cells.first + whole, lower: cells.first + whole + 1, share: position - whole };
}

/** Between unknown i and i + 1, in the lower (or upper) one's half cell at a share of its way from face to centre. */
function beside(grid: Grid, i: number, way: number, inUpper = false): Place {
  const upperHalf = grid.parts[i]?.half_m2K_W ?? 0;
  const lowerHalf = grid.parts[i + 1]?.half_m2K_W ?? 0;
  const whole = upperHalf + (grid.parts[i]?.contact_m2K_W ?? 0) + lowerHalf;
  const share = inUpper ? (way * upperHalf) / whole : 1 - ((1 - way) * lowerHalf) / whole;
  return { upper: i, lower: i + 1, share };
}
