import type { WorkedFormula } from '../worked/worked-formula.ts';
import { estimateFormulas } from './estimate-formulas.ts';
import { lengthFormulas } from './length-formulas.ts';
import { lifeFormulas } from './life-formulas.ts';
import { pathFormulas } from './path-formulas.ts';
import { pressUpFormulas } from './press-up-formulas.ts';
import { slipFormulas } from './slip-formulas.ts';
import { takeUpFormulas } from './take-up-formulas.ts';
import { tensionCheckFormulas } from './tension-check-formulas.ts';
import { tensionFormulas } from './tension-formulas.ts';

/** Worked formulas of this folder. */
export const loopFormulas: readonly WorkedFormula[] = [
  ...pathFormulas,
  ...pressUpFormulas,
  ...lengthFormulas,
  ...estimateFormulas,
  ...takeUpFormulas,
  ...tensionFormulas,
  ...slipFormulas,
  ...tensionCheckFormulas,
  ...lifeFormulas,
];
