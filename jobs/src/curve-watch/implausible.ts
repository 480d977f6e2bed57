import { shownBy, type Watched } from './watch-asked.ts';
import { type CurveReading, type CurveWarning, type WatchSide, watchSides } from './watch-codes.ts';

/** A platen may overshoot its set point by this much and no more; beyond it the reading is another unit or place. */
const overshoot_K = 40;
/** Nothing in a hall is this much colder than its air. */
const belowAir_K = 15;
const usualAir_degC = 20;
/** A step that stays for this long is what the sensor now shows, not a spike [s]. */
const stays_s = 20;

interface Sifted {
  /** Readings without what cannot be. */
  readonly readings: readonly CurveReading[];
  readonly warnings: readonly CurveWarning[];
}

/**
 * Takes out what no platen can show: colder than the hall, far hotter than set, or faster than heat moves. Each is said.
 *
 * @param watched - with its readings in the order of time
 */
export function withoutImplausible(watched: Watched): Sifted {
  const top = sifted(watched, 'top');
  const bottom = sifted(watched, 'bottom');
  const readings = watched.readings.flatMap((reading, i) => {
    const kept = {
      time_s: reading.time_s,
      ...(top.good[i] && reading.top_degC !== undefined && { top_degC: reading.top_degC }),
      ...(bottom.good[i] && reading.bottom_degC !== undefined && { bottom_degC: reading.bottom_degC }),
    };
    return 'top_degC' in kept || 'bottom_degC' in kept ? [kept] : [];
  });
  return { readings, warnings: watchSides.flatMap((side) => (side === 'top' ? top : bottom).warnings) };
}

interface Side {
  readonly good: readonly boolean[];
  readonly warnings: readonly CurveWarning[];
}

function sifted(watched: Watched, side: WatchSide): Side {
  const least_degC = (watched.air_degC ?? usualAir_degC) - belowAir_K;
  const most_degC = watched.set[`${side}_degC`] + overshoot_K;
  const outside: Point[] = [];
  const jumps: Jump[] = [];
  const good = watched.readings.map(() => true);
  let last: Point | undefined;
  watched.readings.forEach((reading, i) => {
    const shown = shownBy(reading, side);
    if (shown === undefined) return;
    const point = { time_s: reading.time_s, shown_degC: shown };
    if (shown < least_degC || shown > most_degC) outside.push(point);
    else if (last !== undefined && isJump(last, point, watched)) jumps.push({ ...point, from_degC: last.shown_degC });
    else {
      last = point;
      return;
    }
    good[i] = false;
    if (last !== undefined && point.time_s - last.time_s > stays_s && !outside.includes(point)) last = point;
  });
  return { good, warnings: [...outsideWarning(outside, { side, least_degC, most_degC }), ...jumpWarning(jumps, side)] };
}

interface Point {
  readonly time_s: number;
  readonly shown_degC: number;
}
interface Jump extends Point {
  readonly from_degC: number;
}

function isJump(last: Point, { time_s, shown_degC }: Point, { limits, kept }: Watched): boolean {
  if (kept !== 'logger') return false;
  const apart_s = Math.max(time_s - last.time_s, 1);
  return Math.abs(shown_degC - last.shown_degC) / apart_s > limits.fastest_K_s;
}

function outsideWarning(
  points: readonly Point[],
  { side, least_degC, most_degC }: { side: WatchSide; least_degC: number; most_degC: number },
): CurveWarning[] {
  const [first] = points;
  if (first === undefined) return [];
  const data = { at_s: first.time_s, shown_degC: first.shown_degC, least_degC, most_degC, count: points.length };
  return [{ code: 'reading-impossible', level: 'care', side, data, causes: ['sensor-loose'] }];
}

function jumpWarning(jumps: readonly Jump[], side: WatchSide): CurveWarning[] {
  const [first] = jumps;
  if (first === undefined) return [];
  const data = {
    at_s: first.time_s,
    from_degC: first.from_degC,
    shown_degC: first.shown_degC,
    count: jumps.length,
  };
  return [{ code: 'reading-jumps', level: 'care', side, data, causes: ['sensor-loose'] }];
}
