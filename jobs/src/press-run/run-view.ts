import type { Kind } from '@loopwright/engine/worked';
import type { ReadingMark, RunChange, RunMeasure, RunNumber, RunSign, RunStep } from '@loopwright/records/run';
import type { Deviation, Photo, Settled, WhyNot } from './run-state.ts';
import type { RunGroup } from './steps.ts';

/** Both clocks of the device that asks. `up_ms` goes on while the device sleeps. */
export interface RunNow {
  /** Wall clock, UTC. */
  readonly at: string;
  readonly boot: string;
  readonly up_ms: number;
  /** Alias of the badge that looks. */
  readonly by: string;
  readonly device: string;
}

/**
 * How far a time can be trusted. `steady`: counted by a clock that nobody sets. `wall`: over a restart or on another
 * device, by the time of day. `doubtful`: the clocks contradict each other, so only the press display knows.
 */
export type Sureness = 'steady' | 'wall' | 'doubtful';

export const timerCodes = ['pressure', 'ready', 'hold-end', 'open', 'flat', 'watch-hour'] as const;
export type TimerCode = (typeof timerCodes)[number];

/** A moment to come, or one that has been. */
export interface RunTimer {
  readonly code: TimerCode;
  /** UTC, by the wall clock of the device that asks. "About" unless low and high are absent. */
  readonly at: string;
  /** Seconds to go at `now`; negative once it is over. */
  readonly left_s: number;
  /** Earliest and latest of what was predicted. */
  readonly earliest?: string;
  readonly latest?: string;
  readonly sure: Sureness;
}

/**
 * Where the main action stands and how it looks. An own tap never stands where the one before it stood.
 * `hold_s` is 1 for what cannot be undone by hand.
 */
export interface Placement {
  readonly place: 'bottom' | 'middle' | 'top';
  readonly shape: 'bar' | 'octagon' | 'two-halves' | 'ring' | 'diamond' | 'square';
  readonly hold_s: 0 | 1;
}

/** What a tap says. Each has a word `run.action.<code>`. */
export const actionCodes = [
  'done',
  'group-done',
  'dry',
  'recipe',
  'pass',
  'heat-on',
  'open',
  'opened-early',
  'display-says',
  'read-display',
  'cycle-stopped',
  'verdict',
  'photo',
  'no-photo',
  'take-back',
  'accept',
  'hand-over',
  'heard',
  'stop',
  'people',
  'roll',
] as const;
export type ActionCode = (typeof actionCodes)[number];

/** One tile of an action: its code and what it appends. */
export interface Choice {
  /** A reason, an answer, a verdict, a badge: the action says of which kind. */
  readonly code: string;
  /** All of it in one append; absent where only a reason makes it whole. */
  readonly changes?: readonly RunChange[];
  /** Why somebody goes on all the same; asked after this tile. */
  readonly reasons?: readonly Choice[];
}

/** What a person can do now. `changes` are ready to append, all in one; else one of the tiles is. */
export interface RunAction {
  readonly code: ActionCode;
  readonly steps: readonly RunStep[];
  readonly own: boolean;
  readonly placement: Placement;
  readonly changes?: readonly RunChange[];
  readonly choices?: readonly Choice[];
  /** What is read at these steps; each reading is said by itself, as `run.measured`. */
  readonly measures: readonly MeasureAsked[];
}

/** A number to read off, by stepper, around what is expected. */
export interface MeasureAsked {
  readonly measure: RunMeasure;
  readonly kind: Kind;
  /** What the card expects; absent where nobody knows: "measure this". */
  readonly expected?: RunNumber;
  /** Where the stepper starts, its step and its ends, SI. */
  readonly start: number;
  readonly step: number;
  readonly least: number;
  readonly most: number;
  /** What was read already. */
  readonly read?: number;
}

/** A step as shown. Words: `run.step.<code>`, `run.do.<code>`, `run.why.<code>`. */
export interface StepView {
  readonly step: RunStep;
  readonly group: RunGroup;
  /** Number of its balloon, from 1. */
  readonly number: number;
  readonly state: 'settled' | 'passed' | 'current' | 'open' | 'not-yet';
  readonly settled?: Settled;
  /** Why it may not be done yet. */
  readonly whyNot: readonly WhyNot[];
  readonly measures: readonly MeasureAsked[];
  /** Of a step that may be done now beside the current one, or after all. */
  readonly action?: RunAction;
}

/** The predicted curve as progress: where the dot is, and what the displays should read now. */
export interface RunCurve {
  readonly times_s: readonly number[];
  readonly top_degC: readonly number[];
  readonly bottom_degC: readonly number[];
  /** Time since switching on; moved so that what the press display said counts. */
  readonly now_s: number;
  readonly expectedTop_degC: number;
  readonly expectedBottom_degC: number;
  readonly open_degC: number;
  readonly marks: { readonly ready_s: number; readonly holdEnd_s: number; readonly open_s: number };
  readonly readings: readonly { readonly time_s: number; readonly top_degC: number; readonly bottom_degC: number }[];
}

/** Both displays, to be read by steppers around what is predicted. */
export interface ReadingAsked {
  readonly mark: ReadingMark;
  readonly top_degC: number;
  readonly bottom_degC: number;
  readonly least_degC: number;
  readonly most_degC: number;
  readonly step_K: number;
  /** When the last one was read, if there is one of this mark. */
  readonly readAt?: string;
}

export type RunPhase = 'before' | 'hands' | 'heating' | 'holding' | 'cooling' | 'after' | 'restart' | 'over';

/** Rings until somebody has heard it, on each device. */
export interface RunAlarm {
  readonly code: TimerCode;
  readonly since: string;
  readonly heard: RunChange;
}

/** Everything a screen or a sheet needs of a run at one moment. */
export interface RunView {
  readonly run: string;
  readonly sign: RunSign & { readonly slot: number };
  readonly position: string;
  readonly press?: { readonly id: string; readonly name: string };
  readonly phase: RunPhase;
  readonly people: 1 | 2;
  readonly holder: string;
  readonly attempt: number;
  /** Every step of the run in the order of the work. */
  readonly steps: readonly StepView[];
  readonly current?: StepView;
  /** What comes after the current step. */
  readonly next?: RunStep;
  /** The one big action for the current step; absent while there is nothing to do. */
  readonly main?: RunAction;
  /** The same for what is left of the current group; absent where that is the same tap. */
  readonly fast?: RunAction;
  /** Steps that may just as well be done now. */
  readonly alsoOpen: readonly StepView[];
  /** Ways out: passing a step, opened early, display says otherwise, press failed, hand over, stop. */
  readonly others: readonly RunAction[];
  readonly takeBack?: RunAction;
  readonly timers: readonly RunTimer[];
  readonly curve?: RunCurve;
  readonly reading?: ReadingAsked;
  readonly alarm?: RunAlarm;
  /** Keep it closed: the press is hot. */
  readonly keepClosed: boolean;
  readonly deviations: readonly Deviation[];
  readonly photos: readonly Photo[];
  /** Steps gone on without: still to be measured or done. */
  readonly openPoints: readonly RunStep[];
  readonly retensionOn?: string;
  readonly end?: 'finished' | 'stopped';
}

/** What happened while nobody looked. */
export interface Meanwhile {
  readonly code:
    | 'pressure-steady'
    | 'heated'
    | 'hold-ended'
    | 'cycle-ended'
    | 'flat-over'
    | 'other-device'
    | 'other-badge'
    | 'clock-set'
    | 'restarted'
    | 'nothing';
  readonly ago_s?: number;
  readonly sure: Sureness;
  readonly data: Readonly<Record<string, string | number>>;
}
