import type { EndParts } from '../../../src/press/march/end.ts';
import { makeHeaters } from '../../../src/press/march/heaters.ts';
import { type March, makeMarch, tryAccurateStep } from '../../../src/press/march/march.ts';
import { endCurve, makeSlab, startCells, timeOf } from '../../../src/press/march/slab.ts';
import { acceptStep } from '../../../src/press/march/step.ts';
import { type Grid, stackGrid } from '../../../src/press/stack/grid.ts';
import type { Layer } from '../../../src/press/stack/layer.ts';

const still: EndParts = {
  held: true,
  capacity_J_m2K: 0,
  capacitySlope_1_K: 0,
  loss_W_m2K: 0,
  ambient_degC: 0,
  flux_W_m2: 0,
  start_degC: 0,
  set_degC: 0,
  gain_1_K: 0,
  integralRate_1_Ks: 0,
  trackingRate_1_s: 0,
  sensorLag_s: 1,
};

export interface Wall {
  readonly layers: readonly Layer[];
  readonly cells: readonly number[];
  readonly dry_W_m2K: readonly (number | null)[];
  readonly wetted_W_m2K: readonly (number | null)[];
  readonly start_degC: number;
  readonly top_degC: number;
  readonly bottom_degC: number;
}

/** A stack between plates that keep their temperature, with contacts that switch. */
export function wallBetweenPlates(
  wall: Wall,
  options: { readonly tolerance_K?: number; readonly step_s?: number },
): { readonly march: March; readonly grid: Grid } {
  const plate = endCurve(still);
  const grid = stackGrid(wall.layers, wall.dry_W_m2K, wall.cells, { top: plate, bottom: plate }, wall.wetted_W_m2K);
  const start = new Float64Array(grid.count).fill(wall.start_degC);
  start[0] = wall.top_degC;
  start[grid.count - 1] = wall.bottom_degC;
  const slab = makeSlab({
    cells: startCells(grid, start),
    top: { ...still, start_degC: wall.top_degC },
    bottom: { ...still, start_degC: wall.bottom_degC },
    heaters: makeHeaters({ volts_V: 0, lead_ohm: 0, top_S: 0, bottom_S: 0, area_m2: 1 }),
  });
  const { tolerance_K = 1e-3, step_s: fixedStep_s } = options;
  return { march: makeMarch(slab, { tolerance_K, first_s: 1e-3, fixedStep_s, mostTries: 100_000 }), grid };
}

/** Marches on to a time. */
export function marchTo(march: March, end_s: number): void {
  while (end_s - timeOf(march.slab) > 1e-9) {
    const step_s = tryAccurateStep(march, end_s - timeOf(march.slab));
    if (step_s === 0) throw new Error(march.failure);
    acceptStep(march.slab, step_s);
  }
}
