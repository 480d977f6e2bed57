import type { CurveReading, SaidMarks, WatchedCycle, WatchLimits } from './watch-codes.ts';

/** What is watched, and what it is held against. */
export interface WatchAsked {
  /** Absent where nobody could compute a cycle: then only what needs none is judged. */
  readonly predicted?: WatchedCycle;
  /** What both sensors showed, in the order of time. */
  readonly readings: readonly CurveReading[];
  /** Read off the displays now and then, or kept by a logger all along; a logger is smoothed and has gaps. */
  readonly kept?: 'displays' | 'logger';
  /**
   * The press's own sensors, which its controller holds at the set point, or others laid beside them, each with its
   * offset; default: the displays show the press's own, a logger has others.
   */
  readonly sensors?: 'press' | 'other';
  /** Set points of the recipe. */
  readonly set: { readonly top_degC: number; readonly bottom_degC: number };
  /** Hold of the recipe; default: as predicted. */
  readonly dwell_s?: number;
  readonly open_degC?: number;
  readonly said?: SaidMarks;
  readonly air_degC?: number;
  /** True where mains and air were measured before the cycle and the prediction rests on them. */
  readonly known?: { readonly mains?: boolean; readonly air?: boolean };
  readonly limits?: Partial<WatchLimits>;
}

/** The same with the limits in place. */
export interface Watched extends Omit<WatchAsked, 'limits'> {
  readonly limits: WatchLimits;
}

/** The temperature that a reading gives for a side [degC]. */
export function shownBy(reading: CurveReading, side: 'top' | 'bottom'): number | undefined {
  return side === 'top' ? reading.top_degC : reading.bottom_degC;
}
