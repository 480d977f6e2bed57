import { type LoggedAnyEvent, type RunEvent, type RunType, readRunEvent, runOf } from '@loopwright/records/run';
import { stampOf } from './deviation.ts';
import { type Effect, effects } from './effects.ts';
import type { PassedOver, RunState, WhyNot } from './run-state.ts';
import { isWhole, whyNot } from './why-not.ts';

/**
 * The state of a run after one more event of the log. Pure. What the order of the work forbids, what cannot be read and
 * what belongs elsewhere changes nothing; of this run it is listed in `passedOver`. An event that came before is not
 * taken twice.
 *
 * @param state - of the run so far; undefined before it was started
 * @param event - of any type
 */
export function applyRunEvent(state: RunState | undefined, event: LoggedAnyEvent): RunState | undefined {
  const read = readRunEvent(event);
  if (state === undefined) return read?.type === 'run.started' ? begun(read) : undefined;
  if (runOf(event) !== state.id || isKnown(state, event.id)) return state;
  if (read === undefined) return passedOver(state, event.id, { code: 'not-readable', data: { type: event.type } });
  const [why] = whyNot(state, read, read.by);
  return why === undefined ? applied(state, read) : passedOver(state, read.id, why);
}

/**
 * The state of a run as its events make it; in how many batches they come makes no difference.
 *
 * @param events - of a log, in the order of folding; others than those of the run may be among them
 * @param from - the state so far
 * @returns the state; undefined before the run was started
 */
export function foldRun(events: Iterable<LoggedAnyEvent>, from?: RunState): RunState | undefined {
  let state = from;
  for (const event of events) state = applyRunEvent(state, event);
  return state;
}

type Started = Extract<RunEvent, { type: 'run.started' }>;

function begun(event: Started): RunState {
  const { thing } = event.body;
  return {
    id: thing.run,
    started: { ...thing, ...stampOf(event) },
    entries: [event],
    takenBack: [],
    passedOver: [],
    people: thing.people,
    holder: event.by,
    settled: {},
    attempt: 1,
    pressedAgain: false,
    moments: {},
    past: [],
    measures: [],
    readings: [],
    logged: [],
    photos: [],
    noPhoto: {},
    deviations: [],
    heard: [],
  };
}

function isKnown({ entries, takenBack, passedOver: passed }: RunState, id: string): boolean {
  return [...entries, ...takenBack].some((entry) => entry.id === id) || passed.some(({ event }) => event === id);
}

function passedOver(state: RunState, event: string, why: WhyNot): RunState {
  const entry: PassedOver = { event, why };
  return { ...state, passedOver: [...state.passedOver, entry] };
}

function applied(state: RunState, event: RunEvent): RunState {
  if (event.type === 'run.taken-back') return takenBack(state, event);
  return withEffect(state, event);
}

function withEffect(state: RunState, event: RunEvent): RunState {
  const effect = effects[event.type] as Effect<RunType>;
  const after = { ...effect(state, event.body.thing, event), entries: [...state.entries, event] };
  return after.end === undefined && isWhole(after)
    ? { ...after, end: { ...stampOf(event), how: 'finished' as const } }
    : after;
}

type TakenBack = Extract<RunEvent, { type: 'run.taken-back' }>;

/** The run as it would be without the event that is taken back: everything else happened all the same. */
function takenBack(state: RunState, event: TakenBack): RunState {
  const [first, ...others] = state.entries;
  if (first?.type !== 'run.started') return state;
  const gone = others.filter(({ id }) => id === event.body.thing.event);
  const kept: RunState = { ...begun(first), takenBack: [...state.takenBack, ...gone], passedOver: state.passedOver };
  const again = others.filter((each) => !gone.includes(each)).reduce(replayed, kept);
  return { ...again, entries: [...again.entries, event] };
}

function replayed(state: RunState, event: RunEvent): RunState {
  if (event.type === 'run.taken-back') return { ...state, entries: [...state.entries, event] };
  const [why] = whyNot(state, event, event.by);
  return why === undefined ? withEffect(state, event) : passedOver(state, event.id, why);
}
