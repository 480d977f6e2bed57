import { fusionFormulas } from '../fusion/fusion-formulas.ts';
import { loopFormulas } from '../loop/formulas.ts';
import { pressFormulas } from '../press/formulas.ts';
import { spliceFormulas } from '../splice/formulas.ts';
import type { WorkedFormula } from './worked-formula.ts';

/** Every worked formula: the one table that shells, handbook and tests walk. */
export const formulas: readonly WorkedFormula[] = [
  ...loopFormulas,
  ...spliceFormulas,
  ...pressFormulas,
  ...fusionFormulas,
];

const byId = new Map(formulas.map((row) => [row.id, row]));

/** The row of a worked number, or undefined for an id this version does not know. */
export function formulaOf(id: string): WorkedFormula | undefined {
  return byId.get(id);
}
