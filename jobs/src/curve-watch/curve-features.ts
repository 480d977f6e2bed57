import { bandAt, type Courses } from './predicted-band.ts';
import { shownBy, type Watched } from './watch-asked.ts';
import { type CurveReading, type WatchedCycle, type WatchSide, watchSides } from './watch-codes.ts';

/** A line of a platen: time [s] and temperature [degC]. */
export type Line = readonly { readonly time_s: number; readonly value: number }[];

/** Readings further apart than this say nothing of what was between them [s]. */
const bridged_s = 60;

/** The line of a side in readings. */
export function lineOf(readings: readonly CurveReading[], side: WatchSide): Line {
  return readings.flatMap((reading) => {
    const value = shownBy(reading, side);
    return value === undefined ? [] : [{ time_s: reading.time_s, value }];
  });
}

/** The line of a side as predicted. */
export function predictedLine({ curve }: WatchedCycle, side: WatchSide): Line {
  const values = side === 'top' ? curve.top_degC : curve.bottom_degC;
  return curve.times_s.map((time_s, i) => ({ time_s, value: values[i] ?? 0 }));
}

/**
 * When a line first rises to a level, or last falls to it [s]; undefined where it never does or nobody looked.
 *
 * @param line - of a platen
 * @param level_degC - that it passes
 * @param way - up or down
 */
export function crossing_s(line: Line, level_degC: number, way: 'up' | 'down'): number | undefined {
  const passes = (i: number): boolean => {
    const [a, b] = [line[i - 1], line[i]];
    if (a === undefined || b === undefined || b.time_s - a.time_s > bridged_s) return false;
    return way === 'up' ? a.value < level_degC && b.value >= level_degC : a.value > level_degC && b.value <= level_degC;
  };
  const indices = line.map((_, i) => i).slice(1);
  const at = way === 'up' ? indices.find(passes) : indices.findLast(passes);
  const [a, b] = at === undefined ? [] : [line[at - 1], line[at]];
  if (a === undefined || b === undefined) return undefined;
  return a.time_s + ((b.time_s - a.time_s) * (level_degC - a.value)) / (b.value - a.value);
}

/** Time between two levels [s]. */
function between_s(line: Line, levels: readonly [number, number], way: 'up' | 'down'): number | undefined {
  const [first, second] = levels.map((level) => crossing_s(line, level, way));
  return first === undefined || second === undefined ? undefined : second - first;
}

/** Slope of the ramp between 60 and 150 degC [K/s]; undefined where the line does not show both. */
export function rampSlope_K_s(line: Line): number | undefined {
  const time_s = between_s(line, [60, 150], 'up');
  return time_s === undefined || time_s <= 0 ? undefined : 90 / time_s;
}

/** Rate of cooling at 100 degC, from 110 to 90 [K/s]. */
export function coolingRate_K_s(line: Line): number | undefined {
  const time_s = between_s(line, [110, 90], 'down');
  return time_s === undefined || time_s <= 0 ? undefined : 20 / time_s;
}

const levels_degC = [120, 100, 80] as const;
/** From so far below the set point the controller decides, no longer the heater: that part is not stretched [K]. */
const controlled_K = 30;

/** What a forecast is held against. */
export interface Reference {
  /** The same platen as predicted. */
  readonly line: Line;
  readonly ready_s: number;
  readonly set_degC: number;
}

/**
 * When the platens will be ready, from what one has shown so far: the ramp from here to 30 K below its set point is
 * stretched like the last 30 K, the rest takes what it was predicted to take.
 * t_ready = t_L + (t_S - t_L)_ref (t_L - t_(L-30)) / (t_L - t_(L-30))_ref + (t_ready - t_S)_ref, with L the highest of
 * 120, 100 and 80 degC that was passed, S the set point less 30 K.
 *
 * @param line - of a platen, as far as it is known
 * @param reference - as predicted
 * @returns time from switching on [s]; undefined before 80 degC: there the forecast would be worth nothing
 * @source rule and its errors from simulated cycles: largest 3.6 s at 80 degC; at 60 degC the standard deviation is 14 s
 * @verified WATCH-02
 */
export function forecastReady_s(line: Line, { line: reference, ready_s, set_degC }: Reference): number | undefined {
  const settling = crossing_s(reference, set_degC - controlled_K, 'up');
  if (settling === undefined) return undefined;
  for (const level of levels_degC) {
    const passed = crossing_s(line, level, 'up');
    const lately = between_s(line, [level - 30, level], 'up');
    const expected = crossing_s(reference, level, 'up');
    const expectedLately = between_s(reference, [level - 30, level], 'up');
    if (passed === undefined || lately === undefined || expected === undefined || !expectedLately) continue;
    return passed + (Math.max(0, settling - expected) * lately) / expectedLately + (ready_s - settling);
  }
  return undefined;
}

/** What a cycle shows of press and outlet, as shares of what was predicted; with the standard deviation of each. */
export interface Features {
  /** Speed of the ramp, by side. */
  readonly ramp: Readonly<Partial<Record<WatchSide, Feature>>>;
  /** Speed of the cooling, by side. */
  readonly cooling: Readonly<Partial<Record<WatchSide, Feature>>>;
  /** Shown less expected at the plateau [K], by side. */
  readonly plateau: Readonly<Partial<Record<WatchSide, Feature>>>;
}

export interface Feature {
  readonly value: number;
  readonly sd: number;
}

/** Spread of slope and rate over mains and air [share]; in brackets where both are logged. From simulated cycles. */
const spread = {
  ramp: { raw: 0.033 / 0.415, known: 0.0042 / 0.415 },
  cooling: { raw: 0.02 / 0.231, known: 0.0049 / 0.231 },
  plateau_K: 0.5,
} as const;

/**
 * Ramp, cooling and plateau of what was read, against what was predicted.
 *
 * @param watched - with smoothed, plausible readings
 * @param predicted - cycle
 * @param courses - it may take
 */
export function featuresOf(watched: Watched, predicted: WatchedCycle, courses: Courses): Features {
  const each = (feature: (side: WatchSide) => Feature | undefined): Features['ramp'] =>
    Object.fromEntries(
      watchSides.flatMap((side) => {
        const found = feature(side);
        return found === undefined ? [] : [[side, found] as const];
      }),
    );
  return {
    ramp: each((side) => ramp(watched, predicted, side)),
    cooling: each((side) => cooling(watched, predicted, { side, courses })),
    plateau: each((side) => plateau(watched, predicted, { side, courses })),
  };
}

function ramp(
  { readings, known, set, limits }: Watched,
  predicted: WatchedCycle,
  side: WatchSide,
): Feature | undefined {
  const [line, reference] = [lineOf(readings, side), predictedLine(predicted, side)];
  const [slope, expected] = [rampSlope_K_s(line), rampSlope_K_s(reference)];
  const sd = known?.mains && known.air ? spread.ramp.known : spread.ramp.raw;
  if (slope !== undefined && expected !== undefined) return { value: slope / expected, sd };
  const last = line.findLast(
    ({ time_s, value }) => value < set[`${side}_degC`] - 15 && time_s < predicted.holdEnd_s.high,
  );
  if (last === undefined || last.time_s <= 0) return undefined;
  const took_s = crossing_s(reference, last.value, 'up');
  return took_s === undefined ? undefined : timed(took_s, last.time_s, { sd, tap_s: limits.tap_s });
}

function cooling(
  { readings, known, limits }: Watched,
  predicted: WatchedCycle,
  { side, courses }: { readonly side: WatchSide; readonly courses: Courses },
): Feature | undefined {
  const [line, reference] = [lineOf(readings, side), predictedLine(predicted, side)];
  const [rate, expected] = [coolingRate_K_s(line), coolingRate_K_s(reference)];
  const sd = known?.air ? spread.cooling.known : spread.cooling.raw;
  if (rate !== undefined && expected !== undefined) return { value: rate / expected, sd };
  const [, middle, late] = courses.all;
  const last = line.findLast(({ time_s }) => time_s > late.holdEnd_s);
  if (last === undefined) return undefined;
  const cold_s = crossing_s(reference, last.value, 'down');
  if (cold_s === undefined) return undefined;
  return timed(cold_s - courses.nominal.holdEnd_s, last.time_s - middle.holdEnd_s, { sd, tap_s: limits.tap_s });
}

function timed(
  expected_s: number,
  took_s: number,
  { sd, tap_s }: { readonly sd: number; readonly tap_s: number },
): Feature | undefined {
  if (took_s <= 0 || expected_s <= 0) return undefined;
  return { value: expected_s / took_s, sd: Math.hypot(sd, (2 * tap_s) / took_s) };
}

function plateau(
  { readings, limits: { tap_s } }: Watched,
  predicted: WatchedCycle,
  { side, courses }: { readonly side: WatchSide; readonly courses: Courses },
): Feature | undefined {
  const held = lineOf(readings, side).filter(({ time_s }) =>
    courses.all.every(({ ready_s, holdEnd_s }) => time_s >= ready_s + 2 * tap_s && time_s <= holdEnd_s - tap_s),
  );
  if (held.length === 0) return undefined;
  const off = held.map(({ time_s, value }) => value - bandAt(predicted, courses, { time_s, tap_s: 0 }, side).expected);
  return { value: off.reduce((a, b) => a + b, 0) / off.length, sd: spread.plateau_K };
}
