export { type BagPressureInput, beltPressure_Pa, beltPressureRow, gaugePressureRow } from './bag-pressure.ts';
export type { Boundary } from './conduct/boundary.ts';
export {
  type ConductFace,
  type ConductInput,
  type ConductResult,
  type ConductState,
  conduct,
} from './conduct/conduct.ts';
export { cycle } from './cycle/cycle.ts';
export type {
  BareFace,
  ColumnDeviations,
  CycleInput,
  Platen,
  PlatenControl,
  Probe,
  Recipe,
  RecipeStep,
  Supply,
  WaterCooling,
} from './cycle/cycle-input.ts';
export { type CycleMapInput, cycleMap } from './cycle/cycle-map.ts';
export type {
  BeltResult,
  ColumnResult,
  Cycle,
  CycleMarks,
  CycleNotConverged,
  CycleResult,
  PlatenResult,
  ProbeResult,
  SensorResult,
  Values,
} from './cycle/cycle-result.ts';
export type { MapPoint } from './cycle/map-point.ts';
export { pressFormulas } from './formulas.ts';
export { type Air, airAt } from './losses/air.ts';
export {
  blownPlate_W_m2K,
  hotFaceDown_W_m2K,
  hotFaceUp_W_m2K,
  rayleigh,
  type StillWall,
  verticalWall_W_m2K,
  verticalWallLaminar_W_m2K,
} from './losses/convection.ts';
export { edgeCoolness_K, edgeReach, type PlatenStrip } from './losses/edge-coolness.ts';
export { faceLoss_W_m2K, type OuterFace } from './losses/platen-loss.ts';
export { radiation_W_m2K } from './losses/radiation.ts';
export { backToFace_K, sensorLag_K } from './losses/sensor-error.ts';
export { waterCooling_W_m2K } from './losses/water-cooling.ts';
export { leakedBag_Pa, leakMean, leakTime_s, warmedBag_Pa } from './sharing/closed-bag.ts';
export { type PlatePressures, platePressures, type Squeezed } from './sharing/plate-pressure.ts';
export { type Pressure, type PressureInput, pressure, type StiffPlate } from './sharing/pressure.ts';
export {
  leakedBagRow,
  leakTimeRow,
  plateTravelRow,
  squeezePressureRow,
  warmedBagRow,
} from './sharing/sharing-formulas.ts';
export type { Layer, MeltRange } from './stack/layer.ts';
export { type Conductor, conductors, resistanceAt20_ohm_km } from './supply/conductors.ts';
export { type Heater, type OutletAndLead, type SupplyInput, type SupplyResult, supply } from './supply/supply.ts';
export {
  heaterCurrentRow,
  heaterPowerRow,
  heaterVoltsRow,
  leadResistanceRow,
  outletLimitRow,
} from './supply/supply-formulas.ts';
export { type BurnThreshold, burnThreshold_degC, burnThresholds, type Surface } from './touch/burn-thresholds.ts';
export { type Body, contactTemperature_degC, effusivity, skin } from './touch/contact-temperature.ts';
export { type Cooling, coolingTime_s } from './touch/cooling-time.ts';
export { coolingTimeRow } from './touch/touch-formulas.ts';
export { type Touch, type TouchInput, whenTouched } from './touch/when-touched.ts';
