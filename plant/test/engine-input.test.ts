import { beltPath } from '@loopwright/engine/loop';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../tools/validation/check.ts';
import { beltSection, leadingPulleys, linePathInput, minCounterBend } from '../src/engine-input.ts';
import type { Plant } from '../src/plant.ts';
import type { Belt } from '../src/things/belt.ts';
import { edited, readWith } from './sample-folder.ts';

function samplePlant(changes?: Record<string, string>): Plant {
  const { plant } = readWith(changes);
  if (!plant) throw new Error('the sample has mistakes');
  return plant;
}

function reed(changes?: Record<string, string>): Belt {
  const belt = samplePlant(changes).belts['Reed-20'];
  if (!belt) throw new Error('the sample has lost its belt');
  return belt;
}

describe('from a line to the engine', () => {
  it('[PLANT-60] diameters become radii and the section is that of the sheet: the loop has its known length', () => {
    const { pulleys } = samplePlant();
    const input = linePathInput(Object.values(pulleys), reed());
    checkAgainst({
      topic: 'loop',
      id: 'PLANT-60 eight-pulley line read from a plant folder',
      source: 'common tangents of two circles',
      evidence: 'derived',
      inputs: 'pulleys.csv of the sample plant, bare radii (belt of no thickness)',
      unit: 'm',
      published: 13.526143179,
      ours: beltPath({ ...input, belt: { thickness_m: 0, neutralLineFromRunningFace_m: 0 } }).length_m,
      tolerance: 5e-10,
      why: 'half the last digit',
    });
    expect(input.belt).toEqual({ thickness_m: 0.002, neutralLineFromRunningFace_m: 0.0008 });
    expect(input.pulleys[2]).toMatchObject({ id: 'L1.3', surfaceRadius_m: 0.08, turn: 'left', face: 'running' });
  });

  it('[PLANT-61] carrying and pressure rollers do not lead the loop; the others come in travel order', () => {
    const [first, ...rest] = Object.values(samplePlant().pulleys).reverse();
    if (!first) throw new Error('no pulleys');
    const roller = { ...first, id: 'r1', role: 'carrier' as const, order: 3 };
    const presser = { ...first, id: 'r2', role: 'pressure' as const, order: 4 };
    const led = leadingPulleys([presser, first, roller, ...rest]);
    expect(led.map(({ order }) => order)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(linePathInput([presser, first, roller, ...rest], reed()).pulleys).toHaveLength(8);
  });

  it('[PLANT-62] without a neutral line half the thickness is taken, and it says so', () => {
    expect(beltSection(reed())).toMatchObject({ assumed: false });
    expect(beltSection(reed(edited('belts.csv', '2.0,0.8', '2.0,')))).toEqual({
      section: { thickness_m: 0.002, neutralLineFromRunningFace_m: 0.001 },
      assumed: true,
    });
  });

  it('[PLANT-63] the counter-bend limit is the sheet’s, else 1.25 times the smallest pulley (common practice, no source)', () => {
    expect(minCounterBend(reed())).toBeCloseTo(0.075, 15);
    const own = edited('belts.csv', 'dataSheet', 'minCounterBend_mm');
    expect(minCounterBend(reed({ 'belts.csv': (own['belts.csv'] ?? '').replace('sheet A', '90') }))).toBe(0.09);
  });
});
