import type { FusionParameters } from '../../fusion/parameters.ts';
import { voidNumber } from '../../fusion/void-number.ts';
import type { History } from './history.ts';
import { rateCount } from './rate-table.ts';

/** A time of one pressure on the belt; what came before it is closed. */
export interface PressureSpan {
  readonly from_s: number;
  readonly pressure_Pa: number;
  /** Integrals of the fluidity and of the flow at its start, of each place that has rates; undefined where they are 0. */
  readonly before: { readonly fluidity: Float64Array; readonly flow: Float64Array } | undefined;
}

/** Pressures on the belt during a run. */
export interface Pressures {
  readonly spans: PressureSpan[];
  /** Highest temperature of the belt in each span but the last. */
  readonly hottest_degC: number[];
  /** Peaks up to the last span, where there is more than one. */
  peaks: { readonly peak: Float64Array; readonly peakAt_s: Float64Array } | undefined;
}

/**
 * One pressure from the start.
 *
 * @param pressure_Pa - pressure on the belt [Pa]
 * @returns pressures of a run that has not begun
 * @source derived: plain allocation
 */
export function onePressure(pressure_Pa: number): Pressures {
  return { spans: [{ from_s: 0, pressure_Pa, before: undefined }], hottest_degC: [], peaks: undefined };
}

/**
 * Flow integral of a place. J = sum over spans of p*integral of phi/eta.
 *
 * @param span - the span that a moment lies in
 * @param place - which place [1]
 * @param fluidity_1_Pa - integral of the fluidity up to that moment [1/Pa]
 * @returns flow integral J [1]
 * @source derived: sum over times of one pressure
 * @verified CYCLE-12 flow over two pressures
 */
export function flowAt(span: PressureSpan, place: number, fluidity_1_Pa: number): number {
  const { pressure_Pa, before } = span;
  if (before === undefined) return pressure_Pa * fluidity_1_Pa;
  return (before.flow[place] as number) + pressure_Pa * (fluidity_1_Pa - (before.fluidity[place] as number));
}

/**
 * Goes over to another pressure.
 *
 * @param pressures - pressures so far, changed
 * @param history - history up to now; its peaks begin anew
 * @param now - beltPlaces [1], time_s [s] and the new pressure_Pa [Pa]
 * @returns nothing
 * @source derived: sum over times of one pressure
 * @verified CYCLE-12 flow over two pressures
 */
export function changePressure(
  pressures: Pressures,
  history: History,
  now: { readonly beltPlaces: number; readonly time_s: number; readonly pressure_Pa: number },
): void {
  const last = lastSpan(pressures);
  if (last.pressure_Pa === now.pressure_Pa) return;
  const { fusing, sums, peak } = history;
  const fluidity = Float64Array.from({ length: fusing }, (_, place) => sums[rateCount * place + 1] as number);
  const flow = fluidity.map((sum, place) => flowAt(last, place, sum));
  pressures.spans.push({ from_s: now.time_s, pressure_Pa: now.pressure_Pa, before: { fluidity, flow } });
  pressures.hottest_degC.push(Math.max(...peak.subarray(0, now.beltPlaces)));
  gatherPeaks(pressures, history);
  peak.set(history.now);
}

/**
 * Brings the peaks of all spans together, at the end of a run.
 *
 * @param pressures - pressures of the run, changed
 * @param history - history whose peaks become those of the whole run
 * @param beltPlaces - how many of its places are the belt's [1]
 * @returns nothing
 * @source derived: plain comparison
 * @verified CYCLE-12 flow over two pressures
 */
export function closePressures(pressures: Pressures, history: History, beltPlaces: number): void {
  if (pressures.peaks === undefined) return;
  pressures.hottest_degC.push(Math.max(...history.peak.subarray(0, beltPlaces)));
  gatherPeaks(pressures, history);
  history.peak.set(pressures.peaks.peak);
  history.peakAt_s.set(pressures.peaks.peakAt_s);
}

function gatherPeaks(pressures: Pressures, { peak, peakAt_s }: History): void {
  if (pressures.peaks === undefined) {
    pressures.peaks = { peak: peak.slice(), peakAt_s: peakAt_s.slice() };
    return;
  }
  const earlier = pressures.peaks;
  peak.forEach((own, place) => {
    if (own <= (earlier.peak[place] as number)) return;
    earlier.peak[place] = own;
    earlier.peakAt_s[place] = peakAt_s[place] as number;
  });
}

/**
 * The span that a run is in.
 *
 * @param pressures - pressures of a run
 * @returns the last span
 * @source derived: plain look-up
 */
export function lastSpan({ spans }: Pressures): PressureSpan {
  return spans[spans.length - 1] as PressureSpan;
}

/**
 * The span that a moment lies in.
 *
 * @param pressures - pressures of a run
 * @param time_s - moment [s]
 * @returns its span
 * @source derived: plain look-up
 */
export function spanAt({ spans }: Pressures, time_s: number): PressureSpan {
  return spans.findLast(({ from_s }) => from_s <= time_s) ?? (spans[0] as PressureSpan);
}

/** So many widths below the melting peak the belt is too stiff for bubbles to grow. */
const stiffWidths = 4;

/**
 * Void number of a belt: where the pressure changed, the worst of all spans in which the belt was soft.
 *
 * @param fusion - moisture [1], melting peak [degC] and its width [K]
 * @param pressures - pressures of a finished run
 * @param beltMax_degC - highest temperature of the belt [degC]
 * @returns void number [1]; undefined where the moisture is not known
 * @source derived: worst over times of one pressure
 * @verified CYCLE-12 flow over two pressures
 */
export function voidsOver(
  { moisture_share, meltCentre_degC, meltWidth_K }: FusionParameters,
  { spans, hottest_degC }: Pressures,
  beltMax_degC: number,
): number | undefined {
  if (moisture_share === undefined) return undefined;
  const soft_degC = Math.min(beltMax_degC, meltCentre_degC - stiffWidths * meltWidth_K);
  let worst = 0;
  spans.forEach(({ pressure_Pa }, index) => {
    const hottest = hottest_degC[index] ?? beltMax_degC;
    if (hottest < soft_degC) return;
    worst = Math.max(worst, voidNumber({ moisture_share, beltMax_degC: hottest, pressure_Pa }));
  });
  return worst;
}
