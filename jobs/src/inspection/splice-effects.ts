/** What a kink does under tension. */
export interface KinkEffect {
  /** Angle between the ends [rad]. */
  readonly angle_rad: number;
  /** Length over which the tension straightens the belt [m]. */
  readonly straightens_m: number;
  /** Rise of the strain at the edge as a share of the set elongation. */
  readonly edgeStrainShare: number;
  /** How far the belt wanders each turn [m]. */
  readonly wander_m: number;
}

/** A straightedge of a metre over a kink in its middle bows by a quarter of a metre times the angle. */
const bowLever_m = 0.25;

/**
 * A kink under tension, the belt a beam on its own tension: lambda = b/sqrt(12 eps); the edge strain rises by
 * phi sqrt(3/eps)/2 of eps; the belt wanders by phi lambda/2.
 *
 * @param kink - bow over a metre [m], belt width [m], elongation as a ratio, above 0
 * @source derived; a solution in finite differences gives 0.0774597 for 2 mm/m at 0.8 %
 * @verified INSP-10
 */
export function kinkEffect(kink: {
  readonly bow_m: number;
  readonly width_m: number;
  readonly elongation: number;
}): KinkEffect {
  const angle_rad = kink.bow_m / bowLever_m;
  const straightens_m = kink.width_m / Math.sqrt(12 * kink.elongation);
  return {
    angle_rad,
    straightens_m,
    edgeStrainShare: (angle_rad * Math.sqrt(3 / kink.elongation)) / 2,
    wander_m: (angle_rad * straightens_m) / 2,
  };
}

/**
 * Rise of the edge stress by a lateral step: an eccentric pull of half the step, 3 s/b.
 *
 * @param step_m - lateral step [m]
 * @param width_m - of the belt [m], above 0
 * @verified INSP-11
 */
export function edgeStressShare(step_m: number, width_m: number): number {
  return (3 * step_m) / width_m;
}

/**
 * Gap that opens at the tips when the mesh lies off by e across the belt: e 2 l/p.
 *
 * @param shift_m - of the mesh [m]
 * @param finger - length and pitch [m], above 0
 * @verified INSP-12
 */
export function tipGap_m(shift_m: number, finger: { readonly length_m: number; readonly pitch_m: number }): number {
  return (shift_m * 2 * finger.length_m) / finger.pitch_m;
}

/** What a step in thickness does on a pulley. */
export interface ThicknessStepEffect {
  /** Length of the ramp over which the belt rides up [m]. */
  readonly ramp_m: number;
  readonly time_s: number;
  readonly acceleration_m_s2: number;
  /** Rise of the strain of the outer fibre as a ratio. */
  readonly strain: number;
  /** Rise of the force on a pressure roller [N]; absent without tension and pitch. */
  readonly rollerForce_N?: number;
}

/**
 * A step h in thickness on a pulley of radius R: it rides up in sqrt((R+h)^2 - R^2), the outer fibre strains by h/(R+y),
 * a pressure roller takes 4 T h/p more.
 *
 * @param step - height [m], pulley radius [m], belt speed [m/s], distance of the neutral layer from the pulley [m];
 *   tension [N] and pitch of the rollers [m] where a pressure roller stands
 * @verified INSP-13
 */
export function thicknessStepEffect(step: {
  readonly step_m: number;
  readonly radius_m: number;
  readonly speed_m_s: number;
  readonly neutral_m: number;
  readonly tension_N?: number;
  readonly rollerPitch_m?: number;
}): ThicknessStepEffect {
  const { step_m, radius_m, speed_m_s, neutral_m, tension_N, rollerPitch_m } = step;
  const ramp_m = Math.sqrt(2 * radius_m * step_m + step_m ** 2);
  const time_s = ramp_m / speed_m_s;
  const force =
    tension_N === undefined || rollerPitch_m === undefined
      ? {}
      : { rollerForce_N: (4 * tension_N * step_m) / rollerPitch_m };
  return {
    ramp_m,
    time_s,
    acceleration_m_s2: (2 * step_m) / time_s ** 2,
    strain: step_m / (radius_m + neutral_m),
    ...force,
  };
}

/** Grades of the grey scale for change in colour: colour difference and its tolerance in CIELAB. EN 20105-A02. */
export const greyScale = [
  { grade: 5, difference: 0, tolerance: 0.2 },
  { grade: 4.5, difference: 0.8, tolerance: 0.2 },
  { grade: 4, difference: 1.7, tolerance: 0.3 },
  { grade: 3.5, difference: 2.5, tolerance: 0.35 },
  { grade: 3, difference: 3.4, tolerance: 0.4 },
  { grade: 2.5, difference: 4.8, tolerance: 0.5 },
  { grade: 2, difference: 6.8, tolerance: 0.6 },
] as const;

/**
 * The grade of the grey scale nearest to a colour difference.
 *
 * @param difference - to the belt beside it [CIELAB], 0 or more
 * @source EN 20105-A02; grades 5 and 4.5 from memory
 * @verified INSP-14
 */
export function greyScaleGrade(difference: number): number {
  const nearest = greyScale.reduce((best, row) =>
    Math.abs(row.difference - difference) < Math.abs(best.difference - difference) ? row : best,
  );
  return nearest.grade;
}
