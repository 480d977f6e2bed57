import type { WorkedFormula } from '../worked/worked-formula.ts';
import { bagPressureFormulas } from './bag-pressure.ts';

/** Worked formulas of this folder. */
export const pressFormulas: readonly WorkedFormula[] = [...bagPressureFormulas];
