import type { RunEvent } from '@loopwright/records/run';
import { cyclePosition } from './cycle-position.ts';
import type { ViewOptions } from './other-actions.ts';
import { type ClockReading, clockSetBetween_s, elapsedBetween } from './run-clock.ts';
import type { RunState } from './run-state.ts';
import type { Meanwhile, RunNow, RunTimer, RunView, Sureness } from './run-view.ts';
import { runTimers } from './timers.ts';
import { viewRun } from './view-run.ts';

/** A run that somebody looks at again. */
export interface Resumed {
  readonly view: RunView;
  /** What happened while nobody looked, latest first. */
  readonly meanwhile: readonly Meanwhile[];
}

/** When this device last showed the run. */
export interface LastLook extends ClockReading {
  /** Number of entries of the run then. */
  readonly entries: number;
}

/**
 * A run after sleep, a crash, a flat battery or on another device: where it stands, and what happened meanwhile.
 *
 * @param state - of the run, folded from the log
 * @param now - both clocks, and who looks
 * @param last - when this device last showed it; undefined: never, or nobody knows
 * @param options - as for `viewRun`
 */
export function resumeRun(state: RunState, now: RunNow, last?: LastLook, options: ViewOptions = {}): Resumed {
  const since = last ?? lastEntry(state);
  const found = [
    ...timersOver(state, now, since),
    ...others(state, now, last),
    ...clockSet(now, since),
    ...restarted(now, since),
  ].toSorted((a, b) => (a.ago_s ?? Number.POSITIVE_INFINITY) - (b.ago_s ?? Number.POSITIVE_INFINITY));
  const nothing: Meanwhile = { code: 'nothing', sure: 'steady', data: {} };
  return { view: viewRun(state, now, options), meanwhile: found.length > 0 ? found : [nothing] };
}

function lastEntry({ entries, started }: RunState): ClockReading {
  return entries.at(-1) ?? started;
}

const overCodes = {
  pressure: 'pressure-steady',
  ready: 'heated',
  'hold-end': 'hold-ended',
  open: 'cycle-ended',
  flat: 'flat-over',
} as const;

/** Timers that ran out since the run was last looked at; of the cycle only the furthest. */
function timersOver(state: RunState, now: RunNow, since: ClockReading): readonly Meanwhile[] {
  const away_s = elapsedBetween(since, now, state.entries).elapsed_s;
  const over = runTimers(state, now).filter(({ left_s }) => left_s <= 0 && -left_s <= away_s);
  const cycle = over.filter(isOfCycle).at(-1);
  const kept = over.filter((timer) => !isOfCycle(timer) || timer === cycle);
  return kept.flatMap(({ code, left_s, sure }): Meanwhile[] =>
    code === 'watch-hour' ? [] : [{ code: overCodes[code], ago_s: -left_s, sure, data: displayData(state, now) }],
  );
}

function isOfCycle({ code }: RunTimer): boolean {
  return code === 'ready' || code === 'hold-end' || code === 'open';
}

/** What the sentence may say of the press: until which temperature it stays closed. */
function displayData(state: RunState, now: RunNow): Meanwhile['data'] {
  const open_degC = state.started.things.recipe?.open_degC;
  return open_degC === undefined || !cyclePosition(state, now) ? {} : { open_degC };
}

/** What others did: on another device, or under another badge. */
function others(state: RunState, now: RunNow, last: LastLook | undefined): readonly Meanwhile[] {
  const fresh = state.entries.slice(last?.entries ?? state.entries.length);
  const elsewhere = fresh.filter(({ device }) => device !== now.device);
  const badge = fresh.findLast(({ by }) => by !== now.by);
  return [
    ...(elsewhere.length > 0 ? [told('other-device', elsewhere.at(-1), state, now, { count: elsewhere.length })] : []),
    ...(badge ? [told('other-badge', badge, state, now, { by: badge.by })] : []),
  ].flatMap((each) => each ?? []);
}

function told(
  code: Meanwhile['code'],
  event: RunEvent | undefined,
  state: RunState,
  now: RunNow,
  data: Meanwhile['data'],
): Meanwhile | undefined {
  if (event === undefined) return undefined;
  const { elapsed_s, sure } = elapsedBetween(event, now, state.entries);
  return { code, ago_s: elapsed_s, sure, data };
}

function clockSet(now: RunNow, since: ClockReading): readonly Meanwhile[] {
  const set_s = clockSetBetween_s(since, now);
  return set_s === 0 ? [] : [{ code: 'clock-set', sure: 'steady', data: { set_s: Math.round(set_s) } }];
}

/** Another start of this device: from here on times rest on the time of day. */
function restarted(now: RunNow, since: ClockReading): readonly Meanwhile[] {
  if (since.boot === now.boot || since.device !== now.device) return [];
  const sure: Sureness = 'wall';
  return [{ code: 'restarted', sure, data: {} }];
}
