import { record } from '../march/cells.ts';
import { lookInside, sensorInside } from '../march/inside.ts';
import { timeOf } from '../march/slab.ts';
import { type History, placeInside, switchShares } from './history.ts';
import type { PressRun } from './press-run.ts';
import { rateAt, rateCount } from './rate-table.ts';

/** Where `readSum` writes a sum at the step's start and its cubic. */
const cubic = new Float64Array(4);

/**
 * Sum of a rate over a step as a cubic through its values at both ends with the rates there. Where a rate rises so steeply
 * that the cubic would overshoot, its slope is cut back.
 */
function readSum(history: History, place: number, which: number, step_s: number): void {
  const { rates, now, next, before, sums } = history;
  const at = rateCount * place + which;
  const start = history.active ? (before[at] as number) : (sums[at] as number);
  const rise = (sums[at] as number) - start;
  const first = rise === 0 ? 0 : Math.min(step_s * rateAt(rates, now[place] as number, which), 3 * rise);
  const last = rise === 0 ? 0 : Math.min(step_s * rateAt(rates, next[place] as number, which), 3 * rise);
  cubic[0] = start;
  cubic[1] = first;
  cubic[2] = 3 * rise - 2 * first - last;
  cubic[3] = first + last - 2 * rise;
}

/** The sum read last at a share of the step. */
function sumInside(share: number): number {
  const bend = (cubic[2] as number) + share * (cubic[3] as number);
  return (cubic[0] as number) + share * ((cubic[1] as number) + share * bend);
}

/**
 * Notes when the last depth of the belt has healed through (Z = 1).
 *
 * @param run - run with the step recorded, changed
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source derived: bisection on the sum inside the step
 */
export function noteBond(run: PressRun, step_s: number): void {
  if (run.bonded_s !== null || !run.history.active) return;
  const { history, beltPlaces } = run;
  const { before, sums } = history;
  for (let n = 0; n < beltPlaces; n += 1) if ((sums[rateCount * n] as number) < 1) return;
  let latest = 0;
  for (let n = 0; n < beltPlaces; n += 1) {
    if ((before[rateCount * n] as number) >= 1) continue;
    readSum(history, n, 0, step_s);
    // A depth that has healed through where an earlier one had is not the last.
    if (sumInside(latest) >= 1) continue;
    let low = latest;
    let high = 1;
    for (let i = 0; i < 30; i += 1) {
      const middle = 0.5 * (low + high);
      if (sumInside(middle) < 1) low = middle;
      else high = middle;
    }
    latest = high;
  }
  run.bonded_s = timeOf(run.march.slab) + latest * step_s;
}

/**
 * Columns of a row of samples: probes' temperatures, their three sums each, both platens, both sensors.
 *
 * @param probes - how many [1]
 * @returns columns [1]
 * @source derived: plain count
 */
export function sampleColumns(probes: number): number {
  return (1 + rateCount) * probes + 4;
}

/**
 * Values at the times asked for that lie in the step tried last.
 *
 * @param run - run with the step recorded, changed
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source derived: interpolation inside the step
 */
export function takeSamples(run: PressRun, step_s: number): void {
  const { samples, march } = run;
  const { slab } = march;
  while (samples.taken < samples.times_s.length) {
    const after_s = (samples.times_s[samples.taken] as number) - timeOf(slab);
    if (after_s > step_s + 1e-9) return;
    takeSample(run, step_s, Math.max(0, Math.min(1, after_s / step_s)));
    samples.taken += 1;
  }
}

function takeSample({ samples, march, history, beltPlaces, input }: PressRun, step_s: number, share: number): void {
  const { rows, columns } = samples;
  const { cells, top, bottom } = march.slab;
  lookInside(march.slab, share, 0, march.slab.count - 1);
  switchShares(history, cells, record.STAGE);
  const probes = input.probes.length;
  const first = samples.taken * columns;
  const late = first + (1 + rateCount) * probes;
  for (let p = 0; p < probes; p += 1) {
    rows[first + p] = placeInside(history, cells, beltPlaces + p);
    for (let which = 0; which < rateCount; which += 1) {
      readSum(history, beltPlaces + p, which, step_s);
      rows[first + probes + rateCount * p + which] = sumInside(share);
    }
  }
  rows[late] = placeInside(history, cells, history.count - 2);
  rows[late + 1] = placeInside(history, cells, history.count - 1);
  rows[late + 2] = sensorInside(top, share);
  rows[late + 3] = sensorInside(bottom, share);
}
