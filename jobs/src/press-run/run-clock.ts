import type { Sureness } from './run-view.ts';

/** What both clocks of a device showed at one moment. */
export interface ClockReading {
  readonly device: string;
  readonly boot: string;
  readonly up_ms: number;
  /** Wall clock, UTC. */
  readonly at: string;
}

/** Time that passed, and how far it can be trusted. */
export interface Elapsed {
  readonly elapsed_s: number;
  readonly sure: Sureness;
}

/** A wall clock this much off the steady one was set, or the device slept unnoticed. */
const clocksAgree_s = 2;

/**
 * Time between two moments: by the steady clock where one start of a device saw both, else by the time of day between
 * the last moment of the one start and the first of the other. So a wall clock that is set moves nothing while the
 * device stays on, and only the gap counts over a restart.
 *
 * @param from - the earlier moment
 * @param to - the later one
 * @param known - what else the clocks showed meanwhile, in the order of the log
 * @returns time passed [s], never negative
 */
export function elapsedBetween(from: ClockReading, to: ClockReading, known: readonly ClockReading[] = []): Elapsed {
  if (sameStart(from, to)) return steady(from, to);
  const lastAt = known.findLastIndex((each) => sameStart(each, from) && each.up_ms >= from.up_ms);
  const last = known[lastAt] ?? from;
  const first = known.slice(lastAt + 1).find((each) => sameStart(each, to) && each.up_ms <= to.up_ms) ?? to;
  const gap_s = wallBetween_s(last, first);
  const elapsed_s = steady(from, last).elapsed_s + Math.max(0, gap_s) + steady(first, to).elapsed_s;
  return { elapsed_s, sure: gap_s < -clocksAgree_s ? 'doubtful' : 'wall' };
}

/**
 * By how much the wall clock was set between two moments of one start of a device.
 *
 * @returns forward positive [s]; 0 where the clocks agree or cannot be compared
 */
export function clockSetBetween_s(from: ClockReading, to: ClockReading): number {
  if (!sameStart(from, to)) return 0;
  const set_s = wallBetween_s(from, to) - steady(from, to).elapsed_s;
  return Math.abs(set_s) <= clocksAgree_s ? 0 : set_s;
}

/** A moment so many seconds from another, UTC. */
export function momentAfter(at: string, seconds: number): string {
  const ms = Date.parse(at) + seconds * 1000;
  return new Date(Math.min(Math.max(ms, 0), 253_402_300_799_999)).toISOString();
}

function sameStart(a: ClockReading, b: ClockReading): boolean {
  return a.device === b.device && a.boot === b.boot;
}

function steady(from: ClockReading, to: ClockReading): Elapsed {
  const elapsed_s = (to.up_ms - from.up_ms) / 1000;
  return elapsed_s < 0 ? { elapsed_s: 0, sure: 'doubtful' } : { elapsed_s, sure: 'steady' };
}

function wallBetween_s(from: ClockReading, to: ClockReading): number {
  return (Date.parse(to.at) - Date.parse(from.at)) / 1000;
}
