import type {
  DryAnswer,
  RecipeAnswer,
  RunEvent,
  RunFace,
  RunMeasure,
  RunReason,
  RunStep,
  RunThing,
} from '@loopwright/records/run';

/** When something was said, by both clocks of the device that said it. */
export interface Stamp {
  readonly event: string;
  readonly by: string;
  readonly device: string;
  readonly at: string;
  readonly boot: string;
  readonly up_ms: number;
}

/** How a step was settled: done, or passed with a reason and still open to be done. */
export interface Settled extends Stamp {
  readonly how: 'done' | 'passed';
  readonly reason?: RunReason;
}

/** What departed from the card. `major` asks for a second pair of eyes; it never holds the line. */
export const deviationCodes = [
  'step-passed',
  'not-dry',
  'dry-not-known',
  'recipe-differs',
  'recipe-not-read',
  'heat-before-steady',
  'display-disagrees',
  'opened-early',
  'opened-warm',
  'cycle-stopped',
  'no-photo',
  'verdict-milder',
  'flat-too-short',
  'pressed-again',
  'measure-off',
] as const;
export type DeviationCode = (typeof deviationCodes)[number];

export interface Deviation {
  /** Names it in `run.deviation-accepted`. */
  readonly id: string;
  readonly code: DeviationCode;
  readonly level: 'minor' | 'major';
  readonly said: Stamp;
  readonly step?: RunStep;
  readonly reason?: RunReason;
  /** Numbers in SI and codes that its sentence takes. */
  readonly data: Readonly<Record<string, string | number>>;
  /** Another badge that has seen it; absent: not yet accepted. */
  readonly accepted?: Stamp;
}

/** Why an event of the log changed nothing. */
export interface PassedOver {
  readonly event: string;
  readonly why: WhyNot;
}

/** Why something may not be done now. */
export const whyNotCodes = [
  'not-in-this-run',
  'needs-steps',
  'settled-already',
  'own-tap',
  'cannot-be-passed',
  'run-is-over',
  'not-heating',
  'ask-answer',
  'nothing-to-take-back',
  'no-such-deviation',
  'needs-other-badge',
  'needs-badge',
  'already-pressed-again',
  'verdict-needs-reason',
  'reading-impossible',
  'other-belt',
  'not-readable',
  'too-late',
] as const;
export type WhyNotCode = (typeof whyNotCodes)[number];

export interface WhyNot {
  readonly code: WhyNotCode;
  /** Steps that must come first. */
  readonly steps?: readonly RunStep[];
  readonly data?: Readonly<Record<string, string | number>>;
}

export interface Measured extends Stamp {
  readonly measure: RunMeasure;
  readonly value: number;
}

export interface Photo extends Stamp {
  readonly face: RunFace;
  readonly sha256: string;
  readonly attempt: number;
}

/** Both displays as somebody read them, and when [s] from switching on, where that is known. */
export interface DisplayReading extends Stamp {
  readonly mark: RunThing<'run.display-read'>['mark'];
  readonly top_degC: number;
  readonly bottom_degC: number;
  readonly attempt: number;
}

/** The curve of a logger that lay in the press. */
export interface LoggedCurve extends Stamp, Omit<RunThing<'run.curve-read'>, 'run'> {
  readonly attempt: number;
}

/** Moments of the cycle under way. */
export interface CycleMoments {
  readonly pressure?: Stamp;
  readonly heat?: Stamp;
  readonly holdBegan?: Stamp;
  readonly coolingBegan?: Stamp;
  readonly cool?: Stamp;
  readonly opened?: Stamp & { readonly early: boolean };
  readonly lifted?: Stamp;
}

/** A time that the splice was in the press, as it ended. */
export interface PastCycle {
  readonly attempt: number;
  readonly moments: CycleMoments;
  /** Event that sent it back. */
  readonly ended: string;
}

/** A run as its events make it: plain data, the same after any way through JSON. */
export interface RunState {
  readonly id: string;
  readonly started: RunThing<'run.started'> & Stamp;
  /** Every event of the run that counts, oldest first. */
  readonly entries: readonly RunEvent[];
  /** What somebody took back; it stays in the log. */
  readonly takenBack: readonly RunEvent[];
  readonly passedOver: readonly PassedOver[];
  readonly people: 1 | 2;
  /** Badge of whoever has the run in hand. */
  readonly holder: string;
  readonly settled: Readonly<Partial<Record<RunStep, Settled>>>;
  /** How often the splice has gone into the press, from 1. */
  readonly attempt: number;
  /** True once the fused splice was pressed again: that is allowed once. */
  readonly pressedAgain: boolean;
  readonly predicted?: RunThing<'run.predicted'> & Stamp;
  readonly dry?: Stamp & { readonly answer: DryAnswer };
  readonly recipe?: Stamp & { readonly answer: RecipeAnswer };
  readonly roll?: RunThing<'run.roll-changed'>['roll'];
  readonly moments: CycleMoments;
  readonly past: readonly PastCycle[];
  readonly measures: readonly Measured[];
  readonly readings: readonly DisplayReading[];
  readonly logged: readonly LoggedCurve[];
  readonly photos: readonly Photo[];
  readonly noPhoto: Readonly<Partial<Record<RunFace, RunReason>>>;
  readonly inspected?: RunThing<'run.inspected'> & Stamp;
  readonly deviations: readonly Deviation[];
  /** Alarms that somebody has heard. */
  readonly heard: readonly string[];
  readonly end?: Stamp & { readonly how: 'finished' | 'stopped'; readonly reason?: string };
}
