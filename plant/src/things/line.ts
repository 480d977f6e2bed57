import * as z from 'zod';
import {
  crossSection_m2,
  current_A,
  force_N,
  id,
  length_m,
  massPerLength_kg_m,
  open,
  percent,
  plain,
  provenance,
  speed_m_s,
  temperature_degC,
  text,
  voltage_V,
} from './field.ts';

/** What a pulley does on the line; decides how it is drawn and what is checked. */
export const pulleyRoles = ['end', 'drive', 'snub', 'take-up', 'idler', 'carrier', 'pressure'] as const;

/** One pulley in travel order; x to the right, y up, centre coordinates. */
export const pulleySchema = z.strictObject({
  id,
  ...provenance,
  line: id,
  /** Order of travel, from 1. */
  order: plain(1, 100_000),
  role: z.enum(pulleyRoles),
  x_m: length_m(-5000, 5000),
  y_m: length_m(-5000, 5000),
  diameter_m: length_m(0.004, 3),
  turn: z.enum(['left', 'right']),
  face: z.enum(['running', 'back']).optional(),
  faceWidth_m: length_m(0.005, 3).optional(),
  /** Standard uncertainty of either coordinate. */
  uncertainty_m: length_m(0, 1).default(0.003),
});
export type Pulley = z.infer<typeof pulleySchema>;

/** The air round a press, as an example. */
export const lineAir = { airTemperature_degC: { value: 25, low: 15, high: 35 } } as const;

export const takeUpKinds = ['screw', 'spring', 'gravity', 'none'] as const;

/** A belt line: its loop, its rollers, its load. All positions of a line share one loop. */
export const lineSchema = z.strictObject({
  id,
  ...provenance,
  name: text,
  belt: id,
  width_m: length_m(0.005, 1),
  setElongation: percent(0.0005, 0.1),
  speed_m_s: speed_m_s(0.01, 10),
  hoursPerDay: plain(0.1, 24),
  load_kg_m: massPerLength_kg_m(0, 2000),
  rollers_kg_m: massPerLength_kg_m(0, 500).default(0),
  bed_m: length_m(0.2, 2000),
  lumpedFriction: plain(0.005, 0.5).default(0.06),
  /** Friction belt on drive pulley, when somebody measured it; else the belt's own. */
  friction: plain(0.02, 1.5).optional(),
  wet: z.boolean().default(false),
  antistaticArea: z.boolean().default(false),
  explosiveArea: z.boolean().default(false),
  foodArea: z.boolean().default(false),
  /** Carrying rollers over the belt, pressure rollers under it. */
  carrierDiameter_m: length_m(0.005, 0.5).optional(),
  carrierPitch_m: length_m(0.01, 5).optional(),
  pressureRollerDiameter_m: length_m(0.005, 0.5).optional(),
  pressUp_m: length_m(0, 0.02).optional(),
  takeUpKind: z.enum(takeUpKinds).default('screw'),
  /** Direction in which the take-up lengthens the loop. */
  takeUpX: plain(-1, 1).default(0),
  takeUpY: plain(-1, 1).default(-1),
  takeUpStroke_m: length_m(0, 20).default(0),
  /** Travel at which the pulley table's coordinates stand. */
  takeUpReference_m: length_m(0, 20).default(0),
  /** Force at the take-up pulley of a spring or gravity take-up. */
  takeUpForce_N: force_N(0, 100_000).optional(),
  /** Slack that hands need to mesh the ends, as loop length. */
  fitSlack_m: length_m(0, 1).default(0.024),
  spliceSite: text.optional(),
  /** The outlet that a press is plugged into here, and the extension lead that it takes to get there. */
  outletVoltage_V: voltage_V(90, 500).optional(),
  outletBreaker_A: current_A(1, 125).optional(),
  outletLead_m: length_m(0, 500).optional(),
  outletLeadSection_m2: crossSection_m2(0.2e-6, 50e-6).optional(),
  airTemperature_degC: open(temperature_degC(-20, 60), lineAir.airTemperature_degC),
});
export type Line = z.infer<typeof lineSchema>;
