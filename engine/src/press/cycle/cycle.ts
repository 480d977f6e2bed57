import { Refusal } from '../../refusal.ts';
import { type End, endField } from '../march/end.ts';
import { timeOf } from '../march/slab.ts';
import { checkCycle } from './check-cycle.ts';
import { startCooling } from './cooling.ts';
import type { CycleInput } from './cycle-input.ts';
import { type Marks, resultOf } from './cycle-of-run.ts';
import type { CycleNotConverged, CycleResult } from './cycle-result.ts';
import { type PhaseOutcome, runPhase } from './phase.ts';
import { type Exactness, type PressRun, preparePress, startRun } from './press-run.ts';

const { SENSOR, SET, SHARE } = endField;

/** Longest heat-up and longest cooling that are computed. */
const longest_s = 86_400;

/**
 * A press cycle from switching on to opening: heat, control, supply, flow, fusion and damage.
 * Platens: C*dT/dt = P/A - (U + h_fan)*(T - T_a) - q; cells: rho*c*dT/dt = d/dx(k*dT/dx).
 *
 * @param input - press, stack, supply, recipe, fusion and what is wanted [units in their names]
 * @param exactness - tolerance_K per step [K] and refine, an odd factor on the cells [1]; usual accuracy 0.02 K, 0.1 s
 * @returns the cycle, or the status of a march that failed
 * @throws set-point-not-reached, never-cools, no-belt, no-layers, too-many-layers, contact-count, areas-differ, unknown-control, not-finite, out-of-range
 * @validity one direction; platens of one temperature; heat of mixing and reaction left out; not measured on a press
 * @source energy balance of platens and layers; RODASP in time
 * @verified CYCLE-01 ready
 */
export function cycle(input: CycleInput, exactness?: Exactness): CycleResult {
  checkCycle(input);
  const run = startRun(input, preparePress(input, exactness?.refine), exactness?.tolerance_K);
  const { slab } = run.march;
  const heated = runPhase(run, 'ready', longest_s);
  if (heated === 'time') throw notReached(run);
  if (heated !== 'goal') return notConverged(run, heated);
  const ready_s = timeOf(slab);
  const atReady = run.history.now.slice();
  const dwelt = runPhase(run, 'none', ready_s + input.recipe.dwell_s);
  if (dwelt !== 'time') return notConverged(run, dwelt);
  const dwellEnd_s = timeOf(slab);
  const atDwellEnd = run.history.now.slice();
  startCooling(run);
  const cooled = runPhase(run, 'cold', dwellEnd_s + longest_s);
  if (cooled === 'time') throw neverCools(run);
  if (cooled !== 'goal') return notConverged(run, cooled);
  const marks: Marks = { ready_s, dwellEnd_s, open_s: timeOf(slab), atReady, atDwellEnd };
  return resultOf(run, marks);
}

/** Says how hot the platen that stays coldest below its set point gets, and what holds it back. */
function notReached({ input, march }: PressRun): Refusal {
  const { top, bottom } = march.slab;
  const side = missing_K(top) > missing_K(bottom) ? 'top' : 'bottom';
  const end = march.slab[side];
  const platen = input[side];
  return new Refusal('set-point-not-reached', `recipe.${side}_degC`, {
    value: end.numbers[SET] as number,
    max: end.numbers[SENSOR] as number,
    unit: 'degC',
    volts_V: input.supply.volts_V,
    nominal_V: platen.nominal_V,
    heater_W: platen.heater_W,
    loss_W_m2K: platen.loss_W_m2K,
    fullPower: !end.following && end.numbers[SHARE] === 1,
  });
}

function missing_K({ numbers }: End): number {
  return (numbers[SET] as number) - (numbers[SENSOR] as number);
}

function neverCools({ input, march }: PressRun): Refusal {
  const { top, bottom } = march.slab;
  return new Refusal('never-cools', 'recipe.open_degC', {
    value: input.recipe.open_degC,
    min: Math.max(top.numbers[SENSOR] as number, bottom.numbers[SENSOR] as number),
    unit: 'degC',
  });
}

function notConverged({ march }: PressRun, outcome: PhaseOutcome): CycleNotConverged {
  const reason = outcome === 'step-too-small' ? 'step-too-small' : 'too-many-steps';
  return { status: 'not-converged', reason, residual: march.lastError_K, iterations: march.tries };
}
