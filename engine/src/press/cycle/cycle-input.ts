import type { FusionParameters } from '../../fusion/parameters.ts';
import type { Layer } from '../stack/layer.ts';

/** How a platen's heater follows its sensor. Errors are set point minus sensor. */
export type PlatenControl =
  /** Share of full power = error/band, between 0 and 1. */
  | { readonly kind: 'proportional'; readonly band_K: number }
  /** As above plus an integral that follows the limited output with the time `tracking_s`. */
  | { readonly kind: 'pi'; readonly band_K: number; readonly integral_s: number; readonly tracking_s: number }
  /** On below set - hysteresis/2, off above set + hysteresis/2, decided every `sample_s`. */
  | { readonly kind: 'on-off'; readonly hysteresis_K: number; readonly sample_s: number };

/** A heated platen, lumped: one temperature for all of it. */
export interface Platen {
  readonly area_m2: number;
  /** Heat capacity per area at 25 degC. */
  readonly capacity_J_m2K: number;
  /** C = C25*(1 + slope*(T - 25)). */
  readonly capacitySlope_1_K?: number | undefined;
  readonly heater_W: number;
  /** Voltage at which the heater gives `heater_W`. */
  readonly nominal_V: number;
  readonly loss_W_m2K: number;
  /** Added to the loss while cooling. */
  readonly fan_W_m2K: number;
  readonly sensorLag_s: number;
  readonly control: PlatenControl;
}

/** Where the press is plugged in. */
export interface Supply {
  readonly volts_V: number;
  /** Resistance of the whole loop of the lead, which both heaters share. */
  readonly leadResistance_ohm: number;
  /** Drawn from start to opening. */
  readonly control_W?: number | undefined;
  /** Drawn while cooling. */
  readonly fan_W?: number | undefined;
}

/** What the press is told to do. */
export interface Recipe {
  readonly top_degC: number;
  readonly bottom_degC: number;
  /** The dwell begins when both sensors are this close below their set points. */
  readonly ready_K: number;
  readonly dwell_s: number;
  /** The press opens when both sensors are at or below it. */
  readonly open_degC: number;
  /** On the belt. */
  readonly pressure_Pa: number;
}

/** A place in the stack whose history is wanted. */
export interface Probe {
  /** Index of the layer, from the top. */
  readonly layer: number;
  /** 0 at the layer's upper face, 1 at its lower one. */
  readonly fraction: number;
}

/** A press, a stack in it, a supply and a recipe: one press cycle. */
export interface CycleInput {
  /** Top first. */
  readonly layers: readonly Layer[];
  /** One per interface from the top platen down; null = perfect contact. */
  readonly contacts_W_m2K: readonly (number | null)[];
  readonly ambient_degC: number;
  /** Of everything when the heaters are switched on; ambient unless given. */
  readonly start_degC?: number | undefined;
  readonly top: Platen;
  readonly bottom: Platen;
  readonly supply: Supply;
  readonly recipe: Recipe;
  readonly fusion?: Partial<FusionParameters> | undefined;
  readonly probes: readonly Probe[];
  /** Times at which values are wanted, in any order. */
  readonly times_s?: readonly number[] | undefined;
}
