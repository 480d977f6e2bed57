import { lookInside, sensorInside } from '../march/inside.ts';
import { timeOf } from '../march/slab.ts';
import { type History, placeInside } from './history.ts';
import type { PressRun } from './press-run.ts';
import { rateAt, rateCount } from './rate-table.ts';

/**
 * Sum of a rate inside a step: cubic through its values at both ends with the rates there. Where a rate rises so steeply
 * that the cubic would overshoot, its slope is cut back.
 */
function sumInside(history: History, place: number, which: number, step_s: number, share: number): number {
  const { rates, now, next, before, sums } = history;
  const at = rateCount * place + which;
  if (!history.active) return sums[at] as number;
  const start = before[at] as number;
  const rise = (sums[at] as number) - start;
  const first = Math.min(step_s * rateAt(rates, now[place] as number, which), 3 * rise);
  const last = Math.min(step_s * rateAt(rates, next[place] as number, which), 3 * rise);
  return start + share * (first + share * (3 * rise - 2 * first - last + share * (first + last - 2 * rise)));
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
    let low = 0;
    let high = 1;
    for (let i = 0; i < 30; i += 1) {
      const middle = 0.5 * (low + high);
      if (sumInside(history, n, 0, step_s, middle) < 1) low = middle;
      else high = middle;
    }
    latest = Math.max(latest, high);
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
  lookInside(cells, share);
  const probes = input.probes.length;
  const first = samples.taken * columns;
  const late = first + (1 + rateCount) * probes;
  for (let p = 0; p < probes; p += 1) {
    rows[first + p] = placeInside(history, cells, beltPlaces + p);
    for (let which = 0; which < rateCount; which += 1) {
      rows[first + probes + rateCount * p + which] = sumInside(history, beltPlaces + p, which, step_s, share);
    }
  }
  rows[late] = placeInside(history, cells, history.count - 2);
  rows[late + 1] = placeInside(history, cells, history.count - 1);
  rows[late + 2] = sensorInside(top, share);
  rows[late + 3] = sensorInside(bottom, share);
}
