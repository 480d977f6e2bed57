import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../../tools/validation/check.ts';
import type { CycleInput } from '../../../src/press/index.ts';
import { done, refusal } from './done.ts';
import { pressed } from './presses.ts';

const alder = pressed('light', 'Alder-24');

function columnsOf(input: CycleInput, left_K: number, right_K: number) {
  const result = done({ ...input, columns: { left_K, right_K } });
  if (result.columns === undefined) throw new Error('no columns');
  return { result, ...result.columns };
}

describe('left, middle and right of the platens', () => {
  it('[CYCLE-17] a column without deviation is the middle; the middle knows nothing of its columns', () => {
    const wet = { ...alder, fusion: { moisture_share: 0.0004 } };
    const { result, left, centre } = columnsOf(wet, 0, -3);
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-17 column as the middle',
      source: 'the middle itself, whose platens the column is given',
      evidence: 'derived',
      inputs: 'light example press, Alder-24, deviation 0; least healing',
      unit: '1',
      published: centre.belt.healingMin,
      ours: left.belt.healingMin,
      tolerance: 1e-6,
      why: 'the same stack between the same platens',
    });
    expect(left.belt.max_degC).toBeCloseTo(centre.belt.max_degC, 7);
    expect(left.belt.flowMin / centre.belt.flowMin).toBeCloseTo(1, 8);
    expect(left.grade).toBe(centre.grade);
    const alone = done(wet);
    expect(Math.abs(result.marks.open_s - alone.marks.open_s)).toBeLessThan(0.01);
    expect(centre.belt.healingMin / alone.belt.healingMin).toBeCloseTo(1, 4);
  });

  it('[CYCLE-17] in a stack of constant properties all excess over the air is in the proportion of the platens', () => {
    const linear: CycleInput = {
      ...alder,
      layers: alder.layers.map(
        ({ melt: _, specificHeatSlope_J_kgK2: __, specificHeatCap_J_kgK: ___, ...layer }) => layer,
      ),
      recipe: { ...alder.recipe, top_degC: 185, bottom_degC: 185 },
    };
    const { left, centre, right } = columnsOf(linear, -4, 6);
    checkAgainst({
      topic: 'heat',
      id: 'CYCLE-17 excess of a linear stack',
      source: 'conduction is linear: excess times 1 + deviation/(set - air)',
      evidence: 'derived',
      inputs: 'light example press, constant properties, 185 degC on both sides, 4 K cooler on the left',
      unit: 'degC',
      published: 25 + (centre.belt.max_degC - 25) * (1 - 4 / 160),
      ours: left.belt.max_degC,
      tolerance: 1e-6,
      why: 'to rounding',
    });
    expect(right.belt.max_degC).toBeCloseTo(25 + (centre.belt.max_degC - 25) * (1 + 6 / 160), 6);
    expect(right.belt.atOpenMax_degC).toBeCloseTo(25 + (centre.belt.atOpenMax_degC - 25) * (1 + 6 / 160), 6);
  });

  it('[CYCLE-17] a cooler edge fills less; the worst column is named; at the end of a long dwell it is the shifted press', () => {
    const short = { ...alder, recipe: { ...alder.recipe, dwell_s: 10 } };
    const { left, centre, right, worst } = columnsOf(short, -14, 2);
    expect(left.belt.fillMin_m).toBeLessThan(centre.belt.fillMin_m);
    expect(right.belt.fillMin_m).toBeGreaterThan(centre.belt.fillMin_m);
    expect([worst, left.grade]).toEqual(['left', 'not-filled']);
    expect(columnsOf(alder, 0.5, 30)).toMatchObject({ worst: 'right', right: { grade: 'over-fused' } });
    const long = { ...alder.recipe, dwell_s: 900 };
    const shifted = done({ ...alder, recipe: { ...long, top_degC: 178, bottom_degC: 184 } });
    const column = columnsOf({ ...alder, recipe: long }, -4, 0).left;
    expect(Math.abs(column.belt.max_degC - shifted.belt.max_degC)).toBeLessThan(0.5);
    expect(Math.abs(column.belt.fillMin_m / shifted.belt.fillMin_m - 1)).toBeLessThan(0.05);
  });

  it('[CYCLE-17] pressures of steps count in each column; deviations out of range are refused', () => {
    const steps = [
      { kind: 'ramp' },
      { kind: 'pressure', pressure_Pa: 1e5 },
      { kind: 'dwell' },
      { kind: 'cool' },
    ] as const;
    const { left, centre } = columnsOf({ ...alder, recipe: { ...alder.recipe, steps } }, 0, 0);
    expect(left.belt.flowMin / centre.belt.flowMin).toBeCloseTo(1, 8);
    expect(refusal({ ...alder, columns: { left_K: -51, right_K: 0 } })).toMatchObject({ path: 'columns.left_K' });
    const cold = { ...alder.recipe, top_degC: 60 };
    expect(refusal({ ...alder, recipe: cold, columns: { left_K: 0, right_K: 0 } }).path).toBe('recipe.top_degC');
  });
});
