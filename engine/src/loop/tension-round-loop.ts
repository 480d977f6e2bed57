import { indexInRange, inRange } from '../in-range.ts';
import { Refusal, type Warning } from '../refusal.ts';
import { type BeltPath, beltPath } from './path.ts';
import {
  capstanRatioRow,
  centrifugalTensionRow,
  frictionNeededRow,
  slackOfFixedCentresRow,
  slipFromSlackRow,
  slipLimitedPullRow,
} from './slip-formulas.ts';
import { slackFromTakeUpForce, type TakeUpSide } from './take-up-force.ts';
import { idleShaftLoadRow, shaftLoadRow } from './tension-formulas.ts';
import type { StrandLoad, TensionRoundLoop, TensionRoundLoopInput } from './tension-round-loop-form.ts';

/**
 * Tension at every place of a loop that one strand loads and one pulley drives, linear belt, losses left out.
 *
 * From the drive on: slack F2, along the carrying span up to F1 = F2 + P, then F1 back to the drive (drive arc half and
 * half). Fixed centres keep the stretch: sum(T_i l_i) = F0 L, so F2 = F0 - k P; slip starts at
 * P = (F0 - Fc)(E - 1)/(1 + k(E - 1)), E = e^(f w). A take-up force fixes the tension at its own pulley instead.
 *
 * @param input.pulleys - as in `beltPath` [m]
 * @param input.belt - as in `beltPath` [m]
 * @param input.drive - index of the drive [1]
 * @param input.strand - index of the carrying span [1]
 * @param input.loads - from_m < to_m inside the span [m], pull_N_m [N/m] 0 to 1e6; overlapping ones add
 * @param input.takeUp - `screw` with its mean tension [N], or `gravity`/`spring` with pulley, force [N], direction
 * @param input.friction - belt on drive [1], 0.001 to 3
 * @param input.beltMass_kg_m - mass of the belt [kg/m], 0 to 1000
 * @param input.speed_m_s - belt speed [m/s], 0 to 100
 * @returns tensions, shaft loads [N], wrap [rad], slip reserve [1], warnings
 * @throws not-finite, out-of-range, wrong-way-round, no-direction, take-up-shortens-loop, and the codes of `beltPath`
 * @validity linear belt; shaft loads at rest or of slow belts (Fc is not taken off)
 * @source derived: conserved stretch, force balance; Shigley, chapter 17, eq. 17-7
 * @verified T4.4 slack side, T4.4 tight side, T4.4 pull at slip, T4.4 shaft load, drive
 */
export function tensionRoundLoop(input: TensionRoundLoopInput): TensionRoundLoop {
  const path = beltPath(input);
  checkInput(input, path);
  const round = roundOf(input, path);
  const slack_N = slackTension(input, path, round);
  const tight_N = slack_N + round.pull_N;
  const driveWrap_rad = path.wraps_rad[input.drive] ?? 0;
  const capstanRatio = capstanRatioRow.compute({ f: input.friction, w: driveWrap_rad });
  const centrifugalTension_N = centrifugalTensionRow.compute({ m: input.beltMass_kg_m, v: input.speed_m_s });
  const grip = { slack_N, tight_N, capstanRatio, centrifugalTension_N, driveWrap_rad };
  const pullAtSlip_N = pullAtSlip(input, round, grip);
  const slipReserve = slipReserveOf(round.pull_N, pullAtSlip_N, grip);
  const tensions_N = path.wraps_rad.map((_, i) => tensionAt(round.sides[i], tight_N, slack_N));
  return {
    pull_N: round.pull_N,
    tight_N,
    slack_N,
    driveWrap_rad,
    frictionNeeded: frictionNeeded(grip),
    pullAtSlip_N,
    slipReserve,
    tensions_N,
    shaftLoads_N: path.wraps_rad.map((w, i) => shaftLoad(tensions_N[i] ?? null, w, grip)),
    meanTension_N: slack_N + round.pullTimesLength_Nm / path.length_m,
    centrifugalTension_N,
    capstanRatio,
    pullShare: round.pullShare,
    warnings: warnings(input, round, grip, slipReserve),
    used: usedDefaults(input),
  };
}

/** The loop as walked from the drive round to the drive. */
interface Round {
  readonly pull_N: number;
  /** Integral over the whole length of (T - F2): what the pull adds to the stretch. */
  readonly pullTimesLength_Nm: number;
  readonly pullShare: number | null;
  readonly sides: readonly TakeUpSide[];
}

interface Grip {
  readonly slack_N: number;
  readonly tight_N: number;
  readonly capstanRatio: number;
  readonly centrifugalTension_N: number;
  readonly driveWrap_rad: number;
}

function checkInput(input: TensionRoundLoopInput, path: BeltPath): void {
  const count = path.wraps_rad.length;
  indexInRange(input.drive, 'drive', count);
  indexInRange(input.strand, 'strand', count);
  inRange(input.friction, 'friction', { min: 0.001, max: 3, unit: '1' });
  inRange(input.beltMass_kg_m, 'beltMass_kg_m', { min: 0, max: 1000, unit: 'kg/m' });
  inRange(input.speed_m_s, 'speed_m_s', { min: 0, max: 100, unit: 'm/s' });
  const span_m = path.spans_m[input.strand] ?? 0;
  input.loads.forEach((load, i) => {
    checkLoad(load, `loads[${i}]`, span_m);
  });
}

// Loads are often given to the span's end as printed; a micrometre of rounding must not be refused.
const rounding_m = 1e-6;

function checkLoad(load: StrandLoad, path: string, span_m: number): void {
  const within = { min: 0, max: span_m + rounding_m, unit: 'm' };
  inRange(load.from_m, `${path}.from_m`, within);
  inRange(load.to_m, `${path}.to_m`, within);
  inRange(load.pull_N_m, `${path}.pull_N_m`, { min: 0, max: 1e6, unit: 'N/m' });
  if (load.to_m <= load.from_m) {
    throw new Refusal('wrong-way-round', `${path}.to_m`, {
      value: load.to_m,
      min: load.from_m,
      max: span_m,
      unit: 'm',
    });
  }
}

function pullOf({ from_m, to_m, pull_N_m }: StrandLoad): number {
  return (to_m - from_m) * pull_N_m;
}

function roundOf({ drive, strand, loads }: TensionRoundLoopInput, path: BeltPath): Round {
  const count = path.wraps_rad.length;
  const steps = (index: number) => (index - drive + count) % count;
  const sides = path.wraps_rad.map((_, i): TakeUpSide => {
    if (i === drive) return 'drive';
    return steps(i) > steps(strand) ? 'tight' : 'slack';
  });
  const span_m = path.spans_m[strand] ?? 0;
  const pull_N = loads.reduce((total, load) => total + pullOf(load), 0);
  const onStrand_Nm = loads.reduce((total, load) => total + pullOf(load) * (span_m - (load.from_m + load.to_m) / 2), 0);
  const pullTimesLength_Nm = onStrand_Nm + pull_N * tightLength(path, sides);
  return {
    pull_N,
    pullTimesLength_Nm,
    pullShare: pull_N > 0 ? pullTimesLength_Nm / (pull_N * path.length_m) : null,
    sides,
  };
}

/** Length under F1: half the drive's arc and all between the carrying span and the drive. */
function tightLength(path: BeltPath, sides: readonly TakeUpSide[]): number {
  return path.wraps_rad.reduce((total, wrap, i) => {
    const arc_m = wrap * (path.neutralRadii_m[i] ?? 0);
    if (sides[i] === 'drive') return total + arc_m / 2;
    return sides[i] === 'tight' ? total + arc_m + (path.spans_m[i] ?? 0) : total;
  }, 0);
}

function slackTension({ takeUp }: TensionRoundLoopInput, path: BeltPath, round: Round): number {
  if (takeUp.kind === 'screw') {
    const F0 = inRange(takeUp.tension_N, 'takeUp.tension_N', { min: 0, max: 1e7, unit: 'N' });
    return slackOfFixedCentresRow.compute({ F0, k: round.pullShare ?? 0, P: round.pull_N });
  }
  const side = round.sides[indexInRange(takeUp.pulley, 'takeUp.pulley', round.sides.length)] ?? 'slack';
  return slackFromTakeUpForce(path, { takeUp, side, pull_N: round.pull_N });
}

function pullAtSlip({ takeUp }: TensionRoundLoopInput, round: Round, grip: Grip): number | null {
  if (takeUp.kind !== 'screw' || round.pullShare === null) return null;
  const { capstanRatio: E, centrifugalTension_N: Fc } = grip;
  return Math.max(0, slipLimitedPullRow.compute({ F0: takeUp.tension_N, Fc, E, k: round.pullShare }));
}

/** The smaller of what the slack side holds now and what it still holds when the load has grown. */
function slipReserveOf(pull_N: number, pullAtSlip_N: number | null, grip: Grip): number | null {
  if (pull_N === 0) return null;
  const { slack_N: F2, capstanRatio: E, centrifugalTension_N: Fc } = grip;
  const held_N = slipFromSlackRow.compute({ F2, Fc, E });
  return Math.min(held_N, pullAtSlip_N ?? held_N) / pull_N;
}

function frictionNeeded(grip: Grip): number | null {
  if (grip.slack_N <= grip.centrifugalTension_N) return null;
  const { tight_N: F1, slack_N: F2, centrifugalTension_N: Fc, driveWrap_rad: w } = grip;
  return w > 0 ? frictionNeededRow.compute({ F1, F2, Fc, w }) : null;
}

function tensionAt(side: TakeUpSide | undefined, tight_N: number, slack_N: number): number | null {
  if (side === 'drive') return null;
  return side === 'tight' ? tight_N : slack_N;
}

function shaftLoad(tension_N: number | null, w: number, { tight_N, slack_N }: Grip): number {
  if (tension_N === null) return shaftLoadRow.compute({ T1: tight_N, T2: slack_N, w });
  return Math.abs(idleShaftLoadRow.compute({ T: tension_N, w }));
}

function warnings(input: TensionRoundLoopInput, round: Round, grip: Grip, slipReserve: number | null): Warning[] {
  const found: Warning[] = [];
  const { takeUp } = input;
  if (grip.slack_N <= grip.centrifugalTension_N) {
    found.push({ code: 'belt-goes-slack', data: { value: grip.slack_N, min: grip.centrifugalTension_N, unit: 'N' } });
  }
  if (slipReserve !== null && slipReserve < 1)
    found.push({ code: 'slip', data: { value: slipReserve, min: 1, unit: '1' } });
  if (takeUp.kind !== 'screw' && round.sides[takeUp.pulley] === 'tight') {
    found.push({ code: 'take-up-on-tight-side', path: 'takeUp.pulley', data: { value: takeUp.pulley } });
  }
  return found;
}

function usedDefaults({ takeUp }: TensionRoundLoopInput): Record<string, string> {
  if (takeUp.kind === 'screw' || takeUp.direction !== undefined) return {};
  return { 'takeUp.direction': takeUp.kind === 'gravity' ? 'down' : 'bisector' };
}
