import { workInRange } from '../worked/compute-in-range.ts';
import type { Worked } from '../worked/worked-formula.ts';
import { squareCutRow, stripTipToTipRow } from './length-formulas.ts';

export interface ThreeLengthsInput {
  readonly endlessLength_m: number;
  readonly fingerLength_m: number;
  /** Waste of the die beyond the tips, at each end. */
  readonly dieWaste_m: number;
  readonly cutOffset_m?: number;
}

/** The lengths that go on a card, each with its reason. */
export interface ThreeLengths {
  readonly endless_m: number;
  readonly tipToTip: Worked;
  readonly square: Worked;
}

/**
 * The three lengths of one belt: endless, punched tip to tip, and cut square before punching.
 *
 * S = L0 + l_f + offset; Q = S + 2 w.
 *
 * @param input.endlessLength_m - length of the slack loop [m], 0.05 to 20000
 * @param input.fingerLength_m - tip to root along the belt [m], 0 to 1
 * @param input.dieWaste_m - waste beyond the tips at each end [m], 0 to 1
 * @param input.cutOffset_m - allowance on the strip [m], -0.1 to 0.1, default 0
 * @returns the three lengths [m]
 * @throws not-finite, out-of-range
 * @source common practice, no source; overlap of two congruent zig-zags
 * @verified T8 three lengths, tip to tip, T8 three lengths, square
 */
export function threeLengths(input: ThreeLengthsInput): ThreeLengths {
  const tipToTip = workInRange(
    stripTipToTipRow,
    { L0: input.endlessLength_m, lf: input.fingerLength_m, c: input.cutOffset_m ?? 0 },
    { L0: 'endlessLength_m', lf: 'fingerLength_m', c: 'cutOffset_m' },
  );
  const square = workInRange(squareCutRow, { S: tipToTip.value, w: input.dieWaste_m }, { w: 'dieWaste_m' });
  return { endless_m: input.endlessLength_m, tipToTip, square };
}
