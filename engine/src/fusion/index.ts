export { bondOfHealing } from './bond.ts';
export { type BowLayer, bowCurvature_1_m, bowHeight_m, layeredBow_1_m, sidewaysBow_1_m } from './bow.ts';
export { contactTime_s, type Roughness } from './contact-time.ts';
export { type DryingInput, dryingTime_s, waterDiffusion_m2_s, waterLeft } from './drying.ts';
export { coverLoss, flashFlow_m2_s } from './flash.ts';
export {
  type FlankState,
  type FusedStrengthOptions,
  fusedShare,
  fusedStrength_N_mm,
  type HardSegments,
  hardSegmentDefaults,
  hardSegmentFactor,
} from './fused-strength.ts';
export { type FusedNode, type Fusion, fusion } from './fusion.ts';
export { bondRow, fusedStrengthRow, fusionFormulas, slotFillRow, slotFillTimeRow } from './fusion-formulas.ts';
export type { FusionInput, StrengthInput } from './fusion-input.ts';
export {
  type Grade,
  type Graded,
  type GradeInput,
  type GradeLimits,
  type GradeReason,
  type GradeReasonCode,
  grade,
  gradeLimits,
} from './grade.ts';
export { type History, historyIntegral } from './history-integral.ts';
export { lowShearViscosity_Pa_s, type MeltFlow, meltFlow } from './melt-flow-viscosity.ts';
export {
  type FusionParameter,
  type FusionParameters,
  fusionParameterRows,
  fusionParameters,
  type ParameterRow,
} from './parameters.ts';
export {
  fluidity_1_Pa_s,
  healingRate_1_s,
  meltGate,
  scissionRate_1_s,
  viscosity_Pa_s,
  weldingTime_s,
} from './rates.ts';
export { type PowerLaw, slotFill_m, slotFillPowerLaw_m, slotFillTime_s } from './slot-fill.ts';
export {
  type SqueezedLayer,
  squeezedDisc_m,
  squeezedDiscPowerLaw_m,
  squeezedStrip_m,
  squeezedStripPowerLaw_m,
} from './squeeze-flow.ts';
export { swelling_m } from './thermal-swelling.ts';
export { criticalWater_share, voidNumber, waterVapourPressure_Pa } from './void-number.ts';
