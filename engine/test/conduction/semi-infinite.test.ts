import { describe, it } from 'vitest';
import { checkHeat as check } from '../book.ts';
import { cover, deepWall, fluid, held, layer, type Material, states } from './walls.ts';

const exact = { evidence: 'derived' as const, source: 'exact solution, Carslaw & Jaeger 2nd ed. sections 2.4 to 2.9' };
const why = 'exact solution, cells and steps';
const times_s = [1, 10, 60, 120];
// 0, 0.5, 1 and 2 mm below the face of a wall whose first layers are 2 mm thick.
const probes = [
  { layer: 0, fraction: 0 },
  { layer: 0, fraction: 0.25 },
  { layer: 0, fraction: 0.5 },
  { layer: 0, fraction: 1 },
];
const wall = { ...deepWall(2e-3, cover), bottom: held(25), start_degC: 25, times_s, probes };

function checkTable(
  name: string,
  inputs: string,
  table: readonly (readonly (number | null)[])[],
  input: Parameters<typeof states>[0],
): void {
  for (const [row, state] of states(input).entries()) {
    for (const [column, published] of (table[row] ?? []).entries()) {
      if (published === null) continue;
      const place = ['the face', '0.5 mm', '1 mm', '2 mm'][column] ?? '';
      const id = `HEAT-01 ${name} after ${state.time_s} s at ${place}`;
      check(id, inputs, 'degC', published, state.probes_degC[column] ?? Number.NaN, 0.005, { ...exact, why });
    }
  }
}

describe('half-space', () => {
  it('[HEAT-01] face held at a temperature', () => {
    const input = { ...wall, top: held(180) };
    const table = [
      [null, 66.10391326, 29.00701699, 25.00128909],
      [null, 137.3097092, 99.55529285, 49.60185002],
      [null, 162.2715854, 144.9056063, 112.5804608],
      [null, 167.4425286, 155.0141918, 131.037842],
    ];
    checkTable('face at 180 degC', 'cover material, 25 degC', table, input);
    const heats = [121261.7464, 383463.3116, 939289.4485, 1328355.877];
    for (const [i, state] of states(input).entries()) {
      const published = heats[i] ?? Number.NaN;
      const id = `HEAT-01 heat through the face after ${state.time_s} s`;
      check(id, 'face at 180 degC', 'J/m2', published, state.top.heat_J_m2, 1e-3 * published, {
        ...exact,
        why: '0.1 %: the first instants of a jump',
      });
    }
  });

  it('[HEAT-01] face with a flux', () => {
    const table = [
      [57.54977523, null, 25.3676249],
      [127.9314271, null, 61.57238963],
      [277.1294748, null, 196.5827795],
    ];
    const input = { ...wall, top: { kind: 'flux', flux_W_m2: 20_000 } as const, times_s: [1, 10, 60] };
    checkTable('flux of 20 kW/m2', 'cover material, 25 degC', table, input);
  });

  it('[HEAT-01] face in a fluid', () => {
    const table = [
      [99.74961641, null, 26.06912198, 25.000225],
      [144.5954317, null, 76.35597788, 40.12519483],
      [164.5848314, null, 130.6203295, 100.379944],
      [169.0170032, null, 144.445607, 121.277311],
    ];
    checkTable('fluid of 180 degC, 500 W/m2K', 'cover material, 25 degC', table, { ...wall, top: fluid(500, 180) });
  });

  it('[HEAT-02] a water main freezes: the book’s depth after 60 days of frost', () => {
    const soil: Material = { k: 1, rho: 2000, c: 1 / (0.138e-6 * 2000) };
    const [state] = states({
      ...deepWall(0.25, soil),
      top: held(-15),
      bottom: held(20),
      start_degC: 20,
      times_s: [60 * 86_400],
      probes: Array.from({ length: 101 }, (_, i) => ({ layer: 2, fraction: i / 100 })),
    });
    const line = state?.probes_degC ?? [];
    const above = line.findIndex((t) => t > 0);
    const [below_degC, above_degC] = [line[above - 1] ?? Number.NaN, line[above] ?? Number.NaN];
    const depth_m = 0.5 + 0.005 * (above - 1 - below_degC / (above_degC - below_degC));
    const inputs = 'soil 0.138e-6 m2/s at 20 degC, face at -15 degC, 60 days';
    const book = {
      evidence: 'printed' as const,
      source: 'Incropera, DeWitt, Bergman & Lavine, water-main example (from memory)',
    };
    check('HEAT-02 printed depth of frost', inputs, 'm', 0.68, depth_m, 0.005, { ...book, why: 'half the last digit' });
    check('HEAT-02 depth of frost', inputs, 'm', 0.6769618545, depth_m, 1e-4, { ...exact, why });
  });

  it.each([
    ['aluminium of 180 degC on a cover', { k: 167, rho: 2700, c: 896 }, 180, cover, 174.831712],
    ['two covers of 180 and 25 degC', cover, 180, cover, 102.5],
    ['a cover of 190 degC on silicone', cover, 190, { k: 0.25, rho: 1200, c: 1300 }, 111.808694],
  ])('[HEAT-03] two bodies meet: %s', (name, first, hot_degC, second, published) => {
    // One second of contact: 0.3 mm in the cover, 8 mm in aluminium.
    const thick = (m: Material) => 3 * Math.sqrt((m.k / (m.rho * m.c)) * 1);
    const [a, b] = [thick(first), thick(second)];
    const [state] = states({
      layers: [layer(5 * a, first), layer(a, first), layer(b, second), layer(5 * b, second)],
      cells: [80, 160, 160, 80],
      top: held(hot_degC),
      bottom: held(25),
      start_degC: (depth_m) => (depth_m < 6 * a ? hot_degC : 25),
      times_s: [1],
      probes: [{ layer: 1, fraction: 1 }],
    });
    const ours = state?.probes_degC[0] ?? Number.NaN;
    check(`HEAT-03 ${name}`, '1 s after contact', 'degC', published, ours, 0.02, { ...exact, why });
  });

  it('[HEAT-04] heated platen on a half-space', () => {
    const all = states({
      ...deepWall(3e-3, cover),
      top: { kind: 'platen', capacity_J_m2K: 29030.4, flux_W_m2: 20_000, start_degC: 25 },
      bottom: held(25),
      start_degC: 25,
      times_s: [10, 60, 300, 600],
      probes: [],
    });
    const rises = [6.516717005, 36.21948294, 156.4763453, 283.4594078];
    for (const [i, state] of all.entries()) {
      const id = `HEAT-04 rise of a platen after ${state.time_s} s`;
      const inputs = '29 030.4 J/m2K, 20 kW/m2 on cover material';
      check(id, inputs, 'K', rises[i] ?? Number.NaN, state.top.surface_degC - 25, 0.005, { ...exact, why });
    }
  });
});
