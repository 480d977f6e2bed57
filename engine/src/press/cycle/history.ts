import type { Cells } from '../march/cells.ts';
import { nextTemperatureOf, temperatureOf } from '../march/cells.ts';
import { lookInside, temperatureInside } from '../march/inside.ts';
import { type Slab, timeOf } from '../march/slab.ts';
import type { Place } from '../stack/probe-place.ts';
import { addRates, type RateTable, rateCount } from './rate-table.ts';

/** What happens at places in the stack: temperature, its peak, and the sums of the three rates of fusion. */
export interface History {
  readonly count: number;
  /** How many of the places, from the first, have rates: the platens have none. */
  readonly fusing: number;
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
  /** False while every place is too cold for any of the rates in the step recorded last. */
  active: boolean;
}

/** Simpson's rule stays exact enough over this share of the melt width. */
const panelWidths = 0.7;
const mostPanels = 24;
const platens = 2;

/**
 * History of places that has not begun.
 *
 * @param slab - stack at its start
 * @param places - where, the two platens last
 * @param rates - tabulated rates of fusion
 * @param meltWidth_K - width of the melt gate [K]
 * @returns history
 * @source derived: plain allocation
 */
export function makeHistory(slab: Slab, places: readonly Place[], rates: RateTable, meltWidth_K: number): History {
  const count = places.length;
  const history: History = {
    count,
    fusing: count - platens,
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
    sums: new Float64Array(rateCount * (count - platens)),
    before: new Float64Array(rateCount * (count - platens)),
    active: false,
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
 * Temperature of a place where `lookInside` last looked.
 *
 * @param history - history with the place
 * @param cells - unknowns
 * @param n - which place [1]
 * @returns temperature [degC]
 * @source derived: straight line between neighbours
 */
export function placeInside({ upper, lower, share }: History, cells: Cells, n: number): number {
  const above = temperatureInside(cells, upper[n] as number);
  const weight = share[n] as number;
  return weight === 0 ? above : above + weight * (temperatureInside(cells, lower[n] as number) - above);
}

function readMiddle(history: History, cells: Cells, at: number): void {
  lookInside(cells, at);
  for (let n = 0; n < history.count; n += 1) history.middle[n] = placeInside(history, cells, n);
}

/**
 * Adds the step tried last to a history, before it is taken; `closeStep` goes on to the next.
 *
 * @param history - history up to the step's start
 * @param slab - stack with that step
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source Simpson's rule with the interpolated middle
 * @verified CYCLE-01 healing
 */
export function recordStep(history: History, slab: Slab, step_s: number): void {
  const { count, now, next, rates } = history;
  readNext(history, slab.cells);
  let change = 0;
  let hottest = now[0] as number;
  let rising = true;
  for (let n = 0; n < count; n += 1) {
    const start = now[n] as number;
    const end = next[n] as number;
    if (end < start) rising = false;
    change = Math.max(change, Math.abs(end - start));
    hottest = Math.max(hottest, start, end);
  }
  history.active = hottest > rates.lowest_degC;
  // A cold stack that warms up has its peak at the end of the step, and nothing happens in it.
  if (history.active || !rising) readMiddle(history, slab.cells, 0.5);
  else history.middle.set(next);
  notePeaks(history, timeOf(slab), step_s);
  if (history.active) addStep(history, slab, step_s, Math.min(mostPanels, Math.ceil(change / history.panel_K) || 1));
}

function addStep(history: History, slab: Slab, step_s: number, panels: number): void {
  const { now, next, middle, sums, before } = history;
  for (let n = 0; n < sums.length; n += 1) before[n] = sums[n] as number;
  const sixth_s = step_s / (6 * panels);
  addAll(history, now, sixth_s);
  addAll(history, next, sixth_s);
  for (let i = 1; i < 2 * panels; i += 1) {
    if (panels > 1) readMiddle(history, slab.cells, i / (2 * panels));
    addAll(history, middle, (i % 2 === 0 ? 2 : 4) * sixth_s);
  }
}

function addAll({ fusing, rates, sums }: History, at: Float64Array, weight_s: number): void {
  for (let n = 0; n < fusing; n += 1) addRates(rates, at[n] as number, weight_s, sums, rateCount * n);
}

/** A peak inside the step is the vertex of the parabola through start, middle and end. */
function notePeaks({ count, now, middle, next, peak, peakAt_s }: History, start_s: number, step_s: number): void {
  for (let n = 0; n < count; n += 1) {
    const first = now[n] as number;
    const second = middle[n] as number;
    const third = next[n] as number;
    let top = third;
    let share = 1;
    // Only a parabola that rises at the start and falls at the end has its vertex inside.
    if (4 * second > 3 * first + third && 4 * second > first + 3 * third) {
      const bend = first - 2 * second + third;
      share = 0.5 + (0.25 * (first - third)) / bend;
      const off = 2 * share - 1;
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
