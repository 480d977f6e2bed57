/** What became of the splice, worst first. */
export type Grade = 'voids-likely' | 'over-fused' | 'under-fused' | 'not-filled' | 'good';

/** Why a splice is not good. */
export type GradeReasonCode =
  | 'voids'
  | 'too-much-flow'
  | 'damaged'
  | 'too-hot'
  | 'bond-too-weak'
  | 'gap-not-filled'
  | 'opened-hot';

/** A limit that was passed. */
export interface GradeReason {
  readonly code: GradeReasonCode;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
}

/** Limits of the process window. All but the fill limit are priors that nobody has measured on a belt. */
export interface GradeLimits {
  readonly bondMin: number;
  readonly fillMin: number;
  /** Fill length over fill length needed, above which the melt runs out at the edges. */
  readonly fillMax: number;
  readonly damageMax: number;
  readonly beltMax_degC: number;
  readonly voidMax: number;
  readonly openMax_degC: number;
}

/** Engineering priors, no source; each can be set per plant. */
export const gradeLimits: GradeLimits = {
  bondMin: 0.95,
  fillMin: 0.95,
  fillMax: 2.5,
  damageMax: 0.05,
  beltMax_degC: 215,
  voidMax: 0.8,
  openMax_degC: 60,
};

/** Extremes over the nodes of the belt. */
export interface GradeInput {
  /** Smallest bond Z^(1/4). */
  readonly bondMin: number;
  /** Smallest and largest fill length over the one needed. */
  readonly fillMin: number;
  readonly fillMax: number;
  /** Largest loss of molar mass 1 - M/M0. */
  readonly damageMax: number;
  readonly beltMax_degC: number;
  /** Vapour pressure of the belt's water over the pressure on it; undefined where the moisture is not known. */
  readonly voidNumber?: number | undefined;
  /** Hottest node of the belt when the press opens; undefined where the history ends before. */
  readonly atOpen_degC?: number | undefined;
}

/** Grade with every limit that was passed, worst first. */
export interface Graded {
  readonly grade: Grade;
  readonly reasons: readonly GradeReason[];
}

/** In order of precedence; a belt opened hot lets go of its pressure while soft, so that voids and sinks are likely. */
const gradeOf: Readonly<Record<GradeReasonCode, Grade>> = {
  voids: 'voids-likely',
  'too-much-flow': 'over-fused',
  damaged: 'over-fused',
  'too-hot': 'over-fused',
  'bond-too-weak': 'under-fused',
  'gap-not-filled': 'not-filled',
  'opened-hot': 'voids-likely',
};

/**
 * Grades a splice by the limits of the process window; the first limit passed in the order voids, over-fused,
 * under-fused, not filled, opened hot gives the grade, all of them are reasons.
 *
 * @param input - extremes over the belt's nodes: bond, fill, damage [1], temperatures [degC]
 * @param limits - process window [1] and [degC]
 * @returns grade and the limits passed with their values [1] or [degC]
 * @source engineering priors, no source
 */
export function grade(input: GradeInput, limits: GradeLimits = gradeLimits): Graded {
  const reasons: GradeReason[] = [];
  const note = (code: GradeReasonCode, passed: boolean, value: number, limit: number, unit = '1') => {
    if (passed) reasons.push({ code, value, limit, unit });
  };
  const above = (code: GradeReasonCode, value: number | undefined, limit: number, unit?: string) =>
    note(code, value !== undefined && value > limit, value ?? 0, limit, unit);
  above('voids', input.voidNumber, limits.voidMax);
  above('too-much-flow', input.fillMax, limits.fillMax);
  above('damaged', input.damageMax, limits.damageMax);
  above('too-hot', input.beltMax_degC, limits.beltMax_degC, 'degC');
  note('bond-too-weak', input.bondMin < limits.bondMin, input.bondMin, limits.bondMin);
  note('gap-not-filled', input.fillMin < limits.fillMin, input.fillMin, limits.fillMin);
  above('opened-hot', input.atOpen_degC, limits.openMax_degC, 'degC');
  const [worst] = reasons;
  return { grade: worst ? gradeOf[worst.code] : 'good', reasons };
}
