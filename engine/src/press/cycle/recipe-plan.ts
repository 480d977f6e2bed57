import type { Recipe, RecipeStep } from './cycle-input.ts';

/** A step with nothing left to be filled in. `given` counts among the steps of the recipe. */
export type PlanStep = RampStep | HoldStep | PressureStep | CoolStep;

export interface RampStep {
  readonly kind: 'ramp';
  readonly given: number;
  readonly top_degC: number;
  readonly bottom_degC: number;
  /** At once without it. */
  readonly rate_K_s: number | undefined;
}

export interface HoldStep {
  readonly kind: 'hold';
  readonly dwell: boolean;
  /** A hold that was given in parts is one: nothing happens between them. */
  readonly parts: { readonly given: number; readonly time_s: number }[];
}

export interface PressureStep {
  readonly kind: 'pressure';
  readonly given: number;
  readonly pressure_Pa: number;
}

export interface CoolStep {
  readonly kind: 'cool';
  readonly given: number;
  readonly below_degC: number;
  readonly time_s: number | undefined;
}

const simple: readonly RecipeStep[] = [{ kind: 'ramp' }, { kind: 'dwell' }, { kind: 'cool' }];

/**
 * Steps of a recipe with everything filled in; holds that follow each other are joined, also across a pressure that changes
 * nothing.
 *
 * @param recipe - recipe [units in its names]
 * @returns steps in their order
 * @source derived: plain look-up
 * @verified CYCLE-11 dwell in two parts
 */
export function recipePlan(recipe: Recipe): PlanStep[] {
  const plan: PlanStep[] = [];
  let pressure_Pa = recipe.pressure_Pa;
  (recipe.steps ?? simple).forEach((step, given) => {
    const own = planStep(step, given, recipe);
    const last = plan.at(-1);
    const same = own.kind === 'pressure' && own.pressure_Pa === pressure_Pa;
    if (own.kind === 'pressure') pressure_Pa = own.pressure_Pa;
    if (last?.kind === 'hold' && same) last.parts.push({ given, time_s: 0 });
    else if (last?.kind === 'hold' && own.kind === 'hold' && own.dwell === last.dwell) last.parts.push(...own.parts);
    else plan.push(own);
  });
  return plan;
}

function planStep(step: RecipeStep, given: number, recipe: Recipe): PlanStep {
  switch (step.kind) {
    case 'ramp': {
      const { top_degC = recipe.top_degC, bottom_degC = recipe.bottom_degC, rate_K_s } = step;
      return { kind: 'ramp', given, top_degC, bottom_degC, rate_K_s };
    }
    case 'soak':
      return { kind: 'hold', dwell: false, parts: [{ given, time_s: step.time_s }] };
    case 'dwell':
      return { kind: 'hold', dwell: true, parts: [{ given, time_s: step.time_s ?? recipe.dwell_s }] };
    case 'pressure':
      return { kind: 'pressure', given, pressure_Pa: step.pressure_Pa };
    case 'cool':
      return { kind: 'cool', given, below_degC: step.below_degC ?? recipe.open_degC, time_s: step.time_s };
  }
}

/**
 * Highest set points of a recipe.
 *
 * @param plan - steps of the recipe
 * @returns highest set point of either platen [degC]
 * @source derived: plain comparison
 */
export function highestSetPoints(plan: readonly PlanStep[]): {
  readonly top_degC: number;
  readonly bottom_degC: number;
} {
  const ramps = plan.filter((step) => step.kind === 'ramp');
  return {
    top_degC: Math.max(...ramps.map(({ top_degC }) => top_degC)),
    bottom_degC: Math.max(...ramps.map(({ bottom_degC }) => bottom_degC)),
  };
}
