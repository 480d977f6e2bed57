import { usualOpening_degC } from './deviation.ts';
import { elapsedBetween } from './run-clock.ts';
import type { RunState, Stamp } from './run-state.ts';
import type { RunCurve, RunNow, Sureness } from './run-view.ts';
import { isInPress } from './why-not.ts';

/** A mark of the cycle [s] from switching on, with its range. */
export interface Mark {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Where a cycle under way stands. What the press display said counts before what was computed. */
export interface CyclePosition {
  readonly elapsed_s: number;
  readonly sure: Sureness;
  readonly phase: 'heating' | 'holding' | 'cooling';
  readonly ready?: Mark;
  readonly holdEnd?: Mark;
  readonly open?: Mark;
  /** True once it may be that both displays read cool, so that looking is worth it. */
  readonly mayBeCool: boolean;
}

/**
 * Where the cycle stands now; undefined while nothing is in the press.
 *
 * @param state - of the run
 * @param now - both clocks
 */
export function cyclePosition(state: RunState, now: RunNow): CyclePosition | undefined {
  const { heat, cool } = state.moments;
  if (!isInPress(state) || heat === undefined) return undefined;
  const { elapsed_s, sure } = elapsedBetween(heat, now, state.entries);
  const marks = marksOf(state, heat);
  const { ready, holdEnd, open } = marks;
  const looks_s = open?.low ?? holdEnd?.low ?? state.started.things.recipe?.dwell_s ?? 0;
  return {
    elapsed_s,
    sure,
    phase: phaseOf(state, elapsed_s, ready?.value, holdEnd?.value),
    ...(ready && { ready }),
    ...(holdEnd && { holdEnd }),
    ...(open && { open }),
    mayBeCool: cool !== undefined || sure === 'doubtful' || elapsed_s >= looks_s,
  };
}

type Marks = Pick<CyclePosition, 'ready' | 'holdEnd' | 'open'>;

/** Marks as predicted, moved to where the display said that a phase began. */
function marksOf(state: RunState, heat: Stamp): Marks {
  const { holdBegan, coolingBegan } = state.moments;
  const said_s = (stamp: Stamp): number => elapsedBetween(heat, stamp, state.entries).elapsed_s;
  const predicted = predictedMarks(state);
  const ready = holdBegan ? exactly(said_s(holdBegan)) : predicted.ready;
  const hold = holdBegan ? moved(predicted.holdEnd, predicted.ready, said_s(holdBegan)) : predicted.holdEnd;
  const holdEnd = coolingBegan ? exactly(said_s(coolingBegan)) : hold;
  const from = coolingBegan ?? holdBegan;
  const open = from && holdEnd ? moved(predicted.open, predicted.holdEnd, holdEnd.value) : predicted.open;
  return { ...(ready && { ready }), ...(holdEnd && { holdEnd }), ...(open && { open }) };
}

/** As computed for press and outlet; where nobody could, as somebody timed the recipe. */
function predictedMarks({ predicted, started }: RunState): Marks {
  const cycle = predicted?.cycle;
  if (cycle?.status === 'ok') return { ready: cycle.ready_s, holdEnd: cycle.holdEnd_s, open: cycle.open_s };
  const { readyAt_s, openAt_s, dwell_s } = started.things.recipe ?? {};
  return {
    ...(readyAt_s !== undefined && { ready: exactly(readyAt_s) }),
    ...(readyAt_s !== undefined && dwell_s !== undefined && { holdEnd: exactly(readyAt_s + dwell_s) }),
    ...(openAt_s !== undefined && { open: exactly(openAt_s) }),
  };
}

function exactly(value: number): Mark {
  return { value, low: value, high: value };
}

/** A mark that follows another by what was predicted between the two; how long that takes may vary as much as before. */
function moved(mark: Mark | undefined, after: Mark | undefined, began_s: number): Mark | undefined {
  if (mark === undefined || after === undefined) return mark;
  const value = began_s + (mark.value - after.value);
  const early_s = Math.max(0, mark.value - mark.low - (after.value - after.low));
  const late_s = Math.max(0, mark.high - mark.value - (after.high - after.value));
  return { value, low: value - early_s, high: value + late_s };
}

function phaseOf(
  { moments: { holdBegan, coolingBegan, cool } }: RunState,
  elapsed_s: number,
  ready_s: number | undefined,
  holdEnd_s: number | undefined,
): CyclePosition['phase'] {
  if (cool || coolingBegan || (holdEnd_s !== undefined && elapsed_s >= holdEnd_s)) return 'cooling';
  return holdBegan || (ready_s !== undefined && elapsed_s >= ready_s) ? 'holding' : 'heating';
}

/**
 * The predicted curve with its dot, and what the displays should read now.
 *
 * @param state - of the run
 * @param position - of the cycle
 */
export function runCurve(state: RunState, position: CyclePosition): RunCurve | undefined {
  const cycle = state.predicted?.cycle;
  const { heat } = state.moments;
  if (cycle?.status !== 'ok' || heat === undefined) return undefined;
  const { times_s, top_degC, bottom_degC } = cycle.curve;
  const now_s = onCurve_s(position, position.elapsed_s, cycle);
  const time_s = (stamp: Stamp): number => elapsedBetween(heat, stamp, state.entries).elapsed_s;
  return {
    times_s,
    top_degC,
    bottom_degC,
    now_s,
    expectedTop_degC: valueAt(times_s, top_degC, now_s),
    expectedBottom_degC: valueAt(times_s, bottom_degC, now_s),
    open_degC: state.started.things.recipe?.open_degC ?? usualOpening_degC,
    marks: { ready_s: cycle.ready_s.value, holdEnd_s: cycle.holdEnd_s.value, open_s: cycle.open_s.value },
    readings: state.readings
      .filter(({ attempt }) => attempt === state.attempt)
      .map((each) => ({ time_s: time_s(each), top_degC: each.top_degC, bottom_degC: each.bottom_degC })),
  };
}

type Predicted = Readonly<Record<'ready_s' | 'holdEnd_s' | 'open_s', Mark>>;

/** Time on the predicted curve: as far into the phase as the cycle really is. */
function onCurve_s({ ready, holdEnd, phase }: CyclePosition, elapsed_s: number, predicted: Predicted): number {
  const { ready_s, holdEnd_s, open_s } = predicted;
  if (phase === 'cooling') {
    return Math.min(open_s.value, holdEnd_s.value + Math.max(0, elapsed_s - (holdEnd?.value ?? 0)));
  }
  if (phase === 'holding') {
    return Math.min(holdEnd_s.value, ready_s.value + Math.max(0, elapsed_s - (ready?.value ?? 0)));
  }
  return Math.min(ready_s.value, elapsed_s);
}

function valueAt(times_s: readonly number[], values: readonly number[], at_s: number): number {
  const after = times_s.findIndex((time) => time >= at_s);
  if (after <= 0) return values[after < 0 ? values.length - 1 : 0] ?? 0;
  const [t0 = 0, t1 = 0] = [times_s[after - 1], times_s[after]];
  const [y0 = 0, y1 = 0] = [values[after - 1], values[after]];
  return t1 === t0 ? y1 : y0 + ((y1 - y0) * (at_s - t0)) / (t1 - t0);
}
