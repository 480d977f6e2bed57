export { computeInRange, type SymbolPaths, workInRange } from './compute-in-range.ts';
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
