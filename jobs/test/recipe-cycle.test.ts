import { describe, expect, it } from 'vitest';
import { type RecipeCycleChoice, recipeCycleReport } from '../src/index.ts';
import { pressCycleReport } from '../src/press-cycle/press-cycle-report.ts';
import { cycleSurroundings } from '../src/press-cycle/recipe-cycle.ts';
import { demoPlant } from './demo-plant.ts';

const plant = demoPlant();
const now = '2026-11-25T02:10:00Z';

function choice(line?: string): RecipeCycleChoice {
  const [belt, press, recipe] = [plant.belts['Alder-24'], plant.presses['P1'], plant.recipes['alder-north']];
  if (!belt || !press || !recipe) throw new Error('the demo plant lacks its things');
  return { belt, press, recipe, line: line === undefined ? undefined : plant.lines[line] };
}

describe('the cycle of a recipe apart from any position', () => {
  it('[PCYC-15] at the outlet of a line it is the cycle of a position there', () => {
    const apart = recipeCycleReport(plant, choice('QM-01'), now).cycle;
    const there = pressCycleReport(plant, 'QM-01-1', { now, press: 'P1' }).cycle;
    if (apart?.status !== 'ok' || there?.status !== 'ok') throw new Error('no cycle');
    expect(apart.open).toEqual(there.open);
    expect(apart.curve).toEqual(there.curve);
  });

  it('[PCYC-15] without a line it takes the voltage the press is made for, as an example', () => {
    const report = recipeCycleReport(plant, choice(), now);
    if (report.cycle?.status !== 'ok') throw new Error('no cycle');
    expect(report.line).toBeUndefined();
    expect(report.cycle.volts).toMatchObject({ value: 230, source: 'example' });
    expect(report.warnings.map(({ code }) => code)).toContain('outlet-unknown');
  });

  it('[PCYC-16] what a press meets at a line: its outlet, its air, its extension', () => {
    const { press } = choice();
    expect(cycleSurroundings(plant.lines['QM-06'], press)).toMatchObject({ volts_V: 230, lead_m: 20 });
    expect(cycleSurroundings(plant.lines['QM-05'], press).air_degC).toBe(28);
  });
});
