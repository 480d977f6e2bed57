import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { cycle, cycleMap } from '../../../src/press/index.ts';
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
});
