import type { HeatCurve } from '../stack/enthalpy.ts';
import { tableEnthalpy_J_kg } from '../stack/enthalpy-table.ts';
import type { Grid } from '../stack/grid.ts';
import { bendField } from './bend-field.ts';
import { type CellParts, type Cells, makeCells, record } from './cells.ts';
import { chainRow } from './chain.ts';
import type { Edge } from './edge.ts';
import { type End, type EndParts, makeEnd } from './end.ts';
import type { Heaters } from './heaters.ts';
import { makeSource, type Source } from './source.ts';

const { STRIDE } = record;
/** Capacity that stands for a plate whose temperature nothing changes. */
const heldCapacity_J_m2K = 1e30;
/** Where a specific heat is stated, and where a plate's capacity is. */
const heatStated_degC = 20;
const capacityStated_degC = 25;

/** A stack between two ends, marching through time. */
export interface Slab {
  readonly count: number;
  readonly cells: Cells;
  readonly top: End;
  readonly bottom: End;
  readonly heaters: Heaters;
  readonly source: Source | undefined;
  /** Stacks beside the middle that go along with it. */
  readonly edges: readonly Edge[];
  /** See `slabField`. */
  readonly numbers: Float64Array;
  /** What heaters and losses bend, see `bend-plates.ts`. */
  readonly bends: Float64Array;
  /** True while the shared lead couples both controllers. */
  coupled: boolean;
  /** True when what a plate loses is no straight line of its linear temperature. */
  readonly losing: boolean;
  /** True when anything in the step at hand is no straight line of the unknowns. */
  bent: boolean;
}

/** Where the numbers of a slab stand: time, energy drawn at the plug by the heaters, heat of the source, so far. */
export const slabField = { TIME: 0, PLUG: 1, NEXT_PLUG: 2, SOURCED: 3, NEXT_SOURCED: 4, COUNT: 5 } as const;

/**
 * Time that a slab has reached.
 *
 * @param slab - slab
 * @returns time since the start [s]
 * @source derived: plain look-up
 */
export function timeOf({ numbers }: Slab): number {
  return numbers[slabField.TIME] as number;
}

/**
 * Heat capacity of an end as the curve of a layer of 1 kg/m2. C = C25*(1 + s*(T - 25)).
 *
 * @param end - capacity and its slope, or held [units in their names]
 * @returns curve
 * @source derived: the same straight line, stated at 20 degC
 */
export function endCurve(end: Pick<EndParts, 'held' | 'capacity_J_m2K' | 'capacitySlope_1_K'>): HeatCurve {
  if (end.held) return { specificHeat_J_kgK: heldCapacity_J_m2K };
  const slope = end.capacity_J_m2K * end.capacitySlope_1_K;
  return {
    specificHeat_J_kgK: end.capacity_J_m2K + slope * (heatStated_degC - capacityStated_degC),
    specificHeatSlope_J_kgK2: slope,
  };
}

/**
 * A stack between two ends, all of it at rest.
 *
 * @param own - cells, both ends, heaters and a source of heat if there is one
 * @returns slab
 * @source derived: plain allocation
 */
export function makeSlab(own: {
  readonly cells: Cells;
  readonly top: EndParts;
  readonly bottom: EndParts;
  readonly heaters: Heaters;
  readonly source?: Source['fill'] | undefined;
  readonly edges?: readonly Edge[] | undefined;
}): Slab {
  const { count, tabled } = own.cells;
  const bentPlates = tabled.some(({ from, to }) => from === STRIDE || to === (count + 1) * STRIDE);
  return {
    count,
    cells: own.cells,
    top: makeEnd(own.top),
    bottom: makeEnd(own.bottom),
    heaters: own.heaters,
    source: own.source && makeSource(own.source, count),
    edges: own.edges ?? [],
    numbers: new Float64Array(slabField.COUNT),
    bends: new Float64Array(chainRow * bendField.COUNT),
    losing: bentPlates || own.top.law !== undefined || own.bottom.law !== undefined,
    coupled: false,
    bent: false,
  };
}

/**
 * Unknowns of a grid at their start temperatures.
 *
 * @param grid - cells and platens
 * @param start_degC - temperature of each unknown [degC], or one for all
 * @returns unknowns
 * @source derived: enthalpy of each at its temperature
 */
export function startCells(grid: Grid, start_degC: number | Float64Array): Cells {
  const at = (index: number) => (typeof start_degC === 'number' ? start_degC : (start_degC[index] as number));
  return makeCells(
    grid.parts.map((_, index) => cellParts(grid, index, at(index))),
    grid.tables,
    grid.switches,
  );
}

function cellParts({ parts, tables }: Grid, index: number, start_degC: number): CellParts {
  const part = parts[index] as Grid['parts'][number];
  const { curve, table } = part;
  const plain = curve.specificHeat_J_kgK * (start_degC - heatStated_degC);
  return {
    start_degC,
    mass_kg_m2: part.mass_kg_m2,
    specificHeat_J_kgK: curve.specificHeat_J_kgK,
    table,
    enthalpy_J_kg: table < 0 ? plain : tableEnthalpy_J_kg(tables, table, curve, start_degC),
    half_m2K_W: part.half_m2K_W,
    contact_m2K_W: part.contact_m2K_W,
    conductivitySlope_1_K: part.conductivitySlope_1_K,
  };
}
