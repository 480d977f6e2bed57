import { checkCycle } from './check-cycle.ts';
import type { CycleInput } from './cycle-input.ts';
import { resultOf } from './cycle-of-run.ts';
import type { CycleNotConverged, CycleResult } from './cycle-result.ts';
import type { PhaseOutcome } from './phase.ts';
import { preparePress } from './prepare-press.ts';
import { type Exactness, type PressRun, startRun } from './press-run.ts';
import { recipePlan } from './recipe-plan.ts';
import { runPlan } from './run-plan.ts';

/**
 * A press cycle from switching on to opening: heat, control, supply, flow, fusion and damage.
 * Platens: C*dT/dt = P/A - (U + h_fan)*(T - T_a) - q; cells: rho*c*dT/dt = d/dx(k*dT/dx).
 *
 * @param input - press, stack, supply, recipe, fusion and what is wanted [units in their names]
 * @param exactness - tolerance_K per step [K] and refine, an odd factor on the cells [1]; usual accuracy 0.02 K, 0.1 s
 * @returns the cycle, or the status of a march that failed
 * @throws set-point-not-reached, never-cools, no-belt, no-layers, too-many-layers, contact-count, areas-differ, unknown-control, unknown-step, step-out-of-order, too-few, too-many, not-finite, out-of-range
 * @validity one direction; platens of one temperature; heat of mixing and reaction left out; not measured on a press
 * @source energy balance of platens and layers; RODASP in time
 * @verified CYCLE-01 ready
 */
export function cycle(input: CycleInput, exactness?: Exactness): CycleResult {
  checkCycle(input);
  const run = startRun(input, preparePress(input, exactness?.refine), exactness?.tolerance_K);
  const marks = runPlan(run, recipePlan(input.recipe));
  return typeof marks === 'string' ? notConverged(run, marks) : resultOf(run, marks);
}

function notConverged({ march }: PressRun, outcome: PhaseOutcome): CycleNotConverged {
  const reason = outcome === 'step-too-small' ? 'step-too-small' : 'too-many-steps';
  return { status: 'not-converged', reason, residual: march.lastError_K, iterations: march.tries };
}
