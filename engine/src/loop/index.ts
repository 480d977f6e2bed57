export {
  type BendingInput,
  bendingStrain,
  checkPulley,
  counterBendFactor,
  fabricFactors,
  type PulleyLimit,
  type PulleyLimitInput,
  smallestPulleyByFabric,
} from './bending.ts';
export { type CrownRow, crownHeight_m, crownTable } from './crown.ts';
export { cutLength } from './cut-length.ts';
export type { AfterResplice, CutLength, CutLengthInput, CutLengthTakeUp } from './cut-length-form.ts';
export { type CreepInput, elasticCreep } from './elastic-creep.ts';
export { checkElongation, type ElongationWindow, elongationWindows, type WindowCheck } from './elongation-window.ts';
export {
  estimateOfThreeRow,
  estimateOfTwoRow,
  estimateUncertaintyOfThreeRow,
  estimateUncertaintyOfTwoRow,
} from './estimate-formulas.ts';
export {
  type FlatBeltDrive,
  type FlatBeltDriveInput,
  flatBeltDrive,
  type TwoPulleyBelt,
  type TwoPulleys,
  twoPulleyBelt,
} from './flat-belt-drive.ts';
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
  lengthToleranceShare,
  type ToleranceRow,
  type ToleranceTable,
  toleranceTables,
  widthTolerance_m,
} from './length-tolerance.ts';
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
export { type LengthEstimate, type OldBeltInput, oldBeltEndless, oldBeltUncertaintyShare } from './old-belt.ts';
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
export { type PathUncertainty, type PulleyUncertainty, pathUncertainty } from './path-uncertainty.ts';
export { type PressUp, type PressUpInput, pressUp } from './press-up.ts';
export { pressUpAngleRow, pressUpForceFirstOrderRow, pressUpForceRow, pressUpFormulas } from './press-up-formulas.ts';
export { chiSquare95, type LengthSource, type ReconciledLength, reconcileLengths } from './reconcile-lengths.ts';
export {
  type RelaxationReadings,
  type Retension,
  relaxationSlope,
  relaxedShare,
  retensionAfter,
} from './relaxation.ts';
export { type RevolutionsInput, revolutions } from './revolutions.ts';
export {
  type DriveGrip,
  type LumpedPullInput,
  meanTensionForNoSlip_N,
  pullOnLiveRollers_N,
  slackMinimum_N,
  slipFromMeanTension_N,
} from './slip.ts';
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
  standardGravity_m_s2,
} from './slip-formulas.ts';
export { clampedTension, type StiffString, stiffStringFrequency } from './stiff-string.ts';
export {
  elongationForTension,
  freshTension_N,
  type StrandInput,
  strandTension_N,
  tensileStiffness_N,
} from './strand-tension.ts';
export { type SlackFromForceInput, slackFromTakeUpForce, type TakeUpSide } from './take-up-force.ts';
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
  type Resplice,
  type RespliceInput,
  resplice,
  type TakeUpReserveInput,
  type TravelToMesh,
  type TravelToMeshInput,
  takeUpReserve,
  takeUpTravelToMesh,
} from './take-up-reserve.ts';
export { type LengthAtTravel, pathAtTravel, type TakeUp, travelForLength } from './take-up-travel.ts';
export {
  markReadingError_m,
  polyesterFreshFactor,
  type TensionByMarks,
  type TensionByMarksInput,
  tensionByMarks,
} from './tension-by-marks.ts';
export { type TensionByPush, type TensionByPushInput, tensionByPush } from './tension-by-push.ts';
export {
  shortestSoundSpan_m,
  type TensionBySound,
  type TensionBySoundInput,
  tensionBySound,
} from './tension-by-sound.ts';
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
export { tensionRoundLoop } from './tension-round-loop.ts';
export type {
  ForceTakeUp,
  ScrewTakeUp,
  StrandLoad,
  TensionRoundLoop,
  TensionRoundLoopInput,
} from './tension-round-loop-form.ts';
export { frameExpansion_1_K, type ThermalTensionInput, thermalTension_N } from './thermal-tension.ts';
export { type ThreeLengths, type ThreeLengthsInput, threeLengths } from './three-lengths.ts';
