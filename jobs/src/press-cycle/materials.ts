import type { Layer } from '@loopwright/engine/press';
import type { Belt } from '@loopwright/plant';

/** A layer but for its name and thickness. */
export type Material = Omit<Layer, 'name' | 'thickness_m'>;

/*
 * Example card of materials: public material data for the conductivity and specific heat of TPU and the conductivity of
 * silicone; the rest from memory. The belt maker's data sheet wins.
 */
const tpu: Material = {
  conductivity_W_mK: 0.2,
  density_kg_m3: 1150,
  specificHeat_J_kgK: 1575,
  specificHeatSlope_J_kgK2: 3.75,
  specificHeatCap_J_kgK: 2200,
  belt: true,
};
const melt = { heat_J_kg: 8000, width_K: 50 };
const esterDensity_kg_m3 = 1210;

/** The cover of a belt: TPU that melts over a range round its peak. */
export function coverMaterial({ polymer }: Belt, meltPeak_degC: number): Material {
  const density_kg_m3 = polymer === 'ester' ? esterDensity_kg_m3 : tpu.density_kg_m3;
  return { ...tpu, density_kg_m3, melt: { ...melt, centre_degC: meltPeak_degC } };
}

/** The tension member: fabric soaked with TPU. */
export function memberMaterial({ tensionMember }: Belt): Material {
  const conductivity_W_mK = tensionMember === 'aramid' ? 0.19 : 0.18;
  return { conductivity_W_mK, density_kg_m3: 1250, specificHeat_J_kgK: 1500, belt: true };
}

export const pressPlateMaterial: Material = {
  conductivity_W_mK: 160,
  density_kg_m3: 2700,
  specificHeat_J_kgK: 920,
};
export const releaseClothMaterial: Material = {
  conductivity_W_mK: 0.22,
  density_kg_m3: 1400,
  specificHeat_J_kgK: 1150,
};

/** Silicone, whose conductivity the template may say. */
export function matMaterial(conductivity_W_mK: number): Material {
  return { conductivity_W_mK, density_kg_m3: 1200, specificHeat_J_kgK: 1300 };
}

/** Heat capacity of a metal per volume [J/m3K], from memory: 2700 x 900 and 7850 x 480. */
export const platenMetals = { aluminium: 2700 * 900, steel: 7850 * 480 } as const;

/** Heater mat, bolts and roots of the fins, per area of a platen [J/m2K]. */
export const platenFittings_J_m2K = 1000;
