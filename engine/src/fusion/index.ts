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
export { voidNumber, waterVapourPressure_Pa } from './void-number.ts';
