import { describe, expect, it } from 'vitest';
import { conduct } from '../../src/press/index.ts';
import { checkHeat as check } from '../book.ts';
import { cover, held, insulated, layer, states } from './walls.ts';

const [L, tau_s] = [3e-3, 30];
const kSlope = -5e-4;
const cSlope = 1e-3;
const temperature = (x_m: number, t_s: number) =>
  100 + 40 * Math.sin((Math.PI * x_m) / L) * Math.exp(-t_s / tau_s) + (10 * x_m) / L;

/** rho*c*dT/dt - d/dx(k*dT/dx) of the solution that was made up. */
function source(x_m: number, t_s: number): number {
  const wave = 40 * Math.exp(-t_s / tau_s);
  const [sin, cos] = [Math.sin((Math.PI * x_m) / L), Math.cos((Math.PI * x_m) / L)];
  const T = temperature(x_m, t_s);
  const Tt = (-wave * sin) / tau_s;
  const Tx = (wave * cos * Math.PI) / L + 10 / L;
  const Txx = -wave * sin * (Math.PI / L) ** 2;
  const k = 0.22 * (1 + kSlope * (T - 25));
  return 2.185e6 * (1 + cSlope * (T - 25)) * Tt - k * Txx - 0.22 * kSlope * Tx ** 2;
}

/** c = 1900*(1 + 1e-3*(T - 25)) stated at 20 degC. */
const material = layer(
  L,
  { k: 0.22, rho: 1150, c: 1900 * (1 - 5 * cSlope) },
  {
    conductivitySlope_1_K: kSlope,
    specificHeatSlope_J_kgK2: 1900 * cSlope,
  },
);

function largestError_K(cells: number, more: { tolerance_K?: number; step_s?: number } = {}): number {
  const result = conduct({
    layers: [material],
    cells: [cells],
    top: held(100),
    bottom: held(110),
    start_degC: (x_m) => temperature(x_m, 0),
    source_W_m3: source,
    times_s: [10],
    probes: [],
    tolerance_K: 1e-8,
    ...more,
  });
  if (result.status !== 'ok') throw new Error(`not solved: ${result.reason}`);
  const [state] = result.states;
  const errors = result.depths_m.map((x_m, i) => Math.abs((state?.cells_degC[i] ?? Number.NaN) - temperature(x_m, 10)));
  return Math.max(...errors);
}

describe('a solution made up', () => {
  it('[HEAT-12] the source of the test itself is right', () => {
    const rows = [
      [0.75e-3, 0, 130.7842712, 4304342.553],
      [1.5e-3, 10, 133.6612524, 4225944.088],
      [2e-3, 25, 121.7215902, 2257559.393],
    ] as const;
    for (const [x_m, t_s, T, S] of rows) {
      expect(temperature(x_m, t_s)).toBeCloseTo(T, 6);
      expect(source(x_m, t_s) / S).toBeCloseTo(1, 9);
    }
  });

  it('[HEAT-12] order in space is 2 on four grids, conductivity and specific heat depending on temperature', () => {
    const errors = [10, 20, 40, 80].map((cells) => largestError_K(cells));
    const theory = {
      evidence: 'derived' as const,
      source: 'Salari & Knupp, SAND2000-1444, 2000: order of the scheme',
      why: 'within 0.1 of 2',
    };
    for (const [i, coarse] of errors.slice(0, 3).entries()) {
      const order = Math.log2(coarse / (errors[i + 1] ?? Number.NaN));
      const id = `HEAT-12 order in space, ${10 * 2 ** i} to ${20 * 2 ** i} cells`;
      check(id, '3 mm, k and c depending on temperature, 10 s', '1', 2, order, 0.1, theory);
    }
    expect(errors[3]).toBeLessThan(3e-3);
  });

  it('[HEAT-12] steps and cells refined together: steps add less than a tenth', () => {
    const together = [10, 20, 40, 80].map((cells) => largestError_K(cells, { step_s: 20 / cells }));
    const theory = {
      evidence: 'derived' as const,
      source: 'Salari & Knupp, SAND2000-1444, 2000',
      why: 'within 0.1 of 2',
    };
    const [coarse = Number.NaN, fine = Number.NaN] = together.slice(2);
    check(
      'HEAT-12 order with steps and cells halved together',
      '40 to 80 cells',
      '1',
      2,
      Math.log2(coarse / fine),
      0.1,
      theory,
    );
  });
});

describe('balance', () => {
  const wall = {
    layers: [layer(2e-3, cover), layer(1e-3, { k: 0.23, rho: 1200, c: 1300 })],
    contacts_W_m2K: [1500],
    cells: [30, 20],
    top: { kind: 'flux', flux_W_m2: 8000 } as const,
    bottom: { kind: 'convection', coefficient_W_m2K: 60, fluid_degC: 25 } as const,
    start_degC: 25,
    times_s: [5, 30, 90],
    probes: [{ layer: 0, fraction: 0.5 }],
  };

  it('[HEAT-13] heat in the cells is the heat that came in through the faces', () => {
    for (const state of states(wall)) {
      const rise = (cell: number) => (state.cells_degC[cell] ?? Number.NaN) - 25;
      let stored = 0;
      for (let i = 0; i < 30; i += 1) stored += (2e-3 / 30) * 1150 * 1900 * rise(i);
      for (let i = 30; i < 50; i += 1) stored += (1e-3 / 20) * 1200 * 1300 * rise(i);
      const residual = Math.abs(stored - state.top.heat_J_m2 - state.bottom.heat_J_m2) / state.top.heat_J_m2;
      expect(residual).toBeLessThan(1e-10);
    }
  });

  it('[HEAT-13] turned over, the stack gives the same temperatures; cut in two, a time gives the same end', () => {
    const [, , end] = states(wall);
    const turned = states({
      ...wall,
      layers: wall.layers.toReversed(),
      cells: wall.cells.toReversed(),
      top: wall.bottom,
      bottom: wall.top,
      probes: [{ layer: 1, fraction: 0.5 }],
    });
    expect(turned[2]?.probes_degC[0]).toBeCloseTo(end?.probes_degC[0] ?? Number.NaN, 4);
    const [once] = states({ ...wall, times_s: [90] });
    expect(Math.abs((once?.probes_degC[0] ?? 0) - (end?.probes_degC[0] ?? Number.NaN))).toBeLessThan(0.001);
  });

  it('[HEAT-13] without sources no cell gets warmer or colder than what surrounds it', () => {
    for (const state of states({
      layers: [layer(2e-3, cover)],
      cells: [40],
      top: held(180),
      bottom: insulated,
      start_degC: 25,
      times_s: [0.1, 1, 10, 100],
      probes: [],
    })) {
      for (const t of state.cells_degC) {
        expect(t).toBeGreaterThan(25 - 0.01);
        expect(t).toBeLessThan(180 + 0.01);
      }
    }
  });
});
