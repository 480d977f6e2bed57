export { type BagPressureInput, beltPressure_Pa, beltPressureRow, gaugePressureRow } from './bag-pressure.ts';
export type { CycleInput, Platen, PlatenControl, Probe, Recipe, Supply } from './cycle/cycle-input.ts';
export type {
  BeltResult,
  Cycle,
  CycleMarks,
  CycleNotConverged,
  CycleResult,
  PlatenResult,
  ProbeResult,
  SensorResult,
  Values,
} from './cycle/cycle-result.ts';
export { pressFormulas } from './formulas.ts';
export type { Layer, MeltRange } from './stack/layer.ts';
