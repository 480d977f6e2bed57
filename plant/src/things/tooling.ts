import * as z from 'zod';
import {
  conductivity_W_mK,
  day,
  id,
  length_m,
  open,
  plain,
  power_W,
  pressure_Pa,
  provenance,
  temperature_degC,
  text,
  time_s,
  voltage_V,
} from './field.ts';
import { pressHeat } from './press-heat.ts';

/** A punching die that cuts one belt end into fingers. */
export const dieSchema = z.strictObject({
  id,
  ...provenance,
  pitch_m: length_m(0.002, 0.1),
  fingerLength_m: length_m(0.005, 0.5),
  maxWidth_m: length_m(0.005, 1),
  tipWidth_m: length_m(0, 0.01).default(0.0005),
  /** What the die cuts away beyond the tips, at one end. */
  waste_m: length_m(0, 0.2).default(0.025),
  place: text.optional(),
});
export type Die = z.infer<typeof dieSchema>;

/** Silicone, public material data: 0.22-0.25 W/mK; grades loaded to carry heat reach 0.5-1.5. */
export const siliconeMat = { matConductivity_W_mK: { value: 0.23, low: 0.22, high: 0.25 } } as const;

/** A template that holds the meshed ends in a pocket while they are fused. */
export const templateSchema = z.strictObject({
  id,
  ...provenance,
  die: id,
  pocketWidth_m: length_m(0.005, 1),
  pocketDepth_m: length_m(0.0003, 0.02),
  mat_m: length_m(0, 0.02),
  matConductivity_W_mK: open(conductivity_W_mK(0.05, 10), siliconeMat.matConductivity_W_mK),
  place: text.optional(),
});
export type Template = z.infer<typeof templateSchema>;

/** A portable hot press. */
export const pressSchema = z.strictObject({
  id,
  ...provenance,
  name: text,
  platenLength_m: length_m(0.05, 2),
  platenWidth_m: length_m(0.02, 2),
  bagWidth_m: length_m(0.02, 2),
  maxPressure_Pa: pressure_Pa(0, 2_000_000).default(400_000),
  heaterPower_W: power_W(10, 20_000).optional(),
  nominalVoltage_V: voltage_V(90, 500).optional(),
  setPoints: z.literal([1, 2]).default(2),
  displayUnit: z.enum(['degC', 'degF']).default('degC'),
  checkedOn: day.optional(),
  checkInterval_days: plain(1, 3650).default(365),
  ...pressHeat,
  place: text.optional(),
});
export type Press = z.infer<typeof pressSchema>;

/** A recipe for one belt, on one press or on any press of a kind. What the display shows, in its own terms. */
export const recipeSchema = z.strictObject({
  id,
  ...provenance,
  belt: id,
  press: id.optional(),
  revision: plain(1, 9999).default(1),
  top_degC: temperature_degC(60, 260),
  bottom_degC: temperature_degC(60, 260),
  ready_K: plain(0.1, 20).default(2),
  dwell_s: time_s(1, 3600),
  beltPressure_Pa: pressure_Pa(10_000, 2_000_000),
  open_degC: temperature_degC(20, 60).default(50),
  /** Clock of a whole cycle, when somebody timed it; without it the cycle is computed. */
  readyAt_s: time_s(0, 20_000).optional(),
  openAt_s: time_s(0, 20_000).optional(),
});
export type Recipe = z.infer<typeof recipeSchema>;
