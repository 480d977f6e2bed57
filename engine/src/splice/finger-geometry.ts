import { inRange } from '../in-range.ts';
import {
  biasGrowthRow,
  fingerCountRow,
  flankAngleRow,
  flankLengthRow,
  flankPerWidthRow,
  tipGapRow,
} from './geometry-formulas.ts';

/** A straight-flanked finger pattern across a belt. */
export interface FingerPattern {
  /** Tip to root, along the belt. */
  readonly fingerLength_m: number;
  readonly pitch_m: number;
  readonly width_m: number;
}

export interface FingerGeometry {
  /** Flank against the belt's direction. */
  readonly flankAngle_rad: number;
  /** Length along the belt per sideways step: a slope of 1 in this. */
  readonly slope: number;
  readonly flank_m: number;
  /** Whole and part fingers across the belt. */
  readonly fingers: number;
  /** All flanks together. */
  readonly weldLength_m: number;
  readonly flankPerWidth: number;
}

const length = { min: 0.001, max: 1, unit: 'm' } as const;
const pitch = { min: 0.001, max: 0.2, unit: 'm' } as const;
const width = { min: 0.001, max: 10, unit: 'm' } as const;

/**
 * Shape of a finger splice with straight flanks and sharp tips.
 *
 * tan(theta) = p/(2*l), slope 1 : 2*l/p, s = sqrt(l^2 + (p/2)^2), n = b/p, weld = 2*n*s.
 *
 * @param pattern - finger length 1 mm to 1 m, pitch 1 to 200 mm, belt width 1 mm to 10 m [m]
 * @returns flank angle [rad], slope and counts [1], flank and weld length [m]
 * @throws not-finite, out-of-range
 * @validity tips without width; a part finger at an edge counts in proportion
 * @source derived: triangle of half a pitch and the finger length
 * @verified T7 flank angle 70 x 11.5, T7 weld length 70 x 11.5
 */
export function fingerGeometry(pattern: FingerPattern): FingerGeometry {
  const l = inRange(pattern.fingerLength_m, 'fingerLength_m', length);
  const p = inRange(pattern.pitch_m, 'pitch_m', pitch);
  const b = inRange(pattern.width_m, 'width_m', width);
  const flank_m = flankLengthRow.compute({ l, p });
  const fingers = fingerCountRow.compute({ b, p });
  return {
    flankAngle_rad: flankAngleRow.compute({ l, p }),
    slope: (2 * l) / p,
    flank_m,
    fingers,
    weldLength_m: 2 * fingers * flank_m,
    flankPerWidth: flankPerWidthRow.compute({ s: flank_m, p }),
  };
}

/**
 * Gap or overlap at the tips when the ends mesh while cut sideways of each other.
 *
 * g = e*2*l/p; e = sideways error, l = finger length, p = pitch.
 *
 * @param input - sideways error 0 to 0.1, finger length and pitch [m]
 * @returns gap along the belt [m]
 * @throws not-finite, out-of-range
 * @validity error up to half a pitch; beyond, the fingers mesh one further
 * @source derived: slope of a flank
 * @verified T7 tip gap 70 x 11.5
 */
export function misregistrationTipGap_m(input: {
  readonly sideways_m: number;
  readonly fingerLength_m: number;
  readonly pitch_m: number;
}): number {
  const l = inRange(input.fingerLength_m, 'fingerLength_m', length);
  const p = inRange(input.pitch_m, 'pitch_m', pitch);
  const e = inRange(input.sideways_m, 'sideways_m', { min: 0, max: p / 2, unit: 'm' });
  return tipGapRow.compute({ e, l, p });
}

/**
 * How much longer the splice zone gets when the splice lies askew across the belt.
 *
 * z = b/tan(a); b = belt width, a = angle of the splice against the belt's direction.
 *
 * @param width_m - belt width [m], 0.001 to 10
 * @param bias_rad - angle of the splice line against the belt's direction [rad], 0.1 to pi/2 (square)
 * @returns growth along the belt [m]
 * @throws not-finite, out-of-range
 * @validity straight splice line
 * @source derived: right triangle across the belt
 * @verified T7 bias 75 degrees, T7 bias 60 degrees
 */
export function biasGrowth_m(width_m: number, bias_rad: number): number {
  const b = inRange(width_m, 'width_m', width);
  const a = inRange(bias_rad, 'bias_rad', { min: 0.1, max: Math.PI / 2, unit: 'rad' });
  return biasGrowthRow.compute({ b, a });
}
