import type { Badge, Roll } from '@loopwright/plant';
import {
  displayWords,
  nobody,
  type RunChange,
  type RunReason,
  type RunStep,
  runChange,
  runFaces,
  runReasons,
} from '@loopwright/records/run';
import { held, ordinary } from './placement.ts';
import type { RunState } from './run-state.ts';
import type { ActionCode, Choice, RunAction } from './run-view.ts';
import { stepRules } from './steps.ts';
import { isInPress, lastProgress, whyNot } from './why-not.ts';

/** What the plant has that a run may turn to. */
export interface ViewOptions {
  readonly badges?: readonly Badge[];
  readonly rolls?: readonly Roll[];
}

export interface Asking extends ViewOptions {
  readonly state: RunState;
  readonly current: RunStep | undefined;
  /** Badge that looks. */
  readonly by: string;
}

/**
 * Ways out of the straight line: each leads somewhere, none is the main action.
 *
 * @param asking - the run, its current step, who looks, what the plant has
 */
export function otherActions(asking: Asking): readonly RunAction[] {
  const { state } = asking;
  const always = [...acceptances(asking), ...handOver(asking)];
  if (state.end) return always.filter(({ code }) => code === 'accept');
  return [
    ...passing(asking),
    ...otherRoll(asking),
    ...inPress(state),
    ...heatAnyway(asking),
    ...noPhoto(state),
    ...always,
    ...people(state),
    ...stopping(state),
  ];
}

/** What was tapped last can be taken back; both stay in the log. */
export function takeBackAction(state: RunState): RunAction | undefined {
  const last = lastProgress(state);
  if (last === undefined) return undefined;
  return tiles('take-back', [], undefined, [runChange('run.taken-back', { run: state.id, event: last.id })]);
}

function tiles(
  code: ActionCode,
  steps: readonly RunStep[],
  choices: readonly Choice[] | undefined,
  changes?: readonly RunChange[],
): RunAction {
  const isHeld = isOverride.has(code);
  return {
    code,
    steps,
    own: false,
    placement: isHeld ? held : ordinary,
    measures: [],
    ...(choices && { choices }),
    ...(changes && { changes }),
  };
}

/** Held for a second: stopping and going on otherwise than the card says. */
const isOverride: ReadonlySet<ActionCode> = new Set(['pass', 'opened-early', 'cycle-stopped', 'stop', 'heat-on']);

function choicesOf<C extends string>(codes: readonly C[], change: (code: C) => RunChange): readonly Choice[] {
  return codes.map((code) => ({ code, changes: [change(code)] }));
}

function passing({ state, current }: Asking): RunAction[] {
  const reasons = current && stepRules[current].pass;
  if (!current || !reasons) return [];
  const pass = (reason: RunReason): RunChange => runChange('run.step-passed', { run: state.id, step: current, reason });
  return [tiles('pass', [current], choicesOf(reasons, pass))];
}

/** "Not dry" leads to another roll as long as nothing is cut. */
function otherRoll({ state, rolls = [] }: Asking): RunAction[] {
  const now = state.roll ?? state.started.things.roll;
  const choices = rolls
    .filter(({ id }) => id !== now?.id)
    .map((roll) => ({ code: roll.id, change: runChange('run.roll-changed', { run: state.id, roll }) }))
    .filter(({ change }) => whyNot(state, change, state.holder).length === 0)
    .map(({ code, change }): Choice => ({ code, changes: [change] }));
  return choices.length === 0 ? [] : [tiles('roll', ['dry'], choices)];
}

function inPress(state: RunState): RunAction[] {
  if (!isInPress(state)) return [];
  const { id: run } = state;
  const says = displayWords
    .map((word) => ({ code: word, change: runChange('run.display-said', { run, says: word }) }))
    .filter(({ change }) => whyNot(state, change, state.holder).length === 0)
    .map(({ code, change }): Choice => ({ code, changes: [change] }));
  const causes = ['mains-lost', 'breaker', 'press-fault', 'pressure-lost'] as const;
  return [
    ...(says.length > 0 ? [tiles('display-says', ['open'], says)] : []),
    tiles('read-display', ['open'], undefined),
    tiles('opened-early', ['open'], undefined, [runChange('run.opened-early', { run })]),
    tiles(
      'cycle-stopped',
      ['heat'],
      choicesOf(causes, (reason) => runChange('run.cycle-stopped', { run, reason })),
    ),
  ];
}

/** The heat may be on before the minute of pressure is over: then the record says so. */
function heatAnyway({ state, current }: Asking): RunAction[] {
  if (current !== 'heat') return [];
  return [tiles('heat-on', ['heat'], undefined, [runChange('run.steps-done', { run: state.id, steps: ['heat'] })])];
}

function noPhoto(state: RunState): RunAction[] {
  const { id: run, photos, attempt, settled } = state;
  if (!settled.open || settled.verdict) return [];
  const bare = runFaces.filter(
    (face) =>
      state.noPhoto[face] === undefined && !photos.some((each) => each.face === face && each.attempt === attempt),
  );
  const reasons: readonly RunReason[] = ['no-camera', 'too-dark', 'cannot-reach', 'no-time'];
  const choices = bare.map(
    (face): Choice => ({
      code: face,
      reasons: choicesOf(reasons, (reason) => runChange('run.no-photo', { run, face, reason })),
    }),
  );
  return choices.length === 0 ? [] : [tiles('no-photo', ['faces'], choices)];
}

/** A second pair of eyes: whoever did not say it. */
function acceptances({ state, by }: Asking): RunAction[] {
  const choices = state.deviations
    .map(({ id }) => ({ code: id, change: runChange('run.deviation-accepted', { run: state.id, deviation: id }) }))
    .filter(({ change }) => whyNot(state, change, by).length === 0)
    .map(({ code, change }): Choice => ({ code, changes: [change] }));
  return choices.length === 0 ? [] : [tiles('accept', [], choices)];
}

function handOver({ state, badges = [] }: Asking): RunAction[] {
  const others = badges.map(({ id }) => id).filter((id) => id !== state.holder && id !== nobody);
  if (others.length === 0) return [];
  return [
    tiles(
      'hand-over',
      [],
      choicesOf(others, (to) => runChange('run.handed-over', { run: state.id, to })),
    ),
  ];
}

function people({ id: run, people: now }: RunState): RunAction[] {
  return [tiles('people', [], undefined, [runChange('run.people-said', { run, people: now === 1 ? 2 : 1 })])];
}

function stopping({ id: run }: RunState): RunAction[] {
  const reasons = ['other-position', 'belt-spoilt', ...runReasons.filter((each) => each === 'asked-lead')] as const;
  return [
    tiles(
      'stop',
      [],
      choicesOf(reasons, (reason) => runChange('run.stopped', { run, reason })),
    ),
  ];
}
