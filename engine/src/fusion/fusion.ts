import { inRange } from '../in-range.ts';
import type { Warning } from '../refusal.ts';
import { bondOfHealing } from './bond.ts';
import { fusedShare, fusedStrength_N_mm } from './fused-strength.ts';
import {
  checkedHistory,
  checkedLimits,
  checkedStrength,
  type FusionInput,
  type StrengthInput,
} from './fusion-input.ts';
import { type Graded, type GradeLimits, grade } from './grade.ts';
import { type History, historyIntegral } from './history-integral.ts';
import { type FusionParameters, fusionParameters } from './parameters.ts';
import { fluidity_1_Pa_s, healingRate_1_s, scissionRate_1_s } from './rates.ts';
import { slotFill_m } from './slot-fill.ts';
import { voidNumber } from './void-number.ts';

/** What became of one point of the flank. */
export interface FusedNode {
  readonly peak_degC: number;
  /** Z, integral of dt over the welding time. */
  readonly healing: number;
  /** Z^(1/4), capped at 1. */
  readonly bond: number;
  /** J, integral of pressure over viscosity. */
  readonly flow: number;
  readonly fill_m: number;
  readonly molarMassShare: number;
  /** Share of the strength of a perfect splice. */
  readonly strengthShare: number;
}

/** Fusion of a flank: its points, the worst and the mean of them, and the grade. */
export interface Fusion extends Graded {
  readonly nodes: readonly FusedNode[];
  readonly min: FusedNode;
  readonly mean: FusedNode;
  /** Null where the moisture is not known. */
  readonly voidNumber: number | null;
  /** By the weakest point and by the mean; null without the strengths of splice and belt. */
  readonly strength: { readonly min_N_mm: number; readonly mean_N_mm: number } | null;
  readonly warnings: readonly Warning[];
}

/**
 * Fusion of a finger splice from the temperatures its flank went through: healing, fill, damage, grade, strength.
 *
 * Z = integral of phi/t_w, D = min(1, Z^(1/4)); J = integral of p*c*phi/eta, fill = g*sqrt(J/6);
 * M/M0 = 1/(1 + integral of kappa); S = min(S_belt, S_best*min(1, fill/needed)*D*(M/M0)^a).
 *
 * @param input - times_s [s], nodes_degC [degC] one list a point, pressure_Pa [Pa], parameters, limits, strength [N/mm]
 * @returns each point, smallest and mean over them [1], [m], [degC]; grade with reasons; strength [N/mm]
 * @throws too-few, too-many, wrong-count, wrong-way-round, not-finite, out-of-range
 * @validity priors until trial splices were pulled; nobody has published temperature, time, pressure and strength of such a splice
 * @source Yang & Pitchumani, Macromolecules 35(8) 2002 (form, from memory); lubrication flow; random scission
 * @verified FUSE-20 healing over a ramp, hold and ramp, FUSE-20 fill of a held gap
 */
export function fusion(input: FusionInput): Fusion {
  const pressures_Pa = checkedHistory(input);
  const p = fusionParameters(input.fusion);
  const limits = checkedLimits(input.limits);
  const strength = input.strength && checkedStrength(input.strength);
  const open = input.open_s === undefined ? undefined : openAt(input, input.open_s);
  const nodes = input.nodes_degC.map((temperatures_degC) =>
    fusedNode({ times_s: input.times_s, temperatures_degC, pressures_Pa }, p, strength),
  );
  const beltMax_degC = Math.max(...nodes.map(({ peak_degC }) => peak_degC));
  const void_ = voidOf(p, beltMax_degC, pressures_Pa, input);
  const min = over(nodes, (values) => Math.min(...values));
  const mean = over(nodes, (values) => values.reduce((sum, value) => sum + value, 0) / values.length);
  return {
    nodes,
    min,
    mean,
    voidNumber: void_ ?? null,
    strength: strength ? strengths(min, mean, strength) : null,
    ...graded(nodes, p, limits, { voidNumber: void_, atOpen_degC: open, beltMax_degC }),
    warnings:
      p.moisture_share === undefined ? [{ code: 'moisture-unknown', path: 'fusion.moisture_share', data: {} }] : [],
  };
}

function fusedNode(history: History, p: FusionParameters, strength: StrengthInput | undefined): FusedNode {
  const step_K = Math.min(8, p.meltWidth_K);
  const healing = historyIntegral(history, (t) => healingRate_1_s(t, p), step_K);
  const flow = historyIntegral(history, (t, pressure) => pressure * fluidity_1_Pa_s(t, p), step_K);
  const broken = historyIntegral(history, (t) => scissionRate_1_s(t, p), step_K);
  const fill_m = slotFill_m(p.gap_m, flow);
  const state = {
    bond: Math.min(1, bondOfHealing(healing)),
    molarMassShare: 1 / (1 + broken),
    peak_degC: history.temperatures_degC.reduce((most, t) => Math.max(most, t), Number.NEGATIVE_INFINITY),
  };
  const strengthShare = fusedShare({ ...state, fillShare: fill_m / p.fillNeeded_m }, strength);
  return { ...state, healing, flow, fill_m, strengthShare };
}

function over(nodes: readonly FusedNode[], of: (values: number[]) => number): FusedNode {
  const each = (name: keyof FusedNode) => of(nodes.map((node) => node[name]));
  return {
    peak_degC: each('peak_degC'),
    healing: each('healing'),
    bond: each('bond'),
    flow: each('flow'),
    fill_m: each('fill_m'),
    molarMassShare: each('molarMassShare'),
    strengthShare: each('strengthShare'),
  };
}

function strengths(min: FusedNode, mean: FusedNode, { best_N_mm, belt_N_mm }: StrengthInput) {
  return {
    min_N_mm: fusedStrength_N_mm(min.strengthShare, best_N_mm, belt_N_mm),
    mean_N_mm: fusedStrength_N_mm(mean.strengthShare, best_N_mm, belt_N_mm),
  };
}

/** Hottest point of the belt when the press opens. */
function openAt({ times_s, nodes_degC }: FusionInput, open_s: number): number {
  const last = times_s.at(-1) ?? 0;
  inRange(open_s, 'open_s', { min: times_s[0] ?? 0, max: last, unit: 's' });
  const after = Math.max(
    1,
    times_s.findIndex((time) => time >= open_s),
  );
  const [t0, t1] = [times_s[after - 1] ?? 0, times_s[after] ?? 0];
  const at = (open_s - t0) / (t1 - t0);
  const of = (node: readonly number[]) => (node[after - 1] ?? 0) * (1 - at) + (node[after] ?? 0) * at;
  return Math.max(...nodes_degC.map(of));
}

/** Where the pressure changes, the void number of the moment at which bubbles are likeliest. */
function voidOf(
  { moisture_share, meltCentre_degC, meltWidth_K }: FusionParameters,
  beltMax_degC: number,
  pressures_Pa: readonly number[],
  { nodes_degC }: FusionInput,
): number | undefined {
  if (moisture_share === undefined) return undefined;
  const soft_degC = Math.min(beltMax_degC, meltCentre_degC - 4 * meltWidth_K);
  let worst = 0;
  for (const [i, pressure_Pa] of pressures_Pa.entries()) {
    const hottest = nodes_degC.reduce((most, node) => Math.max(most, node[i] ?? most), Number.NEGATIVE_INFINITY);
    if (hottest < soft_degC) continue;
    worst = Math.max(worst, voidNumber({ moisture_share, beltMax_degC: hottest, pressure_Pa }));
  }
  return worst;
}

function graded(
  nodes: readonly FusedNode[],
  p: FusionParameters,
  limits: GradeLimits,
  whole: { beltMax_degC: number; voidNumber: number | undefined; atOpen_degC: number | undefined },
): Graded {
  const fills = nodes.map(({ fill_m }) => fill_m / p.fillNeeded_m);
  const input = {
    bondMin: Math.min(...nodes.map(({ healing }) => bondOfHealing(healing))),
    fillMin: Math.min(...fills),
    fillMax: Math.max(...fills),
    damageMax: Math.max(...nodes.map(({ molarMassShare }) => 1 - molarMassShare)),
    ...whole,
  };
  return grade(input, limits);
}
