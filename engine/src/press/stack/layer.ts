/** Melting spread over a range as a raised cosine: nothing outside, most at the centre. */
export interface MeltRange {
  readonly heat_J_kg: number;
  readonly centre_degC: number;
  /** Full width of the range. */
  readonly width_K: number;
}

/** One layer between the platens. */
export interface Layer {
  readonly name: string;
  readonly thickness_m: number;
  /** At 25 degC when it has a slope. */
  readonly conductivity_W_mK: number;
  /** k = k25*(1 + slope*(T - 25)). */
  readonly conductivitySlope_1_K?: number | undefined;
  readonly density_kg_m3: number;
  /** At 20 degC. */
  readonly specificHeat_J_kgK: number;
  readonly specificHeatSlope_J_kgK2?: number | undefined;
  /** Above it the specific heat grows no more; the melting comes on top. */
  readonly specificHeatCap_J_kgK?: number | undefined;
  readonly melt?: MeltRange | undefined;
  /** True for the layers that are the belt: fusion is computed there. */
  readonly belt?: boolean | undefined;
}
