import { type RunStep, runSigns } from '@loopwright/records/run';
import { measuresAsked, readingAsked } from './asked.ts';
import { cyclePosition, runCurve } from './cycle-position.ts';
import { fastAction, isWaitedFor, mainAction, type Waiting } from './main-action.ts';
import { whyNotSteps } from './order.ts';
import { otherActions, takeBackAction, type ViewOptions } from './other-actions.ts';
import { retensionDay } from './retension-day.ts';
import type { RunState } from './run-state.ts';
import type { RunNow, RunPhase, RunView, StepView } from './run-view.ts';
import { type RunGroup, stepRules } from './steps.ts';
import { runAlarm, runTimers } from './timers.ts';
import { isInPress } from './why-not.ts';

/**
 * What to show of a run now: the current step and its one action, what else is open, what is waited for, the ways out.
 *
 * @param state - of the run
 * @param now - both clocks, and who looks
 * @param options - badges to hand over to, rolls to turn to
 */
export function viewRun(state: RunState, now: RunNow, options: ViewOptions = {}): RunView {
  const timers = runTimers(state, now);
  const position = cyclePosition(state, now);
  const waiting = { position, timers };
  const steps = stepViews(state, waiting);
  const current = state.end ? undefined : steps.find(({ state: is }) => is === 'current');
  const main = current && mainAction(state, current.step, waiting);
  const fast = current && fastAction(state, current.step, waiting);
  const next = current && steps.find(({ number, state: is }) => number > current.number && is !== 'settled');
  const takeBack = takeBackAction(state);
  const curve = position && runCurve(state, position);
  const alarm = runAlarm(state, timers);
  const retensionOn = retensionDay(state);
  return {
    ...heading(state),
    steps,
    phase: phaseOf(state, current?.group, position?.phase),
    ...(current && { current }),
    ...(next && { next: next.step }),
    ...(main && { main }),
    ...(fast && { fast }),
    alsoOpen: state.end ? [] : steps.filter(({ state: is }) => is === 'open'),
    others: otherActions({ state, current: current?.step, by: now.by, ...options }),
    ...(takeBack && { takeBack }),
    timers,
    ...(curve && { curve }),
    ...(position && { reading: readingAsked(state, position) }),
    ...(alarm && { alarm }),
    keepClosed: position !== undefined && !position.mayBeCool,
    openPoints: steps.filter(({ state: is }) => is === 'passed').map(({ step }) => step),
    ...(retensionOn !== undefined && { retensionOn }),
    ...(state.end && { end: state.end.how }),
  };
}

type Heading = 'run' | 'sign' | 'position' | 'press' | 'people' | 'holder' | 'attempt' | 'deviations' | 'photos';

function heading({ id, started, people, holder, attempt, deviations, photos }: RunState): Pick<RunView, Heading> {
  const { press, position } = started.things;
  const [first, ...others] = runSigns;
  return {
    run: id,
    sign: { ...([first, ...others][started.slot] ?? first), slot: started.slot },
    position: position.id,
    ...(press && { press: { id: press.id, name: press.name } }),
    people,
    holder,
    attempt,
    deviations,
    photos,
  };
}

/**
 * The first step in the order of the work that may be done is the current one, in the press the opening. While that
 * waits for time to pass, another of its group goes first.
 */
function stepViews(state: RunState, waiting: Waiting): readonly StepView[] {
  const views = state.started.steps.map((step, i) => stepView(state, step, i + 1));
  const open = views.filter(({ state: is }) => is === 'open');
  const first = isInPress(state) ? open.find(({ step }) => step === 'open') : open[0];
  const current = open.find(({ step, group }) => group === first?.group && !isWaitedFor(step, waiting)) ?? first;
  return views.map((view) => (view === current ? { ...view, state: 'current' } : withAction(state, view, waiting)));
}

/** Beside the current step: what else may be done, and what was gone on without and can be done after all. */
function withAction(state: RunState, view: StepView, waiting: Waiting): StepView {
  const isFree = view.state === 'open' || (view.state === 'passed' && whyNotSteps(state, [view.step]).length === 0);
  const action = isFree && !state.end ? mainAction(state, view.step, waiting) : undefined;
  return action ? { ...view, action } : view;
}

function stepView(state: RunState, step: RunStep, number: number): StepView {
  const settled = state.settled[step];
  const whyNot = settled ? [] : whyNotSteps(state, [step]);
  const open = whyNot.length === 0 ? 'open' : 'not-yet';
  return {
    step,
    group: stepRules[step].group,
    number,
    state: settled === undefined ? open : settled.how === 'done' ? 'settled' : 'passed',
    ...(settled && { settled }),
    whyNot,
    measures: measuresAsked(state, step),
  };
}

const phases: Readonly<Record<RunGroup, RunPhase>> = {
  prepare: 'before',
  lock: 'before',
  site: 'before',
  table: 'hands',
  line: 'hands',
  match: 'hands',
  heat: 'hands',
  open: 'cooling',
  splice: 'after',
  restart: 'restart',
  jog: 'restart',
  unlock: 'restart',
  watch: 'restart',
};

function phaseOf(state: RunState, group: RunGroup | undefined, inPress: RunPhase | undefined): RunPhase {
  if (state.end || group === undefined) return 'over';
  return inPress ?? phases[group];
}
