/**
 * Bow of a splice that stiffened with its two faces at different temperatures. kappa = alpha*dT/t.
 *
 * @param input - expansion_1_K [1/K], difference_K between the faces [K], thickness_m [m]
 * @returns curvature [1/m]
 * @validity one material; an upper bound, since the press lets some of it relax
 * @source derived: free bending of a plate with a linear temperature
 * @verified BOW-01 curvature of one material
 */
export function bowCurvature_1_m(input: {
  readonly expansion_1_K: number;
  readonly difference_K: number;
  readonly thickness_m: number;
}): number {
  return (input.expansion_1_K * input.difference_K) / input.thickness_m;
}

/**
 * Height of a shallow bow over a length. d = kappa*l^2/8.
 *
 * @param curvature_1_m - curvature [1/m]
 * @param length_m - length of the splice [m]
 * @returns height of the middle over the ends [m]
 * @validity shallow arc
 * @source derived: circle of small rise
 * @verified BOW-01 height over 80 mm
 */
export function bowHeight_m(curvature_1_m: number, length_m: number): number {
  return (curvature_1_m * length_m ** 2) / 8;
}

/** One layer of a belt, from one face to the other. */
export interface BowLayer {
  readonly thickness_m: number;
  readonly modulus_MPa: number;
  readonly expansion_1_K: number;
}

/**
 * Curvature of a belt of unequal layers that cools evenly.
 * kappa = sum(E*alpha*t*(z - zbar))*dT/sum(E*(t^3/12 + t*(z - zbar)^2)), zbar the stiffness-weighted middle.
 *
 * @param layers - from one face to the other: thickness [m], modulus [MPa], expansion [1/K], all > 0
 * @param difference_K - temperature fallen since the cover stiffened [K]
 * @returns curvature [1/m], sign by the order of the layers
 * @validity layers stick together and stay elastic; an upper bound
 * @source derived: Timoshenko, J. Opt. Soc. Am. 11 (1925) 233 (from memory), any number of layers
 * @verified BOW-02 curvature of unequal covers
 */
export function layeredBow_1_m(layers: readonly BowLayer[], difference_K: number): number {
  let top = 0;
  const placed = layers.map(({ thickness_m: t, modulus_MPa: E, expansion_1_K: a }) => {
    const z = top + t / 2;
    top += t;
    return { t, E, a, z };
  });
  const total = (of: (one: (typeof placed)[number]) => number) => placed.reduce((sum, one) => sum + of(one), 0);
  const middle = total(({ t, E, z }) => E * t * z) / total(({ t, E }) => E * t);
  const moment = total(({ t, E, a, z }) => E * a * t * (z - middle));
  return (moment * difference_K) / total(({ t, E, z }) => E * (t ** 3 / 12 + t * (z - middle) ** 2));
}

/**
 * Sideways bow of a splice whose left and right edge stiffened at different temperatures.
 * kappa = (sum(E*t*alpha)/sum(E*t))*dT/b.
 *
 * @param layers - thickness [m], modulus [MPa], expansion [1/K], all > 0
 * @param difference_K - left against right [K]
 * @param width_m - width of the belt [m], > 0
 * @returns curvature in the plane of the belt [1/m]
 * @validity layers stick together and stay elastic
 * @source derived: common strain of the layers
 * @verified BOW-03 sideways height over 130 mm
 */
export function sidewaysBow_1_m(layers: readonly BowLayer[], difference_K: number, width_m: number): number {
  const stiffness = layers.reduce((sum, one) => sum + one.modulus_MPa * one.thickness_m, 0);
  const pull = layers.reduce((sum, one) => sum + one.modulus_MPa * one.thickness_m * one.expansion_1_K, 0);
  return ((pull / stiffness) * difference_K) / width_m;
}
