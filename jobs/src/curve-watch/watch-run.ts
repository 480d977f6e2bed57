import { usualOpening_degC } from '../press-run/deviation.ts';
import { elapsedBetween } from '../press-run/run-clock.ts';
import type { RunState, Stamp } from '../press-run/run-state.ts';
import type { WatchAsked } from './watch-asked.ts';
import type { CurveReading, CurveWarning } from './watch-codes.ts';
import { watchCurve } from './watch-curve.ts';

/** What a run is watched by besides its own readings. */
export interface WatchRunOptions {
  /** Readings of a logger, in place of what was read off the displays. */
  readonly logged?: readonly CurveReading[];
}

/**
 * What the cycle of a run shows, by what was read off both displays and said by them, or by a logger's curve.
 *
 * @param state - of the run
 * @param options - what a logger kept
 */
export function watchRun(
  state: RunState,
  { logged = keptCurve(state) }: WatchRunOptions = {},
): readonly CurveWarning[] {
  const { heat } = state.moments;
  const { recipe } = state.started.things;
  if (heat === undefined || recipe === undefined) return [];
  const cycle = state.predicted?.cycle;
  const since_s = (moment: Stamp): number => elapsedBetween(heat, moment, state.entries).elapsed_s;
  const measured = (measure: string): boolean => state.measures.some((each) => each.measure === measure);
  return watchCurve({
    ...(cycle?.status === 'ok' && { predicted: cycle }),
    readings: logged ?? displayReadings(state, since_s),
    kept: logged ? 'logger' : 'displays',
    set: { top_degC: recipe.top_degC, bottom_degC: recipe.bottom_degC },
    ...(recipe.dwell_s !== undefined && { dwell_s: recipe.dwell_s }),
    open_degC: recipe.open_degC ?? usualOpening_degC,
    said: saidBy(state, since_s),
    ...airOf(state),
    known: { mains: measured('mains'), air: measured('air') },
  });
}

/** A logger's curve that was read into this time in the press: it says more than what somebody read off the displays. */
function keptCurve({ logged, attempt }: RunState): readonly CurveReading[] | undefined {
  const curve = logged.findLast((each) => each.attempt === attempt)?.curve;
  return curve?.times_s.flatMap((time_s, i) => {
    const [top, bottom] = [curve.top_degC[i] ?? undefined, curve.bottom_degC?.[i] ?? undefined];
    if (top === undefined && bottom === undefined) return [];
    return [
      { time_s, ...(top !== undefined && { top_degC: top }), ...(bottom !== undefined && { bottom_degC: bottom }) },
    ];
  });
}

function displayReadings({ readings, attempt }: RunState, since_s: (moment: Stamp) => number): readonly CurveReading[] {
  return readings
    .filter((each) => each.attempt === attempt)
    .map((each) => ({ time_s: since_s(each), top_degC: each.top_degC, bottom_degC: each.bottom_degC }));
}

function saidBy({ moments }: RunState, since_s: (moment: Stamp) => number): NonNullable<WatchAsked['said']> {
  const { holdBegan, coolingBegan, opened } = moments;
  return {
    ...(holdBegan && { holdBegan_s: since_s(holdBegan) }),
    ...(coolingBegan && { coolingBegan_s: since_s(coolingBegan) }),
    ...(opened && { opened_s: since_s(opened) }),
  };
}

function airOf({ measures, started }: RunState): Pick<WatchAsked, 'air_degC'> {
  const read = measures.findLast(({ measure }) => measure === 'air')?.value;
  const air_degC = read ?? started.numbers.find(({ name }) => name === 'air')?.value;
  return air_degC === undefined ? {} : { air_degC };
}
