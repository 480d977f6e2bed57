import type { FusionParameters } from '../../fusion/parameters.ts';
import type { OuterFace } from '../losses/platen-loss.ts';
import type { Layer } from '../stack/layer.ts';

/** How a platen's heater follows its sensor. Errors are set point minus sensor. */
export type PlatenControl =
  /** Share of full power = error/band, between 0 and 1. */
  | { readonly kind: 'proportional'; readonly band_K: number }
  /** As above plus an integral that follows the limited output with the time `tracking_s`. */
  | { readonly kind: 'pi'; readonly band_K: number; readonly integral_s: number; readonly tracking_s: number }
  /** On below set - hysteresis/2, off above set + hysteresis/2, decided every `sample_s`. */
  | { readonly kind: 'on-off'; readonly hysteresis_K: number; readonly sample_s: number };

/** A bare face of a platen; it has the platen's temperature. */
export interface BareFace extends OuterFace {
  readonly area_m2: number;
}

/** Water through channels of a platen. */
export interface WaterCooling {
  readonly inlet_degC: number;
  readonly flow_kg_s: number;
  /** Number of transfer units of the channels. */
  readonly transferUnits: number;
  /** Water is let in once the platen's sensor is at or below it; without it when cooling begins. */
  readonly from_degC?: number | undefined;
}

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
  /** Bare faces that lose heat to still air and by radiation, beside `loss_W_m2K`: that is then insulation and frame alone. */
  readonly faces?: readonly BareFace[] | undefined;
  /** Added to the loss while cooling. */
  readonly fan_W_m2K: number;
  /** Cools beside the fan. */
  readonly water?: WaterCooling | undefined;
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

/** One step of a recipe. The last one is a cool, and the press opens at its end. */
export type RecipeStep =
  | {
      /** Ends when both sensors are within `ready_K` of set points that have come to rest. */
      readonly kind: 'ramp';
      readonly top_degC?: number | undefined;
      readonly bottom_degC?: number | undefined;
      /** How fast the set points go there from where they are; at once without it. */
      readonly rate_K_s?: number | undefined;
    }
  /** Set points held, before or after the dwell. */
  | { readonly kind: 'soak'; readonly time_s: number }
  /** Set points held while the belt fuses: of several, the first begins it and the last ends it. */
  | { readonly kind: 'dwell'; readonly time_s?: number | undefined }
  /** The pressure on the belt from here on. */
  | { readonly kind: 'pressure'; readonly pressure_Pa: number }
  /** Heaters off, fan on, until both sensors are at or below a temperature, at the latest after a time. */
  | { readonly kind: 'cool'; readonly below_degC?: number | undefined; readonly time_s?: number | undefined };

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
  /**
   * What happens one after the other, from switching on to opening; the fields above are then what a step takes that
   * does not say otherwise. Without it: a ramp, a dwell, a cool.
   */
  readonly steps?: readonly RecipeStep[] | undefined;
}

/** A place in the stack whose history is wanted. */
export interface Probe {
  /** Index of the layer, from the top. */
  readonly layer: number;
  /** 0 at the layer's upper face, 1 at its lower one. */
  readonly fraction: number;
}

/** How much the platens are hotter than in their middle while they hold their set points; negative where they are cooler. */
export interface ColumnDeviations {
  readonly left_K: number;
  readonly right_K: number;
}

/** A press, a stack in it, a supply and a recipe: one press cycle. */
export interface CycleInput {
  /** Top first. */
  readonly layers: readonly Layer[];
  /** One per interface from the top platen down; null = perfect contact. */
  readonly contacts_W_m2K: readonly (number | null)[];
  /**
   * The same with the belt's face molten: in its melting range a contact at the belt goes over from one to the other.
   * null = does not; off without it.
   */
  readonly contactsWetted_W_m2K?: readonly (number | null)[] | undefined;
  readonly ambient_degC: number;
  /** Of everything when the heaters are switched on; ambient unless given. */
  readonly start_degC?: number | undefined;
  readonly top: Platen;
  readonly bottom: Platen;
  readonly supply: Supply;
  readonly recipe: Recipe;
  readonly fusion?: Partial<FusionParameters> | undefined;
  readonly probes: readonly Probe[];
  /** Left and right of the middle, where the sensors sit: what becomes of the belt there too. */
  readonly columns?: ColumnDeviations | undefined;
  /** Times at which values are wanted, in any order. */
  readonly times_s?: readonly number[] | undefined;
}
