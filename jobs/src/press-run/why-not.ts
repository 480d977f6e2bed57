import { nobody, type RunChange, type RunStep, type RunThing, type RunType, runSchemas } from '@loopwright/records/run';
import { whyNotSteps } from './order.ts';
import { measureFaults, readingFaults } from './reading-check.ts';
import type { RunState, WhyNot, WhyNotCode } from './run-state.ts';
import { stepRules } from './steps.ts';

type Rule<T extends RunType> = (state: RunState, thing: RunThing<T>, by: string) => readonly WhyNot[];

const no = (code: WhyNotCode, data?: WhyNot['data']): readonly WhyNot[] => [{ code, ...(data && { data }) }];
const fine: readonly WhyNot[] = [];

/** Why a happening may not be: one rule a kind. */
const rules: { readonly [T in RunType]: Rule<T> } = {
  'run.started': () => no('settled-already'),
  'run.predicted': ({ settled }) => (settled.heat ? no('too-late') : fine),
  'run.people-said': () => fine,
  'run.steps-done': stepsDone,
  'run.step-passed': (state, { step, reason }) => {
    if (!stepRules[step].pass?.includes(reason)) return no('cannot-be-passed', { step });
    return state.settled[step] ? no('settled-already') : whyNotSteps(state, [step]);
  },
  'run.dry-said': (state) => (state.settled.cut ? no('too-late') : whyNotSteps(state, ['dry'])),
  'run.recipe-compared': (state) => (state.settled.heat ? no('too-late') : whyNotSteps(state, ['match'])),
  'run.roll-changed': ({ settled, started }, { roll }) => {
    if (settled.cut) return no('too-late');
    const { belt } = started.things;
    return roll.belt === belt.id ? fine : no('other-belt', { belt: roll.belt, wanted: belt.id });
  },
  'run.measured': (_state, thing) => measureFaults(thing),
  'run.display-read': (state, thing) => (isInPress(state) ? readingFaults(state, thing) : no('not-heating')),
  'run.display-said': (state, { says }) => {
    if (!isInPress(state)) return no('not-heating');
    return saidAlready(state, says) ? no('settled-already') : fine;
  },
  'run.cycle-stopped': (state) => (isInPress(state) ? fine : no('not-heating')),
  'run.opened-early': (state) => (isInPress(state) ? fine : no('not-heating')),
  'run.curve-read': ({ settled }) => (settled.heat ? fine : stepsFirst('heat')),
  'run.photo-taken': ({ settled }) => (settled.open ? fine : stepsFirst('open')),
  'run.no-photo': ({ settled }) => (settled.open ? fine : stepsFirst('open')),
  'run.inspected': inspected,
  'run.noted': () => fine,
  'run.deviation-accepted': accepted,
  'run.handed-over': (_state, { to }) => (to === nobody ? no('needs-badge') : fine),
  'run.taken-back': (state, { event }) => (lastProgress(state)?.id === event ? fine : no('nothing-to-take-back')),
  'run.alarm-heard': ({ heard }, { alarm }) => (heard.includes(alarm) ? no('settled-already') : fine),
  'run.stopped': () => fine,
};

/** What is still said of a run that is over: of what was done, by whom it was accepted, what was forgotten. */
const afterwards: ReadonlySet<RunType> = new Set([
  'run.curve-read',
  'run.photo-taken',
  'run.no-photo',
  'run.measured',
  'run.noted',
  'run.deviation-accepted',
  'run.taken-back',
  'run.alarm-heard',
]);

/**
 * Why a happening may not be, by the order of the work; empty where it may.
 *
 * @param state - of the run
 * @param change - what would be appended
 * @param by - badge of whoever says it
 */
export function whyNot(state: RunState, change: RunChange, by: string): readonly WhyNot[] {
  if (change.body.thing.run !== state.id) return no('not-in-this-run');
  if (state.end && !afterwards.has(change.type)) return no('run-is-over');
  const rule = rules[change.type] as Rule<RunType>;
  return rule(state, change.body.thing, by);
}

/**
 * Why a change made by hand may not be appended now: it cannot be read, cannot be right, or comes too early.
 *
 * @param state - of the run
 * @param change - what would be appended
 * @param by - badge of whoever says it
 */
export function whyNotNow(state: RunState, change: RunChange, by: string): readonly WhyNot[] {
  const { type } = change;
  const faults = type === 'run.display-read' && isInPress(state) ? readingFaults(state, change.body.thing) : fine;
  if (faults.length > 0) return faults;
  const read = runSchemas[type].safeParse(change.body.thing);
  if (!read.success) return no('not-readable', { at: read.error.issues[0]?.path.join('.') ?? '' });
  return whyNot(state, change, by);
}

/** True from switching on until somebody opened. */
export function isInPress({ settled }: Pick<RunState, 'settled'>): boolean {
  return settled.heat !== undefined && settled.open === undefined;
}

/** True once every step of the run is settled. */
export function isWhole({ settled, started }: Pick<RunState, 'settled' | 'started'>): boolean {
  return started.steps.every((step) => settled[step] !== undefined);
}

const progress: ReadonlySet<RunType> = new Set([
  'run.steps-done',
  'run.step-passed',
  'run.dry-said',
  'run.recipe-compared',
  'run.roll-changed',
  'run.display-said',
  'run.opened-early',
  'run.cycle-stopped',
  'run.inspected',
  'run.no-photo',
  'run.stopped',
]);

/** The last tap that moved the run on; that one can be taken back. */
export function lastProgress({ entries }: RunState): RunState['entries'][number] | undefined {
  return entries.findLast(({ type }) => progress.has(type));
}

function stepsFirst(...steps: RunStep[]): readonly WhyNot[] {
  return [{ code: 'needs-steps', steps }];
}

function stepsDone(state: RunState, { steps }: RunThing<'run.steps-done'>): readonly WhyNot[] {
  const asked = steps.filter((step) => stepRules[step].asks && !isAnswered(state, step));
  if (asked.length > 0) return [{ code: 'ask-answer', steps: asked }];
  return whyNotSteps(state, steps);
}

/** An answer that sends somebody away is no answer to go on with, and neither is "done". */
function isAnswered({ settled }: RunState, step: RunStep): boolean {
  return settled[step] !== undefined;
}

function saidAlready({ moments }: RunState, says: RunThing<'run.display-said'>['says']): boolean {
  const { holdBegan, coolingBegan, cool } = moments;
  const later = { 'hold-began': [holdBegan, coolingBegan, cool], 'cooling-began': [coolingBegan, cool], cool: [cool] };
  return later[says].some((each) => each !== undefined);
}

const strictness = { run: 0, 'press-again': 1, 'cut-out': 2 } as const;

function inspected(state: RunState, thing: RunThing<'run.inspected'>): readonly WhyNot[] {
  const { verdict, proposed, reason } = thing;
  const early = verdict === 'run' ? whyNotSteps(state, ['verdict']) : whyNotVerdict(state);
  if (early.length > 0) return early;
  if (verdict === 'press-again' && state.pressedAgain) return no('already-pressed-again');
  const milder = proposed !== undefined && strictness[verdict] < strictness[proposed];
  return milder && reason === undefined ? no('verdict-needs-reason', { proposed }) : fine;
}

/** A splice that is seen to be bad need not be bent first. */
function whyNotVerdict({ settled }: RunState): readonly WhyNot[] {
  if (settled.verdict) return no('settled-already');
  return settled['lift-out'] ? fine : stepsFirst('lift-out');
}

function accepted(
  { deviations }: RunState,
  { deviation }: RunThing<'run.deviation-accepted'>,
  by: string,
): readonly WhyNot[] {
  const found = deviations.find(({ id }) => id === deviation);
  if (found === undefined) return no('no-such-deviation');
  if (found.accepted) return no('settled-already');
  if (by === nobody) return no('needs-badge');
  return by === found.said.by ? no('needs-other-badge', { by }) : fine;
}
