import type { Warning } from '../refusal.ts';
import type { PathInput } from './path-input.ts';

/** Pull of the load on a part of the carrying span, in travel direction from the span's start. */
export interface StrandLoad {
  readonly from_m: number;
  readonly to_m: number;
  readonly pull_N_m: number;
}

/** Fixed centres, set to a mean tension. */
export interface ScrewTakeUp {
  readonly kind: 'screw';
  readonly tension_N: number;
}

/** A pulley pushed with a constant force. */
export interface ForceTakeUp {
  readonly kind: 'gravity' | 'spring';
  readonly pulley: number;
  readonly force_N: number;
  /** Default: straight down for gravity, the bisector of the wrap for a spring. */
  readonly direction?: readonly [dx: number, dy: number];
}

/** Input of `tensionRoundLoop`. */
export interface TensionRoundLoopInput extends PathInput {
  /** Index of the driving pulley. */
  readonly drive: number;
  /** Index of the carrying span: span i leaves pulley i. */
  readonly strand: number;
  readonly loads: readonly StrandLoad[];
  readonly takeUp: ScrewTakeUp | ForceTakeUp;
  /** Friction of belt on drive. */
  readonly friction: number;
  readonly beltMass_kg_m: number;
  readonly speed_m_s: number;
}

export interface TensionRoundLoop {
  readonly pull_N: number;
  readonly tight_N: number;
  readonly slack_N: number;
  readonly driveWrap_rad: number;
  /** Friction at which the drive just holds; null when no friction would, or when nothing is pulled backwards. */
  readonly frictionNeeded: number | null;
  /** Pull of the same load pattern at which slip really starts; null without fixed centres or without load. */
  readonly pullAtSlip_N: number | null;
  /** Pull at slip over pull; null without load. */
  readonly slipReserve: number | null;
  /** Belt tension at each pulley; null at the drive, where it changes. */
  readonly tensions_N: readonly (number | null)[];
  readonly shaftLoads_N: readonly number[];
  /** Mean over the whole length. */
  readonly meanTension_N: number;
  readonly centrifugalTension_N: number;
  readonly capstanRatio: number;
  /** Share k of the pull by which the slack side lies under the mean: F2 = F0 - k P; null without load. */
  readonly pullShare: number | null;
  readonly warnings: readonly Warning[];
  readonly used: Readonly<Record<string, string>>;
}
