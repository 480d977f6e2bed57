import type { Cycle, CycleInput } from '@loopwright/engine/press';
import { runCycle } from './run-cycle.ts';

/** One line of a curve: a value a time. */
export type CurveLine = readonly number[];

/** A cycle over time, from switching on to opening; temperatures [degC]. */
export interface CycleCurve {
  readonly times_s: readonly number[];
  readonly topPlaten: CurveLine;
  readonly bottomPlaten: CurveLine;
  readonly topSensor: CurveLine;
  readonly bottomSensor: CurveLine;
  readonly beltTop: CurveLine;
  readonly beltMiddle: CurveLine;
  readonly beltBottom: CurveLine;
  /** Least of the three places in the belt: bond [1], fill [m]; most damage 1 - M/M0 [1]. */
  readonly bond: CurveLine;
  readonly fill_m: CurveLine;
  readonly damage: CurveLine;
}

/** Points of a curve: a step of about ten seconds in a cycle of a quarter of an hour. */
const points = 121;

/**
 * The cycle over time, its marks among the times.
 *
 * @param input - of the cycle; its probes are top, middle and bottom of the belt
 * @param cycle - as computed from that input
 */
export function cycleCurve(input: CycleInput, { marks }: Cycle): CycleCurve | undefined {
  const even = Array.from({ length: points }, (_, i) => (marks.open_s * i) / (points - 1));
  const times_s = [...new Set([...even, marks.ready_s, marks.dwellEnd_s])].sort((a, b) => a - b);
  const run = runCycle({ ...input, times_s });
  if (run.status !== 'ok') return undefined;
  const { probes, platens, sensors } = run;
  const [top, middle, bottom] = probes;
  const least = (values: readonly (readonly (number | null)[] | undefined)[]): CurveLine =>
    times_s.map((_, i) => Math.min(...values.map((each) => each?.[i] ?? Number.POSITIVE_INFINITY)));
  const mass = least(probes.map(({ molarMassShareValues }) => molarMassShareValues));
  return {
    times_s,
    topPlaten: filled(platens.top.values_degC),
    bottomPlaten: filled(platens.bottom.values_degC),
    topSensor: filled(sensors.top.values_degC),
    bottomSensor: filled(sensors.bottom.values_degC),
    beltTop: filled(top?.values_degC),
    beltMiddle: filled(middle?.values_degC),
    beltBottom: filled(bottom?.values_degC),
    bond: least(probes.map(({ bondValues }) => bondValues)),
    fill_m: least(probes.map(({ fillValues_m }) => fillValues_m)),
    damage: mass.map((share) => 1 - share),
  };
}

/** At the very moment of opening a value may be missing by a rounding: then the last one holds. */
function filled(values: readonly (number | null)[] = []): CurveLine {
  let last = 0;
  return values.map((value) => {
    last = value ?? last;
    return last;
  });
}

/**
 * When the slowest of some lines first reaches a value, between its points by a straight line.
 *
 * @param curve - times and lines
 * @param lines - lines that must all have reached it
 * @param value - in the lines' unit
 * @returns time [s]; undefined when not all of them ever do
 */
export function reachedAt_s(curve: CycleCurve, lines: readonly CurveLine[], value: number): number | undefined {
  const least = curve.times_s.map((_, i) => Math.min(...lines.map((line) => line[i] ?? Number.NEGATIVE_INFINITY)));
  const at = least.findIndex((each) => each >= value);
  if (at < 0) return undefined;
  const [t1 = 0, t0 = t1] = [curve.times_s[at], curve.times_s[at - 1]];
  const [y1 = value, y0 = value] = [least[at], least[at - 1]];
  return y1 === y0 ? t1 : t0 + ((t1 - t0) * (value - y0)) / (y1 - y0);
}
