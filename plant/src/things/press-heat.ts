import * as z from 'zod';
import {
  crossSection_m2,
  heatCapacityPerArea_J_m2K,
  heatTransfer_W_m2K,
  length_m,
  open,
  type Prior,
  plain,
  power_W,
  resistance_ohm,
  time_s,
} from './field.ts';

const platenMaterials = ['aluminium', 'steel'] as const;
const controlKinds = ['proportional', 'pi', 'on-off'] as const;

/**
 * A light air-cooled narrow-belt press, as an example: what stands in for what nobody has said of a press. Ordinary
 * engineering numbers, from memory; none is measured.
 */
export const lightPress = {
  /** 10 mm of aluminium, 2700 kg/m3 x 900 J/kgK, and 1000 J/m2K for heater mat, bolts and fin roots. */
  platenCapacity_J_m2K: { value: 25_300, low: 21_000, high: 31_000 },
  capacitySlope_1_K: { value: 4.4e-4, low: 3e-4, high: 6e-4 },
  /** 20 mm of board, edges, frame. */
  platenLoss_W_m2K: { value: 8, low: 5, high: 12 },
  /** Air side 32.5 W/m2K over four times the plan area. */
  fanCooling_W_m2K: { value: 130, low: 100, high: 160 },
  sensorLag_s: { value: 3, low: 1, high: 10 },
  controlBand_K: { value: 6, low: 2, high: 15 },
  controlIntegral_s: { value: 60, low: 30, high: 120 },
  controlTracking_s: { value: 10, low: 5, high: 30 },
  controlHysteresis_K: { value: 2, low: 1, high: 3 },
  controlSample_s: { value: 1, low: 0.1, high: 2 },
  controlPower_W: { value: 10, low: 5, high: 30 },
  fanPower_W: { value: 40, low: 20, high: 80 },
  pressPlate_m: { value: 0.002, low: 0, high: 0.003 },
  releaseCloth_m: { value: 0.00025, low: 0.0001, high: 0.0005 },
  contactMetal_W_m2K: { value: 3000, low: 2000, high: 10_000 },
  contactLayer_W_m2K: { value: 1000, low: 300, high: 3000 },
  contactBelt_W_m2K: { value: 1500, low: 500, high: 5000 },
  leadLength_m: { value: 5, low: 3, high: 10 },
  leadSection_m2: { value: 2.5e-6, low: 1.5e-6, high: 2.5e-6 },
  /** Of both platens together, per area of one: 2 x 700 W on 300 x 150 mm. */
  heaterFlux_W_m2: { value: 31_111, low: 25_000, high: 40_000 },
} as const satisfies Readonly<Record<string, Prior>>;

/** How a press heats, cools and is controlled, what lies in it and how it is plugged in; all of it may stay open. */
export const pressHeat = {
  platenMaterial: z.enum(platenMaterials).optional(),
  platenThickness_m: length_m(0.001, 0.2).optional(),
  /** Heat that one platen takes up, with all that hangs on it, per area at 25 degC. Default: from its thickness. */
  platenCapacity_J_m2K: open(heatCapacityPerArea_J_m2K(1000, 1_000_000), lightPress.platenCapacity_J_m2K),
  capacitySlope_1_K: open(plain(0, 0.005), lightPress.capacitySlope_1_K),
  platenLoss_W_m2K: open(heatTransfer_W_m2K(0, 500), lightPress.platenLoss_W_m2K),
  fanCooling_W_m2K: open(heatTransfer_W_m2K(0, 5000), lightPress.fanCooling_W_m2K),
  sensorLag_s: open(time_s(0, 120), lightPress.sensorLag_s),
  controlKind: z.enum(controlKinds).optional(),
  controlBand_K: open(plain(0.1, 100), lightPress.controlBand_K),
  controlIntegral_s: open(time_s(1, 3600), lightPress.controlIntegral_s),
  controlTracking_s: open(time_s(0.1, 600), lightPress.controlTracking_s),
  controlHysteresis_K: open(plain(0.1, 50), lightPress.controlHysteresis_K),
  controlSample_s: open(time_s(0.05, 60), lightPress.controlSample_s),
  controlPower_W: open(power_W(0, 2000), lightPress.controlPower_W),
  fanPower_W: open(power_W(0, 2000), lightPress.fanPower_W),
  /** Plate between top platen and release cloth; 0 for none. */
  pressPlate_m: open(length_m(0, 0.03), lightPress.pressPlate_m),
  releaseCloth_m: open(length_m(0, 0.005), lightPress.releaseCloth_m),
  /** Heat passing a joint: platen on press plate; platen or plate on cloth or template; belt on either. */
  contactMetal_W_m2K: open(heatTransfer_W_m2K(10, 1_000_000), lightPress.contactMetal_W_m2K),
  contactLayer_W_m2K: open(heatTransfer_W_m2K(10, 1_000_000), lightPress.contactLayer_W_m2K),
  contactBelt_W_m2K: open(heatTransfer_W_m2K(10, 1_000_000), lightPress.contactBelt_W_m2K),
  /** How much hotter (or, below zero, cooler) the right edge of the platens runs than their middle. */
  rightEdge_K: plain(-50, 50).optional(),
  /** The lead that belongs to the press. */
  leadLength_m: open(length_m(0, 500), lightPress.leadLength_m),
  leadSection_m2: open(crossSection_m2(0.2e-6, 50e-6), lightPress.leadSection_m2),
  /** There and back, where somebody measured it; else from length and section. */
  leadResistance_ohm: resistance_ohm(0, 50).optional(),
};
