import { tableAt } from '../stack/enthalpy-table.ts';
import { type Cells, record, type TabledRun } from './cells.ts';
import { chain, EXTRA } from './chain.ts';

const { START, V, LINEAR, X, NEXT, ENTHALPY, HEAT, STRIDE } = record;
const { next, error } = chain;

/**
 * True temperatures from linear ones where capacity changes with temperature.
 *
 * @param numbers - records, changed [degC, J/kg]
 * @param tables - tables of enthalpy, one after the other [J/kg, degC]
 * @param table - where the one of these records begins [1]
 * @param from - begin of the first record [1]
 * @param to - end of the last one [1]
 * @param linear - field of the linear temperatures [1]
 * @param out - field to write the true ones into [1]
 * @returns nothing
 * @source derived: enthalpy as the unknown
 */
export function lookUp(
  numbers: Float64Array,
  tables: Float64Array,
  table: number,
  from: number,
  to: number,
  linear: number,
  out: number,
): void {
  const lowest = tables[table] as number;
  const perSpacing = tables[table + 1] as number;
  const most = (tables[table + 2] as number) + 1;
  for (let j = from; j < to; j += STRIDE) {
    const gained = (numbers[j + linear] as number) - (numbers[j + START] as number);
    const enthalpy = (numbers[j + ENTHALPY] as number) + (numbers[j + HEAT] as number) * gained;
    numbers[j + out] = tableAt(tables, table, most, (enthalpy - lowest) * perSpacing);
  }
}

/**
 * Temperatures at the step's end.
 *
 * @param cells - unknowns with all solutions of a step, changed
 * @param bent - whether the extra solution counts
 * @returns estimated error, the largest over plates and cells [K]
 * @source Rosenbrock method, see `chain.ts`
 * @verified MARCH-02 error within the tolerance
 */
export function finishCells(cells: Cells, bent: boolean): number {
  const { numbers, count } = cells;
  const n0 = next[0] as number;
  const n1 = next[1] as number;
  const n2 = next[2] as number;
  const n3 = next[3] as number;
  const n4 = next[4] as number;
  const e1 = error[1] as number;
  const e2 = error[2] as number;
  const e3 = error[3] as number;
  const e4 = error[4] as number;
  const nx = bent ? (next[EXTRA] as number) : 0;
  const ex = bent ? (error[EXTRA] as number) : 0;
  let largest = 0;
  let all = 0;
  for (let j = STRIDE; j <= count * STRIDE; j += STRIDE) {
    const v1 = numbers[j + V + 1] as number;
    const v2 = numbers[j + V + 2] as number;
    const v3 = numbers[j + V + 3] as number;
    const v4 = numbers[j + V + 4] as number;
    const x = numbers[j + X] as number;
    const gained = n0 * (numbers[j + V] as number) + (n1 * v1 + n2 * v2) + (n3 * v3 + n4 * v4) + nx * x;
    const linear = (numbers[j + START] as number) + gained;
    numbers[j + LINEAR] = linear;
    numbers[j + NEXT] = linear;
    const off = Math.abs(e1 * v1 + e2 * v2 + (e3 * v3 + e4 * v4) + ex * x);
    if (off > largest) largest = off;
    all += off;
  }
  for (let r = 0; r < cells.tabled.length; r += 1) {
    const { from, to, table } = cells.tabled[r] as TabledRun;
    lookUp(numbers, cells.tables, table, from, to, LINEAR, NEXT);
  }
  // One that is no number is larger than none, but it shows in the sum.
  return Number.isNaN(all) ? all : largest;
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
