export { loopFormulas } from './formulas.ts';
