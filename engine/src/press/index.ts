export { type BagPressureInput, beltPressure_Pa, beltPressureRow, gaugePressureRow } from './bag-pressure.ts';
export { pressFormulas } from './formulas.ts';
