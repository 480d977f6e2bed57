import type { SaidMarks, WatchedCycle, WatchSide } from './watch-codes.ts';

export type Phase = 'heating' | 'holding' | 'cooling';

/** One way the cycle may go: when it is ready, when the hold ends, when it is cold [s]. */
interface Course {
  readonly ready_s: number;
  readonly holdEnd_s: number;
  readonly open_s: number;
}

/** Early, nominal and late, with what the display said in place of what was predicted. */
export interface Courses {
  readonly nominal: Course;
  readonly all: readonly [early: Course, middle: Course, late: Course];
}

/**
 * The courses that a cycle may take by the range of its marks. A mark that the display said is the same in all of them.
 *
 * @param cycle - as predicted
 * @param said - by the press display
 */
export function coursesOf(cycle: WatchedCycle, said: SaidMarks = {}): Courses {
  const { ready_s: ready, holdEnd_s: holdEnd, open_s: open } = cycle;
  const nominal = { ready_s: ready.value, holdEnd_s: holdEnd.value, open_s: open.value };
  const coolLate_s = rest(open.high - open.value, holdEnd.high - holdEnd.value);
  const coolEarly_s = rest(open.value - open.low, holdEnd.value - holdEnd.low);
  const course = (readyAt: number, cool_s: number): Course => {
    const ready_s = said.holdBegan_s ?? Math.min(readyAt, said.coolingBegan_s ?? readyAt);
    const holdEnd_s = said.coolingBegan_s ?? ready_s + (holdEnd.value - ready.value);
    return { ready_s, holdEnd_s, open_s: holdEnd_s + Math.max(1, open.value - holdEnd.value + cool_s) };
  };
  return {
    nominal,
    all: [course(ready.low, -coolEarly_s), course(ready.value, 0), course(ready.high, coolLate_s)],
  };
}

/** What is left of a deviation when the part that came before is taken out of its square. */
function rest(whole: number, before: number): number {
  return Math.sqrt(Math.max(0, whole ** 2 - before ** 2));
}

/** The phase of a course at a time. */
export function phaseAt(course: Course, time_s: number): Phase {
  if (time_s < course.ready_s) return 'heating';
  return time_s < course.holdEnd_s ? 'holding' : 'cooling';
}

/** The time on the predicted curve that a time of a course stands for [s]. */
function onNominal_s(course: Course, nominal: Course, time_s: number): number {
  const legs = [
    [0, course.ready_s, 0, nominal.ready_s],
    [course.ready_s, course.holdEnd_s, nominal.ready_s, nominal.holdEnd_s],
    [course.holdEnd_s, course.open_s, nominal.holdEnd_s, nominal.open_s],
  ] as const;
  const leg = legs.find(([, to]) => time_s < to);
  if (leg === undefined) return nominal.open_s;
  const [from, to, a, b] = leg;
  return to <= from ? b : a + ((b - a) * (Math.max(time_s, from) - from)) / (to - from);
}

/** A line at a time, straight between its points [the line's unit]. */
export function valueAt(times_s: readonly number[], values: readonly number[], at_s: number): number {
  const after = firstAtLeast(times_s, at_s);
  if (after <= 0 || after >= times_s.length) return values[Math.min(after, values.length - 1)] ?? 0;
  const [t0 = 0, t1 = 0] = [times_s[after - 1], times_s[after]];
  const [y0 = 0, y1 = 0] = [values[after - 1], values[after]];
  return t1 === t0 ? y1 : y0 + ((y1 - y0) * (at_s - t0)) / (t1 - t0);
}

function firstAtLeast(times_s: readonly number[], at_s: number): number {
  let [low, high] = [0, times_s.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((times_s[middle] ?? 0) < at_s) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** What is expected at a moment [degC, or K for a difference]. */
export interface Band {
  readonly low: number;
  readonly expected: number;
  readonly high: number;
}

/**
 * The band of a platen at a time: the least and most of all courses, a tap early and a tap late.
 *
 * @param cycle - as predicted
 * @param courses - it may take
 * @param at - time [s] and width of a tap [s]
 * @param of - a platen, or `difference` for top minus bottom
 */
export function bandAt(
  cycle: WatchedCycle,
  { all, nominal }: Courses,
  { time_s, tap_s }: { readonly time_s: number; readonly tap_s: number },
  of: WatchSide | 'difference',
): Band {
  const line = lineOf(cycle, of);
  const at = (course: Course, shift_s: number): number =>
    valueAt(cycle.curve.times_s, line, onNominal_s(course, nominal, Math.max(0, time_s + shift_s)));
  const values = all.flatMap((course) => [-tap_s, 0, tap_s].map((shift_s) => at(course, shift_s)));
  return { low: Math.min(...values), expected: at(all[1], 0), high: Math.max(...values) };
}

const differences = new WeakMap<WatchedCycle, readonly number[]>();

function lineOf(cycle: WatchedCycle, of: WatchSide | 'difference'): readonly number[] {
  const { top_degC, bottom_degC } = cycle.curve;
  if (of !== 'difference') return of === 'top' ? top_degC : bottom_degC;
  const known = differences.get(cycle) ?? top_degC.map((top, i) => top - (bottom_degC[i] ?? top));
  differences.set(cycle, known);
  return known;
}
