import { type RunStep, runSteps } from '@loopwright/records/run';
import type { RunState, Settled, WhyNot } from './run-state.ts';
import { stepRules } from './steps.ts';

type Settling = Readonly<Partial<Record<RunStep, Settled | true>>>;

/**
 * Steps that must come before a step and have not. Of a step that this run does not have, what it needs itself.
 *
 * @param state - which steps the run has
 * @param step - to be settled
 * @param settled - what is settled, or will be by the same tap
 */
export function stepsBefore(state: Pick<RunState, 'started'>, step: RunStep, settled: Settling): readonly RunStep[] {
  const open = stepRules[step].needs.filter((need) => settled[need] === undefined);
  if (open.every((need) => hasStep(state, need))) return open;
  const before = new Set(open.flatMap((need) => (hasStep(state, need) ? [need] : stepsBefore(state, need, settled))));
  return runSteps.filter((each) => before.has(each));
}

/** Whether a run has a step: a belt without antistatic needs no resistance. */
export function hasStep({ started }: Pick<RunState, 'started'>, step: RunStep): boolean {
  return started.steps.includes(step);
}

/**
 * Why some steps may not be settled by one tap now.
 *
 * @param state - of the run
 * @param steps - in the order of the tap
 */
export function whyNotSteps(state: RunState, steps: readonly RunStep[]): readonly WhyNot[] {
  const [only] = steps;
  if (only !== undefined && steps.length === 1) return whyNotStep(state, only);
  const foreign = steps.filter((step) => !hasStep(state, step));
  if (foreign.length > 0) return [{ code: 'not-in-this-run', steps: foreign }];
  const open = steps.filter((step) => state.settled[step]?.how !== 'done');
  if (open.length === 0) return [{ code: 'settled-already', steps }];
  const own = open.find((step) => stepRules[step].own);
  const group = own && stepRules[own].group;
  if (group && open.some((step) => stepRules[step].group !== group)) return [{ code: 'own-tap', steps: [own] }];
  return missingBefore(state, open);
}

/** The same of one step, without a list: a screen asks it of every step. */
function whyNotStep(state: RunState, step: RunStep): readonly WhyNot[] {
  if (!hasStep(state, step)) return [{ code: 'not-in-this-run', steps: [step] }];
  if (state.settled[step]?.how === 'done') return [{ code: 'settled-already', steps: [step] }];
  const before = stepsBefore(state, step, state.settled);
  return before.length === 0 ? nothing : [{ code: 'needs-steps', steps: before }];
}

const nothing: readonly WhyNot[] = [];

function missingBefore(state: RunState, steps: readonly RunStep[]): readonly WhyNot[] {
  const settled: Partial<Record<RunStep, Settled | true>> = { ...state.settled };
  const missing: RunStep[] = [];
  for (const step of steps) {
    missing.push(...stepsBefore(state, step, settled));
    settled[step] = true;
  }
  return missing.length === 0
    ? []
    : [{ code: 'needs-steps', steps: runSteps.filter((step) => missing.includes(step)) }];
}

/**
 * What is no longer settled when some steps are to be done again: they, and all that rested on them.
 *
 * @param settled - so far
 * @param again - steps to be done again
 */
export function without(settled: RunState['settled'], again: readonly RunStep[]): RunState['settled'] {
  const undone = new Set<RunStep>(again);
  for (let before = -1; before !== undone.size; ) {
    before = undone.size;
    for (const step of runSteps) if (stepRules[step].needs.some((need) => undone.has(need))) undone.add(step);
  }
  return Object.fromEntries(Object.entries(settled).filter(([step]) => !undone.has(step as RunStep)));
}
