import {
  type RunEvent,
  type RunReason,
  type RunStep,
  type RunThing,
  type RunType,
  runFaces,
} from '@loopwright/records/run';
import {
  deviation,
  displayDisagrees,
  flatTooShort,
  heatTooEarly,
  measureOff,
  openedOtherwise,
  stampOf,
} from './deviation.ts';
import { without } from './order.ts';
import type { CycleMoments, Deviation, RunState } from './run-state.ts';

/** What an allowed happening makes of the state of a run. */
export type Effect<T extends RunType> = (state: RunState, thing: RunThing<T>, event: RunEvent) => RunState;

/** Passing these leaves out how one tells a good splice: a second pair of eyes is asked for. */
const weighty: ReadonlySet<RunStep> = new Set(['pressure', 'faces', 'bend']);

export const effects: { readonly [T in RunType]: Effect<T> } = {
  'run.started': (state) => state,
  'run.predicted': (state, thing, event) => ({ ...state, predicted: { ...thing, ...stampOf(event) } }),
  'run.people-said': (state, { people }) => ({ ...state, people }),
  'run.steps-done': stepsDone,
  'run.step-passed': (state, { step, reason }, event) => {
    const level = weighty.has(step) ? 'major' : 'minor';
    return noting(passed(state, step, event, reason), deviation(event, { code: 'step-passed', level, step, reason }));
  },
  'run.dry-said': drySaid,
  'run.recipe-compared': recipeCompared,
  'run.roll-changed': ({ dry: _dry, ...state }, { roll }) => ({
    ...state,
    roll,
    settled: without(state.settled, ['dry']),
  }),
  'run.measured': measuring,
  'run.display-read': (state, { mark, top_degC, bottom_degC }, event) => {
    const reading = { ...stampOf(event), mark, top_degC, bottom_degC, attempt: state.attempt };
    return { ...state, readings: [...state.readings, reading] };
  },
  'run.display-said': (state, { says }, event) => {
    const name = ({ 'hold-began': 'holdBegan', 'cooling-began': 'coolingBegan', cool: 'cool' } as const)[says];
    return noting(at(state, { [name]: stampOf(event) }), ...displayDisagrees(state, event, says));
  },
  'run.curve-read': (state, { run: _run, ...curve }, event) => ({
    ...state,
    logged: [...state.logged, { ...stampOf(event), ...curve, attempt: state.attempt }],
  }),
  'run.cycle-stopped': (state, { reason }, event) => {
    const noted = deviation(event, { code: 'cycle-stopped', level: 'major', data: { reason } });
    return noting(again(state, ['match', 'pressure'], event), noted);
  },
  'run.opened-early': (state, thing, event) => {
    const { run: _run, ...shown } = thing;
    const noted = deviation(event, { code: 'opened-early', level: 'major', step: 'open', data: said(shown) });
    const opened = { ...stampOf(event), early: true };
    return noting(at(settledNow(state, ['open'], event), { opened }), noted);
  },
  'run.photo-taken': (state, { face, sha256 }, event) => ({
    ...state,
    photos: [...state.photos, { ...stampOf(event), face, sha256, attempt: state.attempt }],
  }),
  'run.no-photo': (state, { face, reason }, event) => {
    const noted = deviation(event, { code: 'no-photo', level: 'minor', step: 'faces', reason, data: { face } });
    return noting({ ...state, noPhoto: { ...state.noPhoto, [face]: reason } }, noted);
  },
  'run.inspected': inspected,
  'run.noted': (state) => state,
  'run.deviation-accepted': (state, thing, event) => ({
    ...state,
    deviations: state.deviations.map((each) =>
      each.id === thing.deviation ? { ...each, accepted: stampOf(event) } : each,
    ),
  }),
  'run.handed-over': (state, { to }) => ({ ...state, holder: to }),
  'run.taken-back': (state) => state,
  'run.alarm-heard': (state, { alarm }) => ({ ...state, heard: [...state.heard, alarm] }),
  'run.stopped': (state, { reason }, event) => ({ ...state, end: { ...stampOf(event), how: 'stopped', reason } }),
};

/** What somebody did say of what may be said. */
function said(of: Readonly<Record<string, string | number | undefined>>): Record<string, string | number> {
  return Object.fromEntries(
    Object.entries(of).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
}

function noting(state: RunState, ...noted: readonly Deviation[]): RunState {
  return noted.length === 0 ? state : { ...state, deviations: [...state.deviations, ...noted] };
}

function at(state: RunState, moments: Partial<CycleMoments>): RunState {
  return { ...state, moments: { ...state.moments, ...moments } };
}

function settledNow(state: RunState, steps: readonly RunStep[], event: RunEvent): RunState {
  const done = { ...stampOf(event), how: 'done' } as const;
  const fresh = steps.filter((step) => state.settled[step]?.how !== 'done').map((step) => [step, done] as const);
  return { ...state, settled: { ...state.settled, ...Object.fromEntries(fresh) } };
}

function passed(state: RunState, step: RunStep, event: RunEvent, reason: RunReason): RunState {
  return { ...state, settled: { ...state.settled, [step]: { ...stampOf(event), how: 'passed', reason } } };
}

/** The splice goes into the press once more: what rested on these steps is open again, its moments are past. */
function again(state: RunState, steps: readonly RunStep[], { id }: RunEvent): RunState {
  return {
    ...state,
    past: [...state.past, { attempt: state.attempt, moments: state.moments, ended: id }],
    settled: without(state.settled, steps),
    attempt: state.attempt + 1,
    moments: {},
    noPhoto: {},
  };
}

function measuring(state: RunState, { run: _run, ...read }: RunThing<'run.measured'>, event: RunEvent): RunState {
  const measured = { ...stampOf(event), ...read };
  return noting({ ...state, measures: [...state.measures, measured] }, ...measureOff(state, event, read));
}

/** Steps whose moment a timer or a deviation counts from. */
const timed: Readonly<Partial<Record<RunStep, 'pressure' | 'heat' | 'lifted'>>> = {
  pressure: 'pressure',
  heat: 'heat',
  'lift-out': 'lifted',
};

function stepsDone(state: RunState, { steps }: RunThing<'run.steps-done'>, event: RunEvent): RunState {
  const fresh = steps.filter((step) => state.settled[step]?.how !== 'done');
  let next = settledNow(state, fresh, event);
  for (const step of fresh) {
    const name = timed[step];
    if (name !== undefined) next = at(next, { [name]: stampOf(event) });
    if (step === 'heat') next = noting(next, ...heatTooEarly(next, event));
    if (step === 'flat') next = noting(next, ...flatTooShort(next, event));
    if (step === 'open') next = opened(next, event);
  }
  return next;
}

function opened(state: RunState, event: RunEvent): RunState {
  const noted = openedOtherwise(state, event);
  return noting(at(state, { opened: { ...stampOf(event), early: false } }), ...noted);
}

/** "Not dry" without a reason sends for another roll or the oven; with one, somebody goes on all the same. */
function drySaid(state: RunState, { answer, reason }: RunThing<'run.dry-said'>, event: RunEvent): RunState {
  const after = { ...state, dry: { ...stampOf(event), answer } };
  if (answer === 'sealed-roll' || answer === 'dried') return settledNow(after, ['dry'], event);
  if (reason === undefined) return { ...after, settled: without(after.settled, ['dry']) };
  const code = answer === 'not-dry' ? 'not-dry' : 'dry-not-known';
  const noted = deviation(event, { code, level: 'major', step: 'dry', reason });
  return noting(passed(after, 'dry', event, reason), noted);
}

/** "Differs" without a reason sends back to the press; with one, somebody goes on with what the display shows. */
function recipeCompared(state: RunState, thing: RunThing<'run.recipe-compared'>, event: RunEvent): RunState {
  const { run: _run, answer, reason, ...shown } = thing;
  const after = { ...state, recipe: { ...stampOf(event), answer } };
  if (answer === 'same' || answer === 'set-to-card') return settledNow(after, ['match'], event);
  if (reason === undefined) return { ...after, settled: without(after.settled, ['match']) };
  const code = answer === 'differs' ? 'recipe-differs' : 'recipe-not-read';
  const noted = deviation(event, { code, level: 'major', step: 'match', reason, data: said(shown) });
  return noting(passed(after, 'match', event, reason), noted);
}

/** What is done again after looking: a second time in the press keeps the mesh, a cut begins at the knife. */
const redone = { 'press-again': ['stack'], 'cut-out': ['cut'] } as const satisfies Record<string, readonly RunStep[]>;

function inspected(state: RunState, thing: RunThing<'run.inspected'>, event: RunEvent): RunState {
  const { verdict, proposed, reason } = thing;
  const milder =
    reason === undefined || proposed === undefined
      ? []
      : [
          deviation(event, {
            code: 'verdict-milder',
            level: 'major',
            step: 'verdict',
            reason,
            data: { verdict, proposed },
          }),
        ];
  const looked = noting({ ...state, inspected: { ...thing, ...stampOf(event) } }, ...unseen(state, event), ...milder);
  if (verdict === 'run') return settledNow(looked, ['verdict'], event);
  const next = { ...again(looked, redone[verdict], event), pressedAgain: verdict === 'press-again' };
  return verdict === 'cut-out' ? next : noting(next, deviation(event, { code: 'pressed-again', level: 'minor' }));
}

/** A face that nobody photographed, and nobody said why. */
function unseen({ photos, noPhoto, attempt }: RunState, event: RunEvent): readonly Deviation[] {
  const bare = runFaces.filter(
    (face) => noPhoto[face] === undefined && !photos.some((photo) => photo.face === face && photo.attempt === attempt),
  );
  return bare.map((face) => deviation(event, { code: 'no-photo', level: 'minor', step: 'verdict', data: { face } }));
}
