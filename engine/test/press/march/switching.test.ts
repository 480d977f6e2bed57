import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { record, temperatureOf } from '../../../src/press/march/cells.ts';
import type { March } from '../../../src/press/march/march.ts';
import { shareBesideSwitch } from '../../../src/press/march/switch-flux.ts';
import { meltedShare } from '../../../src/press/stack/enthalpy.ts';
import type { Grid } from '../../../src/press/stack/grid.ts';
import type { Layer } from '../../../src/press/stack/layer.ts';
import { probePlace } from '../../../src/press/stack/probe-place.ts';
import { marchTo, type Wall, wallBetweenPlates } from './switching.ts';

const melt = { heat_J_kg: 0, centre_degC: 165, width_K: 50 } as const;
const layer = (name: string, thickness_m: number, [k, rho, c]: readonly [number, number, number]): Layer => ({
  name,
  thickness_m,
  conductivity_W_mK: k,
  density_kg_m3: rho,
  specificHeat_J_kgK: c,
});
const belt: Layer = { ...layer('belt', 2e-3, [0.22, 1150, 1900]), belt: true, melt };

/** Plates of 190 degC at once, cloth over the belt and silicone under it; both of the belt's contacts switch. */
const pressStack: Wall = {
  layers: [layer('cloth', 0.4e-3, [0.22, 1350, 1150]), belt, layer('silicone', 3e-3, [0.25, 1200, 1300])],
  cells: [15, 61, 61],
  dry_W_m2K: [1000, 1000, 1000, 1000],
  wetted_W_m2K: [null, 5000, 5000, null],
  start_degC: 25,
  top_degC: 190,
  bottom_degC: 190,
};

/** Upper face, middle and lower face of the belt. */
function beltAt({ slab: { cells } }: March, grid: Grid): number[] {
  return [0, 0.5, 1].map((fraction) => {
    const { upper, lower, share } = probePlace(grid, 1, fraction);
    const contact = cells.switches.find((one) => one.upper === upper && share > 0);
    const now = contact === undefined ? share : shareBesideSwitch(cells.numbers, contact, share, record.START);
    return temperatureOf(cells, upper) * (1 - now) + temperatureOf(cells, lower) * now;
  });
}

/** Seconds, then upper face, middle and lower face of the belt. */
const independent = [
  [10, 124.40438, 65.2625, 46.51198],
  [20, 144.014, 100.78412, 86.66026],
  [30, 159.70984, 127.11298, 116.74258],
  [45, 173.39258, 153.86406, 147.15985],
  [60, 180.50443, 169.16487, 165.16276],
  [90, 186.82463, 183.01521, 181.65369],
] as const;

describe('contacts that switch as the belt melts', () => {
  it('[CYCLE-18] between plates of 190 degC the belt warms as another program has it', () => {
    const { march, grid } = wallBetweenPlates(pressStack, {});
    for (const [time_s, ...published] of independent) {
      marchTo(march, time_s);
      beltAt(march, grid).forEach((ours, i) => {
        checkAgainst({
          topic: 'heat',
          id: `CYCLE-18 contact that switches after ${time_s} s, ${['upper face', 'middle', 'lower face'][i]}`,
          source: 'a separate program: 121 cells a layer and Richardson extrapolation, BDF, relative tolerance 1e-9',
          evidence: 'independent',
          inputs:
            'cloth, 2 mm belt, silicone between 190 degC; 1000 W/(m2 K) dry, 5000 wetted, melting 140 to 190 degC',
          unit: 'degC',
          published: published[i] ?? Number.NaN,
          ours,
          tolerance: 0.02,
          why: 'accuracy asked for',
        });
      });
    }
  });

  it('[CYCLE-18] at rest the flux is that of the contact which the face it makes has', () => {
    const wall: Wall = {
      layers: [belt],
      cells: [9],
      dry_W_m2K: [800, null],
      wetted_W_m2K: [6000, null],
      start_degC: 100,
      top_degC: 200,
      bottom_degC: 100,
    };
    const { march } = wallBetweenPlates(wall, {});
    marchTo(march, 3000);
    // q = (200 - 100)/(1/h + L/k) with h at the face 200 - q/h, found by halving.
    let [low, high] = [0, 100 / (1 / 6000 + 2e-3 / 0.22)];
    for (let i = 0; i < 100; i += 1) {
      const flux = 0.5 * (low + high);
      const face_degC = 100 + (flux * 2e-3) / 0.22;
      const h = 800 + 5200 * meltedShare(melt, face_degC);
      if (flux < 100 / (1 / h + 2e-3 / 0.22)) low = flux;
      else high = flux;
    }
    const { cells } = march.slab;
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-18 steady flux through a contact that switches',
      source: 'resistances in series, the contact at its own face, by halving',
      evidence: 'derived',
      inputs: '2 mm belt between 200 and 100 degC; 800 W/(m2 K) dry, 6000 wetted',
      unit: 'W/m2',
      published: low,
      ours: (0.22 / (2e-3 / 9)) * (temperatureOf(cells, 4) - temperatureOf(cells, 5)),
      tolerance: 1e-5,
      why: 'exact but for rounding',
    });
  });

  it('[CYCLE-18] the order in time stays four', () => {
    // The face stays inside its melting range the whole time, where the contact is a smooth function.
    const wall: Wall = {
      layers: [
        layer('cloth', 1e-3, [0.22, 1350, 1150]),
        { ...belt, melt: { heat_J_kg: 0, centre_degC: 160, width_K: 160 } },
      ],
      cells: [3, 5],
      dry_W_m2K: [1000, 500, 1000],
      wetted_W_m2K: [null, 4000, null],
      start_degC: 130,
      top_degC: 190,
      bottom_degC: 150,
    };
    const after = (step_s: number) => {
      const { march } = wallBetweenPlates(wall, { step_s });
      marchTo(march, 16);
      return [2, 4, 6].map((i) => temperatureOf(march.slab.cells, i));
    };
    const exact = after(0.05);
    const error = (step_s: number) => Math.max(...after(step_s).map((value, i) => Math.abs(value - (exact[i] ?? 0))));
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-18 order with a contact that switches',
      source: 'order of the method, Hairer & Wanner, Solving Ordinary Differential Equations II, IV.7',
      evidence: 'derived',
      inputs: 'cloth and belt between 190 and 150 degC, steps of 2 and 1 s',
      unit: '1',
      published: 4,
      ours: Math.log2(error(2) / error(1)),
      tolerance: 0.5,
      why: 'observed order of a stiff problem',
    });
    expect(error(1)).toBeLessThan(error(2) / 10);
  });
});
