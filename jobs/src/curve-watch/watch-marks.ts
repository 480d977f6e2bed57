import { crossing_s, type Line, lineOf, predictedLine } from './curve-features.ts';
import { shownBy, type Watched } from './watch-asked.ts';
import { type CurveReading, type CurveWarning, type WatchSide, watchSides } from './watch-codes.ts';

type Found = Omit<CurveWarning, 'causes'>;

/** A platen this close below its set point counts as held [K]. */
const held_K = 3;

/**
 * What the marks of a cycle show: heat that does not come, a hold of another length, opened too warm.
 *
 * @param watched - with plausible readings
 */
export function markWarnings(watched: Watched): readonly Found[] {
  return [...notReached(watched), ...holdLength(watched), ...openedHot(watched), ...aboveCap(watched)];
}

function coldest(reading: CurveReading): number {
  return Math.min(reading.top_degC ?? Number.POSITIVE_INFINITY, reading.bottom_degC ?? Number.POSITIVE_INFINITY);
}

/** So long after switching on that the platens should have been hot by far. */
function notReached({ predicted, readings, said, set, limits }: Watched): readonly Found[] {
  if (predicted === undefined || said?.holdBegan_s !== undefined || said?.coolingBegan_s !== undefined) return [];
  const limit_s = Math.max(predicted.ready_s.value * limits.never, predicted.ready_s.high);
  const last = readings.at(-1);
  const everHot = readings.some(
    ({ top_degC, bottom_degC }) =>
      (top_degC === undefined || top_degC >= set.top_degC - held_K) &&
      (bottom_degC === undefined || bottom_degC >= set.bottom_degC - held_K),
  );
  // Without a reading from after the limit nobody knows whether it is hot: the display was not looked at.
  if (last === undefined || everHot || last.time_s <= limit_s || isFalling(readings, last)) return [];
  const data = {
    at_s: last.time_s,
    limit_s,
    shown_degC: coldest(last),
    set_degC: Math.min(set.top_degC, set.bottom_degC),
  };
  return [{ code: 'set-not-reached', level: 'stop', data }];
}

/** It was hotter before: heating is over, whatever nobody read meanwhile. */
function isFalling(readings: readonly CurveReading[], last: CurveReading): boolean {
  return readings.some((each) => coldest(each) > coldest(last) + held_K);
}

/** The hold as the display said it, else as a logger shows it, against the recipe. */
function holdLength(watched: Watched): readonly Found[] {
  const { predicted, dwell_s, limits } = watched;
  const wanted_s = dwell_s ?? (predicted && predicted.holdEnd_s.value - predicted.ready_s.value);
  if (wanted_s === undefined) return [];
  const held_s = saidHold_s(watched) ?? shownHold_s(watched, wanted_s);
  if (held_s === undefined) return [];
  const allowed_s = Math.max(limits.hold_s, limits.hold_share * wanted_s);
  if (Math.abs(held_s - wanted_s) <= allowed_s) return [];
  const data = { held_s, wanted_s, off_s: Math.abs(held_s - wanted_s) };
  return [{ code: held_s < wanted_s ? 'hold-short' : 'hold-long', level: 'care', data }];
}

function saidHold_s({ said }: Watched): number | undefined {
  const { holdBegan_s, coolingBegan_s } = said ?? {};
  return holdBegan_s === undefined || coolingBegan_s === undefined ? undefined : coolingBegan_s - holdBegan_s;
}

/** What a logger shows: so much longer or shorter than the predicted curve stands within 3 K of its own plateau. */
function shownHold_s({ kept, predicted, readings }: Watched, wanted_s: number): number | undefined {
  if (kept !== 'logger' || predicted === undefined) return undefined;
  const [shown, expected] = [
    plateau_s((side) => lineOf(readings, side)),
    plateau_s((side) => predictedLine(predicted, side)),
  ];
  return shown === undefined || expected === undefined ? undefined : wanted_s + shown - expected;
}

/** From the slower side up to the first side down, by the plateau of each; only where both ends are known. */
function plateau_s(lineOfSide: (side: WatchSide) => Line): number | undefined {
  const lines = watchSides.map(lineOfSide).filter((line) => line.length > 0);
  const ends = lines.map((line) => {
    const level = Math.max(...line.map(({ value }) => value)) - held_K;
    return { up: crossing_s(line, level, 'up'), down: crossing_s(line, level, 'down') };
  });
  const ups = ends.flatMap(({ up }) => up ?? []);
  const downs = ends.flatMap(({ down }) => down ?? []);
  if (ends.length === 0 || ups.length < ends.length || downs.length < ends.length) return undefined;
  const held_s = Math.min(...downs) - Math.max(...ups);
  return held_s > 0 ? held_s : undefined;
}

/** How warm a display may read above the opening temperature without a word [K]. */
const warm_K = 1;
/** A reading this long before the opening still says how warm it was opened [s]. */
const lately_s = 60;

function openedHot({ said, readings, open_degC, predicted, limits }: Watched): readonly Found[] {
  const { opened_s } = said ?? {};
  if (opened_s === undefined || open_degC === undefined) return [];
  const last = readings.findLast(({ time_s }) => time_s <= opened_s + limits.tap_s);
  if (last !== undefined && opened_s - last.time_s <= lately_s) {
    const shown_degC = hottest(last);
    if (shown_degC <= open_degC + warm_K) return [];
    const level = shown_degC > limits.openCore_degC ? 'stop' : 'care';
    return [{ code: 'opened-hot', level, data: { at_s: opened_s, shown_degC, limit_degC: open_degC } }];
  }
  if (predicted === undefined || opened_s >= predicted.open_s.low - limits.late_s) return [];
  return [
    {
      code: 'opened-hot',
      level: 'care',
      data: { at_s: opened_s, expected_s: predicted.open_s.value, limit_degC: open_degC },
    },
  ];
}

function hottest({ top_degC, bottom_degC }: CurveReading): number {
  return Math.max(top_degC ?? Number.NEGATIVE_INFINITY, bottom_degC ?? Number.NEGATIVE_INFINITY);
}

function aboveCap({ readings, limits, set }: Watched): readonly Found[] {
  return (['top', 'bottom'] as const).flatMap((side): Found[] => {
    const cap_degC = Math.max(limits.cap_degC, set[`${side}_degC`]);
    const over = readings.filter((reading) => (shownBy(reading, side) ?? 0) > cap_degC);
    const [first] = over;
    if (first === undefined) return [];
    const shown_degC = Math.max(...over.map((reading) => shownBy(reading, side) ?? 0));
    return [{ code: 'above-cap', level: 'stop', side, data: { at_s: first.time_s, shown_degC, limit_degC: cap_degC } }];
  });
}
