import { sensorInside, temperaturesInside } from '../march/inside.ts';
import { temperatureAt } from '../stack/probe-place.ts';
import type { History } from './history.ts';
import type { PressRun } from './press-run.ts';
import { addRates, rateCount } from './rate-table.ts';

/** Sum of a rate inside a step, from its values and rates at both ends. */
function sumInside(history: History, place: number, which: number, step_s: number, share: number): number {
  const { rates, now, next, before, sums, atStart, atEnd } = history;
  atStart.fill(0);
  atEnd.fill(0);
  addRates(rates, now[place] as number, step_s, atStart, 0);
  addRates(rates, next[place] as number, step_s, atEnd, 0);
  const at = rateCount * place + which;
  const start = before[at] as number;
  const rise = (sums[at] as number) - start;
  const first = atStart[which] as number;
  const last = atEnd[which] as number;
  // Where the rate rises so steeply that the cubic would overshoot, its slopes are cut back.
  const steepest = 3 * rise;
  const slope0 = Math.min(first, steepest);
  const slope1 = Math.min(last, steepest);
  return start + share * (slope0 + share * (3 * rise - 2 * slope0 - slope1 + share * (slope0 + slope1 - 2 * rise)));
}

/** Notes when the last depth of the belt has healed through (Z = 1). */
export function noteBond(run: PressRun, step_s: number): void {
  if (run.bonded_s !== null) return;
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
  run.bonded_s = run.march.slab.time_s + latest * step_s;
}

/** Columns of a row of samples: probes' temperatures, their three sums each, both platens, both sensors. */
export function sampleColumns(probes: number): number {
  return (1 + rateCount) * probes + 4;
}

/** Values at the times asked for that lie in the step tried last. */
export function takeSamples(run: PressRun, step_s: number): void {
  const { samples, march, history, beltPlaces } = run;
  const { slab } = march;
  const { times_s, rows, columns } = samples;
  while (samples.taken < times_s.length) {
    const time_s = times_s[samples.taken] as number;
    if (time_s > slab.time_s + step_s + 1e-9) return;
    const share = Math.max(0, Math.min(1, (time_s - slab.time_s) / step_s));
    temperaturesInside(slab, share, history.inside);
    const probes = run.input.probes.length;
    let column = samples.taken * columns;
    for (let p = 0; p < probes; p += 1) {
      const place = history.places[beltPlaces + p];
      rows[column + p] = place === undefined ? Number.NaN : temperatureAt(place, history.inside);
      for (let which = 0; which < rateCount; which += 1) {
        rows[column + probes + rateCount * p + which] = sumInside(history, beltPlaces + p, which, step_s, share);
      }
    }
    column += (1 + rateCount) * probes;
    rows[column] = history.inside[0] as number;
    rows[column + 1] = history.inside[slab.count - 1] as number;
    rows[column + 2] = sensorInside(slab.top, share);
    rows[column + 3] = sensorInside(slab.bottom, share);
    samples.taken += 1;
  }
}
