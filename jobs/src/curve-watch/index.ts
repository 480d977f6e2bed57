export { type Features, forecastReady_s } from './curve-features.ts';
export type { WatchAsked } from './watch-asked.ts';
export {
  type CurveReading,
  type CurveWarning,
  type SaidMarks,
  type SilentCause,
  silentCauses,
  type WatchCause,
  type WatchCode,
  type WatchedCycle,
  type WatchLimits,
  type WatchSide,
  watchCauses,
  watchCodes,
} from './watch-codes.ts';
export { watchCurve } from './watch-curve.ts';
export { watchLimits } from './watch-limits.ts';
export { type WatchRunOptions, watchRun } from './watch-run.ts';
