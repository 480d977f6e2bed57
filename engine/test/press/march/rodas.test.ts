import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { conduct } from '../../../src/press/index.ts';
import { lastStage, rodasp, rowLength } from '../../../src/press/march/rodas.ts';

const { gamma, a, c } = rodasp;
const at = (table: Float64Array, row: number, column: number) => table[row * rowLength + column] ?? 0;

/** One step of y' = z*y from 1: what the coefficients do to the simplest of problems. */
function step(z: number): number {
  const k: number[] = [];
  let stage = 1;
  for (let s = 0; s <= lastStage; s += 1) {
    stage = 1;
    let sum = 0;
    k.forEach((one, j) => {
      stage += at(a, s, j) * one;
      sum += at(c, s, j) * one;
    });
    k.push((z * stage + sum) / (1 / gamma - z));
  }
  return stage + (k[lastStage] ?? 0);
}

const derived = { topic: 'heat', evidence: 'derived', unit: '1' } as const;

describe('steps in time', () => {
  it('[MARCH-01] the stability function is that of an L-stable method of fourth order', () => {
    // Stiffly accurate with gamma 1/4: R(z) agrees with exp(z) to z^4 and goes to 0 at infinity.
    const error = (z: number) => Math.abs(step(z) - Math.exp(z));
    const order = Math.log2(error(-0.1) / error(-0.05)) - 1;
    checkAgainst({
      ...derived,
      id: 'MARCH-01 order in time',
      source: 'order of the method, Hairer & Wanner, Solving Ordinary Differential Equations II, IV.7',
      inputs: "y' = -y, steps 0.1 and 0.05",
      published: 4,
      ours: order,
      tolerance: 0.1,
      why: 'observed order within a tenth',
    });
    for (const z of [-1e3, -1e6, -1e9]) expect(Math.abs(step(z))).toBeLessThan(5 / Math.abs(z) ** 0.9);
    for (let z = -0.01; z > -1e4; z *= 1.3) expect(Math.abs(step(z))).toBeLessThan(1);
  });

  const wall = (options: { tolerance_K?: number; step_s?: number }) => {
    const result = conduct({
      layers: [
        { name: 'wall', thickness_m: 0.003, conductivity_W_mK: 0.22, density_kg_m3: 1150, specificHeat_J_kgK: 1900 },
      ],
      cells: [21],
      top: { kind: 'convection', coefficient_W_m2K: 800, fluid_degC: 190 },
      bottom: { kind: 'convection', coefficient_W_m2K: 800, fluid_degC: 190 },
      start_degC: 25,
      times_s: [20],
      probes: [{ layer: 0, fraction: 0.5 }],
      ...options,
    });
    if (result.status !== 'ok') throw new Error(result.reason);
    return result.states[0]?.probes_degC[0] ?? Number.NaN;
  };

  it('[MARCH-01] the observed order on a wall is four', () => {
    const exact = wall({ step_s: 0.02 });
    const error = (step_s: number) => Math.abs(wall({ step_s }) - exact);
    expect(Math.log2(error(2) / error(1))).toBeGreaterThan(3.5);
    expect(Math.log2(error(1) / error(0.5))).toBeGreaterThan(3.6);
  });

  it('[MARCH-03] a wall that is hot on one face, deep inside as if it had no end', () => {
    const result = conduct({
      layers: [
        { name: 'wall', thickness_m: 0.02, conductivity_W_mK: 0.22, density_kg_m3: 1150, specificHeat_J_kgK: 1900 },
      ],
      cells: [201],
      top: { kind: 'fixed', temperature_degC: 180 },
      bottom: { kind: 'fixed', temperature_degC: 25 },
      start_degC: 25,
      times_s: [10],
      probes: [{ layer: 0, fraction: 0.05 }],
    });
    checkAgainst({
      ...derived,
      id: 'MARCH-03 step on a semi-infinite wall',
      source: 'Ts + (Ti - Ts) erf(x/2/sqrt(a t)), Incropera et al. section 5.7 (from memory)',
      inputs: '180 degC on 25 degC, 1 mm deep, 10 s',
      unit: 'degC',
      published: 99.55529285,
      ours: result.status === 'ok' ? (result.states[0]?.probes_degC[0] ?? Number.NaN) : Number.NaN,
      tolerance: 0.02,
      why: 'cells of 0.1 mm',
    });
  });

  it('[MARCH-02] what comes out lies near the tolerance asked for', () => {
    const exact = wall({ step_s: 0.02 });
    for (const tolerance_K of [1e-2, 1e-3, 1e-4]) {
      expect(Math.abs(wall({ tolerance_K }) - exact)).toBeLessThan(5 * tolerance_K);
    }
    checkAgainst({
      ...derived,
      id: 'MARCH-02 error within the tolerance',
      source: 'the same wall with steps of 0.02 s',
      inputs: '3 mm, 800 W/(m2 K) on both faces, 20 s, 0.001 K a step',
      unit: 'degC',
      published: exact,
      ours: wall({ tolerance_K: 1e-3 }),
      tolerance: 5e-3,
      why: 'errors of the steps add up',
    });
  });
});
