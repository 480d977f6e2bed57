import type { LoggerFault, LoggerQuestion, TemperatureUnit, TimeUnit } from './logger-codes.ts';
import type { TimeForm } from './read-cell.ts';

/** Between which a press can be, and a reading of it [degC]. */
export const possible_degC = { least: -30, most: 260 } as const;
/** A press that was logged hot shows at least this [degC], and begins in a hall of these temperatures. */
const hot_degC = 90;
const hall_degC = { least: -15, most: 60 } as const;
/** A cycle that somebody logs is at least this long [s], and at most. */
const cycle_s = { least: 300, most: 20_000 } as const;

/** A temperature of a unit [degC]. */
export function toCelsius(value: number, unit: TemperatureUnit): number {
  if (unit === 'degC') return value;
  return unit === 'K' ? value - 273.15 : (value - 32) / 1.8;
}

/** Seconds that one of a time's unit makes; minutes and seconds were read as seconds, so hours and minutes are sixty times. */
export const seconds: Readonly<Record<TimeUnit, number>> = {
  ms: 0.001,
  s: 1,
  min: 60,
  h: 3600,
  day: 86_400,
  'mm:ss': 1,
  'hh:mm': 60,
};

interface Guessed<Unit> {
  readonly unit: Unit;
  readonly question?: LoggerQuestion;
}

/**
 * The unit of temperatures that nobody named: that in which a hall begins and a press gets hot.
 *
 * @param range - least and most that was read
 * @returns the unit with its question; the fault where none fits
 */
export function guessTemperature(range: {
  readonly least: number;
  readonly most: number;
}): Guessed<TemperatureUnit> | LoggerFault {
  const { least, most } = range;
  const fits = (unit: TemperatureUnit): boolean => {
    const [low, high] = [toCelsius(least, unit), toCelsius(most, unit)];
    return low >= hall_degC.least && low <= hall_degC.most && high <= possible_degC.most;
  };
  const units = (['degC', 'degF', 'K'] as const).filter(fits);
  const [unit] = [...units.filter((each) => toCelsius(most, each) >= hot_degC), ...units];
  if (unit === undefined) return { code: 'unit-unclear', data: { least, most } };
  return { unit, question: { code: 'temperature-unit', guess: unit, hottest: toCelsius(most, unit) } };
}

/**
 * The unit of times that nobody named: that in which the file is as long as a press cycle.
 *
 * @param raw - length of the file and usual step, as read
 * @param form - of its times
 */
export function guessTime(raw: { readonly length: number; readonly step: number }, form: TimeForm): Guessed<TimeUnit> {
  if (form === 'three' || form === 'date') return { unit: 's' };
  const candidates: readonly TimeUnit[] = form === 'two' ? ['mm:ss', 'hh:mm'] : ['s', 'min', 'ms', 'day', 'h'];
  // Nobody logs a press slower than twice a minute, except where the clock shows no seconds.
  const fits = (unit: TimeUnit): boolean => {
    const length_s = raw.length * seconds[unit];
    const slowest_s = unit === 'hh:mm' ? 60 : 30;
    return length_s >= cycle_s.least && length_s <= cycle_s.most && raw.step * seconds[unit] <= slowest_s;
  };
  const unit = candidates.find(fits) ?? candidates[0] ?? 's';
  return { unit, question: { code: 'time-unit', guess: unit, length_s: raw.length * seconds[unit] } };
}
