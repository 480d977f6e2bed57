import { computed, example, type Quantity } from '../quantity.ts';
import type { TimePart, TimePartCode } from './card.ts';

const minute = 60;

/** Minutes of each part of a torn-belt job: common practice, no source. */
const parts: readonly (readonly [code: TimePartCode, low_min: number, high_min: number])[] = [
  ['isolate', 10, 15],
  ['fetch', 10, 20],
  ['prepare-thread', 15, 25],
  ['mesh-clamp', 5, 5],
  ['press', 17, 18],
  ['inspect-restart', 15, 20],
];

/** Walking the loop alone, per metre of belt: 28 min on 64 m. Common practice, no source. */
const alone_min_per_m = 0.43;

export interface TimeBudget {
  readonly total: Quantity;
  readonly parts: readonly TimePart[];
}

/**
 * Time from standing to running again: the parts of the job, the press cycle as computed or timed where it is known.
 *
 * @param loop_m - endless length [m]; undefined when not known, then no walking is added
 * @param people - hands on the job, 1 or 2
 * @param cycle - whole press cycle [s] with its range, when known
 * @returns total with range and its parts [s]
 * @source common practice, no source
 */
export function timeBudget(loop_m: number | undefined, people: 1 | 2, cycle: Quantity | undefined): TimeBudget {
  const list: TimePart[] = parts.map(([code, low, high]) =>
    code === 'press' && cycle !== undefined
      ? { code, time: cycle }
      : { code, time: example('time', ((low + high) / 2) * minute, [low * minute, high * minute]) },
  );
  if (people === 1 && loop_m !== undefined) {
    list.push({ code: 'alone', time: example('time', alone_min_per_m * loop_m * minute) });
  }
  const sum = (pick: (time: Quantity) => number): number => list.reduce((total, part) => total + pick(part.time), 0);
  const total = computed(
    'time',
    sum((time) => time.value),
    [sum((time) => time.low ?? time.value), sum((time) => time.high ?? time.value)],
  );
  return { total, parts: list };
}
