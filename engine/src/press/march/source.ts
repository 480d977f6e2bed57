import { type Cells, record } from './cells.ts';
import { chain, chainRow, EXTRA } from './chain.ts';
import { rodasp } from './rodas.ts';

const { V, X, STRIDE } = record;
const { time, timeSlope } = rodasp;
/** Reach of the central difference in time, as a share of the step. */
const reach = 1e-3;

/** Volumetric heat: fills the heat per area of each unknown [W/m2] at a time [s]. */
export interface Source {
  readonly fill: (time_s: number, into: Float64Array) => void;
  /** Heat at each stage of the step at hand, and its slope in time at the start. */
  readonly stages: readonly Float64Array[];
  readonly slope: Float64Array;
}

/**
 * A source that has not been asked yet.
 *
 * @param fill - heat per area of each unknown [W/m2] at a time [s]
 * @param count - number of unknowns [1]
 * @returns source
 * @source derived: plain allocation
 */
export function makeSource(fill: Source['fill'], count: number): Source {
  const stages = Array.from({ length: chainRow }, () => new Float64Array(count));
  return { fill, stages, slope: new Float64Array(count) };
}

/**
 * Heat at all stages of a step, its change in time weighted as the method asks.
 *
 * @param source - source, changed
 * @param time_s - start of the step [s]
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source Rosenbrock method for a right-hand side that depends on time, Hairer & Wanner II, IV.7; central difference
 */
export function fillSource({ fill, stages, slope }: Source, time_s: number, step_s: number): void {
  const apart_s = reach * step_s;
  const [before] = stages as [Float64Array];
  fill(time_s - apart_s, before);
  fill(time_s + apart_s, slope);
  for (let i = 0; i < slope.length; i += 1) slope[i] = ((slope[i] as number) - (before[i] as number)) / (2 * apart_s);
  stages.forEach((now, s) => {
    fill(time_s + step_s * (time[s] as number), now);
    const weight_s = step_s * (timeSlope[s] as number);
    for (let i = 0; i < now.length; i += 1) now[i] = (now[i] as number) + weight_s * (slope[i] as number);
  });
}

/**
 * Adds a source to a right-hand side: the first stage's to the first, what the others lie off it as `chain.ts` says.
 *
 * @param source - source with all stages of the step
 * @param cells - unknowns, changed
 * @param link - which solution [1]
 * @returns nothing
 * @source Rosenbrock method, see `chain.ts`
 */
export function addSource(source: Source, { numbers }: Cells, link: number): void {
  const own = link === EXTRA ? X : V + link;
  for (let i = 0; i < source.slope.length; i += 1) {
    const at = (i + 1) * STRIDE + own;
    const start = link === 0 ? ((source.stages[0] as Float64Array)[i] as number) : 0;
    numbers[at] = (numbers[at] as number) + start + bentHeat(source, i, chain.bend, link * chainRow);
  }
}

/** What the later stages lie off the first, weighted. */
function bentHeat({ stages }: Source, i: number, weights: Float64Array, row: number): number {
  const start = (stages[0] as Float64Array)[i] as number;
  let heat = 0;
  for (let s = 1; s < chainRow; s += 1) {
    heat += (weights[row + s] as number) * (((stages[s] as Float64Array)[i] as number) - start);
  }
  return heat;
}

/**
 * Heat of a source over a step, all unknowns together, as a mean.
 *
 * @param source - source with all stages of the step
 * @returns heat per area [W/m2]
 * @source Rosenbrock method, see `chain.ts`
 */
export function sourceOver(source: Source): number {
  let heat = 0;
  source.slope.forEach((_, i) => {
    heat += ((source.stages[0] as Float64Array)[i] as number) + bentHeat(source, i, chain.sumBend, 0);
  });
  return heat;
}
