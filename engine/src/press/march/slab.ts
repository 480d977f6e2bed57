import { type EnthalpyTable, tableEnthalpy_J_kg } from '../stack/enthalpy-table.ts';
import type { Grid } from '../stack/grid.ts';
import { setConductances } from './conduction.ts';
import { type End, type EndParts, makeEnd } from './end.ts';
import type { Heaters } from './heaters.ts';
import type { Source } from './source.ts';
import { emptyFactors, type Factors } from './tridiagonal.ts';

/** Cells whose temperature is looked up from their enthalpy. */
export interface TabledCells {
  readonly from: number;
  readonly to: number;
  readonly table: EnthalpyTable;
  /** Per cell, at the step's start. */
  readonly enthalpy_J_kg: Float64Array;
  readonly specificHeat_J_kgK: Float64Array;
}

/**
 * A stack between two ends with everything a step needs. All arrays run over the unknowns: upper plate, cells, lower
 * plate. "Linear" temperatures are the start's plus enthalpy gained over the start's capacity; where capacity changes
 * with temperature the true ones are looked up from them.
 */
export interface Slab {
  readonly grid: Grid;
  readonly count: number;
  readonly top: End;
  readonly bottom: End;
  readonly heaters: Heaters;
  readonly tabled: readonly TabledCells[];
  /** Heat put into each cell [W/m2] at a time, and nothing where there is none. */
  readonly source: Source | undefined;
  time_s: number;
  plug_J: number;
  nextPlug_J: number;
  sourced_J_m2: number;
  nextSourced_J_m2: number;
  readonly temperature: Float64Array;
  readonly next: Float64Array;
  readonly nextLinear: Float64Array;
  /** Heat capacity per area, frozen at the step's start. */
  readonly capacity: Float64Array;
  /** Flux from unknown i to i + 1 at the stage and its slopes by the two temperatures (the second with sign turned). */
  readonly flux: Float64Array;
  readonly fluxByUpper: Float64Array;
  readonly fluxByLower: Float64Array;
  readonly linear: Float64Array;
  readonly stage: Float64Array;
  readonly sum: Float64Array;
  readonly diagonal: Float64Array;
  readonly factors: Factors;
  /** Response to each plate, needed while the shared lead couples both controllers. */
  readonly fromTop: Float64Array;
  readonly fromBottom: Float64Array;
  /** True while it is. */
  coupled: boolean;
  /** Heat of each heater by the share of each, frozen at the step's start. */
  topByTop: number;
  topByBottom: number;
  bottomByTop: number;
  bottomByBottom: number;
  plugByTop: number;
  plugByBottom: number;
  readonly k: readonly Float64Array[];
  readonly inside2: Float64Array;
  readonly inside3: Float64Array;
}

/**
 * A stack between two ends, all of it at rest at its start temperatures.
 *
 * @param own - grid, both ends, heaters and a source of heat if there is one
 * @param start_degC - temperature of the cells [degC], one for all or one per unknown
 * @returns slab with room for a step
 * @source derived: plain allocation
 */
export function makeSlab(
  own: {
    readonly grid: Grid;
    readonly top: EndParts;
    readonly bottom: EndParts;
    readonly heaters: Heaters;
    readonly source?: Source['fill'] | undefined;
  },
  start_degC: number | Float64Array,
): Slab {
  const { count, tabled } = own.grid;
  const room = () => new Float64Array(count);
  const temperature = room();
  if (typeof start_degC === 'number') temperature.fill(start_degC);
  else temperature.set(start_degC);
  temperature[0] = own.top.start_degC;
  temperature[count - 1] = own.bottom.start_degC;
  const source = own.source === undefined ? undefined : { fill: own.source, now: room(), slope: room() };
  const slab: Slab = {
    grid: own.grid,
    count,
    top: makeEnd(own.top),
    bottom: makeEnd(own.bottom),
    heaters: own.heaters,
    tabled: tabled.map(({ from, to, table }) => ({
      from,
      to,
      table,
      enthalpy_J_kg: new Float64Array(to - from),
      specificHeat_J_kgK: new Float64Array(to - from),
    })),
    source,
    time_s: 0,
    plug_J: 0,
    nextPlug_J: 0,
    sourced_J_m2: 0,
    nextSourced_J_m2: 0,
    temperature,
    next: room(),
    nextLinear: room(),
    capacity: room(),
    flux: room(),
    fluxByUpper: room(),
    fluxByLower: room(),
    linear: room(),
    stage: room(),
    sum: room(),
    diagonal: room(),
    factors: emptyFactors(count),
    fromTop: room(),
    fromBottom: room(),
    coupled: false,
    topByTop: 0,
    topByBottom: 0,
    bottomByTop: 0,
    bottomByBottom: 0,
    plugByTop: 0,
    plugByBottom: 0,
    k: Array.from({ length: 6 }, room),
    inside2: room(),
    inside3: room(),
  };
  for (let i = 1; i + 1 < count; i += 1) {
    slab.capacity[i] = (own.grid.mass_kg_m2[i] as number) * (own.grid.specificHeat_J_kgK[i] as number);
  }
  for (const { from, to, table, enthalpy_J_kg } of slab.tabled) {
    for (let i = from; i < to; i += 1) {
      enthalpy_J_kg[i - from] = tableEnthalpy_J_kg(table, temperature[i] as number);
    }
  }
  setConductances(slab);
  return slab;
}
