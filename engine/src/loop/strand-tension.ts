import { computeInRange } from '../worked/compute-in-range.ts';
import { elongationForTensionRow, freshTensionRow, strandTensionRow, tensileStiffnessRow } from './tension-formulas.ts';

export interface StrandInput {
  readonly k1_N_mm_pct: number;
  readonly elongation: number;
  readonly width_m: number;
}

/**
 * Relaxed pull of one stretched strand of a linear belt. F = k1% e b.
 *
 * @param input.k1_N_mm_pct - relaxed modulus [N/mm/%], 0.01 to 1000
 * @param input.elongation - elongation as a share [1], 0 to 0.5
 * @param input.width_m - belt width [m], 0.001 to 5
 * @returns pull of one strand [N]
 * @throws not-finite, out-of-range
 * @validity relaxed belt; freshly tensioned it pulls more, see `freshTension_N`
 * @source ISO 21181:2013, definition of k1%
 * @verified T4.1 strand tension
 */
export function strandTension_N(input: StrandInput): number {
  return computeInRange(
    strandTensionRow,
    { k1: input.k1_N_mm_pct, e: input.elongation, b: input.width_m },
    { k1: 'k1_N_mm_pct', e: 'elongation', b: 'width_m' },
  );
}

/**
 * Pull of one strand just after tensioning. F_new = c F.
 *
 * @param tension_N - relaxed pull [N], 0 to 1e7
 * @param freshFactor - fresh over relaxed pull [1], 1 to 5
 * @returns pull of one strand [N]
 * @throws not-finite, out-of-range
 * @validity textile tension members: 1.4 to 2
 * @source from memory
 * @verified T4.1 fresh tension
 */
export function freshTension_N(tension_N: number, freshFactor: number): number {
  return computeInRange(freshTensionRow, { c: freshFactor, F: tension_N }, { c: 'freshFactor', F: 'tension_N' });
}

/**
 * Tensile stiffness of a belt. EA = 100 % k1% b.
 *
 * @param k1_N_mm_pct - relaxed modulus [N/mm/%], 0.01 to 1000
 * @param width_m - belt width [m], 0.001 to 5
 * @returns force per unit of strain [N]
 * @throws not-finite, out-of-range
 * @source ISO 21181:2013, definition of k1%
 * @verified T4.5 tensile stiffness
 */
export function tensileStiffness_N(k1_N_mm_pct: number, width_m: number): number {
  return computeInRange(tensileStiffnessRow, { k1: k1_N_mm_pct, b: width_m }, { k1: 'k1_N_mm_pct', b: 'width_m' });
}

/**
 * Elongation at which a relaxed strand pulls with a given force. e = F / (k1% b).
 *
 * @param input.tension_N - pull of one strand [N], 0 to 1e7
 * @param input.k1_N_mm_pct - relaxed modulus [N/mm/%], 0.01 to 1000
 * @param input.width_m - belt width [m], 0.001 to 5
 * @returns elongation as a share [1]
 * @throws not-finite, out-of-range
 * @source ISO 21181:2013, definition of k1%
 * @verified T4.1 strand tension
 */
export function elongationForTension(input: {
  readonly tension_N: number;
  readonly k1_N_mm_pct: number;
  readonly width_m: number;
}): number {
  return computeInRange(
    elongationForTensionRow,
    { F: input.tension_N, k1: input.k1_N_mm_pct, b: input.width_m },
    { F: 'tension_N', k1: 'k1_N_mm_pct', b: 'width_m' },
  );
}
