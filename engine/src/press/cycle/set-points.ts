import { type End, endField } from '../march/end.ts';
import { timeOf } from '../march/slab.ts';
import { startControl } from './controller.ts';
import type { PressRun } from './press-run.ts';

const { SET, SET_RATE } = endField;

/** Where both set points go. */
interface SetPoints {
  readonly top_degC: number;
  readonly bottom_degC: number;
}

/** First step after a jump of the set points: the heaters turn round at once. */
const firstStep_s = 0.5;

/**
 * Sets both set points at once.
 *
 * @param run - run, changed
 * @param to - new set points [degC]
 * @returns nothing
 * @source derived: plain assignment
 */
export function jumpSetPoints(run: PressRun, to: SetPoints): void {
  const { march, input } = run;
  const { top, bottom } = march.slab;
  turnGoal(run, to);
  top.numbers[SET] = to.top_degC;
  bottom.numbers[SET] = to.bottom_degC;
  startControl(top, input.top.control);
  startControl(bottom, input.bottom.control);
  march.proposed_s = Math.min(march.proposed_s, firstStep_s);
}

/**
 * Lets both set points move; the first time they start from what the sensors show.
 *
 * @param run - run, changed
 * @param to - where they go [degC] and how fast [K/s]
 * @returns when one of them is to come to rest [s], ascending
 * @source derived: straight line
 * @verified CYCLE-13 ramp of a strong heater
 */
export function rampSetPoints(run: PressRun, to: SetPoints & { readonly rate_K_s: number }): number[] {
  const { slab } = run.march;
  turnGoal(run, to);
  const now_s = timeOf(slab);
  const ends_s = [move(slab.top, to.top_degC, to.rate_K_s), move(slab.bottom, to.bottom_degC, to.rate_K_s)];
  return ends_s.map((left_s) => now_s + left_s).sort((a, b) => a - b);
}

/** Sets a set point moving; how long until it is there. */
function move({ numbers: e }: End, to_degC: number, rate_K_s: number): number {
  const left_K = to_degC - (e[SET] as number);
  e[SET_RATE] = left_K < 0 ? -rate_K_s : rate_K_s;
  return Math.abs(left_K) / rate_K_s;
}

/** How near a set point counts as there: the time of its ramp is rounded. */
const there_K = 1e-6;

/**
 * Stops the set points that have come to where they go.
 *
 * @param run - run, changed
 * @param to - where they go [degC]
 * @returns nothing
 * @source derived: plain comparison
 */
export function comeToRest(run: PressRun, to: SetPoints): void {
  const { top, bottom } = run.march.slab;
  rest(top, to.top_degC);
  rest(bottom, to.bottom_degC);
}

function rest({ numbers: e }: End, to_degC: number): void {
  if (Math.abs((e[SET] as number) - to_degC) > there_K) return;
  e[SET] = to_degC;
  e[SET_RATE] = 0;
}

/** Which way the sensors come near their set points: from below the first time, whatever they show. */
function turnGoal(run: PressRun, to: SetPoints): void {
  const { top, bottom } = run.march.slab;
  const way = ({ numbers: e }: End, to_degC: number): 1 | -1 => (run.ramped && to_degC < (e[SET] as number) ? -1 : 1);
  run.goal.topWay = way(top, to.top_degC);
  run.goal.bottomWay = way(bottom, to.bottom_degC);
  run.ramped = true;
}
