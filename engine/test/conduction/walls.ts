import { type ConductInput, type ConductState, conduct, type Layer } from '../../src/press/index.ts';

/** Conductivity, density and specific heat of a material of the reference solutions. */
export interface Material {
  readonly k: number;
  readonly rho: number;
  readonly c: number;
}

export const cover: Material = { k: 0.22, rho: 1150, c: 1900 };
export const silicone: Material = { k: 0.25, rho: 1200, c: 1300 };

export function layer(thickness_m: number, { k, rho, c }: Material, more: Partial<Layer> = {}): Layer {
  const plain = { conductivity_W_mK: k, density_kg_m3: rho, specificHeat_J_kgK: c };
  return { name: 'layer', thickness_m, ...plain, ...more };
}

/** A deep wall as layers of one material that grow thicker inwards, so that cells are fine where heat comes in. */
export function deepWall(first_m: number, material: Material, more: Partial<Layer> = {}) {
  const thicknesses_m = [1, 1, 2, 6, 20].map((times) => times * first_m);
  return { layers: thicknesses_m.map((one) => layer(one, material, more)), cells: [160, 160, 80, 80, 80] };
}

export const insulated = { kind: 'flux', flux_W_m2: 0 } as const;
export const held = (temperature_degC: number) => ({ kind: 'fixed', temperature_degC }) as const;
export const fluid = (coefficient_W_m2K: number, fluid_degC: number) =>
  ({ kind: 'convection', coefficient_W_m2K, fluid_degC }) as const;

/** The states of a wall that was solved; a status that is not ok is a failed test. */
export function states(input: ConductInput): readonly ConductState[] {
  const result = conduct({ tolerance_K: 1e-5, ...input });
  if (result.status !== 'ok') throw new Error(`not solved: ${result.reason}`);
  return result.states;
}
