import { inRange } from '../in-range.ts';
import { computeInRange } from '../worked/compute-in-range.ts';
import { freshTension_N, strandTension_N } from './strand-tension.ts';
import { marksElongationRow } from './tension-check-formulas.ts';

export interface TensionByMarksInput {
  /** Distance of the marks on the slack, flat belt. */
  readonly marks_m: number;
  readonly stretched_m: number;
  readonly k1_N_mm_pct: number;
  readonly width_m: number;
  /** Default 0.0005. */
  readonly readingError_m?: number;
  /** Fresh over relaxed pull. Default 1.8. */
  readonly freshFactor?: number;
}

export interface TensionByMarks {
  readonly elongation: number;
  readonly tension_N: number;
  readonly range_N: readonly [low: number, high: number];
  readonly fresh_N: number;
  readonly warnings: readonly [];
  readonly used: Readonly<Record<string, number>>;
}

/** Common practice, no source: what a tape is read to. */
export const markReadingError_m = 0.0005;
/** From memory: freshly tensioned polyester belts. */
export const polyesterFreshFactor = 1.8;

/**
 * Tension of a strand from two marks drawn on the slack belt. e = (s - m)/m, F = k1% e b.
 *
 * @param input.marks_m - marks on the slack belt [m], 0.05 to 100
 * @param input.stretched_m - the same marks on the tensioned belt [m], marks_m to 1.5 marks_m
 * @param input.k1_N_mm_pct - relaxed modulus [N/mm/%], 0.01 to 1000
 * @param input.width_m - belt width [m], 0.001 to 5
 * @param input.readingError_m - error of the stretched reading, either way [m], 0 to marks_m / 2, default 0.0005
 * @param input.freshFactor - fresh over relaxed pull [1], 1 to 5, default 1.8
 * @returns elongation [1]; relaxed tension, its range from the reading, and fresh tension [N]
 * @throws not-finite, out-of-range
 * @validity marks drawn on this belt in this fitting: old marks hold permanent set
 * @source common practice, no source; ISO 21181:2013 for k1%
 * @verified T8 marks 1000 mm
 */
export function tensionByMarks(input: TensionByMarksInput): TensionByMarks {
  const { marks_m, stretched_m, k1_N_mm_pct, width_m } = input;
  const { readingError_m = markReadingError_m, freshFactor = polyesterFreshFactor } = input;
  inRange(marks_m, 'marks_m', { min: 0.05, max: 100, unit: 'm' });
  inRange(stretched_m, 'stretched_m', { min: marks_m, max: 1.5 * marks_m, unit: 'm' });
  inRange(readingError_m, 'readingError_m', { min: 0, max: marks_m / 2, unit: 'm' });
  const elongation = computeInRange(marksElongationRow, { s: stretched_m, m: marks_m });
  const pullAt = (e: number) => strandTension_N({ k1_N_mm_pct, elongation: e, width_m });
  const tension_N = pullAt(elongation);
  const error_N = strandTension_N({ k1_N_mm_pct, elongation: readingError_m / marks_m, width_m });
  return {
    elongation,
    tension_N,
    range_N: [Math.max(0, tension_N - error_N), tension_N + error_N],
    fresh_N: freshTension_N(tension_N, freshFactor),
    warnings: [],
    used: {
      ...(input.readingError_m === undefined ? { readingError_m } : {}),
      ...(input.freshFactor === undefined ? { freshFactor } : {}),
    },
  };
}
