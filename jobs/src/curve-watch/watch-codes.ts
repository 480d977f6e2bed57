import type { RunThing } from '@loopwright/records/run';

/** The two platens, each with its own sensor. */
export const watchSides = ['top', 'bottom'] as const;
export type WatchSide = (typeof watchSides)[number];

/** What a curve can show while somebody watches it, or afterwards. */
export const watchCodes = [
  'slow-ramp',
  'fast-ramp',
  'side-slow',
  'set-not-reached',
  'plateau-low',
  'overshoot',
  'above-cap',
  'plateau-unsteady',
  'hold-short',
  'hold-long',
  'cooling-slow',
  'opened-hot',
  'reading-jumps',
  'reading-impossible',
  'gap',
] as const;
export type WatchCode = (typeof watchCodes)[number];

/** What may lie behind it. */
export const watchCauses = [
  'mains-low',
  'long-lead',
  'half-heater',
  'template-thick',
  'plate-forgotten',
  'sensor-loose',
  'sensor-low',
  'fan-blocked',
  'fan-half',
  'air-warm',
  'dwell-entered',
  'set-entered',
  'heat-not-on',
  'hand-slow',
] as const;
export type WatchCause = (typeof watchCauses)[number];

/** What no curve of the platens' own sensors shows: it is asked for, measured or looked for. */
export const silentCauses = ['wet-belt', 'edge-cold', 'template-thin'] as const;
export type SilentCause = (typeof silentCauses)[number];

/** Something that the curve shows. `stop`: open nothing and ask; `care`: look; `note`: it stays in the record. */
export interface CurveWarning {
  readonly code: WatchCode;
  readonly level: 'stop' | 'care' | 'note';
  /** The platen it is about; absent: both, or none. */
  readonly side?: WatchSide;
  /** Numbers in SI, times from switching on. */
  readonly data: Readonly<Record<string, number>>;
  /** What may lie behind it, the likeliest first; two at most. */
  readonly causes: readonly WatchCause[];
}

/** A cycle as predicted, with the range of its marks. */
export type WatchedCycle = Extract<RunThing<'run.predicted'>['cycle'], { status: 'ok' }>;

/** What both sensors showed at a moment from switching on; a side that nobody read is absent. */
export interface CurveReading {
  readonly time_s: number;
  readonly top_degC?: number;
  readonly bottom_degC?: number;
}

/** When the press display said that a phase began, and when the press was opened [s] from switching on. */
export interface SaidMarks {
  readonly holdBegan_s?: number;
  readonly coolingBegan_s?: number;
  readonly opened_s?: number;
}

/** Between which nothing is said. Editable; where nobody has measured they are common practice, no source. */
export interface WatchLimits {
  /** Least difference of a shown value from its band that counts, ramp and cooling [K]. */
  readonly ramp_K: number;
  /** The same for the difference between the two sides [K]. */
  readonly sides_K: number;
  /** The same at the plateau, where the controller holds the shown value [K]. */
  readonly plateau_K: number;
  /** A forecast this much later than predicted is said [s]. */
  readonly late_s: number;
  /** A hold may differ from the recipe by this much [s], or this share. */
  readonly hold_s: number;
  readonly hold_share: number;
  /** Ready later than so many times the nominal time: it is not getting hot. */
  readonly never: number;
  /** Above this nothing of a belt should ever be [degC]. */
  readonly cap_degC: number;
  /** The core of the belt when it is opened [degC]; it is warmer than both displays. */
  readonly openCore_degC: number;
  /** Standard deviation of a plateau that is cycling [K]. */
  readonly unsteady_K: number;
  /** No platen changes faster than this [K/s]. */
  readonly fastest_K_s: number;
  /** What a tap, or reading two displays, takes [s]. */
  readonly tap_s: number;
  /** Between two readings of a logger: longer is a gap in which nothing is judged [s]. */
  readonly gap_s: number;
}
