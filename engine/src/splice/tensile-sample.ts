import { inRange } from '../in-range.ts';
import { Refusal, type Warning } from '../refusal.ts';
import { characteristicRow, fractileFactorRow } from './sample-formulas.ts';

export interface TensileSampleInput {
  /** Breaking load of each splice over its width. */
  readonly pulls_N_mm: readonly number[];
  /** True where the belt broke and the splice held: its strength is at least that. */
  readonly beltBroke?: readonly boolean[] | undefined;
}

export interface TensileSample {
  readonly mean: number;
  readonly standardDeviation: number;
  readonly factor: number;
  readonly characteristic: number;
  readonly warnings: readonly Warning[];
}

/**
 * Characteristic strength of a splice from a few tensile pulls: normally spread, nothing known beforehand.
 *
 * c = m - k*s, k = t(0.95; n - 1)*sqrt(1 + 1/n); m = mean, s = sample standard deviation, n = pulls.
 *
 * @param input - 2 to 10,000 breaking loads over width, above 0 and up to 1e5 [N/mm]
 * @returns mean, standard deviation, characteristic value (5 % fractile) [N/mm], factor [1]
 * @throws not-finite, out-of-range, length-mismatch
 * @validity pulls where the belt broke count at their value, as lower bounds, and are warned of
 * @source EN 1990 Annex D, Table D1 (from memory); Student's t prediction
 * @verified T3.1 characteristic, T3.1 factor
 */
export function tensileSample({ pulls_N_mm, beltBroke = [] }: TensileSampleInput): TensileSample {
  const n = inRange(pulls_N_mm.length, 'pulls_N_mm', { min: 2, max: 10_000, unit: '1' });
  pulls_N_mm.forEach((pull, i) => {
    inRange(pull, `pulls_N_mm[${i}]`, { min: 0, max: 1e5, unit: 'N/mm', above: true });
  });
  if (beltBroke.length > 0 && beltBroke.length !== n) {
    throw new Refusal('length-mismatch', 'beltBroke', { value: beltBroke.length, expected: n });
  }
  const mean = pulls_N_mm.reduce((sum, pull) => sum + pull, 0) / n;
  const standardDeviation = Math.sqrt(pulls_N_mm.reduce((sum, pull) => sum + (pull - mean) ** 2, 0) / (n - 1));
  const factor = fractileFactorRow.compute({ n });
  const characteristic = characteristicRow.compute({ m: mean, k: factor, s: standardDeviation });
  const held = beltBroke.filter(Boolean).length;
  return { mean, standardDeviation, factor, characteristic, warnings: warningsOf(held, n, characteristic) };
}

function warningsOf(held: number, pulls: number, characteristic: number): Warning[] {
  const warnings: Warning[] = [];
  if (held > 0) warnings.push({ code: 'belt-broke', path: 'beltBroke', data: { count: held, of: pulls } });
  if (characteristic <= 0) {
    warnings.push({ code: 'spread-too-wide', path: 'pulls_N_mm', data: { value: characteristic, unit: 'N/mm' } });
  }
  return warnings;
}
