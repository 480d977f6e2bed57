import type { ContactSwitch } from '../stack/contact-switch.ts';

/**
 * Unknowns of a stack, one record of numbers each, all in one array: the loops over them are nearly the whole cost of a cycle, and
 * one array is twice as fast as one per quantity. Record 0 is a dummy, 1 the upper plate, then the cells, `count` the
 * lower plate, count + 1 a dummy again.
 *
 * "Linear" temperatures are the start's plus enthalpy gained over the start's capacity; where capacity changes with
 * temperature the true ones are looked up from them.
 */
export interface Cells {
  readonly count: number;
  readonly numbers: Float64Array;
  /** Tables of enthalpy, one after the other; see `stack/enthalpy-table.ts`. */
  readonly tables: Float64Array;
  /** Runs of records with one table: begin of the first, end of the last, begin of the table. */
  readonly tabled: readonly TabledRun[];
  /** True when a conductivity or a contact changes with temperature. */
  readonly sloped: boolean;
  readonly switches: readonly ContactSwitch[];
  /** Where heat does not flow in a straight line of the linear temperatures: begin of the first record, of the last. */
  readonly bent: readonly BentRun[];
}

/**
 * Where the fields of a record stand in it. Files with loops take them apart into constants of their own, which the
 * engine then knows when it compiles the loop.
 */
export const record = {
  /** Temperature at the step's start. */
  START: 0,
  /** The five solutions of a step, see `chain.ts`, each before the right-hand side of the next. */
  V: 1,
  /** Linear temperature at the step's end, in the place behind the last solution. */
  LINEAR: 6,
  /** The extra solution; behind it, times capacity over gamma h. */
  X: 7,
  CARRIED: 8,
  /** Factors of the step's matrix. */
  FORWARD: 9,
  INVERSE: 10,
  BACK: 11,
  /** Capacity over gamma h. */
  RATE: 12,
  /** True temperature at the step's end. */
  NEXT: 13,
  /** True temperature at the stage, and how far it lies off the linear one. */
  STAGE: 14,
  OFF: 15,
  /** Heat capacity per area, frozen at the step's start. */
  CAPACITY: 16,
  /** Slope of the flux to the next record by this one's temperature, and by the next one's with the sign turned. */
  UPPER: 17,
  LOWER: 18,
  /** Flux to the next record at the step's start. */
  FLUX: 19,
  /** How far the fluxes of stages 1 to 5 lie off their straight lines. */
  BEND: 20,
  ENTHALPY: 25,
  /** Specific heat, frozen at the step's start. */
  HEAT: 26,
  MASS: 27,
  /** Half a cell over its conductivity at 25 degC; resistance of the contact below; slope of the conductivity. */
  HALF: 28,
  CONTACT: 29,
  SLOPE: 30,
  /** Response to a unit of heat at either plate; the place behind is written over. */
  FROM_TOP: 31,
  FROM_BOTTOM: 32,
  STRIDE: 34,
} as const;

const { START, V, CARRIED, CAPACITY, UPPER, LOWER, ENTHALPY, HEAT, MASS, STRIDE } = record;
const { BEND, HALF, CONTACT, SLOPE } = record;

/** Neighbouring records whose fluxes to the next one bend. */
export interface BentRun {
  readonly from: number;
  readonly to: number;
}

/** Neighbouring records whose temperature is looked up in one table. */
export interface TabledRun {
  readonly from: number;
  readonly to: number;
  readonly table: number;
}

/** Numbers of one record that do not change in time, and its start. */
export interface CellParts {
  readonly start_degC: number;
  readonly mass_kg_m2: number;
  readonly specificHeat_J_kgK: number;
  /** Where its table begins in the tables, or -1. */
  readonly table: number;
  readonly enthalpy_J_kg: number;
  readonly half_m2K_W: number;
  /** Of the contact below it. */
  readonly contact_m2K_W: number;
  readonly conductivitySlope_1_K: number;
}

/**
 * Unknowns of a stack at rest.
 *
 * @param parts - upper plate, cells, lower plate
 * @param tables - tables of enthalpy, one after the other [J/kg, degC]
 * @param switches - contacts that switch
 * @returns unknowns with their conductances
 * @source cell-centred finite volumes: half cells and contacts in series
 */
export function makeCells(
  parts: readonly CellParts[],
  tables: Float64Array,
  switches: readonly ContactSwitch[] = [],
): Cells {
  const count = parts.length;
  const numbers = new Float64Array((count + 2) * STRIDE);
  parts.forEach((part, index) => {
    const at = (index + 1) * STRIDE;
    numbers[at + START] = part.start_degC;
    numbers[at + CAPACITY] = part.mass_kg_m2 * part.specificHeat_J_kgK;
    numbers[at + ENTHALPY] = part.enthalpy_J_kg;
    numbers[at + HEAT] = part.specificHeat_J_kgK;
    numbers[at + MASS] = part.mass_kg_m2;
    numbers[at + HALF] = part.half_m2K_W;
    numbers[at + CONTACT] = part.contact_m2K_W;
    numbers[at + SLOPE] = part.conductivitySlope_1_K;
    const below = parts[index + 1];
    if (below === undefined) return;
    const conductance_W_m2K = 1 / (part.half_m2K_W + part.contact_m2K_W + below.half_m2K_W);
    numbers[at + UPPER] = conductance_W_m2K;
    numbers[at + LOWER] = conductance_W_m2K;
  });
  const sloped = switches.length > 0 || parts.some((part) => part.conductivitySlope_1_K !== 0);
  const tabled = tabledRuns(parts);
  const bent = bentRuns(tabled, sloped, count);
  return { count, numbers, tables, tabled, sloped, switches, bent };
}

function tabledRuns(parts: readonly CellParts[]): TabledRun[] {
  const runs: { from: number; to: number; table: number }[] = [];
  parts.forEach(({ table }, index) => {
    if (table < 0) return;
    const from = (index + 1) * STRIDE;
    const open = runs.at(-1);
    if (open !== undefined && open.to === from && open.table === table) open.to = from + STRIDE;
    else runs.push({ from, to: from + STRIDE, table });
  });
  return runs;
}

/** From the record above a run to its last, for each record's flux goes to the next; all of them where all may bend. */
function bentRuns(tabled: readonly TabledRun[], sloped: boolean, count: number): BentRun[] {
  const last = (count - 1) * STRIDE;
  if (sloped) return [{ from: STRIDE, to: last }];
  const runs: { from: number; to: number }[] = [];
  for (const run of tabled) {
    const from = Math.max(STRIDE, run.from - STRIDE);
    const to = Math.min(last, run.to - STRIDE);
    const open = runs.at(-1);
    if (open !== undefined && from <= open.to) open.to = to;
    else runs.push({ from, to });
  }
  return runs;
}

/**
 * Another set of unknowns in the same state.
 *
 * @param cells - unknowns
 * @returns unknowns that share only what never changes
 * @source derived: plain copy
 */
export function copyCells(cells: Cells): Cells {
  const { count, numbers, tables, tabled, sloped, switches, bent } = cells;
  return { count, numbers: numbers.slice(), tables, tabled, sloped, switches, bent };
}

/**
 * Temperature of an unknown at the step's start.
 *
 * @param cells - unknowns
 * @param index - which [1], 0 the upper plate, count - 1 the lower
 * @returns temperature [degC]
 * @source derived: plain look-up
 */
export function temperatureOf({ numbers }: Cells, index: number): number {
  return numbers[(index + 1) * STRIDE + START] as number;
}

/**
 * Heat stored in all unknowns since a fixed state.
 *
 * @param cells - unknowns
 * @returns heat per area [J/m2]
 * @source derived: sum of mass times enthalpy
 */
export function heatContent_J_m2({ numbers, count }: Cells): number {
  let heat_J_m2 = 0;
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) {
    heat_J_m2 += (numbers[j + MASS] as number) * (numbers[j + ENTHALPY] as number);
  }
  return heat_J_m2;
}

/**
 * Forgets the stages of a step that came to nothing.
 *
 * @param cells - unknowns, changed
 * @returns nothing
 * @source derived: a stage that is not a number must not reach the next try
 */
export function clearStages({ numbers, count }: Cells): void {
  for (let j = 0; j <= (count + 1) * STRIDE; j += STRIDE) {
    numbers.fill(0, j + V, j + CARRIED + 1);
    numbers.fill(0, j + BEND, j + ENTHALPY);
  }
}
