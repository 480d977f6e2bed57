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
