import { marksElongationRow } from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import type { Position, Press, Recipe, Roll } from '@loopwright/plant';
import type {
  DryAnswer,
  RecipeAnswer,
  RunFace,
  RunMeasure,
  RunNumber,
  RunReason,
  RunStep,
  RunThing,
  RunVerdict,
} from '@loopwright/records/run';
import { computed } from '../quantity.ts';
import { measureRules } from './measure-rules.ts';
import { retensionDay } from './retension-day.ts';
import { elapsedBetween } from './run-clock.ts';
import { runNumber } from './run-numbers.ts';
import type {
  CycleMoments,
  Deviation,
  DisplayReading,
  LoggedCurve,
  PassedOver,
  Photo,
  RunState,
  Stamp,
} from './run-state.ts';
import type { Sureness } from './run-view.ts';

/** Whoever had a hand in the run, under a badge. */
export interface RecordedPerson {
  readonly badge: string;
  readonly from: string;
  readonly to: string;
  readonly events: number;
}

export interface RecordedStep {
  readonly step: RunStep;
  readonly how: 'done' | 'passed' | 'open';
  readonly said?: Stamp;
  readonly reason?: RunReason;
}

export interface RecordedMeasure extends Stamp {
  readonly measure: RunMeasure;
  readonly kind: string;
  readonly value: number;
  /** What the card expected, with the formula and inputs that gave it. */
  readonly expected?: RunNumber;
}

/** One time in the press: what was expected and what both displays were read to show. */
export interface RecordedCycle {
  readonly attempt: number;
  readonly moments: CycleMoments;
  /** Seconds from heat on, and how far they can be trusted. */
  readonly times: Readonly<Partial<Record<'holdBegan' | 'coolingBegan' | 'cool' | 'opened', RecordedTime>>>;
  readonly readings: readonly (DisplayReading & { readonly time_s?: number })[];
  /** The latest curve of a logger, where one lay in the press. */
  readonly logged?: LoggedCurve;
}

interface RecordedTime {
  readonly value_s: number;
  readonly sure: Sureness;
}

/** Everything an auditor asks of a splice, each with who said it and when. Plain data. */
export interface RunRecord {
  readonly run: string;
  /** The last event that counts: what a printed sheet is held against. */
  readonly head: Stamp;
  readonly began: Stamp;
  readonly ended?: RunState['end'];
  readonly who: readonly RecordedPerson[];
  readonly people: 1 | 2;
  readonly position: Position;
  readonly line: string;
  readonly belt: { readonly id: string; readonly roll?: string; readonly lot?: string; readonly dataSheet?: string };
  readonly dry?: Stamp & { readonly answer: DryAnswer };
  readonly die?: string;
  readonly template?: string;
  readonly press?: Pick<Press, 'id' | 'name' | 'checkedOn' | 'checkInterval_days'>;
  readonly recipe?: Recipe;
  readonly recipeCompared?: Stamp & { readonly answer: RecipeAnswer };
  readonly predicted?: RunThing<'run.predicted'> & Stamp;
  readonly cycles: readonly RecordedCycle[];
  readonly photos: readonly Photo[];
  /** Faces without a photo, and why. */
  readonly noPhoto: Readonly<Partial<Record<RunFace, RunReason>>>;
  readonly inspected?: RunState['inspected'];
  readonly verdict?: RunVerdict;
  readonly measures: readonly RecordedMeasure[];
  /** Elongation from the marks as read, and what was wanted. */
  readonly tension?: { readonly elongation: RunNumber; readonly wanted?: RunNumber; readonly marks: Stamp };
  readonly retensionOn?: string;
  readonly steps: readonly RecordedStep[];
  readonly deviations: readonly Deviation[];
  readonly notes: readonly (Stamp & { readonly note: string; readonly step?: RunStep })[];
  /** What somebody tapped and took back, and what the order forbade; both stand in the log. */
  readonly takenBack: readonly (Stamp & { readonly type: string })[];
  readonly passedOver: readonly PassedOver[];
  /** With which software the numbers were computed, from which inputs. */
  readonly software: { readonly engine: string; readonly card: string; readonly numbers: readonly RunNumber[] };
  /** What the plant did not know at the start. */
  readonly missing: readonly string[];
  /** Ids of the events of the run, in their order: where each stands in the log. */
  readonly events: readonly string[];
}

/**
 * What an auditor asks of a run.
 *
 * @param state - of the run, folded from the log
 */
export function runRecord(state: RunState): RunRecord {
  const { id, started, end, people, entries, settled } = state;
  const last = entries.at(-1);
  const retensionOn = retensionDay(state);
  return {
    run: id,
    head: last ? stamped(last) : stamped({ ...started, id: started.event }),
    began: stamped({ ...started, id: started.event }),
    ...(end && { ended: end }),
    people,
    who: persons(state),
    ...things(state),
    ...said(state),
    cycles: cycles(state),
    photos: state.photos,
    noPhoto: state.noPhoto,
    measures: measures(state),
    ...tension(state),
    ...(retensionOn !== undefined && { retensionOn }),
    steps: started.steps.map((step) => recordedStep(step, settled[step])),
    deviations: state.deviations,
    notes: notes(state),
    takenBack: state.takenBack.map((event) => ({ ...stamped(event), type: event.type })),
    passedOver: state.passedOver,
    software: { engine: started.engine, card: started.card, numbers: started.numbers },
    missing: started.missing,
    events: entries.map((entry) => entry.id),
  };
}

type Enveloped = Omit<Stamp, 'event'> & { readonly id: string };

function stamped({ id, by, device, at, boot, up_ms }: Enveloped): Stamp {
  return { event: id, by, device, at, boot, up_ms };
}

function persons({ entries }: RunState): readonly RecordedPerson[] {
  const badges = [...new Set(entries.map(({ by }) => by))];
  return badges.map((badge) => {
    const own = entries.filter(({ by }) => by === badge);
    return { badge, from: own[0]?.at ?? '', to: own.at(-1)?.at ?? '', events: own.length };
  });
}

type Things = 'position' | 'line' | 'belt' | 'die' | 'template' | 'press' | 'recipe';

function things({ started, roll = started.things.roll }: RunState): Pick<RunRecord, Things> {
  const { position, line, belt, die, template, press, recipe } = started.things;
  return {
    position,
    line: line.id,
    belt: { id: belt.id, ...rollOf(roll), ...(belt.dataSheet !== undefined && { dataSheet: belt.dataSheet }) },
    ...(die && { die: die.id }),
    ...(template && { template: template.id }),
    ...(press && { press: pressOf(press) }),
    ...(recipe && { recipe }),
  };
}

function rollOf(roll: Roll | undefined): { roll?: string; lot?: string } {
  return roll === undefined ? {} : { roll: roll.id, ...(roll.lot !== undefined && { lot: roll.lot }) };
}

function pressOf({ id, name, checkedOn, checkInterval_days }: Press): NonNullable<RunRecord['press']> {
  return { id, name, checkInterval_days, ...(checkedOn !== undefined && { checkedOn }) };
}

type Said = 'dry' | 'recipeCompared' | 'predicted' | 'inspected' | 'verdict';

function said({ dry, recipe, predicted, inspected, settled }: RunState): Pick<RunRecord, Said> {
  return {
    ...(dry && { dry }),
    ...(recipe && { recipeCompared: recipe }),
    ...(predicted && { predicted }),
    ...(inspected && { inspected }),
    ...(inspected && settled.verdict && { verdict: inspected.verdict }),
  };
}

function cycles(state: RunState): readonly RecordedCycle[] {
  const { past, attempt, moments } = state;
  return [...past, { attempt, moments }].flatMap((cycle) => (cycle.moments.heat ? [recordedCycle(state, cycle)] : []));
}

function recordedCycle(
  state: RunState,
  { attempt, moments }: Pick<RecordedCycle, 'attempt' | 'moments'>,
): RecordedCycle {
  const { heat } = moments;
  const since = (stamp: Stamp | undefined): RecordedTime | undefined => {
    if (heat === undefined || stamp === undefined) return undefined;
    const { elapsed_s, sure } = elapsedBetween(heat, stamp, state.entries);
    return { value_s: elapsed_s, sure };
  };
  const names = ['holdBegan', 'coolingBegan', 'cool', 'opened'] as const;
  const times = names.flatMap((name) => {
    const time = since(moments[name]);
    return time === undefined ? [] : [[name, time] as const];
  });
  const readings = state.readings.filter((reading) => reading.attempt === attempt);
  const logged = state.logged.findLast((each) => each.attempt === attempt);
  return {
    attempt,
    moments,
    times: Object.fromEntries(times),
    ...(logged && { logged }),
    readings: readings.map((reading) => {
      const time = since(reading);
      return { ...reading, ...(time && { time_s: time.value_s }) };
    }),
  };
}

function measures({ measures: read, started }: RunState): readonly RecordedMeasure[] {
  return read.map((each) => {
    const { kind, expected: name } = measureRules[each.measure];
    const expected = started.numbers.find((number) => number.name === name);
    return { ...each, kind, ...(expected && { expected }) };
  });
}

/** The marks as read last; where nobody read them slack, the distance of the card. */
function tension({ measures: read, started }: RunState): Pick<RunRecord, 'tension'> {
  const number = (name: string): RunNumber | undefined => started.numbers.find((each) => each.name === name);
  const after = read.findLast(({ measure }) => measure === 'marks-after');
  const before = read.findLast(({ measure }) => measure === 'marks-before')?.value ?? number('marks-before')?.value;
  if (after === undefined || before === undefined) return {};
  const { measure: _measure, value, ...marks } = after;
  const wanted = number('elongation');
  const elongation = runNumber('elongation', computed('percent', work(marksElongationRow, { s: value, m: before })));
  return { tension: { elongation, marks, ...(wanted && { wanted }) } };
}

function recordedStep(step: RunStep, settled: RunState['settled'][RunStep]): RecordedStep {
  if (settled === undefined) return { step, how: 'open' };
  const { how, reason, ...stamp } = settled;
  return { step, how, said: stamp, ...(reason && { reason }) };
}

function notes({ entries }: RunState): RunRecord['notes'] {
  return entries.flatMap((event) => {
    if (event.type !== 'run.noted') return [];
    const { note, step } = event.body.thing;
    return [{ ...stamped(event), note, ...(step && { step }) }];
  });
}
