import type { WorkedFormula } from '../worked/worked-formula.ts';

/** Worked formulas of this folder. */
export const loopFormulas: readonly WorkedFormula[] = [];
