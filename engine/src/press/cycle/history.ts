import type { Cells } from '../march/cells.ts';
import { nextTemperatureOf, temperatureOf } from '../march/cells.ts';
import { temperatureInside } from '../march/inside.ts';
import { type Slab, timeOf } from '../march/slab.ts';
import type { Place } from '../stack/probe-place.ts';
import { addRates, type RateTable, rateCount } from './rate-table.ts';

/** What happens at places in the stack: temperature, its peak, and the sums of the three rates of fusion. */
export interface History {
  readonly count: number;
  readonly upper: Int32Array;
  readonly lower: Int32Array;
  /** Weight of the lower unknown. */
  readonly share: Float64Array;
  readonly rates: RateTable;
  /** Change of temperature that a panel of Simpson's rule may span. */
  readonly panel_K: number;
  /** Temperature of each place at the step's start, middle and end. */
  readonly now: Float64Array;
  readonly middle: Float64Array;
  readonly next: Float64Array;
  readonly peak: Float64Array;
  readonly peakAt_s: Float64Array;
  /** Healing, flow and scission of each place, one place after the other; now and at the step's start. */
  readonly sums: Float64Array;
  readonly before: Float64Array;
}

/** Simpson's rule stays exact enough over this share of the melt width. */
const panelWidths = 0.7;
const mostPanels = 24;

/**
 * History of places that has not begun.
 *
 * @param slab - stack at its start
 * @param places - where
 * @param rates - tabulated rates of fusion
 * @param meltWidth_K - width of the melt gate [K]
 * @returns history
 * @source derived: plain allocation
 */
export function makeHistory(slab: Slab, places: readonly Place[], rates: RateTable, meltWidth_K: number): History {
  const count = places.length;
  const history: History = {
    count,
    upper: Int32Array.from(places, ({ upper }) => upper),
    lower: Int32Array.from(places, ({ lower }) => lower),
    share: Float64Array.from(places, ({ share }) => share),
    rates,
    panel_K: panelWidths * meltWidth_K,
    now: new Float64Array(count),
    middle: new Float64Array(count),
    next: new Float64Array(count),
    peak: new Float64Array(count),
    peakAt_s: new Float64Array(count),
    sums: new Float64Array(rateCount * count),
    before: new Float64Array(rateCount * count),
  };
  for (let n = 0; n < count; n += 1) {
    const upper = temperatureOf(slab.cells, history.upper[n] as number);
    const lower = temperatureOf(slab.cells, history.lower[n] as number);
    history.now[n] = upper + (history.share[n] as number) * (lower - upper);
  }
  history.peak.set(history.now);
  return history;
}

/** Temperatures of all places at the end of the step tried last. */
function readNext({ count, upper, lower, share, next }: History, cells: Cells): void {
  for (let n = 0; n < count; n += 1) {
    const above = nextTemperatureOf(cells, upper[n] as number);
    const weight = share[n] as number;
    next[n] = weight === 0 ? above : above + weight * (nextTemperatureOf(cells, lower[n] as number) - above);
  }
}

/**
 * Temperature of a place inside the step tried last.
 *
 * @param history - history with the place
 * @param cells - unknowns with that step
 * @param n - which place [1]
 * @param at - where in the step [1], 0 to 1
 * @returns temperature [degC]
 * @source third-order interpolation, straight line between neighbours
 */
export function placeInside({ upper, lower, share }: History, cells: Cells, n: number, at: number): number {
  const above = temperatureInside(cells, upper[n] as number, at);
  const weight = share[n] as number;
  return weight === 0 ? above : above + weight * (temperatureInside(cells, lower[n] as number, at) - above);
}

function readMiddle(history: History, cells: Cells, at: number): void {
  for (let n = 0; n < history.count; n += 1) history.middle[n] = placeInside(history, cells, n, at);
}

/**
 * Adds the step tried last to a history, before it is taken; `closeStep` goes on to the next.
 *
 * @param history - history up to the step's start
 * @param slab - stack with that step
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source Simpson's rule with the interpolated middle
 * @verified CYCLE-01 light Alder-24: healing
 */
export function recordStep(history: History, slab: Slab, step_s: number): void {
  const { count, now, next, sums, before, rates } = history;
  readNext(history, slab.cells);
  for (let n = 0; n < sums.length; n += 1) before[n] = sums[n] as number;
  let change = 0;
  let hottest = now[0] as number;
  for (let n = 0; n < count; n += 1) {
    const start = now[n] as number;
    const end = next[n] as number;
    change = Math.max(change, Math.abs(end - start));
    hottest = Math.max(hottest, start, end);
  }
  readMiddle(history, slab.cells, 0.5);
  notePeaks(history, timeOf(slab), step_s);
  if (hottest <= rates.lowest_degC) return;
  const panels = Math.min(mostPanels, Math.ceil(change / history.panel_K) || 1);
  const sixth_s = step_s / (6 * panels);
  addAll(history, now, sixth_s);
  addAll(history, next, sixth_s);
  for (let i = 1; i < 2 * panels; i += 1) {
    if (panels > 1) readMiddle(history, slab.cells, i / (2 * panels));
    addAll(history, history.middle, (i % 2 === 0 ? 2 : 4) * sixth_s);
  }
}

function addAll({ count, rates, sums }: History, at: Float64Array, weight_s: number): void {
  for (let n = 0; n < count; n += 1) addRates(rates, at[n] as number, weight_s, sums, rateCount * n);
}

/** A peak inside the step is the vertex of the parabola through start, middle and end. */
function notePeaks({ count, now, middle, next, peak, peakAt_s }: History, start_s: number, step_s: number): void {
  for (let n = 0; n < count; n += 1) {
    const first = now[n] as number;
    const second = middle[n] as number;
    const third = next[n] as number;
    let top = third;
    let share = 1;
    const bend = first - 2 * second + third;
    const vertex = 0.5 + (0.25 * (first - third)) / bend;
    if (bend < 0 && vertex > 0 && vertex < 1) {
      share = vertex;
      const off = 2 * vertex - 1;
      top = second + 0.5 * off * (third - first) + 0.5 * off * off * bend;
    }
    if (top > (peak[n] as number)) {
      peak[n] = top;
      peakAt_s[n] = start_s + share * step_s;
    }
  }
}

/**
 * The step's end is the next one's start.
 *
 * @param history - history with the step recorded last, changed
 * @returns nothing
 * @source derived: plain assignment
 */
export function closeStep({ now, next }: History): void {
  for (let n = 0; n < now.length; n += 1) now[n] = next[n] as number;
}
