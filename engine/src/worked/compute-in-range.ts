import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import { kindUnit, type Worked, type WorkedFormula, work } from './worked-formula.ts';

/** Names of the input fields that feed a row's symbols, for refusals that a person can follow. */
export type SymbolPaths<S extends string> = Readonly<Partial<Record<S, string>>>;

/**
 * Computes a row after checking that every input is finite and where the row holds, and that a finite number came out.
 *
 * @param row - worked formula
 * @param inputs - one number a symbol [units of `kindUnit`], inside the row's range
 * @param paths - field name a symbol; the symbol itself where none is given
 * @returns the value with its row and inputs [unit of the row's result]
 * @throws not-finite, out-of-range, no-result
 * @validity the row's own range
 * @source derived: plain comparison
 */
export function workInRange<S extends string>(
  row: WorkedFormula<S>,
  inputs: Readonly<Record<S, number>>,
  paths?: SymbolPaths<S>,
): Worked {
  for (const symbol of Object.keys(row.symbols) as S[]) {
    const [min, max] = row.range[symbol] ?? [-Number.MAX_VALUE, Number.MAX_VALUE];
    inRange(inputs[symbol], paths?.[symbol] ?? symbol, { min, max, unit: kindUnit[row.symbols[symbol].kind] });
  }
  const worked = work(row, inputs);
  if (!Number.isFinite(worked.value)) throw new Refusal('no-result', row.id, { formula: row.id });
  return worked;
}

/**
 * The value alone of a row computed in its range.
 *
 * @param row - worked formula
 * @param inputs - one number a symbol [units of `kindUnit`], inside the row's range
 * @param paths - field name a symbol
 * @returns the value [unit of the row's result]
 * @throws not-finite, out-of-range, no-result
 * @validity the row's own range
 * @source derived: plain comparison
 */
export function computeInRange<S extends string>(
  row: WorkedFormula<S>,
  inputs: Readonly<Record<S, number>>,
  paths?: SymbolPaths<S>,
): number {
  return workInRange(row, inputs, paths).value;
}
