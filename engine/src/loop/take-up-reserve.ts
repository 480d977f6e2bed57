import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import { workInRange } from '../worked/compute-in-range.ts';
import type { Worked } from '../worked/worked-formula.ts';
import {
  elongationWhenShortRow,
  respliceGivenBackRow,
  respliceLengthRow,
  respliceTravelToMeshRow,
  takeUpFitReserveRow,
  takeUpTensionReserveRow,
  takeUpTravelForStretchRow,
  takeUpTravelToMeshRow,
} from './take-up-formulas.ts';

const paths = {
  e: 'elongation',
  e0: 'elongation',
  L0: 'endlessLength_m',
  L: 'endlessLength_m',
  w: 'takeUpWrap_rad',
  lf: 'fingerLength_m',
  t: 'trim_m',
} as const;

export interface TravelToMeshInput {
  readonly elongation: number;
  readonly endlessLength_m: number;
  readonly takeUpWrap_rad: number;
  readonly fitSlack_m: number;
}

/** Travel that the stretch takes, and travel to close the loop slack with room for the hands. */
export interface TravelToMesh {
  readonly stretch: Worked;
  readonly slack_m: number;
  readonly toMesh: Worked;
}

/**
 * Travel that a take-up must have behind it so that the ends of a new belt mesh without pull.
 *
 * x = (e L0 + s) / (2 sin(w/2)).
 *
 * @param input.elongation - set elongation [1], 0 to 0.5
 * @param input.endlessLength_m - slack loop [m], 0.05 to 20000
 * @param input.takeUpWrap_rad - wrap of the take-up pulley [rad], 0.001 to 6.283
 * @param input.fitSlack_m - loop length that hands need [m], 0 to 5
 * @returns travels [m]
 * @throws not-finite, out-of-range
 * @validity first order in the travel; `cutLength` solves the true path
 * @source derived: dL/dx = 2 sin(w/2)
 * @verified T8 travel for the stretch
 */
export function takeUpTravelToMesh(input: TravelToMeshInput): TravelToMesh {
  const { elongation: e, endlessLength_m: L0, takeUpWrap_rad: w, fitSlack_m: s } = input;
  const toMesh = workInRange(takeUpTravelToMeshRow, { e, L0, s, w }, { ...paths, s: 'fitSlack_m' });
  const stretch = workInRange(takeUpTravelForStretchRow, { e, L0, w }, paths);
  return { stretch, slack_m: toMesh.value - stretch.value, toMesh };
}

export interface RespliceInput extends TravelToMeshInput {
  readonly fingerLength_m: number;
  /** Cut off behind the old fingers at each end. */
  readonly trim_m: number;
  /** Travel at which the take-up stands now: what it can give back. */
  readonly available_m: number;
}

/** The same belt spliced again: does the take-up reach, and do the ends meet? */
export interface Resplice {
  readonly endlessLength: Worked;
  readonly givenBack: Worked;
  readonly toMesh: Worked;
  /** The shorter belt can still be set to its elongation. */
  readonly possible: boolean;
  readonly meshesInPlace: boolean;
  /** Elongation that results when the travel does not suffice; the set elongation when it does. */
  readonly elongation: Worked;
}

/**
 * Re-splice of a belt by closed forms, for loops whose path is not known pulley by pulley.
 *
 * L1 = L0 - 2 l_f - 2 t; given back (2 l_f + 2 t)(1 + e)/(2 sin(w/2)); to mesh (2 l_f + 2 t + e L0 + s)/(2 sin(w/2)).
 *
 * @param input.fingerLength_m - tip to root [m], 0 to 1
 * @param input.trim_m - trim a belt end [m], 0 to 10
 * @param input.available_m - travel at which the take-up stands [m], 0 to 100
 * @param input.elongation - set elongation [1], 0 to 0.5
 * @param input.endlessLength_m - slack loop before [m], 0.05 to 20000
 * @param input.takeUpWrap_rad - wrap of the take-up pulley [rad], 0.001 to 6.283
 * @param input.fitSlack_m - loop length that hands need [m], 0 to 5
 * @returns length after, travels [m], what is possible, elongation [1]
 * @throws not-finite, out-of-range, nothing-left
 * @validity first order in the travel; `cutLength` solves the true path
 * @source derived; common practice, no source, for what is cut off
 * @verified T8 travel given back, T8 travel to mesh after a re-splice
 */
export function resplice(input: RespliceInput): Resplice {
  const { elongation: e, endlessLength_m: L0, takeUpWrap_rad: w, fitSlack_m: s } = input;
  const { fingerLength_m: lf, trim_m: t, available_m } = input;
  inRange(available_m, 'available_m', { min: 0, max: 100, unit: 'm' });
  const endlessLength = workInRange(respliceLengthRow, { L0, lf, t }, paths);
  if (endlessLength.value <= 0) {
    throw new Refusal('nothing-left', 'trim_m', { value: t, min: 0, max: Math.max(0, L0 / 2 - lf), unit: 'm' });
  }
  const givenBack = workInRange(respliceGivenBackRow, { lf, t, e, w }, paths);
  const toMesh = workInRange(respliceTravelToMeshRow, { lf, t, e, L0, s, w }, { ...paths, s: 'fitSlack_m' });
  const missing_m = Math.max(0, givenBack.value - available_m);
  return {
    endlessLength,
    givenBack,
    toMesh,
    possible: missing_m === 0,
    meshesInPlace: toMesh.value <= available_m,
    elongation: workInRange(elongationWhenShortRow, { e0: e, s: missing_m, L0: endlessLength.value, w }, paths),
  };
}

export interface TakeUpReserveInput {
  readonly endlessLength_m: number;
  readonly lengthTolerance: number;
  readonly elongation: number;
  readonly permanentSet: number;
  readonly fitSlack_m: number;
  readonly takeUpWrap_rad: number;
}

/**
 * Travel that a take-up should have on either side of the nominal centre distance.
 *
 * Fitting side (L tol + s)/(2 sin(w/2)); tension side L (tol + e + set)/(2 sin(w/2)).
 *
 * @param input.endlessLength_m - slack loop [m], 0.05 to 20000
 * @param input.lengthTolerance - half-width as a share [1], 0 to 0.1
 * @param input.elongation - set elongation [1], 0 to 0.5
 * @param input.permanentSet - lasting stretch over its life [1], 0 to 0.1
 * @param input.fitSlack_m - loop length that hands need [m], 0 to 5
 * @param input.takeUpWrap_rad - wrap of the take-up pulley [rad], 0.001 to 6.283
 * @returns travel on the fitting side and on the tension side [m]
 * @throws not-finite, out-of-range
 * @source derived; structure of ISO 155:2019
 * @verified T8 take-up reserve
 */
export function takeUpReserve(input: TakeUpReserveInput): { readonly fit: Worked; readonly tension: Worked } {
  const { endlessLength_m: L, lengthTolerance: t, elongation: e, permanentSet: p, fitSlack_m: s } = input;
  const w = input.takeUpWrap_rad;
  const names = { ...paths, t: 'lengthTolerance', s: 'fitSlack_m', p: 'permanentSet' };
  return {
    fit: workInRange(takeUpFitReserveRow, { L, t, s, w }, names),
    tension: workInRange(takeUpTensionReserveRow, { L, t, e, p, w }, names),
  };
}
