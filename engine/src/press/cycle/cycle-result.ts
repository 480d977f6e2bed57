import type { Grade, GradeReason } from '../../fusion/grade.ts';
import type { Warning } from '../../refusal.ts';

/** Values at the times asked for; null after opening. */
export type Values = readonly (number | null)[];

/** What happened at one probe. */
export interface ProbeResult {
  readonly peak_degC: number;
  readonly peakAt_s: number;
  readonly atReady_degC: number;
  readonly atDwellEnd_degC: number;
  readonly atOpen_degC: number;
  /** Healing integral Z. */
  readonly healing: number;
  /** Bond D = min(1, Z^(1/4)). */
  readonly bond: number;
  /** Flow integral J = integral of p*phi/eta. */
  readonly flow: number;
  /** How deep the melt runs into the gap. */
  readonly fill_m: number;
  /** M/M0: what is left of the molar mass. */
  readonly molarMassShare: number;
  readonly values_degC?: Values;
  readonly bondValues?: Values;
  readonly fillValues_m?: Values;
  readonly molarMassShareValues?: Values;
}

/** A platen's history. */
export interface PlatenResult {
  /** Highest temperature above the set point; negative when it stayed below. */
  readonly overshoot_K: number;
  readonly atOpen_degC: number;
  readonly values_degC?: Values;
}

/** A sensor's history. */
export interface SensorResult {
  readonly values_degC?: Values;
}

/** Extremes and means over all depths of the belt: cells and both faces. */
export interface BeltResult {
  readonly healingMin: number;
  readonly bondMin: number;
  readonly bondMean: number;
  readonly flowMin: number;
  readonly fillMin_m: number;
  readonly fillMean_m: number;
  readonly fillMax_m: number;
  readonly molarMassShareMin: number;
  readonly max_degC: number;
  readonly atOpenMax_degC: number;
}

/** What became of the belt in one column of the platens. */
export interface ColumnResult {
  readonly belt: BeltResult;
  readonly grade: Grade;
  readonly reasons: readonly GradeReason[];
}

/** When something happened, counted from switching on. */
export interface CycleMarks {
  readonly ready_s: number;
  readonly dwellEnd_s: number;
  readonly open_s: number;
  /** All depths of the belt have D = 1; null when that never was. */
  readonly bonded_s: number | null;
  /** When each step that the recipe gives came to its end. */
  readonly stepEnds_s?: readonly number[];
}

/** A computed press cycle. */
export interface Cycle {
  readonly status: 'ok';
  readonly marks: CycleMarks;
  readonly probes: readonly ProbeResult[];
  readonly platens: { readonly top: PlatenResult; readonly bottom: PlatenResult };
  readonly sensors: { readonly top: SensorResult; readonly bottom: SensorResult };
  readonly belt: BeltResult;
  /** At the plug, with control and fan. */
  readonly energy_Wh: number;
  /** Heat that the heaters gave to the platens. */
  readonly heaterEnergy_Wh: number;
  /** Lost in the lead. */
  readonly leadEnergy_Wh: number;
  /** Of the heaters alone. */
  readonly peakCurrent_A: number;
  /** What the energy balance does not account for, as a share of the heat put in. */
  readonly balanceResidual: number;
  readonly steps: number;
  readonly grade: Grade;
  readonly reasons: readonly GradeReason[];
  /** Left and right of the middle, where that was asked for. */
  readonly columns?: {
    readonly left: ColumnResult;
    readonly centre: ColumnResult;
    readonly right: ColumnResult;
    readonly worst: 'left' | 'centre' | 'right';
  };
  /** What the computation leaves out here. */
  readonly warnings?: readonly Warning[];
}

/** A cycle that could not be computed to the accuracy asked for. */
export interface CycleNotConverged {
  readonly status: 'not-converged';
  readonly reason: 'too-many-steps' | 'step-too-small' | 'cycle-too-long';
  /** Estimated error of the last step. */
  readonly residual: number;
  /** Steps taken. */
  readonly iterations: number;
}

export type CycleResult = Cycle | CycleNotConverged;
