import type { WorkedFormula } from '../worked/worked-formula.ts';
import { geometryFormulas } from './geometry-formulas.ts';
import { sampleFormulas } from './sample-formulas.ts';
import { strengthFormulas } from './strength-formulas.ts';

/** Worked formulas of this folder. */
export const spliceFormulas: readonly WorkedFormula[] = [...geometryFormulas, ...strengthFormulas, ...sampleFormulas];
