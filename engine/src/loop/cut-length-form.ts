import type { Warning } from '../refusal.ts';
import type { PathInput } from './path-input.ts';
import type { TakeUp } from './take-up-travel.ts';

export interface CutLengthTakeUp extends TakeUp {
  /** Travel at which the belt shall have its set elongation. */
  readonly reference_m: number;
  /** Longest travel. */
  readonly max_m: number;
}

/** Input of `cutLength`: a path with its take-up, the belt's set elongation and its fingers. */
export interface CutLengthInput extends PathInput {
  readonly takeUp: CutLengthTakeUp;
  readonly setElongation: number;
  readonly fingerLength_m: number;
  /** Calibrated allowance for shrinking or squeezing out in the press. Default 0. */
  readonly cutOffset_m?: number;
  /** Loop length that hands need to mesh the ends. Default 0. */
  readonly fitSlack_m?: number;
  /** Half-width of the tolerance of the cut length as a share. Default: a published trade table. */
  readonly lengthTolerance?: number;
  readonly k1_N_mm_pct: number;
  readonly width_m: number;
  /** Shorten and splice again; trim per end. */
  readonly resplice?: { readonly trim_m: number };
}

/** The same belt, cut out at the splice and spliced again. A number that does not exist is null. */
export interface AfterResplice {
  readonly endlessLength_m: number | null;
  readonly stripTipToTip_m: number | null;
  /** Travel at which the shorter belt has the set elongation. */
  readonly takeUp_m: number | null;
  readonly givenBack_m: number | null;
  /** The take-up can still set the elongation. */
  readonly possible: boolean;
  readonly meshesInPlace: boolean;
  readonly pullNeeded_m: number | null;
  readonly elongationFullyIn: number | null;
}

export interface CutLength {
  readonly endlessLength_m: number;
  readonly stripTipToTip_m: number;
  readonly pathAtReference_m: number;
  /** At travel 0, at the reference and at the longest travel; null where no belt can run. */
  readonly elongationAt: readonly { readonly takeUp_m: number; readonly elongation: number | null }[];
  /** Travel at which the belt just lies slack; negative: further back than 0. */
  readonly slackTakeUp_m: number | null;
  readonly takeUpAtOnePercent_m: number | null;
  readonly meshesInPlace: boolean;
  readonly pullNeeded_m: number;
  /** Elongation at the reference for the longest and the shortest belt inside the tolerance. */
  readonly elongationRange: readonly [low: number, high: number];
  /** Relaxed pull of one strand at the set elongation. */
  readonly strandTension_N: number;
  readonly afterResplice?: AfterResplice;
  readonly warnings: readonly Warning[];
  /** Defaults that were taken, by input field. */
  readonly used: Readonly<Record<string, number>>;
}
