export type { InspectionAsk } from './asks.ts';
export { type DefectRow, defects } from './defects.ts';
export {
  type CauseRow,
  type DefectAnswer,
  type DefectCause,
  type DefectCode,
  defectAnswers,
  defectCauses,
  defectCodes,
  type Finding,
  type FindingPlace,
  findingPlaces,
  type Grade,
  type InspectionMeasure,
  type InspectionReading,
  inspectionMeasures,
  type MeasureLimit,
  type NextCode,
  type NowCode,
  nextCodes,
  nowCodes,
  type Severity,
} from './inspection-codes.ts';
export { gradeOf, type InspectedBelt, type InspectionLimits, inspectionLimits } from './inspection-limits.ts';
export { type BecauseCode, becauseCodes, type JudgedFinding } from './judge-finding.ts';
export {
  type Because,
  type InspectedSplice,
  type Inspection,
  type InspectionAsked,
  judgeInspection,
} from './judge-inspection.ts';
export { judgeRun } from './judge-run.ts';
export { causesOf, nextTimeOf } from './rank-causes.ts';
export {
  edgeStressShare,
  greyScale,
  greyScaleGrade,
  type KinkEffect,
  kinkEffect,
  type ThicknessStepEffect,
  thicknessStepEffect,
  tipGap_m,
} from './splice-effects.ts';
