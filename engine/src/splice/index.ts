export {
  type EdgeSlivers,
  edgeSlivers,
  firstTipFromEdge_m,
  type PhaseSetting,
  secondEndFenceMove_m,
  turnedOverShift_m,
} from './edge-slivers.ts';
export {
  biasGrowth_m,
  type FingerGeometry,
  type FingerPattern,
  fingerGeometry,
  misregistrationTipGap_m,
} from './finger-geometry.ts';
export { spliceFormulas } from './formulas.ts';
export {
  biasGrowthRow,
  fingerCountRow,
  firstTipCentreRow,
  firstTipFlankRow,
  flankAngleRow,
  flankLengthRow,
  flankPerWidthRow,
  geometryFormulas,
  tipGapRow,
} from './geometry-formulas.ts';
export { characteristicRow, fractileFactorRow, sampleFormulas } from './sample-formulas.ts';
export { type SpliceStrength, type SpliceStrengthInput, spliceStrength } from './splice-strength.ts';
export {
  flankCapacityRow,
  flankPullRow,
  flankShearRow,
  reinforcementCapacityRow,
  spliceStrengthRow,
  strengthFormulas,
  weldCapacityRow,
} from './strength-formulas.ts';
export { type TensileSample, type TensileSampleInput, tensileSample } from './tensile-sample.ts';
