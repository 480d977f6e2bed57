export { afterRun } from './after-run.ts';
export { applyRunEvent, foldRun } from './apply-run-event.ts';
export type { ViewOptions } from './other-actions.ts';
export { type LastLook, type Resumed, resumeRun } from './resume-run.ts';
export { type RunFactNumber, type RunFacts, runFacts } from './run-facts.ts';
export {
  type RecordedCycle,
  type RecordedMeasure,
  type RecordedPerson,
  type RecordedStep,
  type RunRecord,
  runRecord,
} from './run-record.ts';
export {
  type CycleMoments,
  type Deviation,
  type DeviationCode,
  type DisplayReading,
  deviationCodes,
  type LoggedCurve,
  type Measured,
  type PassedOver,
  type PastCycle,
  type Photo,
  type RunState,
  type Settled,
  type Stamp,
  type WhyNot,
  type WhyNotCode,
  whyNotCodes,
} from './run-state.ts';
export {
  type ActionCode,
  actionCodes,
  type Choice,
  type Meanwhile,
  type MeasureAsked,
  type Placement,
  type RunAction,
  type RunAlarm,
  type RunCurve,
  type RunNow,
  type RunPhase,
  type RunTimer,
  type RunView,
  type StepView,
  type Sureness,
  type TimerCode,
  timerCodes,
} from './run-view.ts';
export { predictRun, runIdOf, type StartOptions, startRun } from './start-run.ts';
export { type RunGroup, runGroups, type StepRule, stepRules, stepsOf } from './steps.ts';
export { tapWrites } from './tap-writes.ts';
export { viewRun } from './view-run.ts';
export { whyNotNow } from './why-not.ts';
