import { describe, expect, it } from 'vitest';
import { fusion } from '../../src/fusion/index.ts';
import { type Cycle, type CycleInput, cycle } from '../../src/press/index.ts';
import { pressed } from '../press/cycle/presses.ts';

/** Alder-24 in the light example press with another template, another dwell. */
function press(template_mm: number, dwell_s: number, times_s: readonly number[] = []): CycleInput {
  const plain = pressed('light', 'Alder-24');
  return {
    ...plain,
    layers: plain.layers.map((layer) =>
      layer.name === 'template' ? { ...layer, thickness_m: template_mm / 1000 } : layer,
    ),
    recipe: { ...plain.recipe, dwell_s },
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
