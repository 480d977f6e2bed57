import { Refusal } from '../../refusal.ts';
import { temperatureOf } from '../march/cells.ts';
import { type End, endField } from '../march/end.ts';
import { type Heaters, makeHeaters } from '../march/heaters.ts';
import { type March, type MarchFailure, makeMarch, tryAccurateStep } from '../march/march.ts';
import { makeSlab, type Slab, slabField, startCells, timeOf } from '../march/slab.ts';
import { acceptStep } from '../march/step.ts';
import { checkStack } from '../stack/check-stack.ts';
import { type Grid, stackGrid } from '../stack/grid.ts';
import type { Layer } from '../stack/layer.ts';
import { type Place, probePlace } from '../stack/probe-place.ts';
import { type Boundary, boundaryCurve, boundaryEnd } from './boundary.ts';

/** A layered wall, what is done to both of its faces, and what is wanted of it. */
export interface ConductInput {
  /** Top first. */
  readonly layers: readonly Layer[];
  /** Between a layer and the next: one fewer than layers; perfect where null or not given. */
  readonly contacts_W_m2K?: readonly (number | null)[] | undefined;
  readonly top: Boundary;
  readonly bottom: Boundary;
  /** One temperature for all, or as a function of the depth from the top. */
  readonly start_degC: number | ((depth_m: number) => number);
  /** Heat put into the volume, as a function of depth and time. */
  readonly source_W_m3?: ((depth_m: number, time_s: number) => number) | undefined;
  /** Ascending. */
  readonly times_s: readonly number[];
  readonly probes: readonly { readonly layer: number; readonly fraction: number }[];
  /** Cells of each layer. */
  readonly cells: readonly number[];
  readonly tolerance_K?: number | undefined;
  /** Constant step, for studies of the order of the method. */
  readonly step_s?: number | undefined;
}

/** One face of the wall at one time. */
export interface ConductFace {
  readonly surface_degC: number;
  /** Heat that has come in through it since the start. */
  readonly heat_J_m2: number;
}

/** The wall at one time. */
export interface ConductState {
  readonly time_s: number;
  readonly probes_degC: readonly number[];
  readonly cells_degC: readonly number[];
  readonly top: ConductFace;
  readonly bottom: ConductFace;
}

/** A computed wall, or why there is none. */
export type ConductResult =
  | {
      readonly status: 'ok';
      readonly states: readonly ConductState[];
      readonly depths_m: readonly number[];
      readonly steps: number;
    }
  | {
      readonly status: 'not-converged';
      readonly reason: MarchFailure;
      readonly residual: number;
      readonly iterations: number;
    };

const mostTries = 200_000;

/**
 * Heat conduction through a layered wall in one direction, by the same cells and steps as a press cycle.
 * rho*c*dT/dt = d/dx(k*dT/dx) + q.
 *
 * @param input - layers, faces, start, times [units in their names]
 * @returns temperatures and heat at each time, or the status of a march that failed
 * @throws not-finite, out-of-range, and those of a stack
 * @validity one direction, opaque, at rest
 * @source cell-centred finite volumes with contact resistances; RODASP in time
 * @verified MARCH-03 step on a semi-infinite wall
 */
export function conduct(input: ConductInput): ConductResult {
  const inner = input.layers.slice(1).map((_, index) => input.contacts_W_m2K?.[index] ?? null);
  checkStack(input.layers, [null, ...inner, null]);
  const grid = stackGrid(input.layers, [contactOf(input.top), ...inner, contactOf(input.bottom)], input.cells, {
    top: boundaryCurve(input.top),
    bottom: boundaryCurve(input.bottom),
  });
  const depths_m = depthsOf(grid);
  const slab = slabOf(input, grid, depths_m);
  const march = makeMarch(slab, {
    tolerance_K: input.tolerance_K ?? 1e-4,
    first_s: 1e-3,
    fixedStep_s: input.step_s,
    mostTries,
  });
  const places = input.probes.map(({ layer, fraction }) => probePlace(grid, layer, fraction));
  const states: ConductState[] = [];
  let steps = 0;
  for (const [index, time_s] of input.times_s.entries()) {
    if (!(time_s >= timeOf(slab)))
      throw new Refusal('out-of-range', `times_s[${index}]`, { value: time_s, min: timeOf(slab), unit: 's' });
    steps += marchTo(march, time_s);
    const { failure } = march;
    if (failure)
      return { status: 'not-converged', reason: failure, residual: march.lastError_K, iterations: march.tries };
    states.push(stateOf(slab, places));
  }
  return { status: 'ok', states, depths_m: Array.from(depths_m.subarray(1, grid.count - 1)), steps };
}

function contactOf(boundary: Boundary): number | null {
  return boundary.kind === 'platen' ? (boundary.contact_W_m2K ?? null) : null;
}

/** Depth of each cell's centre; platens at the faces. */
function depthsOf({ parts, count }: Grid): Float64Array {
  const depths_m = new Float64Array(count);
  let face_m = 0;
  parts.forEach(({ cell_m }, i) => {
    depths_m[i] = face_m + 0.5 * cell_m;
    face_m += cell_m;
  });
  return depths_m;
}

function slabOf(input: ConductInput, grid: Grid, depths_m: Float64Array): Slab {
  const { start_degC, source_W_m3 } = input;
  const start = depths_m.map((depth_m) => (typeof start_degC === 'number' ? start_degC : start_degC(depth_m)));
  const source =
    source_W_m3 &&
    ((time_s: number, into: Float64Array) => {
      for (let i = 1; i + 1 < grid.count; i += 1) {
        into[i] = (grid.parts[i]?.cell_m ?? 0) * source_W_m3(depths_m[i] as number, time_s);
      }
    });
  const last = grid.count - 1;
  const top = boundaryEnd(input.top, 'top', start[1] as number, grid.parts[1]?.half_m2K_W ?? 0);
  const bottom = boundaryEnd(input.bottom, 'bottom', start[last - 1] as number, grid.parts[last - 1]?.half_m2K_W ?? 0);
  start[0] = top.start_degC;
  start[last] = bottom.start_degC;
  return makeSlab({ cells: startCells(grid, start), top, bottom, heaters: noHeaters(), source });
}

function noHeaters(): Heaters {
  return makeHeaters({ volts_V: 0, lead_ohm: 0, top_S: 0, bottom_S: 0, area_m2: 1 });
}

function marchTo(march: March, end_s: number): number {
  const { slab } = march;
  let steps = 0;
  while (end_s - timeOf(slab) > 1e-12 * (1 + end_s)) {
    const step_s = tryAccurateStep(march, end_s - timeOf(slab));
    if (step_s === 0) return steps;
    acceptStep(slab, step_s);
    steps += 1;
  }
  slab.numbers[slabField.TIME] = end_s;
  return steps;
}

function heatThrough_J_m2({ numbers }: End): number {
  return (numbers[endField.SUPPLIED] as number) - (numbers[endField.LOST] as number);
}

function mixedAt({ upper, lower, share }: Place, temperatures: readonly number[]): number {
  return (temperatures[upper] as number) * (1 - share) + (temperatures[lower] as number) * share;
}

function stateOf(slab: Slab, places: readonly Place[]): ConductState {
  const { cells, top, bottom, count } = slab;
  const temperatures = Array.from({ length: count }, (_, index) => temperatureOf(cells, index));
  return {
    time_s: timeOf(slab),
    probes_degC: places.map((place) => mixedAt(place, temperatures)),
    cells_degC: temperatures.slice(1, count - 1),
    top: { surface_degC: temperatures[0] as number, heat_J_m2: heatThrough_J_m2(top) },
    bottom: { surface_degC: temperatures[count - 1] as number, heat_J_m2: heatThrough_J_m2(bottom) },
  };
}
