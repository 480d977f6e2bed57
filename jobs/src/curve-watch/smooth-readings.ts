import type { CurveReading } from './watch-codes.ts';

/** Half the width of the window in which a logger's readings are averaged [s]. */
const half_s = 10;

/**
 * Readings averaged over twenty seconds around each of them: noise goes, what heat does in that time stays.
 *
 * @param readings - in the order of time
 */
export function smoothReadings(readings: readonly CurveReading[]): readonly CurveReading[] {
  let [from, to] = [0, 0];
  const sums = { top: 0, bottom: 0, tops: 0, bottoms: 0 };
  const take = (reading: CurveReading | undefined, sign: 1 | -1): void => {
    if (reading?.top_degC !== undefined) {
      sums.top += sign * reading.top_degC;
      sums.tops += sign;
    }
    if (reading?.bottom_degC !== undefined) {
      sums.bottom += sign * reading.bottom_degC;
      sums.bottoms += sign;
    }
  };
  return readings.map(({ time_s, top_degC, bottom_degC }) => {
    while (to < readings.length && (readings[to]?.time_s ?? 0) <= time_s + half_s) take(readings[to++], 1);
    while ((readings[from]?.time_s ?? time_s) < time_s - half_s) take(readings[from++], -1);
    return {
      time_s,
      ...(top_degC !== undefined && sums.tops > 0 && { top_degC: sums.top / sums.tops }),
      ...(bottom_degC !== undefined && sums.bottoms > 0 && { bottom_degC: sums.bottom / sums.bottoms }),
    };
  });
}

/** Two readings with nothing between them for longer than one may guess over [s]. */
interface Gap {
  readonly from_s: number;
  readonly to_s: number;
}

/**
 * Where nothing was read for too long.
 *
 * @param readings - in the order of time
 * @param gap_s - longest time that is none
 */
export function gapsIn(readings: readonly CurveReading[], gap_s: number): readonly Gap[] {
  return readings.flatMap(({ time_s: to_s }, i) => {
    const from_s = readings[i - 1]?.time_s;
    return from_s !== undefined && to_s - from_s > gap_s ? [{ from_s, to_s }] : [];
  });
}
