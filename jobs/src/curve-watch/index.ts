export { type Features, forecastReady_s } from './curve-features.ts';
export {
  type LoggerColumns,
  type LoggerCurve,
  type LoggerFault,
  type LoggerFaultCode,
  type LoggerGap,
  type LoggerNote,
  type LoggerNoteCode,
  type LoggerOptions,
  type LoggerQuestion,
  type LoggerResult,
  loggerFaults,
  loggerNotes,
  type TemperatureUnit,
  type TimeUnit,
  temperatureUnits,
  timeUnits,
} from './logger/logger-codes.ts';
export { loggerReadings, switchedOn_s } from './logger/logger-readings.ts';
export { type LoggerSource, readLoggerCsv } from './logger/read-logger-csv.ts';
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
