import { type End, endField } from '../march/end.ts';
import { integralInside, sensorInside } from '../march/inside.ts';
import { rawOutput, setInside } from '../march/set-point.ts';
import type { PlatenControl } from './cycle-input.ts';

const { SENSOR, INTEGRAL, SET, SHARE } = endField;

/** Shortest lag a sensor can have here: a faster one only makes the steps short. */
const shortestLag_s = 1e-3;
/** Share of full power by which a limit must be passed: a press at rest lies on one but for rounding. */
const unnoticed = 1e-9;

/**
 * What an end needs to know of its controller.
 *
 * @param control - controller of a platen [units in its names]
 * @param sensorLag_s - lag of its sensor [s]; below 1 ms it counts as 1 ms
 * @returns gain, rates and lag
 * @source derived: definition of the controllers
 */
export function controlParts(control: PlatenControl, sensorLag_s: number) {
  const lag_s = Math.max(sensorLag_s, shortestLag_s);
  if (control.kind === 'on-off') return partsOf(lag_s, 0, 0, 0);
  const gain_1_K = 1 / control.band_K;
  if (control.kind === 'proportional') return partsOf(lag_s, gain_1_K, 0, 0);
  return partsOf(lag_s, gain_1_K, gain_1_K / control.integral_s, 1 / control.tracking_s);
}

function partsOf(sensorLag_s: number, gain_1_K: number, integralRate_1_Ks: number, trackingRate_1_s: number) {
  return { sensorLag_s, gain_1_K, integralRate_1_Ks, trackingRate_1_s };
}

/**
 * Heater as the controller wants it at the very start, and after a jump of the set point.
 *
 * @param end - end, changed
 * @param control - its controller
 * @returns nothing
 * @source derived: definition of the controllers
 */
export function startControl(end: End, control: PlatenControl): void {
  if (control.kind === 'on-off') {
    const error_K = (end.numbers[SET] as number) - (end.numbers[SENSOR] as number);
    end.numbers[SHARE] = error_K > 0.5 * control.hysteresis_K ? 1 : 0;
    return;
  }
  const raw = rawNow(end);
  end.following = raw > 0 && raw < 1;
  end.numbers[SHARE] = raw >= 1 ? 1 : 0;
}

/**
 * Positive once a continuous controller has passed to the other side of one of its limits.
 *
 * @param end - end with the step tried last
 * @param share - where in that step [1]
 * @returns how far it has passed, as a share of full power [1]
 * @source derived: output limited to 0..1
 */
export function limitPassed(end: End, share: number): number {
  const raw = rawOutput(end, setInside(end, share), sensorInside(end, share), integralInside(end, share));
  if (end.following) return Math.max(raw - 1, -raw) - unnoticed;
  return (end.numbers[SHARE] === 1 ? 1 - raw : raw) - unnoticed;
}

/**
 * The controller goes over to the other side of the limit it has passed.
 *
 * @param end - end, changed
 * @returns nothing
 * @source derived: output limited to 0..1
 */
export function passLimit(end: End): void {
  if (end.following) {
    end.numbers[SHARE] = rawNow(end) > 0.5 ? 1 : 0;
    end.following = false;
    return;
  }
  end.following = true;
}

/**
 * First sample inside the step tried last at which an on/off controller decides otherwise.
 *
 * @param end - end with that step
 * @param control - its controller
 * @param start_s - start of the step [s]
 * @param step_s - length of the step [s]
 * @returns time from the step's start, or infinity [s]
 * @source derived: on below set - h/2, off above set + h/2
 */
export function firstSwitch_s(
  end: End,
  control: Extract<PlatenControl, { kind: 'on-off' }>,
  start_s: number,
  step_s: number,
): number {
  const { hysteresis_K, sample_s } = control;
  const half = 0.5 * hysteresis_K;
  let sample = Math.floor(start_s / sample_s + 1e-6) + 1;
  for (; sample * sample_s <= start_s + step_s + 1e-9; sample += 1) {
    const from_s = sample * sample_s - start_s;
    const share = Math.min(1, from_s / step_s);
    const error = setInside(end, share) - sensorInside(end, share);
    if (end.numbers[SHARE] === 1 ? error < -half : error > half) return from_s;
  }
  return Number.POSITIVE_INFINITY;
}

function rawNow(end: End): number {
  const { numbers: e } = end;
  return rawOutput(end, e[SET] as number, e[SENSOR] as number, e[INTEGRAL] as number);
}
