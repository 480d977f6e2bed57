import type { WorkedFormula } from '../worked/worked-formula.ts';
import { bagPressureFormulas } from './bag-pressure.ts';
import { sharingFormulas } from './sharing/sharing-formulas.ts';
import { supplyFormulas } from './supply/supply-formulas.ts';
import { touchFormulas } from './touch/touch-formulas.ts';

/** Worked formulas of this folder. */
export const pressFormulas: readonly WorkedFormula[] = [
  ...bagPressureFormulas,
  ...sharingFormulas,
  ...supplyFormulas,
  ...touchFormulas,
];
