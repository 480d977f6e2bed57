import { inRange } from '../in-range.ts';
import { firstTipCentreRow, firstTipFlankRow } from './geometry-formulas.ts';

/** Where the belt centre lies on the zigzag: on a tip or root, or in the middle of a flank. */
export type PhaseSetting = 'tip' | 'flank';

export interface EdgeSlivers {
  /** Score with the belt centre on a tip or root. */
  readonly atTip_m: number;
  /** Score with the belt centre in the middle of a flank. */
  readonly atFlank_m: number;
  readonly best_m: number;
  readonly setting: PhaseSetting | 'either';
  /** A score below this leaves a hair-thin edge finger. */
  readonly threshold_m: number;
}

// Scores closer than this are equal: a die is not made to a nanometre.
const equal_m = 1e-9;

/**
 * Thinnest edge finger for the two symmetric lateral settings of a zigzag cut, and which of them is the better.
 *
 * o = distance from the belt edge to the nearest tip or root line: (b/2) mod (p/2) with the belt centre on one,
 * (b/2 - p/4) mod (p/2) with it in the middle of a flank. Score = min(o, p/2 - o), at best p/4.
 * Threshold = min(1.5 mm, 0.2*p).
 *
 * @param input - belt width 1 mm to 10 m, finger pitch 1 to 200 mm [m]
 * @returns both scores, the better, its setting, the threshold [m]
 * @throws not-finite, out-of-range
 * @validity straight flanks, sharp tips; the threshold is common practice, no source
 * @source derived: the best lateral setting is one of the two symmetric ones
 * @verified T7 slivers b 30 p 11.5 tip, T7 slivers b 30 p 11.5 flank
 */
export function edgeSlivers(input: { readonly width_m: number; readonly pitch_m: number }): EdgeSlivers {
  const { b, p } = checked(input.width_m, input.pitch_m);
  const score = (offset: number) => Math.max(0, Math.min(offset, p / 2 - offset));
  const atTip_m = score(firstTipCentreRow.compute({ b, p }));
  const atFlank_m = score(firstTipFlankRow.compute({ b, p }));
  const better = atTip_m > atFlank_m ? 'tip' : 'flank';
  return {
    atTip_m,
    atFlank_m,
    best_m: Math.max(atTip_m, atFlank_m),
    setting: Math.abs(atTip_m - atFlank_m) < equal_m ? 'either' : better,
    threshold_m: Math.min(0.0015, 0.2 * p),
  };
}

/**
 * Distance of the first tip from the fence-side edge on the end that is cut first.
 *
 * Flank setting: d = (b/2 - p/4) mod (p/2), the same on the second end. Tip setting: d = (b/2) mod (p/2), and the
 * fence moves half a pitch for the second end (`secondEndFenceMove_m`). Where both settings score alike, take
 * `flank`: the fence stays.
 *
 * @param width_m - belt width [m], 0.001 to 10
 * @param pitch_m - finger pitch [m], 0.001 to 0.2
 * @param setting - where the belt centre lies on the zigzag
 * @returns first tip from the edge at the fence [m], 0 up to half a pitch
 * @throws not-finite, out-of-range
 * @validity both ends the same face down, against the same fence, each pushed in
 * @source derived: turning an end about by half a turn brings its other edge to the fence
 * @verified T7 first tip b 30 p 11.5 flank, T7 first tip b 30 p 11.5 tip
 */
export function firstTipFromEdge_m(width_m: number, pitch_m: number, setting: PhaseSetting): number {
  const sizes = checked(width_m, pitch_m);
  return setting === 'tip' ? firstTipCentreRow.compute(sizes) : firstTipFlankRow.compute(sizes);
}

/**
 * How far the fence moves between the two ends so that a tip of one meets a root of the other.
 *
 * Flank setting: 0. Tip setting: p/2.
 *
 * @param pitch_m - finger pitch [m], 0.001 to 0.2
 * @param setting - where the belt centre lies on the zigzag
 * @returns move of the fence, either way [m]
 * @throws not-finite, out-of-range
 * @validity both ends the same face down, against the same fence, each pushed in
 * @source derived: with the belt centre on a tip of both ends, tip would meet tip
 * @verified T7 fence move p 11.5
 */
export function secondEndFenceMove_m(pitch_m: number, setting: PhaseSetting): number {
  const { p } = checked(pitch_m, pitch_m);
  return setting === 'tip' ? p / 2 : 0;
}

/**
 * How far the mesh is shifted sideways when one end lay in the die with its other face down.
 *
 * The tips of the turned end lie d, d + p, ... from the wrong edge: shift = (b - 2*d) mod p, the shorter way round.
 *
 * @param input - belt width, finger pitch, first tip from the fence on the end that was turned over, 0 up to a pitch [m]
 * @returns sideways shift [m], 0 to half a pitch (tip meets tip)
 * @throws not-finite, out-of-range
 * @validity the other end cut rightly
 * @source derived: mirror image of the zigzag about the belt centre
 * @verified T7 turned over b 30 p 11.5 flank, T7 turned over b 30 p 11.5 tip
 */
export function turnedOverShift_m(input: {
  readonly width_m: number;
  readonly pitch_m: number;
  readonly firstTip_m: number;
}): number {
  const { b, p } = checked(input.width_m, input.pitch_m);
  const tip = inRange(input.firstTip_m, 'firstTip_m', { min: 0, max: p, unit: 'm' });
  const turns = (b - 2 * tip) / p;
  return p * Math.abs(turns - Math.round(turns));
}

function checked(width_m: number, pitch_m: number): { b: number; p: number } {
  return {
    b: inRange(width_m, 'width_m', { min: 0.001, max: 10, unit: 'm' }),
    p: inRange(pitch_m, 'pitch_m', { min: 0.001, max: 0.2, unit: 'm' }),
  };
}
