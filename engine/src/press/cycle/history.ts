import { type Cells, record, temperatureOf } from '../march/cells.ts';
import { lookInside, temperatureInside } from '../march/inside.ts';
import { type Slab, timeOf } from '../march/slab.ts';
import { shareBesideSwitch } from '../march/switch-flux.ts';
import type { PlaceTable, SwitchedPlace } from './place-table.ts';
import { addRates, type RateTable, rateCount } from './rate-table.ts';

const { NEXT, STAGE, STRIDE } = record;

/** What happens at places in the stack: temperature, its peak, and the sums of the three rates of fusion. */
export interface History extends PlaceTable {
  readonly rates: RateTable;
  /** Change of temperature that two points of Gauss's rule may span; three span three times as much. */
  readonly span_K: number;
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
  /** True when every place got colder in the step recorded last: no peak lies ahead until one gets warmer. */
  falling: boolean;
}

/** Below the melting peak rates grow by the factor e over about this share of the melt width. */
const spanWidths = 0.7;
const mostPanels = 16;
/** Gauss's rules of two and three points, over a length of 1. */
const twoAt = Float64Array.of(0.5 - Math.sqrt(1 / 12), 0.5 + Math.sqrt(1 / 12));
const twoWeights = Float64Array.of(1 / 2, 1 / 2);
const threeAt = Float64Array.of(0.5 - Math.sqrt(3 / 20), 0.5, 0.5 + Math.sqrt(3 / 20));
const threeWeights = Float64Array.of(5 / 18, 8 / 18, 5 / 18);

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
export function makeHistory(slab: Slab, places: PlaceTable, rates: RateTable, meltWidth_K: number): History {
  const { count, fusing, upper, lower, switched } = places;
  const share = switched.length === 0 ? places.share : places.share.slice();
  const own = columns(5 * count + 2 * rateCount * fusing);
  const now = own(count);
  for (let n = 0; n < count; n += 1) {
    const above = temperatureOf(slab.cells, upper[n] as number);
    now[n] = above + (share[n] as number) * (temperatureOf(slab.cells, lower[n] as number) - above);
  }
  const peak = own(count);
  peak.set(now);
  return {
    count,
    fusing,
    upper,
    lower,
    share,
    switched,
    first: places.first,
    last: places.last,
    rates,
    span_K: spanWidths * meltWidth_K,
    now,
    middle: own(count),
    next: own(count),
    peak,
    peakAt_s: own(count),
    sums: own(rateCount * fusing),
    before: own(rateCount * fusing),
    active: false,
    falling: false,
  };
}

/** Arrays one after the other in one piece of memory, which must hold them all. */
function columns(length: number): (count: number) => Float64Array {
  const { buffer } = new Float64Array(length);
  let taken = 0;
  return (count) => {
    const own = new Float64Array(buffer, taken * Float64Array.BYTES_PER_ELEMENT, count);
    taken += count;
    return own;
  };
}

/**
 * Shares of places beside contacts that switch, for the temperatures in a field of the records.
 *
 * @param history - history with the places, changed
 * @param cells - unknowns
 * @param field - where the temperatures stand in a record [1]
 * @returns nothing
 * @source derived: half cells and contact in series
 * @verified CYCLE-18 steady flux through a contact that switches
 */
export function switchShares({ switched, share }: History, { numbers }: Cells, field: number): void {
  for (let i = 0; i < switched.length; i += 1) {
    const { place, contact, dryShare } = switched[i] as SwitchedPlace;
    share[place] = shareBesideSwitch(numbers, contact, dryShare, field);
  }
}

/** Temperatures of all places at the end of the step tried last. */
function readNext(history: History, cells: Cells): void {
  switchShares(history, cells, NEXT);
  const { count, upper, lower, share, next } = history;
  const { numbers } = cells;
  for (let n = 0; n < count; n += 1) {
    const above = numbers[((upper[n] as number) + 1) * STRIDE + NEXT] as number;
    const weight = share[n] as number;
    const below = weight === 0 ? above : (numbers[((lower[n] as number) + 1) * STRIDE + NEXT] as number);
    next[n] = above + weight * (below - above);
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

/**
 * Adds the step tried last to a history, before it is taken; `closeStep` goes on to the next.
 *
 * @param history - history up to the step's start
 * @param slab - stack with that step
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source Gauss's rules on the temperatures interpolated inside the step
 * @verified CYCLE-01 healing
 */
export function recordStep(history: History, slab: Slab, step_s: number): void {
  const { count, fusing, now, next, rates } = history;
  readNext(history, slab.cells);
  let change = 0;
  let hottest = now[0] as number;
  let rising = true;
  let falling = true;
  for (let n = 0; n < count; n += 1) {
    const start = now[n] as number;
    const end = next[n] as number;
    if (end < start) rising = false;
    else falling = false;
    if (n >= fusing) continue;
    if (end - start > change) change = end - start;
    if (start - end > change) change = start - end;
    if (start > hottest) hottest = start;
    if (end > hottest) hottest = end;
  }
  history.active = hottest > rates.lowest_degC;
  // What got colder everywhere in the step before and does so in this one has had its peak.
  if (!falling || !history.falling) notePeaks(history, slab, step_s, rising);
  history.falling = falling;
  if (history.active) addStep(history, slab, step_s, change);
}

function addStep(history: History, slab: Slab, step_s: number, change: number): void {
  const { sums, before, first, last, span_K } = history;
  for (let i = 0; i < sums.length; i += 1) before[i] = sums[i] as number;
  const even = change <= span_K;
  const at = even ? twoAt : threeAt;
  const weights = even ? twoWeights : threeWeights;
  const panels = even ? 1 : Math.min(mostPanels, Math.ceil(change / (3 * span_K)));
  for (let panel = 0; panel < panels; panel += 1) {
    for (let p = 0; p < at.length; p += 1) {
      lookInside(slab, (panel + (at[p] as number)) / panels, first, last);
      addPoint(history, slab.cells, ((weights[p] as number) * step_s) / panels);
    }
  }
}

function addPoint(history: History, cells: Cells, weight_s: number): void {
  switchShares(history, cells, STAGE);
  const { fusing, upper, lower, share, rates, sums } = history;
  const { numbers } = cells;
  for (let n = 0; n < fusing; n += 1) {
    const above = numbers[((upper[n] as number) + 1) * STRIDE + STAGE] as number;
    const weight = share[n] as number;
    const below = weight === 0 ? above : (numbers[((lower[n] as number) + 1) * STRIDE + STAGE] as number);
    addRates(rates, above + weight * (below - above), weight_s, sums, rateCount * n);
  }
}

/** What gets warmer at every place peaks at the step's end; else by the parabola through start, middle and end. */
function notePeaks(history: History, slab: Slab, step_s: number, rising: boolean): void {
  const { count, now, middle, next, peak, peakAt_s } = history;
  const start_s = timeOf(slab);
  if (!rising) {
    lookInside(slab, 0.5, 0, slab.count - 1);
    switchShares(history, slab.cells, STAGE);
    for (let n = 0; n < count; n += 1) middle[n] = placeInside(history, slab.cells, n);
  }
  for (let n = 0; n < count; n += 1) {
    const third = next[n] as number;
    const share = rising ? 1 : vertexOf(now[n] as number, middle[n] as number, third);
    const top = share === 1 ? third : parabolaAt(now[n] as number, middle[n] as number, third, share);
    if (top > (peak[n] as number)) {
      peak[n] = top;
      peakAt_s[n] = start_s + share * step_s;
    }
  }
}

/** Where the parabola through start, middle and end is highest: inside only if it rises at the start and falls at the end. */
function vertexOf(first: number, second: number, third: number): number {
  if (!(4 * second > 3 * first + third && 4 * second > first + 3 * third)) return 1;
  return 0.5 + (0.25 * (first - third)) / (first - 2 * second + third);
}

function parabolaAt(first: number, second: number, third: number, share: number): number {
  const off = 2 * share - 1;
  return second + 0.5 * off * (third - first) + 0.5 * off * off * (first - 2 * second + third);
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
