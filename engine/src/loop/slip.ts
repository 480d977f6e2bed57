import { computeInRange } from '../worked/compute-in-range.ts';
import {
  capstanRatioRow,
  centrifugalTensionRow,
  meanTensionForNoSlipRow,
  pullOnLiveRollersRow,
  slackMinimumRow,
  slipFromMeanTensionRow,
} from './slip-formulas.ts';

/** Grip of a drive: friction, wrap, and the belt's own mass and speed. */
export interface DriveGrip {
  readonly friction: number;
  readonly driveWrap_rad: number;
  readonly beltMass_kg_m: number;
  readonly speed_m_s: number;
}

function capstan(grip: DriveGrip): { readonly E: number; readonly Fc: number } {
  const E = computeInRange(
    capstanRatioRow,
    { f: grip.friction, w: grip.driveWrap_rad },
    { f: 'friction', w: 'driveWrap_rad' },
  );
  const Fc = computeInRange(
    centrifugalTensionRow,
    { m: grip.beltMass_kg_m, v: grip.speed_m_s },
    { m: 'beltMass_kg_m', v: 'speed_m_s' },
  );
  return { E, Fc };
}

/**
 * Pull at which a drive slips when both strands together keep twice the mean tension.
 *
 * P = 2 (F0 - Fc)(E - 1)/(E + 1), E = e^(f w), Fc = m v^2.
 *
 * @param meanTension_N - mean of tight and slack side [N], 0 to 1e7
 * @param grip.friction - belt on drive [1], 0.001 to 3
 * @param grip.driveWrap_rad - wrap of the drive [rad], 0.001 to 6.283
 * @param grip.beltMass_kg_m - mass of the belt [kg/m], 0 to 1000
 * @param grip.speed_m_s - belt speed [m/s], 0 to 100
 * @returns pull at slip [N]
 * @throws not-finite, out-of-range
 * @validity the simple case; `tensionRoundLoop` knows where the load sits
 * @source Budynas & Nisbett, Shigley, chapter 17, eq. 17-9
 * @verified T1.3 pull at slip
 */
export function slipFromMeanTension_N(meanTension_N: number, grip: DriveGrip): number {
  return computeInRange(slipFromMeanTensionRow, { F0: meanTension_N, ...capstan(grip) }, { F0: 'meanTension_N' });
}

/**
 * Mean tension that a drive needs for a pull without slip. F0 = P (E + 1)/(2 (E - 1)) + Fc.
 *
 * @param pull_N - pull of the drive [N], 0 to 1e7
 * @param grip.friction - belt on drive [1], 0.001 to 3
 * @param grip.driveWrap_rad - wrap of the drive [rad], 0.001 to 6.283
 * @param grip.beltMass_kg_m - mass of the belt [kg/m], 0 to 1000
 * @param grip.speed_m_s - belt speed [m/s], 0 to 100
 * @returns mean of tight and slack side [N]
 * @throws not-finite, out-of-range
 * @validity the simple case, as `slipFromMeanTension_N`
 * @source Budynas & Nisbett, Shigley, chapter 17, eq. 17-9, solved for the tension
 * @verified T1.3 mean tension for no slip
 */
export function meanTensionForNoSlip_N(pull_N: number, grip: DriveGrip): number {
  return computeInRange(meanTensionForNoSlipRow, { P: pull_N, ...capstan(grip) }, { P: 'pull_N' });
}

/**
 * Smallest tension of the slack side that holds a pull. F2 = P/(E - 1) + Fc.
 *
 * @param pull_N - pull of the drive [N], 0 to 1e7
 * @param grip.friction - belt on drive [1], 0.001 to 3
 * @param grip.driveWrap_rad - wrap of the drive [rad], 0.001 to 6.283
 * @param grip.beltMass_kg_m - mass of the belt [kg/m], 0 to 1000
 * @param grip.speed_m_s - belt speed [m/s], 0 to 100
 * @returns tension of the slack side [N]
 * @throws not-finite, out-of-range
 * @source Budynas & Nisbett, Shigley, chapter 17, eq. 17-7
 * @verified T1.3 slack side minimum
 */
export function slackMinimum_N(pull_N: number, grip: DriveGrip): number {
  return computeInRange(slackMinimumRow, { P: pull_N, ...capstan(grip) }, { P: 'pull_N' });
}

export interface LumpedPullInput {
  readonly lumpedFriction: number;
  readonly load_kg_m: number;
  readonly rollers_kg_m: number;
  readonly belt_kg_m: number;
  readonly bed_m: number;
}

/**
 * Pull of a bed of live rollers by one lumped friction. P = f (m_load + m_rollers + m_belt) l g.
 *
 * @param input.lumpedFriction - 0.05 new and light to 0.10 for design [1], 0.001 to 1
 * @param input.load_kg_m - goods on the bed [kg/m], 0 to 5000
 * @param input.rollers_kg_m - carrying rollers [kg/m], 0 to 5000
 * @param input.belt_kg_m - belt [kg/m], 0 to 100
 * @param input.bed_m - length of the bed [m], 0.01 to 5000
 * @returns pull at steady speed on the level [N]
 * @throws not-finite, out-of-range
 * @validity running; starting and a blocked line pull more
 * @source common practice, no source
 * @verified T5.1 lumped pull, 0.05, T5.1 lumped pull, 0.10
 */
export function pullOnLiveRollers_N(input: LumpedPullInput): number {
  return computeInRange(
    pullOnLiveRollersRow,
    { f: input.lumpedFriction, ml: input.load_kg_m, mr: input.rollers_kg_m, mb: input.belt_kg_m, l: input.bed_m },
    { f: 'lumpedFriction', ml: 'load_kg_m', mr: 'rollers_kg_m', mb: 'belt_kg_m', l: 'bed_m' },
  );
}
