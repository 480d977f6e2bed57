export { formulaOf, formulas } from './formulas.ts';
export {
  type FormulaExample,
  type FormulaSymbol,
  type Kind,
  kindUnit,
  type Worked,
  type WorkedFormula,
  work,
  workedFormula,
} from './worked-formula.ts';
