import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { cycle, cycleMap, type RecipeStep } from '../../../src/press/index.ts';
import type { Refusal } from '../../../src/refusal.ts';
import { pressed } from './presses.ts';

describe('a map of cycles', () => {
  it('[CYCLE-10] each point is what the cycle by itself is, though heat-up and history are shared', () => {
    const input = pressed('light', 'Alder-24');
    const map = { shift_K: [-8, 0, 6], dwell_s: [20, 160, 400], pressure_Pa: [1e5, 2e5] };
    const points = [...cycleMap({ ...input, map })].flat();
    expect(points.length).toBe(3 * 3 * 2);
    const off: number[] = [];
    for (const point of points) {
      const { top_degC, bottom_degC } = input.recipe;
      const shifted = { top_degC: top_degC + point.shift_K, bottom_degC: bottom_degC + point.shift_K };
      const alone = cycle({
        ...input,
        recipe: { ...input.recipe, ...shifted, dwell_s: point.dwell_s, pressure_Pa: point.pressure_Pa },
      });
      if (alone.status !== 'ok') throw new Error(alone.reason);
      expect(point.status).toBe('ok');
      expect(point.grade).toBe(alone.grade);
      off.push(Math.abs((point.open_s ?? 0) - alone.marks.open_s));
      expect(Math.abs((point.bondMin ?? 0) / alone.belt.bondMin - 1)).toBeLessThan(0.005);
      expect(Math.abs((point.fillMin_m ?? 0) / alone.belt.fillMin_m - 1)).toBeLessThan(0.005);
    }
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-10 map against single cycles',
      source: 'the cycle by itself: a check of what the map shares',
      evidence: 'derived',
      inputs: 'light example press, 18 points, largest difference of the opening time',
      unit: 's',
      published: 0,
      ours: Math.max(...off),
      tolerance: 0.1,
      why: 'accuracy asked for',
    });
  });

  it('[CYCLE-10] a point that is never hot or never cold has no numbers; a bad axis is refused by its place', () => {
    const input = pressed('light', 'Alder-24');
    const weak = { ...input, supply: { ...input.supply, volts_V: 25 } };
    const [cold] = [...cycleMap({ ...weak, map: { shift_K: [0], dwell_s: [20] } })].flat();
    expect([cold?.status, cold?.open_s]).toEqual(['set-point-not-reached', null]);
    const refusedAt = (map: Parameters<typeof cycleMap>[0]['map']) => {
      try {
        return [...cycleMap({ ...input, map })].length;
      } catch (cause) {
        return (cause as Refusal).path;
      }
    };
    expect(refusedAt({ shift_K: [0], dwell_s: [160, 20] })).toBe('map.dwell_s[1]');
    expect(refusedAt({ shift_K: [0], dwell_s: [20], pressure_Pa: [-1] })).toBe('map.pressure_Pa[0]');
    expect(refusedAt({ shift_K: Array(70).fill(0), dwell_s: Array(70).fill(20) })).toBe('map');
  });

  const steps: readonly RecipeStep[] = [
    { kind: 'ramp', top_degC: 120, bottom_degC: 120 },
    { kind: 'soak', time_s: 30 },
    { kind: 'ramp', rate_K_s: 0.5 },
    { kind: 'dwell', time_s: 40 },
    { kind: 'soak', time_s: 5 },
    { kind: 'dwell' },
    { kind: 'ramp', top_degC: 170, bottom_degC: 172 },
    { kind: 'cool', below_degC: 90 },
    { kind: 'cool' },
  ];
  /** The same with the pressure let off before the last dwell, so that pressures no longer share a history. */
  const eased = steps.toSpliced(4, 1, { kind: 'pressure', pressure_Pa: 1.2e5 });

  it('[CYCLE-19] of a recipe with steps the last dwell and the ramp before it are varied: each cycle bit for bit', () => {
    const input = { ...pressed('light', 'Alder-24'), probes: [] };
    const map = { shift_K: [-6, 0, 4], dwell_s: [0, 60, 200], pressure_Pa: [1.2e5, 2e5] };
    for (const given of [steps, eased]) {
      const points = [...cycleMap({ ...input, recipe: { ...input.recipe, steps: given }, map })].flat();
      expect(points.length).toBe(3 * 3 * 2);
      for (const { shift_K, dwell_s, pressure_Pa, ...point } of points) {
        const own = given.map((step, i): RecipeStep => {
          if (i === 2) return { kind: 'ramp', top_degC: 182 + shift_K, bottom_degC: 188 + shift_K, rate_K_s: 0.5 };
          return i === 5 ? { kind: 'dwell', time_s: dwell_s } : step;
        });
        const alone = cycle({ ...input, recipe: { ...input.recipe, steps: own, pressure_Pa } });
        if (alone.status !== 'ok') throw new Error(alone.reason);
        const { bondMin, fillMin_m, fillMax_m, molarMassShareMin, max_degC } = alone.belt;
        const { ready_s, open_s } = alone.marks;
        const { status, grade } = alone;
        const belt = { bondMin, fillMin_m, fillMax_m, molarMassShareMin, max_degC };
        expect(point).toEqual({ status, grade, ready_s, open_s, ...belt });
      }
    }
  });

  it('[CYCLE-19] ramp, dwell and cool give the map of the recipe without steps', () => {
    const input = pressed('light', 'Sedge-18');
    const map = { shift_K: [-4, 2], dwell_s: [30, 175] };
    const simple: readonly RecipeStep[] = [{ kind: 'ramp' }, { kind: 'dwell' }, { kind: 'cool' }];
    const plain = [...cycleMap({ ...input, map })].flat();
    const stepped = [...cycleMap({ ...input, recipe: { ...input.recipe, steps: simple }, map })].flat();
    stepped.forEach((point, i) => {
      expect(point.grade).toBe(plain[i]?.grade);
      expect(Math.abs((point.open_s ?? 0) - (plain[i]?.open_s ?? 1e9))).toBeLessThan(0.1);
      expect(Math.abs((point.fillMin_m ?? 0) / (plain[i]?.fillMin_m ?? 1) - 1)).toBeLessThan(0.005);
    });
  });

  it('[CYCLE-19] a step that is never hot or never cold has no numbers; a set point beyond all is refused first', () => {
    const input = pressed('light', 'Alder-24');
    const pointOf = (change: object, given: readonly RecipeStep[]) => {
      const recipe = { ...input.recipe, steps: given };
      return [...cycleMap({ ...input, ...change, recipe, map: { shift_K: [0], dwell_s: [20] } })].flat()[0];
    };
    const weak = { supply: { ...input.supply, volts_V: 25 } };
    expect(pointOf(weak, steps)).toMatchObject({ status: 'set-point-not-reached', open_s: null });
    const chilly: RecipeStep = { kind: 'ramp', top_degC: 20, bottom_degC: 20 };
    expect(pointOf({}, steps.toSpliced(6, 1, chilly))).toMatchObject({ status: 'never-cools', open_s: null });
    const recipe = { ...input.recipe, steps: steps.toSpliced(2, 1, { kind: 'ramp', top_degC: 345 }) };
    expect(() => [...cycleMap({ ...input, recipe, map: { shift_K: [0, 10], dwell_s: [20] } })]).toThrow(
      expect.objectContaining({ code: 'out-of-range', path: 'recipe.steps[2].top_degC' }),
    );
  });
});
