import { inRange } from '../in-range.ts';
import { Refusal, type Warning } from '../refusal.ts';
import { computeInRange } from '../worked/compute-in-range.ts';
import { afterResplice } from './after-resplice.ts';
import type { CutLength, CutLengthInput } from './cut-length-form.ts';
import { elongationWithToleranceRow, endlessLengthRow } from './length-formulas.ts';
import { lengthToleranceShare } from './length-tolerance.ts';
import { type BeltPath, beltPath } from './path.ts';
import { lengthPerDisplacement } from './path-sensitivity.ts';
import { strandTension_N } from './strand-tension.ts';
import { lengthOrNull, pathAtTravel, type TakeUp, travelForLength } from './take-up-travel.ts';

const onePercent = 0.01;

/**
 * Endless and cut length of a belt from its path, and what the take-up then does with it.
 *
 * L0 = L(x_ref) / (1 + e0); strip tip to tip = L0 + finger length + offset; e(x) = L(x) / L0 - 1.
 *
 * @param input.pulleys - as in `beltPath`, at travel 0 [m]
 * @param input.belt - as in `beltPath` [m]
 * @param input.takeUp - pulley index, direction, reference and longest travel [m], 0 <= reference <= max <= 100
 * @param input.setElongation - elongation wanted at the reference [1], 0 to 0.5
 * @param input.fingerLength_m - tip to root along the belt [m], 0 to 1
 * @param input.cutOffset_m - allowance on the strip [m], -0.1 to 0.1, default 0
 * @param input.fitSlack_m - loop length that hands need [m], 0 to 5, default 0
 * @param input.lengthTolerance - half-width as a share [1], 0 to 0.1, default from `lengthToleranceShare`
 * @param input.k1_N_mm_pct - relaxed modulus [N/mm/%], 0.01 to 1000
 * @param input.width_m - belt width [m], 0.001 to 5
 * @param input.resplice - trim a belt end [m], 0 to 10
 * @returns lengths [m], elongations [1], travels [m], pull [N], and warnings
 * @throws not-finite, out-of-range, no-direction, take-up-shortens-loop, and the codes of `beltPath`
 * @validity linear belt; travels are null where the pulley cannot get there
 * @source derived: length of the path over length of the slack belt
 * @verified T4.2 endless length, T4.2 strip tip to tip, T4.2 slack take-up, T4.3 elongation range, low, T4.3 elongation range, high
 */
export function cutLength(input: CutLengthInput): CutLength {
  const { takeUp, setElongation, fingerLength_m, cutOffset_m = 0, fitSlack_m = 0 } = input;
  checkInput(input);
  const lengthAt = pathAtTravel(input, takeUp);
  const path = beltPath(input);
  checkLengthens(path, takeUp);
  const pathAtZero_m = path.length_m;
  const pathAtReference_m = takeUp.reference_m === 0 ? pathAtZero_m : lengthAt(takeUp.reference_m);
  const endlessLength_m = computeInRange(endlessLengthRow, { L: pathAtReference_m, e: setElongation }, paths);
  const lengthTolerance = input.lengthTolerance ?? lengthToleranceShare('smooth-cut-belt', endlessLength_m);
  const pullNeeded_m = Math.max(0, pathAtZero_m - endlessLength_m + fitSlack_m);
  const travel = (elongation: number) =>
    travelForLength(lengthAt, endlessLength_m * (1 + elongation), takeUp.reference_m);
  const loop = { lengthAt, pathAtZero_m, endlessLength_m };
  const pathAtMax_m = lengthOrNull(lengthAt, takeUp.max_m);
  return {
    endlessLength_m,
    stripTipToTip_m: endlessLength_m + fingerLength_m + cutOffset_m,
    pathAtReference_m,
    elongationAt: [
      { takeUp_m: 0, elongation: pathAtZero_m / endlessLength_m - 1 },
      { takeUp_m: takeUp.reference_m, elongation: pathAtReference_m / endlessLength_m - 1 },
      { takeUp_m: takeUp.max_m, elongation: pathAtMax_m === null ? null : pathAtMax_m / endlessLength_m - 1 },
    ],
    slackTakeUp_m: travel(0),
    takeUpAtOnePercent_m: travel(onePercent),
    meshesInPlace: pullNeeded_m === 0,
    pullNeeded_m,
    elongationRange: elongationRange(setElongation, lengthTolerance),
    strandTension_N: strandTension_N({
      k1_N_mm_pct: input.k1_N_mm_pct,
      elongation: setElongation,
      width_m: input.width_m,
    }),
    ...(input.resplice ? { afterResplice: afterResplice(input, input.resplice.trim_m, loop) } : {}),
    warnings: warnings(pullNeeded_m, pathAtMax_m, input),
    used: used(input, lengthTolerance),
  };
}

const paths = { L: 'pathAtReference_m', e: 'setElongation' };

function checkInput(input: CutLengthInput): void {
  const { takeUp } = input;
  inRange(takeUp.max_m, 'takeUp.max_m', { min: 0, max: 100, unit: 'm' });
  inRange(takeUp.reference_m, 'takeUp.reference_m', { min: 0, max: takeUp.max_m, unit: 'm' });
  inRange(input.setElongation, 'setElongation', { min: 0, max: 0.5, unit: '1' });
  inRange(input.fingerLength_m, 'fingerLength_m', { min: 0, max: 1, unit: 'm' });
  inRange(input.cutOffset_m ?? 0, 'cutOffset_m', { min: -0.1, max: 0.1, unit: 'm' });
  inRange(input.fitSlack_m ?? 0, 'fitSlack_m', { min: 0, max: 5, unit: 'm' });
  inRange(input.lengthTolerance ?? 0, 'lengthTolerance', { min: 0, max: 0.1, unit: '1' });
  if (input.resplice) inRange(input.resplice.trim_m, 'resplice.trim_m', { min: 0, max: 10, unit: 'm' });
}

/** A take-up drawn the wrong way round would turn every answer upside down. */
function checkLengthens(path: BeltPath, { pulley, direction }: TakeUp): void {
  const value = lengthPerDisplacement(path, pulley, direction);
  if (value > 0) return;
  throw new Refusal('take-up-shortens-loop', 'takeUp.direction', { value, min: 0, max: 2, unit: '1' });
}

function elongationRange(setElongation: number, tolerance: number): readonly [number, number] {
  const at = (t: number) => computeInRange(elongationWithToleranceRow, { e0: setElongation, t });
  return [at(tolerance), at(-tolerance)];
}

function warnings(pullNeeded_m: number, pathAtMax_m: number | null, input: CutLengthInput): Warning[] {
  const found: Warning[] = [];
  if (pullNeeded_m > 0) found.push({ code: 'not-in-place', data: { value: pullNeeded_m, unit: 'm' } });
  if (pathAtMax_m === null) {
    found.push({ code: 'take-up-blocked', path: 'takeUp.max_m', data: { value: input.takeUp.max_m, unit: 'm' } });
  }
  return found;
}

function used(input: CutLengthInput, lengthTolerance: number): Record<string, number> {
  return {
    ...(input.cutOffset_m === undefined ? { cutOffset_m: 0 } : {}),
    ...(input.fitSlack_m === undefined ? { fitSlack_m: 0 } : {}),
    ...(input.lengthTolerance === undefined ? { lengthTolerance } : {}),
  };
}
