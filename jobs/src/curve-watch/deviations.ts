import { type Band, bandAt, type Courses, type Phase, phaseAt } from './predicted-band.ts';
import type { Watched } from './watch-asked.ts';
import type { CurveReading, WatchCode, WatchedCycle, WatchSide } from './watch-codes.ts';

/** A reading outside its band, and by how much it is beyond what is allowed for [K]. */
export interface Departure {
  readonly code: WatchCode;
  readonly side?: WatchSide;
  readonly beyond_K: number;
  readonly data: Readonly<Record<string, number>>;
}

interface Judged {
  readonly watched: Watched;
  readonly predicted: WatchedCycle;
  readonly courses: Courses;
}

/**
 * What one reading departs from: one side from the other first, then each from its band. Where the phase may be this or
 * that by the range of the marks, nothing is said.
 *
 * @param judged - what it is held against
 * @param reading - plausible, smoothed if a logger kept it
 */
export function departuresAt(judged: Judged, reading: CurveReading): readonly Departure[] {
  const { time_s, top_degC: top, bottom_degC: bottom } = reading;
  const apart = sideSlow(judged, reading);
  const sides = [
    ...(top === undefined || apart?.side === 'top' ? [] : departure(judged, { side: 'top', shown: top, time_s })),
    ...(bottom === undefined || apart?.side === 'bottom'
      ? []
      : departure(judged, { side: 'bottom', shown: bottom, time_s })),
  ];
  return [...(apart ? [apart] : []), ...bothAlike(sides, reading)];
}

/** A ramp that is slow or fast on both sides is one thing; on the only side that was read, too. */
function bothAlike(sides: readonly Departure[], { top_degC, bottom_degC }: CurveReading): readonly Departure[] {
  const one = top_degC === undefined || bottom_degC === undefined;
  const whole: readonly WatchCode[] = ['slow-ramp', 'fast-ramp', 'cooling-slow'];
  return sides.flatMap((each) => {
    if (!whole.includes(each.code)) return [each];
    const twin = sides.find(({ code, side }) => code === each.code && side !== each.side);
    if (twin !== undefined) return twin.side === 'top' && each.side === 'bottom' ? [] : [withoutSide(each)];
    return one || each.code === 'cooling-slow' ? [each] : [];
  });
}

function withoutSide({ side: _side, ...rest }: Departure): Departure {
  return rest;
}

function phases({ all }: Courses, time_s: number, tap_s: number): readonly Phase[] {
  return all.flatMap((course) => [phaseAt(course, time_s - tap_s), phaseAt(course, time_s + tap_s)]);
}

function sideSlow({ watched, predicted, courses }: Judged, reading: CurveReading): Departure | undefined {
  const { time_s, top_degC, bottom_degC } = reading;
  const { tap_s, sides_K } = watched.limits;
  if (top_degC === undefined || bottom_degC === undefined) return undefined;
  if (!phases(courses, time_s, tap_s).includes('heating') || pastHeating(courses, time_s)) return undefined;
  const band = bandAt(predicted, courses, { time_s, tap_s }, 'difference');
  const apart_K = top_degC - bottom_degC;
  const beyond_K = Math.max(band.low - apart_K, apart_K - band.high) - sides_K;
  if (beyond_K <= 0) return undefined;
  const side = apart_K < band.low ? 'top' : 'bottom';
  const [shown_degC, other_degC] = side === 'top' ? [top_degC, bottom_degC] : [bottom_degC, top_degC];
  const off_K = Math.abs(apart_K - band.expected);
  return { code: 'side-slow', side, beyond_K, data: { at_s: time_s, shown_degC, other_degC, off_K } };
}

/** True where every course has come to its hold. */
function pastHeating({ all }: Courses, time_s: number): boolean {
  return all.every(({ ready_s }) => time_s >= ready_s);
}

interface Shown {
  readonly side: WatchSide;
  readonly shown: number;
  readonly time_s: number;
}

function departure({ watched, predicted, courses }: Judged, { side, shown, time_s }: Shown): readonly Departure[] {
  const { tap_s } = watched.limits;
  const band = bandAt(predicted, courses, { time_s, tap_s }, side);
  const way = shown < band.low ? 'below' : shown > band.high ? 'above' : 'inside';
  if (way === 'inside') return [];
  const code = codeOf(way, courses, { time_s, tap_s });
  if (code === undefined) return [];
  const allowed_K = allowedAt(code, watched);
  const beyond_K = (way === 'below' ? band.low - shown : shown - band.high) - allowed_K;
  return beyond_K > 0 ? [{ code, side, beyond_K, data: dataOf(band, { side, shown, time_s }) }] : [];
}

/** At the plateau the controller holds what its own sensor shows; another sensor has its offset there too. */
function allowedAt(
  code: WatchCode,
  { limits, kept, sensors = kept === 'logger' ? 'other' : 'press' }: Watched,
): number {
  const atPlateau = code === 'plateau-low' || code === 'overshoot';
  return atPlateau && sensors === 'press' ? limits.plateau_K : limits.ramp_K;
}

function dataOf({ low, expected, high }: Band, { shown, time_s }: Shown): Departure['data'] {
  return {
    at_s: time_s,
    shown_degC: shown,
    expected_degC: expected,
    least_degC: low,
    most_degC: high,
    off_K: Math.abs(shown - expected),
  };
}

function codeOf(
  way: 'below' | 'above',
  courses: Courses,
  { time_s, tap_s }: { readonly time_s: number; readonly tap_s: number },
): WatchCode | undefined {
  const may = phases(courses, time_s, tap_s);
  const surely = (phase: Phase): boolean => may.every((each) => each === phase);
  const [, , late] = courses.all;
  if (way === 'below') {
    if (phaseAt(late, time_s) === 'heating') return 'slow-ramp';
    return surely('holding') ? 'plateau-low' : undefined;
  }
  if (surely('heating')) return 'fast-ramp';
  if (phaseAt(late, time_s) === 'cooling') return 'cooling-slow';
  return may.includes('holding') ? 'overshoot' : undefined;
}
