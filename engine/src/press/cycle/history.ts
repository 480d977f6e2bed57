import { temperaturesInside } from '../march/inside.ts';
import type { Slab } from '../march/slab.ts';
import type { Place } from '../stack/probe-place.ts';
import { addRates, type RateTable, rateCount } from './rate-table.ts';

/** What happens at places in the stack: temperature, its peak, and the sums of the three rates of fusion. */
export interface History {
  readonly places: readonly Place[];
  readonly rates: RateTable;
  /** Temperature of each place at the step's start. */
  readonly now: Float64Array;
  readonly next: Float64Array;
  readonly middle: Float64Array;
  readonly peak: Float64Array;
  readonly peakAt_s: Float64Array;
  /** Healing, flow and scission of each place, one place after the other. */
  readonly sums: Float64Array;
  readonly before: Float64Array;
  /** Temperatures of all unknowns inside the step. */
  readonly inside: Float64Array;
  /** Room for the three rates at one place. */
  readonly atStart: Float64Array;
  readonly atEnd: Float64Array;
}

/** Change of temperature over which Simpson's rule stays exact enough, as a share of the melt width. */
const panelWidths = 0.7;
const mostPanels = 24;

/**
 * History of places that has not begun.
 *
 * @param slab - stack at its start
 * @param places - where
 * @param rates - tabulated rates of fusion
 * @returns history
 * @source derived: plain allocation
 */
export function makeHistory(slab: Slab, places: readonly Place[], rates: RateTable): History {
  const room = () => new Float64Array(places.length);
  const history: History = {
    places,
    rates,
    now: room(),
    next: room(),
    middle: room(),
    peak: room(),
    peakAt_s: room(),
    sums: new Float64Array(rateCount * places.length),
    before: new Float64Array(rateCount * places.length),
    inside: new Float64Array(slab.count),
    atStart: new Float64Array(rateCount),
    atEnd: new Float64Array(rateCount),
  };
  readPlaces(history.places, slab.temperature, history.now);
  history.peak.set(history.now);
  return history;
}

function readPlaces(places: readonly Place[], from: Float64Array, into: Float64Array): void {
  for (let n = 0; n < places.length; n += 1) {
    const { upper, lower, share } = places[n] as Place;
    into[n] = (from[upper] as number) * (1 - share) + (from[lower] as number) * share;
  }
}

/**
 * Adds the step tried last to a history, before it is taken.
 *
 * @param history - history up to the step's start
 * @param slab - stack with that step, inside prepared
 * @param step_s - length of the step [s]
 * @param panel_K - change of temperature over which a panel of Simpson's rule may reach [K]
 * @returns nothing
 * @source Simpson's rule with the interpolated middle
 * @verified CYCLE-01 healing of the light press
 */
export function recordStep(history: History, slab: Slab, step_s: number, panel_K: number): void {
  const { places, now, next, middle, sums, before, inside } = history;
  readPlaces(places, slab.next, next);
  before.set(sums);
  let change = 0;
  let hottest = -300;
  for (let n = 0; n < places.length; n += 1) {
    const start = now[n] as number;
    const end = next[n] as number;
    change = Math.max(change, Math.abs(end - start));
    hottest = Math.max(hottest, start, end);
  }
  temperaturesInside(slab, 0.5, inside);
  readPlaces(places, inside, middle);
  notePeaks(history, slab.time_s, step_s);
  if (hottest > history.rates.lowest_degC) {
    const panels = Math.min(mostPanels, Math.ceil(change / panel_K) || 1);
    if (panels === 1) addPanel(history, step_s);
    else addPanels(history, slab, step_s, panels);
  }
}

/** The step's end is the next one's start. */
export function closeStep(history: History): void {
  history.now.set(history.next);
}

/** One panel of Simpson's rule over the whole step. */
function addPanel({ now, middle, next, rates, sums }: History, step_s: number): void {
  const outer_s = step_s / 6;
  const inner_s = (4 * step_s) / 6;
  for (let n = 0; n < now.length; n += 1) {
    const at = rateCount * n;
    addRates(rates, now[n] as number, outer_s, sums, at);
    addRates(rates, middle[n] as number, inner_s, sums, at);
    addRates(rates, next[n] as number, outer_s, sums, at);
  }
}

function addPanels(
  { now, middle, next, rates, sums, places, inside }: History,
  slab: Slab,
  step_s: number,
  panels: number,
): void {
  const sixth_s = step_s / (6 * panels);
  addAll(rates, now, sixth_s, sums);
  for (let i = 1; i < 2 * panels; i += 1) {
    temperaturesInside(slab, i / (2 * panels), inside);
    readPlaces(places, inside, middle);
    addAll(rates, middle, (i % 2 === 0 ? 2 : 4) * sixth_s, sums);
  }
  addAll(rates, next, sixth_s, sums);
}

function addAll(rates: RateTable, at: Float64Array, weight_s: number, sums: Float64Array): void {
  for (let n = 0; n < at.length; n += 1) addRates(rates, at[n] as number, weight_s, sums, rateCount * n);
}

/** A peak inside the step is the vertex of the parabola through start, middle and end. */
function notePeaks({ now, middle, next, peak, peakAt_s }: History, start_s: number, step_s: number): void {
  for (let n = 0; n < now.length; n += 1) {
    const first = now[n] as number;
    const second = middle[n] as number;
    const third = next[n] as number;
    let top = third;
    let share = 1;
    const bend = first - 2 * second + third;
    if (bend < 0) {
      const vertex = 0.5 + (0.25 * (first - third)) / bend;
      if (vertex > 0 && vertex < 1) {
        share = vertex;
        const off = 2 * vertex - 1;
        top = second + 0.5 * off * (third - first) + 0.5 * off * off * bend;
      }
    }
    if (top > (peak[n] as number)) {
      peak[n] = top;
      peakAt_s[n] = start_s + share * step_s;
    }
  }
}

/** Width of a Simpson panel for a cover with this melt width [K]. */
export function panelFor(meltWidth_K: number): number {
  return panelWidths * meltWidth_K;
}
