import { runChange } from '@loopwright/records/run';
import { type CyclePosition, cyclePosition, type Mark } from './cycle-position.ts';
import { flat_s, pressureSteady_s } from './deviation.ts';
import { elapsedBetween, momentAfter } from './run-clock.ts';
import type { RunState, Stamp } from './run-state.ts';
import type { RunAlarm, RunNow, RunTimer, TimerCode } from './run-view.ts';

/** The splice is looked at once more after an hour of running. Common practice, no source. */
const watch_s = 3600;

/**
 * Every moment that the run waits for, as instants in UTC by the clock of the device that asks.
 *
 * @param state - of the run
 * @param now - both clocks
 */
export function runTimers(state: RunState, now: RunNow): readonly RunTimer[] {
  const { moments, settled } = state;
  const position = cyclePosition(state, now);
  return [
    ...(settled.heat ? [] : from('pressure', state, moments.pressure, pressureSteady_s, now)),
    ...(position ? cycleTimers(position, state, now) : []),
    ...(settled.flat ? [] : from('flat', state, moments.lifted, flat_s, now)),
    ...from('watch-hour', state, settled.unlock, watch_s, now),
  ];
}

function from(
  code: TimerCode,
  state: RunState,
  stamp: Stamp | undefined,
  after_s: number,
  now: RunNow,
): readonly RunTimer[] {
  if (stamp === undefined) return [];
  const { elapsed_s, sure } = elapsedBetween(stamp, now, state.entries);
  const left_s = after_s - elapsed_s;
  return [{ code, at: momentAfter(now.at, left_s), left_s, sure }];
}

/** What the display has said already is no longer waited for. */
function cycleTimers(position: CyclePosition, { moments }: RunState, now: RunNow): readonly RunTimer[] {
  const { ready, holdEnd, open } = position;
  const { holdBegan, coolingBegan, cool } = moments;
  return [
    ...(holdBegan || coolingBegan || cool ? [] : at('ready', ready, position, now)),
    ...(coolingBegan || cool ? [] : at('hold-end', holdEnd, position, now)),
    ...(cool ? [] : at('open', open, position, now)),
  ];
}

function at(
  code: TimerCode,
  mark: Mark | undefined,
  { elapsed_s, sure }: CyclePosition,
  now: RunNow,
): readonly RunTimer[] {
  if (mark === undefined) return [];
  const moment = (value: number): string => momentAfter(now.at, value - elapsed_s);
  const about = { earliest: moment(mark.low), latest: moment(mark.high) };
  return [{ code, at: moment(mark.value), left_s: mark.value - elapsed_s, sure, ...about }];
}

/**
 * The alarm that rings until somebody has heard it: the cycle has come to its end.
 *
 * @param state - of the run
 * @param timers - as they stand now
 */
export function runAlarm(state: RunState, timers: readonly RunTimer[]): RunAlarm | undefined {
  const open = timers.find(({ code, left_s }) => code === 'open' && left_s <= 0);
  const alarm = `open.${state.attempt}`;
  if (open === undefined || state.heard.includes(alarm)) return undefined;
  return { code: 'open', since: open.at, heard: runChange('run.alarm-heard', { run: state.id, alarm }) };
}
