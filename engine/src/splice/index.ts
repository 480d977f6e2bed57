export { spliceFormulas } from './formulas.ts';
