import { tableHeat_J_kgK, tableTemperature_degC } from '../stack/enthalpy-table.ts';
import { type Cells, record } from './cells.ts';
import { lastStage, rodasp, rowLength } from './rodas.ts';

const {
  START,
  K,
  CAPACITY,
  UPPER,
  LOWER,
  FORWARD,
  INVERSE,
  BACK,
  LINEAR,
  NEXT,
  TABLE,
  ENTHALPY,
  HEAT,
  MASS,
  HALF,
  CONTACT,
  SLOPE,
  SOURCE,
  FLUX,
  STRIDE,
} = record;
const { a, c } = rodasp;
const reference_degC = 25;

/**
 * Slopes of the fluxes at the start of a step, where conductivity changes with temperature.
 * q = (T_i - T_j)/(r_i/(1 + s_i*(T_i - 25)) + R + r_j/(1 + s_j*(T_j - 25))).
 *
 * @param cells - unknowns, changed
 * @returns nothing
 * @source derived: derivative of the flux between two half cells
 */
export function slopeFluxes({ numbers, count }: Cells): void {
  for (let j = STRIDE; j < count * STRIDE; j += STRIDE) {
    const upper = numbers[j + START] as number;
    const lower = numbers[j + STRIDE + START] as number;
    const upperSlope = numbers[j + SLOPE] as number;
    const lowerSlope = numbers[j + STRIDE + SLOPE] as number;
    const upperRatio = 1 / (1 + upperSlope * (upper - reference_degC));
    const lowerRatio = 1 / (1 + lowerSlope * (lower - reference_degC));
    const upperHalf = (numbers[j + HALF] as number) * upperRatio;
    const lowerHalf = (numbers[j + STRIDE + HALF] as number) * lowerRatio;
    const conductance = 1 / (upperHalf + (numbers[j + CONTACT] as number) + lowerHalf);
    const flux = conductance * (upper - lower);
    numbers[j + UPPER] = conductance + flux * conductance * upperHalf * upperRatio * upperSlope;
    numbers[j + LOWER] = conductance - flux * conductance * lowerHalf * lowerRatio * lowerSlope;
  }
}

/** Flux from the record before to this one where conductivity changes. */
function slopedFlux(numbers: Float64Array, j: number, above: number, now: number): number {
  const upper =
    (numbers[j - STRIDE + HALF] as number) / (1 + (numbers[j - STRIDE + SLOPE] as number) * (above - reference_degC));
  const lower = (numbers[j + HALF] as number) / (1 + (numbers[j + SLOPE] as number) * (now - reference_degC));
  const resistance = upper + (numbers[j - STRIDE + CONTACT] as number) + lower;
  return resistance === 0 ? 0 : (above - now) / resistance;
}

/**
 * Freezes the capacities at the step's start and factors the matrix of the step: capacity over gamma h on the diagonal,
 * what flows to the neighbours beside it.
 *
 * @param cells - unknowns, changed
 * @param inverse_1_s - one over gamma h [1/s]
 * @param atTop - added to the upper plate's diagonal [W/(m2*K)]
 * @param atBottom - added to the lower plate's diagonal [W/(m2*K)]
 * @returns nothing
 * @source derived: Gauss elimination without pivoting, for a dominant diagonal
 * @verified MARCH-01 order in time
 */
export function factorCells(cells: Cells, inverse_1_s: number, atTop: number, atBottom: number): void {
  const { numbers, tables, count } = cells;
  const last = count * STRIDE;
  let fromAbove = 0;
  let backAbove = 0;
  let inverseAbove = 0;
  let extra = atTop;
  for (let j = STRIDE; j <= last; j += STRIDE) {
    const table = numbers[j + TABLE] as number;
    if (table >= 0) {
      const heat = tableHeat_J_kgK(tables, table, numbers[j + ENTHALPY] as number);
      numbers[j + HEAT] = heat;
      numbers[j + CAPACITY] = heat * (numbers[j + MASS] as number);
    }
    const upper = numbers[j + UPPER] as number;
    const lower = numbers[j + LOWER] as number;
    if (j === last) extra += atBottom;
    const own = (numbers[j + CAPACITY] as number) * inverse_1_s + upper + extra;
    const inverse = 1 / (own - fromAbove * backAbove);
    numbers[j + FORWARD] = fromAbove * inverseAbove;
    numbers[j + INVERSE] = inverse;
    backAbove = lower * inverse;
    numbers[j + BACK] = backAbove;
    inverseAbove = inverse;
    fromAbove = upper;
    extra = lower;
  }
}

/**
 * True temperature of the record at j at a stage.
 *
 * @param cells - unknowns with the stages before it
 * @param j - where the record begins [1]
 * @param stage - number of the stage [1], 0 to 5
 * @returns temperature [degC]
 * @source Rosenbrock method, see `rodas.ts`
 */
export function stageTemperature({ numbers, tables }: Cells, j: number, stage: number): number {
  const gained = weighted(a, stage * rowLength, numbers, j);
  const table = numbers[j + TABLE] as number;
  if (table < 0) return (numbers[j + START] as number) + gained;
  return tableTemperature_degC(
    tables,
    table,
    (numbers[j + ENTHALPY] as number) + (numbers[j + HEAT] as number) * gained,
  );
}

/**
 * Right-hand side of a stage and its elimination, from the top down: true temperatures of the stage, fluxes between
 * neighbours, earlier stages' share, sources.
 *
 * @param cells - unknowns; the stage is written into them
 * @param stage - number of the stage [1], 0 to 5
 * @param perStep_1_s - one over the length of the step [1/s]
 * @returns nothing
 * @source Rosenbrock method, see `rodas.ts`; cell-centred finite volumes
 * @verified MARCH-01 order in time
 */
export function sweepDown(cells: Cells, stage: number, perStep_1_s: number): void {
  const { numbers, tables, count, sloped } = cells;
  const row = stage * rowLength;
  const a0 = a[row] as number;
  const a1 = a[row + 1] as number;
  const a2 = a[row + 2] as number;
  const a3 = a[row + 3] as number;
  const a4 = a[row + 4] as number;
  const c0 = (c[row] as number) * perStep_1_s;
  const c1 = (c[row + 1] as number) * perStep_1_s;
  const c2 = (c[row + 2] as number) * perStep_1_s;
  const c3 = (c[row + 3] as number) * perStep_1_s;
  const c4 = (c[row + 4] as number) * perStep_1_s;
  const end = (count + 1) * STRIDE;
  let above = 0;
  let inflow = 0;
  let pending = 0;
  let eliminated = 0;
  // Each turn finishes the row above, whose lower neighbour it has just seen; the dummies open and close the sweep.
  for (let j = STRIDE; j <= end; j += STRIDE) {
    const k0 = numbers[j + K] as number;
    const k1 = numbers[j + K + 1] as number;
    const k2 = numbers[j + K + 2] as number;
    const k3 = numbers[j + K + 3] as number;
    const k4 = numbers[j + K + 4] as number;
    const gained = a0 * k0 + a1 * k1 + (a2 * k2 + a3 * k3) + a4 * k4;
    const table = numbers[j + TABLE] as number;
    const now =
      table < 0
        ? (numbers[j + START] as number) + gained
        : tableTemperature_degC(
            tables,
            table,
            (numbers[j + ENTHALPY] as number) + (numbers[j + HEAT] as number) * gained,
          );
    const flux = sloped ? slopedFlux(numbers, j, above, now) : (numbers[j - STRIDE + UPPER] as number) * (above - now);
    eliminated = pending + (inflow - flux) + (numbers[j - STRIDE + FORWARD] as number) * eliminated;
    numbers[j - STRIDE + K + stage] = eliminated;
    numbers[j - STRIDE + FLUX] = flux;
    inflow = flux;
    above = now;
    pending =
      (numbers[j + SOURCE] as number) +
      (numbers[j + CAPACITY] as number) * (c0 * k0 + c1 * k1 + (c2 * k2 + c3 * k3) + c4 * k4);
  }
}

/**
 * The stage itself, from the bottom up.
 *
 * @param cells - unknowns; the stage is written into them
 * @param stage - number of the stage [1], 0 to 5
 * @returns nothing
 * @source derived: substitution from the last row to the first
 * @verified MARCH-01 order in time
 */
export function sweepUp({ numbers, count }: Cells, stage: number): void {
  let below = 0;
  for (let j = count * STRIDE; j > 0; j -= STRIDE) {
    below =
      (numbers[j + K + stage] as number) * (numbers[j + INVERSE] as number) + (numbers[j + BACK] as number) * below;
    numbers[j + K + stage] = below;
  }
}

/**
 * Temperatures at the step's end.
 *
 * @param cells - unknowns with all stages of a step, changed
 * @returns estimated error, the largest over plates and cells [K]
 * @source Rosenbrock method, see `rodas.ts`
 * @verified MARCH-02 error within the tolerance
 */
export function finishCells(cells: Cells): number {
  const { numbers, tables, count } = cells;
  let error = 0;
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) {
    const correction = numbers[j + K + lastStage] as number;
    const gained = weighted(a, lastStage * rowLength, numbers, j) + correction;
    const table = numbers[j + TABLE] as number;
    const linear = (numbers[j + START] as number) + gained;
    numbers[j + LINEAR] = linear;
    numbers[j + NEXT] =
      table < 0
        ? linear
        : tableTemperature_degC(
            tables,
            table,
            (numbers[j + ENTHALPY] as number) + (numbers[j + HEAT] as number) * gained,
          );
    error = Math.max(error, Math.abs(correction));
  }
  return error;
}

/** Five stages of the record at j, weighted by a row. */
function weighted(rows: Float64Array, row: number, numbers: Float64Array, j: number): number {
  return (
    (rows[row] as number) * (numbers[j + K] as number) +
    (rows[row + 1] as number) * (numbers[j + K + 1] as number) +
    ((rows[row + 2] as number) * (numbers[j + K + 2] as number) +
      (rows[row + 3] as number) * (numbers[j + K + 3] as number)) +
    (rows[row + 4] as number) * (numbers[j + K + 4] as number)
  );
}

/**
 * Takes the step that was tried last.
 *
 * @param cells - unknowns, moved to the step's end
 * @returns nothing
 * @source derived: plain assignment
 */
export function acceptCells({ numbers, count }: Cells): void {
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) {
    const gained = (numbers[j + LINEAR] as number) - (numbers[j + START] as number);
    numbers[j + ENTHALPY] = (numbers[j + ENTHALPY] as number) + (numbers[j + HEAT] as number) * gained;
    numbers[j + START] = numbers[j + NEXT] as number;
  }
}
