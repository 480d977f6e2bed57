import { type Cells, setSource } from './cells.ts';
import { rodasp } from './rodas.ts';

const { time, timeSlope } = rodasp;
/** Reach of the central difference in time, as a share of the step. */
const reach = 1e-3;

/** Volumetric heat: fills the heat per area of each unknown [W/m2] at a time [s]. */
export interface Source {
  readonly fill: (time_s: number, into: Float64Array) => void;
  readonly now: Float64Array;
  readonly slope: Float64Array;
}

/**
 * Slope of a source in time at the start of a step.
 *
 * @param source - source, changed
 * @param time_s - start of the step [s]
 * @param step_s - length of the step [s]
 * @returns nothing
 * @source central difference
 */
export function sourceSlope(source: Source, time_s: number, step_s: number): void {
  const { fill, now, slope } = source;
  const apart_s = reach * step_s;
  fill(time_s - apart_s, now);
  fill(time_s + apart_s, slope);
  for (let i = 0; i < slope.length; i += 1) slope[i] = ((slope[i] as number) - (now[i] as number)) / (2 * apart_s);
}

/**
 * A source at a stage, its change in time weighted as the method asks.
 *
 * @param source - source, changed
 * @param time_s - start of the step [s]
 * @param stage - number of the stage [1], 0 to 5
 * @param step_s - length of the step [s]
 * @param cells - unknowns that are given it
 * @returns nothing
 * @source Rosenbrock method for a right-hand side that depends on time, Hairer & Wanner II, IV.7
 */
export function sourceAtStage(source: Source, time_s: number, stage: number, step_s: number, cells: Cells): void {
  const { fill, now, slope } = source;
  fill(time_s + step_s * (time[stage] as number), now);
  const weight_s = step_s * (timeSlope[stage] as number);
  for (let i = 0; i < now.length; i += 1) {
    now[i] = (now[i] as number) + weight_s * (slope[i] as number);
    setSource(cells, i, now[i] as number);
  }
}
