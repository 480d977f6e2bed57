import { each, type Fault, type PlantCheck } from './plant-check.ts';

/** Whether a recipe can be run at all, and on its press. */
export const recipeChecks: readonly PlantCheck[] = [
  {
    code: 'recipe-not-above-opening',
    level: 'error',
    reads: ['recipes'],
    find: each('recipes', ({ top_degC, bottom_degC, open_degC }): Fault => {
      const field = top_degC <= open_degC ? 'top_degC' : bottom_degC <= open_degC ? 'bottom_degC' : undefined;
      const value = Math.min(top_degC, bottom_degC);
      return field ? { field, data: { kind: 'temperature', value, min: open_degC } } : undefined;
    }),
  },
  {
    code: 'recipe-over-press-pressure',
    level: 'care',
    reads: ['recipes', 'presses'],
    find: each('recipes', ({ press, beltPressure_Pa: value }, { presses }): Fault => {
      const max = press === undefined ? undefined : presses[press]?.maxPressure_Pa;
      if (press === undefined || max === undefined || value <= max) return undefined;
      return { field: 'beltPressure_Pa', data: { kind: 'pressure', value, max, other: press } };
    }),
  },
];
