import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import { cycle, cycleMapRows } from '../../../src/press/index.ts';
import { pressed } from './presses.ts';

describe('a map of cycles', () => {
  it('[CYCLE-10] each point is what the cycle by itself is, though heat-up and history are shared', () => {
    const input = pressed('light', 'Alder-24');
    const axes = { setShifts_K: [-8, 0, 6], dwells_s: [20, 160, 400], pressures_Pa: [1e5, 2e5], volts_V: [108, 120] };
    const points = [...cycleMapRows({ cycle: input, axes })].flatMap((row) => row.points);
    expect(points.length).toBe(3 * 3 * 2 * 2);
    const off: number[] = [];
    for (const point of points) {
      const { top_degC, bottom_degC } = input.recipe;
      const shifted = { top_degC: top_degC + point.setShift_K, bottom_degC: bottom_degC + point.setShift_K };
      const alone = cycle({
        ...input,
        supply: { ...input.supply, volts_V: point.volts_V },
        recipe: { ...input.recipe, ...shifted, dwell_s: point.dwell_s, pressure_Pa: point.pressure_Pa },
      });
      if (alone.status !== 'ok') throw new Error(alone.reason);
      expect(point.outcome).toBe('ok');
      expect(point.grade).toBe(alone.grade);
      off.push(Math.abs((point.open_s ?? 0) - alone.marks.open_s));
      expect(Math.abs((point.healingMin ?? 0) / alone.belt.healingMin - 1)).toBeLessThan(0.005);
      expect(Math.abs((point.fillMin_m ?? 0) / alone.belt.fillMin_m - 1)).toBeLessThan(0.005);
    }
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-10 map against single cycles',
      source: 'the cycle by itself: a check of what the map shares',
      evidence: 'derived',
      inputs: 'light example press, 36 points, largest difference of the opening time',
      unit: 's',
      published: 0,
      ours: Math.max(...off),
      tolerance: 0.1,
      why: 'accuracy asked for',
    });
  });
});
