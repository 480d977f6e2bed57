import {
  dryAnswers,
  type RecipeAnswer,
  type RunChange,
  type RunReason,
  type RunStep,
  recipeAnswers,
  runChange,
  verdicts,
} from '@loopwright/records/run';
import { measuresAsked } from './asked.ts';
import type { CyclePosition } from './cycle-position.ts';
import { whyNotSteps } from './order.ts';
import { placementOf } from './placement.ts';
import type { RunState } from './run-state.ts';
import type { ActionCode, Choice, RunAction, RunTimer, TimerCode } from './run-view.ts';
import { stepRules, stepsOf } from './steps.ts';
import { whyNot } from './why-not.ts';

/** Why somebody goes on with a belt that is not dry, or with another recipe than the card's. */
const goOnReasons: readonly RunReason[] = ['line-must-run', 'none-here', 'asked-lead', 'maker-says', 'display-broken'];

/**
 * The one big action of a step; undefined while the press works, for then nothing needs doing.
 *
 * @param state - of the run
 * @param step - the current one
 * @param waiting - where the cycle stands and what is waited for
 */
export function mainAction(state: RunState, step: RunStep, waiting: Waiting): RunAction | undefined {
  if (isWaitedFor(step, waiting)) return undefined;
  const { asks } = stepRules[step];
  if (asks === 'dry') return dryAction(state);
  if (asks === 'recipe') return recipeAction(state);
  if (asks === 'verdict') return verdictAction(state);
  const code = step === 'heat' ? 'heat-on' : step === 'open' ? 'open' : 'done';
  return stepsAction(state, [step], code);
}

export interface Waiting {
  readonly position: CyclePosition | undefined;
  readonly timers: readonly RunTimer[];
}

const waitsFor: Readonly<Partial<Record<RunStep, TimerCode>>> = { heat: 'pressure', flat: 'flat' };

/**
 * Whether a step waits for something that no hand does: the display decides about opening, the minute of pressure about
 * heat, ten minutes about lifting what lies flat. Before that no big button invites a tap.
 */
export function isWaitedFor(step: RunStep, { position, timers }: Waiting): boolean {
  if (step === 'open') return position !== undefined && !position.mayBeCool;
  const timer = timers.find(({ code }) => code === waitsFor[step]);
  return timer !== undefined && timer.left_s > 0 && timer.sure !== 'doubtful';
}

/** One tap for steps that take no answer. */
export function stepsAction(state: RunState, steps: readonly RunStep[], code: ActionCode): RunAction {
  return {
    code,
    steps,
    own: steps.some((step) => stepRules[step].own),
    placement: placementOf(steps),
    changes: [runChange('run.steps-done', { run: state.id, steps: [...steps] })],
    measures: steps.flatMap((step) => measuresAsked(state, step)),
  };
}

function answering(state: RunState, step: RunStep, code: ActionCode, choices: readonly Choice[]): RunAction {
  return {
    code,
    steps: [step],
    own: stepRules[step].own === true,
    placement: placementOf([step]),
    choices,
    measures: measuresAsked(state, step),
  };
}

/** From a sealed roll the answer is known, and one tap says it. */
function dryAction(state: RunState): RunAction {
  const run = state.id;
  const choices = dryAnswers.map((answer): Choice => {
    const changes = [runChange('run.dry-said', { run, answer })];
    if (answer === 'sealed-roll' || answer === 'dried') return { code: answer, changes };
    return { code: answer, changes, reasons: goOn((reason) => runChange('run.dry-said', { run, answer, reason })) };
  });
  const sealed = (state.roll ?? state.started.things.roll)?.sealed === true && state.dry === undefined;
  const action = answering(state, 'dry', 'dry', choices);
  return sealed ? { ...action, changes: [runChange('run.dry-said', { run, answer: 'sealed-roll' })] } : action;
}

function recipeAction(state: RunState): RunAction {
  const run = state.id;
  const said = (answer: RecipeAnswer, reason?: RunReason): RunChange =>
    runChange('run.recipe-compared', { run, answer, ...(reason && { reason }) });
  const choices = recipeAnswers.map((answer): Choice => {
    if (answer === 'same' || answer === 'set-to-card') return { code: answer, changes: [said(answer)] };
    return { code: answer, changes: [said(answer)], reasons: goOn((reason) => said(answer, reason)) };
  });
  return { ...answering(state, 'match', 'recipe', choices), changes: [said('same')] };
}

function verdictAction(state: RunState): RunAction {
  const run = state.id;
  const choices = verdicts
    .map((verdict) => ({ code: verdict, change: runChange('run.inspected', { run, verdict, findings: [] }) }))
    .filter(({ change }) => whyNot(state, change, state.holder).length === 0)
    .map(({ code, change }): Choice => ({ code, changes: [change] }));
  const action = answering(state, 'verdict', 'verdict', choices);
  return { ...action, changes: [runChange('run.inspected', { run, verdict: 'run', findings: [] })] };
}

function goOn(change: (reason: RunReason) => RunChange): readonly Choice[] {
  return goOnReasons.map((reason) => ({ code: reason, changes: [change(reason)] }));
}

/**
 * One tap for all that is left of the group of the current step, for somebody who knows the work; undefined where the
 * main action is that tap already, or where an answer is needed that only a person has.
 *
 * @param state - of the run
 * @param step - the current one
 * @param waiting - where the cycle stands
 */
export function fastAction(state: RunState, step: RunStep, waiting: Waiting): RunAction | undefined {
  if (isWaitedFor(step, waiting)) return undefined;
  const rest = stepsOf(stepRules[step].group, state.started.steps).filter((each) => !state.settled[each]);
  const plain = rest.filter((each) => !stepRules[each].asks);
  const answers = rest.filter((each) => stepRules[each].asks).map((each) => mainAction(state, each, waiting)?.changes);
  if (rest.length < 2 || answers.some((each) => each === undefined)) return undefined;
  if (plain.length === 0 || whyNotSteps(state, plain).length > 0) return undefined;
  const action = stepsAction(state, plain, 'group-done');
  return { ...action, steps: rest, changes: [...(action.changes ?? []), ...answers.flatMap((each) => each ?? [])] };
}
