import { tableHeat_J_kgK, tableTemperature_degC } from '../stack/enthalpy-table.ts';
import { type Cells, record, type TabledRun } from './cells.ts';
import { rodasp } from './rodas.ts';

const { START, K, CAPACITY, UPPER, LOWER, FORWARD, INVERSE, BACK, LINEAR, NEXT, STAGE, ENTHALPY, HEAT, MASS } = record;
const { HALF, CONTACT, SLOPE, SOURCE, STRIDE } = record;
const { a, c } = rodasp;
const ROW = 5;
const LAST = 5;
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

/**
 * Freezes the capacities at the step's start.
 *
 * @param cells - unknowns, changed
 * @returns nothing
 * @source derived: slope of the enthalpy
 */
export function freezeCapacities({ numbers, tables, tabled }: Cells): void {
  for (let r = 0; r < tabled.length; r += 1) {
    const { from, to, table } = tabled[r] as TabledRun;
    for (let j = from; j < to; j += STRIDE) {
      const heat = tableHeat_J_kgK(tables, table, numbers[j + ENTHALPY] as number);
      numbers[j + HEAT] = heat;
      numbers[j + CAPACITY] = heat * (numbers[j + MASS] as number);
    }
  }
}

/**
 * Factors the matrix of the step: capacity over gamma h on the diagonal, what flows to the neighbours beside it.
 *
 * @param cells - unknowns, changed
 * @param inverse_1_s - one over gamma h [1/s]
 * @param atTop - added to the upper plate's diagonal [W/(m2*K)]
 * @param atBottom - added to the lower plate's diagonal [W/(m2*K)]
 * @returns nothing
 * @source derived: Gauss elimination without pivoting, for a dominant diagonal
 * @verified MARCH-01 order in time
 */
export function factorCells({ numbers, count }: Cells, inverse_1_s: number, atTop: number, atBottom: number): void {
  const last = count * STRIDE;
  let fromAbove = 0;
  let backAbove = 0;
  let inverseAbove = 0;
  let extra = atTop;
  for (let j = STRIDE; j <= last; j += STRIDE) {
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
 * Temperatures at a stage, and in its place k the earlier stages' share of the right-hand side with the sources.
 *
 * @param cells - unknowns with the earlier stages, changed
 * @param stage - number of the stage [1], 0 to 5
 * @param perStep_1_s - one over the length of the step [1/s]
 * @returns nothing
 * @source Rosenbrock method, see `rodas.ts`
 */
export function sumStages(cells: Cells, stage: number, perStep_1_s: number): void {
  if (stage <= 2) sumTwo(cells, stage, perStep_1_s);
  else sumFive(cells, stage, perStep_1_s);
  if (cells.tabled.length > 0) lookUpTemperatures(cells, STAGE, STAGE);
}

function sumTwo({ numbers, count }: Cells, stage: number, perStep_1_s: number): void {
  const row = stage * ROW;
  const a0 = a[row] as number;
  const a1 = a[row + 1] as number;
  const c0 = (c[row] as number) * perStep_1_s;
  const c1 = (c[row + 1] as number) * perStep_1_s;
  const end = count * STRIDE;
  const own = K + stage;
  for (let j = STRIDE; j <= end; j += STRIDE) {
    const k0 = numbers[j + K] as number;
    const k1 = numbers[j + K + 1] as number;
    numbers[j + STAGE] = (numbers[j + START] as number) + a0 * k0 + a1 * k1;
    numbers[j + own] = (numbers[j + SOURCE] as number) + (numbers[j + CAPACITY] as number) * (c0 * k0 + c1 * k1);
  }
}

/** Weights of stages that are still to come are 0. */
function sumFive({ numbers, count }: Cells, stage: number, perStep_1_s: number): void {
  const row = stage * ROW;
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
  const end = count * STRIDE;
  const own = K + stage;
  for (let j = STRIDE; j <= end; j += STRIDE) {
    const k0 = numbers[j + K] as number;
    const k1 = numbers[j + K + 1] as number;
    const k2 = numbers[j + K + 2] as number;
    const k3 = numbers[j + K + 3] as number;
    const k4 = numbers[j + K + 4] as number;
    numbers[j + STAGE] = (numbers[j + START] as number) + a0 * k0 + a1 * k1 + (a2 * k2 + a3 * k3) + a4 * k4;
    const earlier = c0 * k0 + c1 * k1 + (c2 * k2 + c3 * k3) + c4 * k4;
    numbers[j + own] = (numbers[j + SOURCE] as number) + (numbers[j + CAPACITY] as number) * earlier;
  }
}

/**
 * True temperatures from linear ones where capacity changes with temperature.
 *
 * @param cells - unknowns, changed
 * @param linear - field of the linear temperatures [1]
 * @param out - field to write the true ones into [1]
 * @returns nothing
 * @source derived: enthalpy as the unknown
 */
export function lookUpTemperatures({ numbers, tables, tabled }: Cells, linear: number, out: number): void {
  for (let r = 0; r < tabled.length; r += 1) {
    const { from, to, table } = tabled[r] as TabledRun;
    for (let j = from; j < to; j += STRIDE) {
      const gained = (numbers[j + linear] as number) - (numbers[j + START] as number);
      const enthalpy = (numbers[j + ENTHALPY] as number) + (numbers[j + HEAT] as number) * gained;
      numbers[j + out] = tableTemperature_degC(tables, table, enthalpy);
    }
  }
}

/**
 * Adds the fluxes between neighbours to a stage's right-hand side and eliminates, from the top down.
 *
 * @param cells - unknowns with the stage's temperatures, changed
 * @param stage - number of the stage [1], 0 to 5
 * @returns nothing
 * @source cell-centred finite volumes; Gauss elimination
 * @verified MARCH-01 order in time
 */
export function sweepDown(cells: Cells, stage: number): void {
  if (cells.sloped) {
    sweepDownSloped(cells, stage);
    return;
  }
  const { numbers, count } = cells;
  const last = count * STRIDE;
  const own = K + stage;
  let above = numbers[STRIDE + STAGE] as number;
  let inflow = 0;
  let eliminated = 0;
  for (let j = STRIDE; j <= last; j += STRIDE) {
    const below = numbers[j + STRIDE + STAGE] as number;
    const outflow = (numbers[j + UPPER] as number) * (above - below);
    eliminated = (numbers[j + own] as number) + (inflow - outflow) + (numbers[j + FORWARD] as number) * eliminated;
    numbers[j + own] = eliminated;
    inflow = outflow;
    above = below;
  }
}

/** As above where conductivity changes; the factors keep the slopes of the step's start. */
function sweepDownSloped({ numbers, count }: Cells, stage: number): void {
  const last = count * STRIDE;
  const own = K + stage;
  let inflow = 0;
  let eliminated = 0;
  for (let j = STRIDE; j <= last; j += STRIDE) {
    const outflow = j === last ? 0 : slopedFlux(numbers, j);
    eliminated = (numbers[j + own] as number) + (inflow - outflow) + (numbers[j + FORWARD] as number) * eliminated;
    numbers[j + own] = eliminated;
    inflow = outflow;
  }
}

/** Flux at the stage from a record to the next. */
function slopedFlux(numbers: Float64Array, j: number): number {
  const upper = numbers[j + STAGE] as number;
  const lower = numbers[j + STRIDE + STAGE] as number;
  const upperRatio = 1 + (numbers[j + SLOPE] as number) * (upper - reference_degC);
  const lowerRatio = 1 + (numbers[j + STRIDE + SLOPE] as number) * (lower - reference_degC);
  const halves = (numbers[j + HALF] as number) / upperRatio + (numbers[j + STRIDE + HALF] as number) / lowerRatio;
  return (upper - lower) / (halves + (numbers[j + CONTACT] as number));
}

/**
 * Flux between two records at a stage, with its change over the stage.
 *
 * @param cells - unknowns with the stage
 * @param j - where the upper record begins [1]
 * @param stage - number of the stage [1], 0 to 5
 * @returns flux from the upper to the lower [W/m2]
 * @source derived: first-order expansion of the flux
 */
export function fluxOfStage({ numbers, sloped }: Cells, j: number, stage: number): number {
  const upper = numbers[j + UPPER] as number;
  const difference = (numbers[j + STAGE] as number) - (numbers[j + STRIDE + STAGE] as number);
  const change =
    upper * (numbers[j + K + stage] as number) -
    (numbers[j + LOWER] as number) * (numbers[j + STRIDE + K + stage] as number);
  return (sloped ? slopedFlux(numbers, j) : upper * difference) + change;
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
  const own = K + stage;
  let below = 0;
  for (let j = count * STRIDE; j > 0; j -= STRIDE) {
    below = (numbers[j + own] as number) * (numbers[j + INVERSE] as number) + (numbers[j + BACK] as number) * below;
    numbers[j + own] = below;
  }
}

/**
 * Temperatures at the step's end: the last stage's, and its correction.
 *
 * @param cells - unknowns with all stages of a step, changed
 * @returns estimated error, the largest over plates and cells [K]
 * @source Rosenbrock method, see `rodas.ts`
 * @verified MARCH-02 error within the tolerance
 */
export function finishCells(cells: Cells): number {
  const { numbers, count } = cells;
  const a0 = a[LAST * ROW] as number;
  const a1 = a[LAST * ROW + 1] as number;
  const a2 = a[LAST * ROW + 2] as number;
  const a3 = a[LAST * ROW + 3] as number;
  let error = 0;
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) {
    const correction = numbers[j + K + LAST] as number;
    const early = a0 * (numbers[j + K] as number) + a1 * (numbers[j + K + 1] as number);
    const late = a2 * (numbers[j + K + 2] as number) + a3 * (numbers[j + K + 3] as number);
    const linear = (numbers[j + START] as number) + (early + late) + ((numbers[j + K + 4] as number) + correction);
    numbers[j + LINEAR] = linear;
    numbers[j + NEXT] = linear;
    error = Math.max(error, Math.abs(correction));
  }
  if (cells.tabled.length > 0) lookUpTemperatures(cells, LINEAR, NEXT);
  return error;
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
