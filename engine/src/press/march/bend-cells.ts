import { tableAt } from '../stack/enthalpy-table.ts';
import { type BentRun, type Cells, record, type TabledRun } from './cells.ts';
import { chain, chainRow, EXTRA } from './chain.ts';
import { slopedFlux } from './flux.ts';
import { bendSwitches } from './switch-flux.ts';

const { START, V, X, CARRIED, STAGE, OFF, UPPER, LOWER, FLUX, BEND, ENTHALPY, HEAT, STRIDE } = record;

/**
 * Adds to a right-hand side what the stage of that number bends, see `chain.ts`: where capacity or conductivity change
 * with temperature, fluxes are no straight lines of the linear temperatures.
 *
 * @param cells - unknowns with the earlier solutions, changed
 * @param stage - number of the stage [1], 1 to 5
 * @param link - which solution comes next [1]
 * @returns nothing
 * @source Rosenbrock method, see `chain.ts`
 * @verified MARCH-01 order in time
 */
export function bendCells(cells: Cells, stage: number, link: number): void {
  if (link === EXTRA) clearExtra(cells);
  else carryExtra(cells, link);
  if (cells.bent.length === 0) return;
  if (cells.sloped) readLinear(cells, stage, STRIDE, (cells.count + 1) * STRIDE);
  for (let r = 0; r < cells.tabled.length; r += 1) readTabled(cells, stage, cells.tabled[r] as TabledRun);
  for (let r = 0; r < cells.bent.length; r += 1) {
    const run = cells.bent[r] as BentRun;
    if (!cells.sloped) bendTabled(cells, stage, link, run);
    else {
      bendSloped(cells, stage, run);
      bendSwitches(cells, stage);
      addBends(cells, link, run);
    }
  }
}

function clearExtra({ numbers, count }: Cells): void {
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) numbers[j + X] = 0;
}

function carryExtra({ numbers, count }: Cells, link: number): void {
  const carry = chain.carry[link] as number;
  const own = V + link;
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) {
    numbers[j + own] = (numbers[j + own] as number) + carry * (numbers[j + CARRIED] as number);
  }
}

/** Temperatures at a stage where no table gives them; weights of solutions still to come are 0. */
function readLinear({ numbers }: Cells, stage: number, from: number, to: number): void {
  const row = stage * chainRow;
  const s0 = chain.stage[row] as number;
  const s1 = chain.stage[row + 1] as number;
  const s2 = chain.stage[row + 2] as number;
  const s3 = chain.stage[row + 3] as number;
  const sx = chain.stage[row + EXTRA] as number;
  for (let j = from; j < to; j += STRIDE) {
    const early = s0 * (numbers[j + V] as number) + s1 * (numbers[j + V + 1] as number);
    const late = s2 * (numbers[j + V + 2] as number) + s3 * (numbers[j + V + 3] as number);
    const gained = early + late + sx * (numbers[j + X] as number);
    // Plates of a stack beside the middle are told how far they lie off.
    numbers[j + STAGE] = (numbers[j + START] as number) + gained + (numbers[j + OFF] as number);
  }
}

/** True temperatures of a run, and how far they lie off the linear ones. */
function readTabled({ numbers, tables, sloped }: Cells, stage: number, { from, to, table }: TabledRun): void {
  const row = stage * chainRow;
  const s0 = chain.stage[row] as number;
  const s1 = chain.stage[row + 1] as number;
  const s2 = chain.stage[row + 2] as number;
  const s3 = chain.stage[row + 3] as number;
  const sx = chain.stage[row + EXTRA] as number;
  const lowest = tables[table] as number;
  const perSpacing = tables[table + 1] as number;
  const most = (tables[table + 2] as number) + 1;
  for (let j = from; j < to; j += STRIDE) {
    const early = s0 * (numbers[j + V] as number) + s1 * (numbers[j + V + 1] as number);
    const late = s2 * (numbers[j + V + 2] as number) + s3 * (numbers[j + V + 3] as number);
    const gained = early + late + sx * (numbers[j + X] as number);
    const enthalpy = (numbers[j + ENTHALPY] as number) + (numbers[j + HEAT] as number) * gained;
    const temperature = tableAt(tables, table, most, (enthalpy - lowest) * perSpacing);
    if (sloped) numbers[j + STAGE] = temperature;
    numbers[j + OFF] = temperature - (numbers[j + START] as number) - gained;
  }
}

/** What a stage's fluxes bend, and what of all stages so far counts for the solution that comes next, in one go. */
function bendTabled({ numbers }: Cells, stage: number, link: number, { from, to }: BentRun): void {
  const row = link * chainRow;
  const b2 = chain.bend[row + 2] as number;
  const b3 = chain.bend[row + 3] as number;
  const b4 = chain.bend[row + 4] as number;
  const now = chain.bend[row + stage] as number;
  const right = link === EXTRA ? X : V + link;
  const own = BEND + stage - 1;
  let above = numbers[from + OFF] as number;
  let inflow = 0;
  for (let j = from; j <= to; j += STRIDE) {
    const below = numbers[j + STRIDE + OFF] as number;
    const bend = (numbers[j + UPPER] as number) * (above - below);
    numbers[j + own] = bend;
    let outflow = now * bend;
    if (stage > 2) outflow += b2 * (numbers[j + BEND + 1] as number);
    if (stage > 3) outflow += b3 * (numbers[j + BEND + 2] as number);
    if (stage > 4) outflow += b4 * (numbers[j + BEND + 3] as number);
    numbers[j + right] = (numbers[j + right] as number) + (inflow - outflow);
    inflow = outflow;
    above = below;
  }
  numbers[to + STRIDE + right] = (numbers[to + STRIDE + right] as number) + inflow;
}

function bendSloped({ numbers }: Cells, stage: number, { from, to }: BentRun): void {
  const own = BEND + stage - 1;
  for (let j = from; j <= to; j += STRIDE) {
    const k = j + STRIDE;
    const upper_K = (numbers[j + STAGE] as number) - (numbers[j + OFF] as number) - (numbers[j + START] as number);
    const lower_K = (numbers[k + STAGE] as number) - (numbers[k + OFF] as number) - (numbers[k + START] as number);
    const straight = (numbers[j + UPPER] as number) * upper_K - (numbers[j + LOWER] as number) * lower_K;
    numbers[j + own] = slopedFlux(numbers, j, STAGE) - (numbers[j + FLUX] as number) - straight;
  }
}

/** What the stages so far bend, weighted for the solution that comes next, into its right-hand side. */
function addBends({ numbers }: Cells, link: number, { from, to }: BentRun): void {
  const row = link * chainRow;
  const b1 = chain.bend[row + 1] as number;
  const b2 = chain.bend[row + 2] as number;
  const b3 = chain.bend[row + 3] as number;
  const b4 = chain.bend[row + 4] as number;
  const b5 = chain.bend[row + 5] as number;
  const own = link === EXTRA ? X : V + link;
  let inflow = 0;
  for (let j = from; j <= to; j += STRIDE) {
    const early = b1 * (numbers[j + BEND] as number) + b2 * (numbers[j + BEND + 1] as number);
    const late = b3 * (numbers[j + BEND + 2] as number) + b4 * (numbers[j + BEND + 3] as number);
    const outflow = early + late + b5 * (numbers[j + BEND + 4] as number);
    numbers[j + own] = (numbers[j + own] as number) + (inflow - outflow);
    inflow = outflow;
  }
  numbers[to + STRIDE + own] = (numbers[to + STRIDE + own] as number) + inflow;
}
