import { type Features, featuresOf, forecastReady_s, lineOf, predictedLine } from './curve-features.ts';
import { type Departure, departuresAt } from './deviations.ts';
import { withoutImplausible } from './implausible.ts';
import { likelyCauses } from './likely-causes.ts';
import { type Courses, coursesOf } from './predicted-band.ts';
import { gapsIn, smoothReadings } from './smooth-readings.ts';
import { shownBy, type WatchAsked, type Watched } from './watch-asked.ts';
import { type CurveWarning, type WatchCode, type WatchedCycle, watchCodes, watchSides } from './watch-codes.ts';
import { watchLimits } from './watch-limits.ts';
import { markWarnings } from './watch-marks.ts';

type Found = Omit<CurveWarning, 'causes'>;

/**
 * What a curve shows, held against the predicted one: slow, fast, one side behind, plateau, hold, cooling, opening, and
 * readings that cannot be. Where the range of the prediction allows no judgement, nothing is said. A wet belt and a cold
 * edge show in no curve (`silentCauses`).
 *
 * @param asked - prediction, readings and what the display said
 * @returns one warning a code and side, in the order of `watchCodes`
 * @validity platens with a sensor each; limits are defaults until a press has thirty good runs of its own
 */
export function watchCurve(asked: WatchAsked): readonly CurveWarning[] {
  const limits = { ...watchLimits, ...asked.limits };
  const sorted = asked.readings.toSorted((a, b) => a.time_s - b.time_s);
  const sifted = withoutImplausible({ ...asked, limits, readings: sorted });
  const readings = asked.kept === 'logger' ? smoothReadings(sifted.readings) : sifted.readings;
  const watched: Watched = { ...asked, limits, readings };
  const { predicted, known } = asked;
  const courses = predicted && coursesOf(predicted, asked.said);
  const features = predicted && courses && featuresOf(watched, predicted, courses);
  const found: readonly Found[] = [
    ...sifted.warnings,
    ...gapWarning(watched),
    ...markWarnings(watched),
    ...(predicted && courses && features ? againstBand({ watched, predicted, courses, features }) : []),
  ];
  return found
    .filter((each) => !isCovered(each, found))
    .map((each) => ({ ...each, causes: likelyCauses(each, features, known) }))
    .toSorted((a, b) => watchCodes.indexOf(a.code) - watchCodes.indexOf(b.code));
}

interface Against {
  readonly watched: Watched;
  readonly predicted: WatchedCycle;
  readonly courses: Courses;
  readonly features: Features;
}

/** Of each code and side the reading that is furthest off. */
function againstBand(against: Against): readonly Found[] {
  const { watched } = against;
  const worst = new Map<string, Departure>();
  for (const reading of watched.readings) {
    for (const each of departuresAt(against, reading)) {
      const key = `${each.code} ${each.side}`;
      if ((worst.get(key)?.beyond_K ?? 0) < each.beyond_K) worst.set(key, each);
    }
  }
  const departed = [...worst.values()].map(({ beyond_K: _beyond, ...rest }) => ({
    ...rest,
    level: levelOf(rest.code),
  }));
  return [...departed.filter(({ code }) => code !== 'slow-ramp'), ...slowRamp(against, departed), ...unsteady(against)];
}

function levelOf(code: WatchCode): CurveWarning['level'] {
  return code === 'cooling-slow' ? 'note' : 'care';
}

/** A slow ramp is told by a reading below its band or by a forecast beyond the range; with a forecast it says when. */
function slowRamp({ watched, predicted }: Against, departed: readonly Found[]): readonly Found[] {
  const seen = departed.find(({ code }) => code === 'slow-ramp');
  const forecasts = watchSides.flatMap((side) => {
    const line = lineOf(watched.readings, side);
    const reference = {
      line: predictedLine(predicted, side),
      ready_s: predicted.ready_s.value,
      set_degC: watched.set[`${side}_degC`],
    };
    return forecastReady_s(line, reference) ?? [];
  });
  const { value: predicted_s, high: latest_s } = predicted.ready_s;
  const forecast_s = forecasts.length === 0 ? undefined : Math.max(...forecasts);
  const late = forecast_s !== undefined && forecast_s - predicted_s > watched.limits.late_s && forecast_s > latest_s;
  if (!late && seen === undefined) return [];
  const when = forecast_s === undefined ? {} : { forecast_s, predicted_s, late_s: forecast_s - predicted_s };
  return [{ code: 'slow-ramp', level: 'care', ...seen, data: { ...seen?.data, ...when } }];
}

/** A plateau that swings: only a logger shows it. */
function unsteady({ watched, courses }: Against): readonly Found[] {
  if (watched.kept !== 'logger') return [];
  return watchSides.flatMap((side): Found[] => {
    const held = watched.readings.filter(({ time_s }) =>
      courses.all.every(({ ready_s, holdEnd_s }) => time_s > ready_s + 10 && time_s < holdEnd_s - 10),
    );
    const values = held.flatMap((reading) => shownBy(reading, side) ?? []);
    const mean = values.reduce((a, b) => a + b, 0) / values.length;
    const sd_K = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
    return values.length > 4 && sd_K > watched.limits.unsteady_K
      ? [{ code: 'plateau-unsteady', level: 'care', side, data: { swing_K: 2 * sd_K, shown_degC: mean } }]
      : [];
  });
}

function gapWarning({ kept, readings, limits }: Watched): readonly Found[] {
  if (kept !== 'logger') return [];
  const gaps = gapsIn(readings, limits.gap_s);
  const [first] = gaps;
  if (first === undefined) return [];
  const length_s = gaps.reduce((sum, { from_s, to_s }) => sum + to_s - from_s, 0);
  return [{ code: 'gap', level: 'note', data: { at_s: first.from_s, to_s: first.to_s, length_s, count: gaps.length } }];
}

/** What another warning says better: a press that never gets hot is also slow. */
function isCovered({ code, side }: Found, found: readonly Found[]): boolean {
  const has = (other: WatchCode): boolean => found.some((each) => each.code === other && (!side || each.side === side));
  return (
    (code === 'overshoot' && has('above-cap')) ||
    (code === 'slow-ramp' && found.some((each) => each.code === 'set-not-reached'))
  );
}
