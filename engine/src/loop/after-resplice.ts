import type { AfterResplice, CutLengthInput } from './cut-length-form.ts';
import { type LengthAtTravel, travelForLength } from './take-up-travel.ts';

/** The loop before it was cut: path as a function of travel, path with the take-up fully in, endless length. */
export interface LoopBefore {
  readonly lengthAt: LengthAtTravel;
  readonly pathAtZero_m: number;
  readonly endlessLength_m: number;
}

const impossible: AfterResplice = {
  endlessLength_m: null,
  stripTipToTip_m: null,
  takeUp_m: null,
  givenBack_m: null,
  possible: false,
  meshesInPlace: false,
  pullNeeded_m: null,
  elongationFullyIn: null,
};

/**
 * The belt after its splice was cut out and the ends were punched anew: L1 = L0 - 2 l_f - 2 trim.
 *
 * @param input - the input of `cutLength` [m, 1]
 * @param trim_m - cut off behind the old fingers at each end [m], 0 to 10
 * @param loop - path and endless length before [m]
 * @returns lengths and travels [m], and whether the take-up can still set the elongation
 * @validity nothing is left when fingers and trims take the whole loop: every number is null then
 * @source common practice, no source; travels derived on the true path
 * @verified T8 travel given back
 */
export function afterResplice(input: CutLengthInput, trim_m: number, loop: LoopBefore): AfterResplice {
  const { takeUp, setElongation, fingerLength_m, fitSlack_m = 0 } = input;
  const endlessLength_m = loop.endlessLength_m - 2 * fingerLength_m - 2 * trim_m;
  if (endlessLength_m <= 0) return impossible;
  const wanted_m = endlessLength_m * (1 + setElongation);
  const takeUp_m = travelForLength(loop.lengthAt, wanted_m, takeUp.reference_m);
  const pullNeeded_m = Math.max(0, loop.pathAtZero_m - endlessLength_m + fitSlack_m);
  return {
    endlessLength_m,
    stripTipToTip_m: endlessLength_m + fingerLength_m,
    takeUp_m,
    givenBack_m: takeUp_m === null ? null : takeUp.reference_m - takeUp_m,
    possible: takeUp_m !== null && takeUp_m >= 0,
    meshesInPlace: pullNeeded_m === 0,
    pullNeeded_m,
    elongationFullyIn: loop.pathAtZero_m / endlessLength_m - 1,
  };
}
