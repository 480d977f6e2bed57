import { pageClock } from './steady-clock.ts';
import { StoreError } from './store-error.ts';

/** The two clocks of a device; handed in, so that tests can turn them. */
export interface Clocks {
  /** Wall clock [ms since 1970]. People and networks set it. */
  readonly now: () => number;
  /** Time since this page started [ms], with its sleep, never set back. */
  readonly up: () => number;
}

/** Of this page; what times a run rests on them too, so they go on while the device sleeps. */
export function ownClocks(): Clocks {
  return { now: () => Date.now(), up: pageClock() };
}

/** A jump of the wall clock against the steady one. */
export interface ClockJump {
  /** What the wall clock should have shown, and showed. UTC. */
  readonly expected: string;
  readonly shown: string;
  /** Positive when it went forward [s]. */
  readonly jump_s: number;
  readonly up_ms: number;
}

const smallest_ms = 2000;

/** Moments that both clocks showed together. */
export interface Moment {
  readonly at: string;
  readonly up_ms: number;
}

/**
 * Both clocks at once.
 *
 * @throws StoreError `clock` when the wall clock shows no year from 1970 to 9999
 */
export function momentOf(clocks: Clocks): Moment {
  const now = clocks.now();
  if (!(now >= 0 && now < 253_402_300_800_000)) throw new StoreError('clock');
  return { at: new Date(now).toISOString(), up_ms: Math.max(0, Math.round(clocks.up())) };
}

/** The jump of the wall clock between two looks, if it is more than 2 s. */
export function clockJump(before: Moment, after: Moment): ClockJump | undefined {
  const expected_ms = Date.parse(before.at) + (after.up_ms - before.up_ms);
  const jump_ms = Date.parse(after.at) - expected_ms;
  if (Math.abs(jump_ms) <= smallest_ms) return undefined;
  return {
    expected: momentText(expected_ms),
    shown: after.at,
    jump_s: Math.round(jump_ms / 100) / 10,
    up_ms: after.up_ms,
  };
}

// Before a jump of ten years the expected moment may lie outside what a date can be written as.
function momentText(ms: number): string {
  return new Date(Math.min(Math.max(ms, 0), 253_402_300_799_999)).toISOString();
}
