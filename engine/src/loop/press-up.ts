import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';
import { pressUpAngleRow, pressUpForceFirstOrderRow, pressUpForceRow } from './press-up-formulas.ts';

/** The driving strand between carrying rollers and pressure rollers midway between them. */
export interface PressUpInput {
  readonly carrierRadius_m: number;
  readonly pressureRollerRadius_m: number;
  readonly beltThickness_m: number;
  /** Distance from one carrying roller to the next. */
  readonly pitch_m: number;
  readonly tension_N: number;
  /** How far the pressure rollers stand above the place where the straight belt just touches both. */
  readonly pressUp_m?: number | undefined;
  /** Normal force on one carrying roller; give this or `pressUp_m`. */
  readonly force_N?: number | undefined;
}

export interface PressUp {
  readonly pressUp_m: number;
  readonly force_N: number;
  readonly angle_rad: number;
  readonly freeSpan_m: number;
  readonly firstOrderForce_N: number;
  /** Extra belt per metre of bed. */
  readonly extraLength_m_m: number;
}

const size = { min: 0, max: 10, unit: 'm', above: true } as const;

/**
 * Press-up of a driving strand zigzagging between carrying and pressure rollers, from its height or from the force.
 *
 * S = R + r_p + t, H = S - u, l = sqrt((p/2)^2 + H^2 - S^2), a = atan2(p/2, H) - atan2(l, S); N = 2*T*sin(a);
 * extra belt per half pitch = l + S*a - p/2. From the force: sin(a) = N/(2*T), l = (p/2 - S*sin(a))/cos(a),
 * u = S*(1 - cos(a)) + l*sin(a).
 *
 * @param input - radii, thickness, pitch [m], tension [N] and one of press-up [m] or force [N]
 * @returns press-up, free span [m], force [N], angle [rad], extra belt [m per m of bed]
 * @throws not-finite, out-of-range, one-of
 * @validity equal rollers, pressure roller midway, one tension along the bed, neutral line at mid-thickness
 * @source derived: inner tangent of two circles; balance of forces on a roller
 * @verified T2 press-up 0.5 mm, T2 press-up 1 mm, T2 press-up 2 mm, T2 press-up 3 mm
 */
export function pressUp(input: PressUpInput): PressUp {
  const reach_m =
    inRange(input.carrierRadius_m, 'carrierRadius_m', size) +
    inRange(input.pressureRollerRadius_m, 'pressureRollerRadius_m', size) +
    inRange(input.beltThickness_m, 'beltThickness_m', { min: 0, max: 1, unit: 'm' });
  const half_m = inRange(input.pitch_m, 'pitch_m', size) / 2;
  const tension_N = inRange(input.tension_N, 'tension_N', { min: 0, max: 1e6, unit: 'N', above: true });
  const { angle_rad, pressUp_m } = settingOf(input, reach_m, half_m, tension_N);
  const freeSpan_m = (half_m - reach_m * Math.sin(angle_rad)) / Math.cos(angle_rad);
  return {
    pressUp_m,
    force_N: input.force_N ?? pressUpForceRow.compute({ T: tension_N, a: angle_rad }),
    angle_rad,
    freeSpan_m,
    firstOrderForce_N: pressUpForceFirstOrderRow.compute({ T: tension_N, u: pressUp_m, p: 2 * half_m }),
    extraLength_m_m: (freeSpan_m + reach_m * angle_rad - half_m) / half_m,
  };
}

function settingOf(input: PressUpInput, reach_m: number, half_m: number, tension_N: number) {
  const { pressUp_m, force_N } = input;
  if ((pressUp_m === undefined) === (force_N === undefined)) {
    throw new Refusal('one-of', 'pressUp_m', { fields: 'pressUp_m, force_N' });
  }
  // The steepest strand: the rollers' belts meet, or they stand straight above each other's height.
  const steepest = Math.asin(Math.min(1, half_m / reach_m)) * (1 - 1e-9);
  if (force_N !== undefined) {
    const max = 2 * tension_N * Math.sin(steepest);
    const angle_rad = Math.asin(inRange(force_N, 'force_N', { min: 0, max, unit: 'N' }) / (2 * tension_N));
    return { angle_rad, pressUp_m: heightOf(angle_rad, reach_m, half_m) };
  }
  const max = Math.min(reach_m, heightOf(steepest, reach_m, half_m));
  const height_m = inRange(pressUp_m as number, 'pressUp_m', { min: 0, max, unit: 'm' });
  return { angle_rad: pressUpAngleRow.compute({ S: reach_m, u: height_m, p: 2 * half_m }), pressUp_m: height_m };
}

function heightOf(angle_rad: number, reach_m: number, half_m: number): number {
  const freeSpan_m = (half_m - reach_m * Math.sin(angle_rad)) / Math.cos(angle_rad);
  return 2 * reach_m * Math.sin(angle_rad / 2) ** 2 + freeSpan_m * Math.sin(angle_rad);
}
