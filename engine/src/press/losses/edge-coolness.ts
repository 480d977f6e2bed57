/** A platen as a strip that loses heat through its face and its edges. */
export interface PlatenStrip {
  readonly thickness_m: number;
  readonly halfWidth_m: number;
  readonly conductivity_W_mK: number;
  readonly faceLoss_W_m2K: number;
  readonly edgeLoss_W_m2K: number;
}

/**
 * How much cooler the edge of an evenly heated platen is than its middle.
 * m = sqrt(U/(k*d)), A = h/(k*m*sinh(m*w) + h*cosh(m*w)), difference = excess*A*(cosh(m*w) - 1)/(1 - A).
 *
 * @param strip - thickness d, half width w [m], conductivity k [W/mK], face loss U, edge loss h [W/m2K], all > 0
 * @param excess_K - how much the middle is above the air [K]
 * @returns difference between middle and edge [K]
 * @validity steady; the platen is thin against its width
 * @source derived: fin with a uniform source
 * @verified LOSS-07 edge of an aluminium platen
 */
export function edgeCoolness_K(strip: PlatenStrip, excess_K: number): number {
  const { thickness_m: d, halfWidth_m: w, conductivity_W_mK: k, faceLoss_W_m2K: U, edgeLoss_W_m2K: h } = strip;
  const m = Math.sqrt(U / (k * d));
  const A = h / (k * m * Math.sinh(m * w) + h * Math.cosh(m * w));
  return (excess_K * A * (Math.cosh(m * w) - 1)) / (1 - A);
}

/**
 * Share of an edge's temperature error that reaches a place inside the stack. exp(-pi*x/H).
 *
 * @param distance_m - distance x from the platen's edge [m], >= 0
 * @param stack_m - height H of the stack between the platens [m], > 0
 * @returns share [1], 0 to 1
 * @validity platens of even temperature; layers of like conductivity
 * @source derived: slowest decay in a strip between two even faces
 * @verified LOSS-08 edge error one stack height inside
 */
export function edgeReach(distance_m: number, stack_m: number): number {
  return Math.exp((-Math.PI * distance_m) / stack_m);
}
