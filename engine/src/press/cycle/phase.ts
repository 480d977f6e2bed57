import { endField } from '../march/end.ts';
import { heaterField } from '../march/heaters.ts';
import { sensorInside } from '../march/inside.ts';
import { type MarchFailure, tryAccurateStep } from '../march/march.ts';
import { timeOf } from '../march/slab.ts';
import { acceptStep, tryStep } from '../march/step.ts';
import type { Column } from './columns.ts';
import { firstSwitch_s, limitPassed, passLimit } from './controller.ts';
import { closeStep, recordStep } from './history.ts';
import type { PressRun } from './press-run.ts';
import { noteBond, takeSamples } from './readings.ts';

const { SENSOR, SET, SHARE } = endField;

/** What ends a phase before its time is up: both sensors near their set points; both cold, or one cold enough for its water. */
export type Goal = 'ready' | 'cold' | 'none';

export type PhaseOutcome = 'goal' | 'time' | MarchFailure;

/** An event is met when it lies this close to the step's end. */
const exact_s = 1e-3;
const shortest_s = 1e-6;
/** So many kelvins, or times full power, nothing passes in the accuracy of an event. */
const farOff = 1;
const rootIterations = 60;
/** Tries of a step that is to end at an event. */
const mostAims = 20;
/** Bounds for a controller that never comes to rest. */
const mostEvents = 200_000;
const mostAtOnce = 20;

/**
 * Runs a press until its goal is met or the time is up, each event exactly at the end of a step.
 *
 * @param run - run, moved on
 * @param goal - what ends the phase before its time
 * @param end_s - when it ends in any case [s], counted from switching on
 * @returns what ended it
 * @source events by the cubic inside a step, then the step again to that time
 * @verified CYCLE-01 ready
 */
export function runPhase(run: PressRun, goal: Goal, end_s: number): PhaseOutcome {
  const { slab } = run.march;
  if (goal !== 'none' && goalPassed(run, goal, undefined) >= 0) return 'goal';
  let atOnce = 0;
  for (let events = 0; events < mostEvents && atOnce < mostAtOnce; ) {
    const left_s = end_s - timeOf(slab);
    if (left_s <= 1e-9 * (1 + end_s)) return 'time';
    const step_s = stepToEvent(run, goal, left_s);
    if (step_s === 0) return run.march.failure ?? 'step-too-small';
    const { kind, at_s } = run.event;
    const apart = kind === 'none' || at_s > shortest_s;
    if (apart) take(run, step_s);
    atOnce = apart ? 0 : atOnce + 1;
    if (kind === 'goal') return 'goal';
    if (kind !== 'none') {
      switchController(run, kind);
      events += 1;
    }
  }
  return 'too-many-steps';
}

/** An accurate step that ends at the first event inside it; not taken yet. */
function stepToEvent(run: PressRun, goal: Goal, most_s: number): number {
  const { march, event } = run;
  const whole_s = tryAccurateStep(march, most_s);
  if (whole_s === 0) return 0;
  findEvent(run, goal, whole_s);
  let { kind } = event;
  let step_s = whole_s;
  for (let i = 0; i < mostAims && kind !== 'none'; i += 1) {
    if (event.kind !== 'none' && (event.at_s >= step_s - exact_s || event.at_s <= shortest_s)) break;
    const next_s = event.kind === 'none' ? step_s + missing_s(run, kind, goal, step_s) : event.at_s;
    if (!(next_s > shortest_s && next_s < whole_s)) break;
    step_s = next_s;
    tryStep(march.slab, step_s);
    findEvent(run, goal, step_s);
    if (event.kind !== 'none') kind = event.kind;
  }
  return step_s;
}

/** The whole step saw an event that the shorter one just does not reach: how much longer it must be. */
function missing_s(run: PressRun, kind: 'goal' | 'top' | 'bottom', goal: Goal, step_s: number): number {
  if (kind !== 'goal' && run.input[kind].control.kind === 'on-off') return Number.NaN;
  return -passedBy(run, kind, goal, 1) / rateAtEnd(run, kind, goal, step_s);
}

/** How fast an event comes nearer at the end of the step tried last. */
function rateAtEnd(run: PressRun, kind: 'goal' | 'top' | 'bottom', goal: Goal, step_s: number): number {
  return (passedBy(run, kind, goal, 1) - passedBy(run, kind, goal, 1 - inward)) / (inward * step_s);
}

function take(run: PressRun, step_s: number): void {
  const { slab } = run.march;
  run.peakCurrent_A = Math.max(run.peakCurrent_A, slab.heaters[heaterField.CURRENT] as number);
  recordStep(run.history, slab, step_s);
  noteBond(run, step_s);
  takeSamples(run, step_s);
  closeStep(run.history);
  for (let i = 0; i < run.columns.length; i += 1) {
    const { history, view } = run.columns[i] as Column;
    view.bent = slab.bent;
    recordStep(history, view, step_s);
    closeStep(history);
  }
  acceptStep(slab, step_s);
  run.steps += 1;
}

/** The earliest event of the step tried last. */
function findEvent(run: PressRun, goal: Goal, step_s: number): void {
  const { event, cooling } = run;
  event.kind = 'none';
  event.at_s = Number.POSITIVE_INFINITY;
  if (goal !== 'none') noteRoot(run, 'goal', goal, step_s);
  if (cooling) return;
  noteControl(run, 'top', step_s);
  noteControl(run, 'bottom', step_s);
}

function noteControl(run: PressRun, side: 'top' | 'bottom', step_s: number): void {
  const { control } = run.input[side];
  const { slab } = run.march;
  if (control.kind !== 'on-off') {
    noteRoot(run, side, 'none', step_s);
    return;
  }
  const at_s = firstSwitch_s(slab[side], control, timeOf(slab), step_s);
  if (at_s < run.event.at_s) {
    run.event.kind = side;
    run.event.at_s = at_s;
  }
}

/** Looks for a change of sign at the step's middle and up to a little beyond its end. */
function noteRoot(run: PressRun, kind: 'goal' | 'top' | 'bottom', goal: Goal, step_s: number): void {
  const atEnd = passedBy(run, kind, goal, 1);
  const atStart = passedBy(run, kind, goal, 0);
  // What is left at the step's end may be met within the accuracy of the time.
  const soon = atEnd <= 0 && atEnd > -farOff && atEnd + exact_s * rateAtEnd(run, kind, goal, step_s) > 0;
  const late = atEnd > 0 || soon;
  if (!late && passedBy(run, kind, goal, 0.5) <= 0) return;
  const from = atStart < 0 ? 0 : inwardShare(run, kind, goal);
  const share = soon ? 1 : from === undefined ? 0 : rootShare(run, kind, goal, from, late ? 1 : 0.5, step_s);
  if (share * step_s < run.event.at_s) {
    run.event.kind = kind;
    run.event.at_s = share * step_s;
  }
}

/** Share of a step that is looked at where it begins on a limit. */
const inward = 1e-3;

/** A controller that begins on one of its limits may be moving away from it, towards the other. */
function inwardShare(run: PressRun, kind: 'goal' | 'top' | 'bottom', goal: Goal): number | undefined {
  return passedBy(run, kind, goal, inward) < 0 ? inward : undefined;
}

/** Regula falsi with halving of the value that stays (Illinois), between two shares of the step. */
function rootShare(
  run: PressRun,
  kind: 'goal' | 'top' | 'bottom',
  goal: Goal,
  from: number,
  to: number,
  step_s: number,
): number {
  let low = from;
  let high = to;
  let below = passedBy(run, kind, goal, low);
  let above = passedBy(run, kind, goal, high);
  for (let i = 0; i < rootIterations && (high - low) * step_s > 1e-7; i += 1) {
    const middle = low + ((high - low) * below) / (below - above);
    const value = passedBy(run, kind, goal, middle);
    if (Math.abs(value) < 1e-9) return middle;
    if (value > 0) {
      high = middle;
      above = value;
      below *= 0.5;
    } else {
      low = middle;
      below = value;
      above *= 0.5;
    }
  }
  return high;
}

function passedBy(run: PressRun, kind: 'goal' | 'top' | 'bottom', goal: Goal, share: number): number {
  return kind === 'goal' ? goalPassed(run, goal, share) : limitPassed(run.march.slab[kind], share);
}

/** Not negative once the goal is met; at a share of the step tried last, or now. */
function goalPassed({ march, input, goal: own }: PressRun, goal: Goal, share: number | undefined): number {
  const { top, bottom } = march.slab;
  const upper = share === undefined ? (top.numbers[SENSOR] as number) : sensorInside(top, share);
  const lower = share === undefined ? (bottom.numbers[SENSOR] as number) : sensorInside(bottom, share);
  if (goal === 'cold') {
    return Math.max(own.below_degC - Math.max(upper, lower), own.topWater_degC - upper, own.bottomWater_degC - lower);
  }
  const above = own.topWay * (upper - (top.numbers[SET] as number));
  return Math.min(above, own.bottomWay * (lower - (bottom.numbers[SET] as number))) + input.recipe.ready_K;
}

function switchController(run: PressRun, side: 'top' | 'bottom'): void {
  const end = run.march.slab[side];
  if (run.input[side].control.kind === 'on-off') end.numbers[SHARE] = 1 - (end.numbers[SHARE] as number);
  else passLimit(end);
}
