export {
  estimateOfThreeRow,
  estimateOfTwoRow,
  estimateUncertaintyOfThreeRow,
  estimateUncertaintyOfTwoRow,
} from './estimate-formulas.ts';
export { loopFormulas } from './formulas.ts';
export {
  elongationOfLoopRow,
  elongationWithToleranceRow,
  endlessLengthRow,
  marksStretchedRow,
  oldBeltLengthRow,
  squareCutRow,
  stripTipToTipRow,
} from './length-formulas.ts';
export {
  beltFlexesRow,
  bendingStrainBackRow,
  bendingStrainRow,
  loopRevolutionsRow,
  pulleyByFabricRow,
  relaxationTimeRow,
  relaxedShareRow,
  retensionDaysRow,
} from './life-formulas.ts';
export {
  type BeltFace,
  type BeltPath,
  type BeltSection,
  beltPath,
  type PathInput,
  type PathPulley,
  type Tangent,
} from './path.ts';
export {
  arcRow,
  crossedLengthRow,
  innerSpanRow,
  neutralRadiusBackRow,
  neutralRadiusRunningRow,
  openLengthRow,
  openSpanRow,
  openWrapSmallRow,
  pathFormulas,
  takeUpGainRow,
} from './path-formulas.ts';
export { type PathKernelOut, pathKernel, pathKernelOut } from './path-kernel.ts';
export { pathPolyline } from './path-polyline.ts';
export { lengthPerDisplacement } from './path-sensitivity.ts';
export { type PressUp, type PressUpInput, pressUp } from './press-up.ts';
export { pressUpAngleRow, pressUpForceFirstOrderRow, pressUpForceRow, pressUpFormulas } from './press-up-formulas.ts';
export {
  capstanRatioRow,
  centrifugalTensionRow,
  frictionNeededRow,
  meanTensionForNoSlipRow,
  pullOnLiveRollersRow,
  slackMinimumRow,
  slackOfFixedCentresRow,
  slipFromMeanTensionRow,
  slipFromSlackRow,
  slipLimitedPullRow,
  slipReserveRow,
} from './slip-formulas.ts';
export {
  elongationWhenShortRow,
  respliceGivenBackRow,
  respliceLengthRow,
  respliceTravelToMeshRow,
  takeUpFitReserveRow,
  takeUpTensionReserveRow,
  takeUpTravelForStretchRow,
  takeUpTravelToMeshRow,
} from './take-up-formulas.ts';
export {
  marksElongationRow,
  sagRow,
  tensionByPushFirstOrderRow,
  tensionByPushRow,
  tensionBySoundHingedRow,
  tensionBySoundRow,
} from './tension-check-formulas.ts';
export {
  elasticCreepRow,
  elongationForTensionRow,
  freshTensionRow,
  idleShaftLoadRow,
  shaftLoadRow,
  strandTensionRow,
  takeUpTensionRow,
  tensileStiffnessRow,
} from './tension-formulas.ts';
