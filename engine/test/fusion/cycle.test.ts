import { describe, expect, it } from 'vitest';
import { fusion } from '../../src/fusion/index.ts';
import { type Cycle, type CycleInput, cycle, type Layer, type Platen } from '../../src/press/index.ts';

const cover: Omit<Layer, 'name' | 'thickness_m'> = {
  conductivity_W_mK: 0.2,
  density_kg_m3: 1150,
  specificHeat_J_kgK: 1575,
  specificHeatSlope_J_kgK2: 3.75,
  specificHeatCap_J_kgK: 2200,
  melt: { heat_J_kg: 8000, centre_degC: 165, width_K: 50 },
  belt: true,
};
const ply = { conductivity_W_mK: 0.18, density_kg_m3: 1250, specificHeat_J_kgK: 1500, belt: true };
const silicone = { conductivity_W_mK: 0.23, density_kg_m3: 1200, specificHeat_J_kgK: 1300 };
const plate = { conductivity_W_mK: 160, density_kg_m3: 2700, specificHeat_J_kgK: 920 };
const cloth = { conductivity_W_mK: 0.22, density_kg_m3: 1400, specificHeat_J_kgK: 1150 };

/** An invented light press: aluminium of 10 mm, 700 W a platen, air-cooled. */
const platen: Platen = {
  area_m2: 0.045,
  capacity_J_m2K: 25_300,
  capacitySlope_1_K: 4.4e-4,
  heater_W: 700,
  nominal_V: 120,
  loss_W_m2K: 8,
  fan_W_m2K: 130,
  sensorLag_s: 3,
  control: { kind: 'pi', band_K: 6, integral_s: 60, tracking_s: 10 },
};

function press(template_mm: number, dwell_s: number, times_s: readonly number[] = []): CycleInput {
  return {
    layers: [
      { name: 'plate', thickness_m: 2e-3, ...plate },
      { name: 'cloth', thickness_m: 0.25e-3, ...cloth },
      { name: 'cover', thickness_m: 0.8e-3, ...cover },
      { name: 'ply', thickness_m: 0.8e-3, ...ply },
      { name: 'cover', thickness_m: 0.8e-3, ...cover },
      { name: 'template', thickness_m: template_mm / 1000, ...silicone },
    ],
    contacts_W_m2K: [3000, 1000, 1500, null, null, 1500, 1000],
    ambient_degC: 25,
    top: platen,
    bottom: platen,
    supply: { volts_V: 120, leadResistance_ohm: 0.08 },
    recipe: { top_degC: 182, bottom_degC: 188, ready_K: 2, dwell_s, open_degC: 50, pressure_Pa: 2e5 },
    probes: [
      { layer: 3, fraction: 0.5 },
      { layer: 4, fraction: 1 },
    ],
    times_s,
  };
}

function solved(input: CycleInput): Cycle {
  const result = cycle(input);
  if (result.status !== 'ok') throw new Error(result.reason);
  return result;
}

describe('fusion over a press cycle', () => {
  it('[FUSE-22] trend: a thicker template needs a longer dwell for the same history at the belt’s lower face', () => {
    const healing = (template_mm: number, dwell_s: number) =>
      solved(press(template_mm, dwell_s)).probes[1]?.healing ?? Number.NaN;
    const wanted = healing(1.5, 100);
    const thicknesses_mm = [1.5, 3, 6];
    const dwells_s = thicknesses_mm.map((template_mm) => {
      let [low, high] = [0, 400];
      for (let i = 0; i < 12; i += 1) {
        const middle = (low + high) / 2;
        if (healing(template_mm, middle) < wanted) low = middle;
        else high = middle;
      }
      return high;
    });
    expect(dwells_s[0]).toBeCloseTo(100, 0);
    expect((dwells_s[1] ?? 0) - (dwells_s[0] ?? 0)).toBeGreaterThan(1);
    expect((dwells_s[2] ?? 0) - (dwells_s[1] ?? 0)).toBeGreaterThan((dwells_s[1] ?? 0) - (dwells_s[0] ?? 0));
  });

  it('[FUSE-26] the same history, added up on its own, gives what the cycle added up while it ran', () => {
    const { marks } = solved(press(1.8, 160));
    const times_s = Array.from({ length: Math.floor(marks.open_s) }, (_, i) => i);
    const run = solved(press(1.8, 160, times_s));
    const nodes_degC = run.probes.map(({ values_degC }) => (values_degC ?? []).map((value) => value ?? Number.NaN));
    const apart = fusion({ times_s, nodes_degC, pressure_Pa: 2e5 });
    for (const [i, node] of apart.nodes.entries()) {
      const inside = run.probes[i];
      expect(Math.abs(node.healing / (inside?.healing ?? 0) - 1)).toBeLessThan(2e-3);
      expect(Math.abs(node.flow / (inside?.flow ?? 0) - 1)).toBeLessThan(2e-3);
      expect(Math.abs((1 - node.molarMassShare) / (1 - (inside?.molarMassShare ?? 0)) - 1)).toBeLessThan(2e-3);
      expect(node.peak_degC).toBeCloseTo(inside?.peak_degC ?? 0, 1);
    }
    expect(apart.grade).toBe(run.grade);
  });
});
