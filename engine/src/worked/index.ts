export {
  type FormulaExample,
  type FormulaSymbol,
  type Kind,
  kindUnit,
  type Worked,
  type WorkedFormula,
} from './worked-formula.ts';
