import type { CurveReading } from '../watch-codes.ts';
import type { LoggerCurve } from './logger-codes.ts';

/** Above where it began: the heat is on [K]. */
const rise_K = 5;

/**
 * When the heat was switched on, by the curve itself: where a straight line through the first rise of both sensors meets
 * what they began with. A logger that was started before or after tells it no other way.
 *
 * @param curve - of a logger
 * @returns time from its first row [s]; 0 where it never rises
 */
export function switchedOn_s(curve: LoggerCurve): number {
  const starts = [curve.top_degC, curve.bottom_degC ?? []].flatMap((line) => startOf(curve.times_s, line) ?? []);
  return starts.length === 0 ? 0 : Math.min(...starts);
}

function startOf(times_s: readonly number[], line: readonly (number | null)[]): number | undefined {
  const begin = line.find((value) => value !== null);
  if (begin === undefined || begin === null) return undefined;
  const passed = (above_K: number): number | undefined => {
    const at = line.findIndex((value) => value !== null && value >= begin + above_K);
    return at < 0 ? undefined : times_s[at];
  };
  const [first, second] = [passed(rise_K), passed(3 * rise_K)];
  if (first === undefined || second === undefined) return undefined;
  return Math.max(0, first - (second - first) / 2);
}

/**
 * A logger's curve as readings from switching on, as `watchCurve` and `watchRun` take them.
 *
 * @param curve - of a logger
 * @param from_s - when the heat was switched on, from its first row [s]; default: by the curve itself
 */
export function loggerReadings(curve: LoggerCurve, from_s: number = switchedOn_s(curve)): readonly CurveReading[] {
  return curve.times_s.flatMap((time_s, i) => {
    const [top, bottom] = [curve.top_degC[i], curve.bottom_degC?.[i]];
    if (time_s < from_s || ((top ?? null) === null && (bottom ?? null) === null)) return [];
    return [
      {
        time_s: time_s - from_s,
        ...(typeof top === 'number' && { top_degC: top }),
        ...(typeof bottom === 'number' && { bottom_degC: bottom }),
      },
    ];
  });
}
