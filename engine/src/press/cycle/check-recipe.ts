import { inRange, type Limits } from '../../in-range.ts';
import { Refusal } from '../../refusal.ts';
import type { Recipe, RecipeStep } from './cycle-input.ts';

// The limits catch wrong units and keep the work bounded; they are not advice.
const temperature: Limits = { min: -40, max: 350, unit: 'degC' };
const time: Limits = { min: 0, max: 86_400, unit: 's' };
const pressure: Limits = { min: 0, max: 5e6, unit: 'Pa' };
const mostSteps = 60;
const recipeLimits = {
  top_degC: temperature,
  bottom_degC: temperature,
  ready_K: { min: 0, max: 100, unit: 'K' },
  dwell_s: time,
  open_degC: temperature,
  pressure_Pa: pressure,
} as const satisfies Record<string, Limits>;
const stepLimits: Readonly<Record<RecipeStep['kind'], Readonly<Record<string, Limits>>>> = {
  ramp: {
    top_degC: temperature,
    bottom_degC: temperature,
    rate_K_s: { min: 1e-4, max: 100, unit: 'K/s' },
  },
  soak: { time_s: time },
  dwell: { time_s: time },
  pressure: { pressure_Pa: pressure },
  cool: { below_degC: temperature, time_s: time },
};

/**
 * Lets a recipe through whose numbers can be computed with and whose steps come in an order that a press can do.
 *
 * @param recipe - recipe [units in its names]
 * @returns nothing
 * @throws not-finite, out-of-range, too-few, too-many, unknown-step, step-out-of-order
 * @source derived: plain comparison
 */
export function checkRecipe(recipe: Recipe): void {
  checkNumbers(recipe, 'recipe', recipeLimits);
  const { steps } = recipe;
  if (steps === undefined) return;
  if (steps.length === 0) throw new Refusal('too-few', 'recipe.steps', { count: 0, min: 1, max: mostSteps });
  if (steps.length > mostSteps) {
    throw new Refusal('too-many', 'recipe.steps', { count: steps.length, min: 1, max: mostSteps });
  }
  steps.forEach((step, index) => {
    const limits = stepLimits[step.kind];
    if (limits === undefined) {
      throw new Refusal('unknown-step', `recipe.steps[${index}].kind`, { value: String(step.kind) });
    }
    checkNumbers(step, `recipe.steps[${index}]`, limits);
  });
  checkOrder(steps);
}

function checkNumbers(given: object, path: string, limits: Readonly<Record<string, Limits>>): void {
  for (const [name, own] of Object.entries(limits)) {
    const value = (given as Readonly<Record<string, number | undefined>>)[name];
    if (value !== undefined) inRange(value, `${path}.${name}`, own);
  }
}

/** A ramp before the first dwell; once it cools it only cools; a cool at the end. */
function checkOrder(steps: readonly RecipeStep[]): void {
  const wrong = (index: number) => {
    const value = steps[index]?.kind ?? '';
    throw new Refusal('step-out-of-order', `recipe.steps[${Math.max(0, index)}]`, { value });
  };
  const kinds = steps.map(({ kind }) => kind);
  const dwell = kinds.indexOf('dwell');
  const cool = kinds.indexOf('cool');
  if (dwell < 0) wrong(steps.length - 1);
  if (!kinds.slice(0, dwell).includes('ramp')) wrong(dwell);
  if (kinds.at(-1) !== 'cool') wrong(steps.length - 1);
  const after = kinds.findIndex((kind, index) => index > cool && kind !== 'cool' && kind !== 'pressure');
  if (after >= 0) wrong(after);
}
