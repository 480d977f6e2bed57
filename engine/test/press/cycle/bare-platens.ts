import type { CycleInput, Platen } from '../../../src/press/index.ts';
import { pressed } from './presses.ts';

/** Two equal platens with next to nothing between them and sensors without lag: each is one lump by itself. */
export function barePlatens(of: Partial<Platen>, recipe: Partial<CycleInput['recipe']> = {}): CycleInput {
  const plain = pressed('light', 'Alder-24');
  const platen: Platen = { ...plain.top, sensorLag_s: 0, ...of };
  return {
    ...plain,
    layers: [
      {
        name: 'film',
        thickness_m: 1e-5,
        conductivity_W_mK: 0.2,
        density_kg_m3: 1,
        specificHeat_J_kgK: 100,
        belt: true,
      },
    ],
    contacts_W_m2K: [1, 1],
    top: platen,
    bottom: platen,
    recipe: { ...plain.recipe, top_degC: 180, bottom_degC: 180, ...recipe },
    probes: [],
  };
}
