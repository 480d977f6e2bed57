import * as z from 'zod';
import {
  forcePerWidth_N_mm,
  id,
  length_m,
  massPerArea_kg_m2,
  modulus_N_mm_pct,
  open,
  percent,
  plain,
  provenance,
  temperature_degC,
  text,
  time_s,
} from './field.ts';

const polymers = ['ether', 'ester'] as const;
const tensionMembers = ['polyester', 'aramid'] as const;

/** Peak at which the hard parts of TPU melt: public material data, 135-220 degC over all grades. */
export const meltPrior = { meltPeak_degC: { value: 165, low: 158, high: 172 } } as const;

/** A belt type as its data sheet describes it. Diameters, not radii, because data sheets give those. */
export const beltSchema = z.strictObject({
  id,
  ...provenance,
  /** Which data sheet and edition; empty means nobody has entered one yet. */
  dataSheet: text.optional(),
  thickness_m: length_m(0.0003, 0.02),
  /** Distance of the neutral line from the running (pulley) face. Default: half the thickness. */
  neutralLine_m: length_m(0, 0.02).optional(),
  /** Covers beside the tension member. Default: a third of the thickness each. */
  pulleyCover_m: length_m(0, 0.02).optional(),
  rollerCover_m: length_m(0, 0.02).optional(),
  /** Kind of TPU, and yarn of the tension member. */
  polymer: z.enum(polymers).optional(),
  tensionMember: z.enum(tensionMembers).optional(),
  meltPeak_degC: open(temperature_degC(100, 230), meltPrior.meltPeak_degC),
  k1_N_mm_pct: modulus_N_mm_pct(0.1, 200),
  /** Freshly tensioned pull over relaxed pull. */
  freshFactor: plain(1, 3).default(1.8),
  minPulley_m: length_m(0.005, 1),
  /** Smallest pulley that may touch the roller face. Default: 1.25 x minPulley. */
  minCounterBend_m: length_m(0.005, 1).optional(),
  areaMass_kg_m2: massPerArea_kg_m2(0.1, 30),
  minElongation: percent(0, 0.1).default(0.003),
  maxElongation: percent(0.001, 0.2).default(0.01),
  strength_N_mm: forcePerWidth_N_mm(1, 3000).optional(),
  /** Friction of the pulley face on a dry and on a wet steel pulley. */
  friction: plain(0.02, 1.5).default(0.3),
  frictionWet: plain(0.02, 1.5).default(0.2),
  /** Tolerance of the cut length, +/- share. */
  lengthTolerance: percent(0, 0.05).default(0.003),
  fingerPitch_m: length_m(0.002, 0.1),
  fingerLength_m: length_m(0.005, 0.5),
  antistatic: z.boolean().default(false),
  dryTemperature_degC: temperature_degC(20, 120).optional(),
  dryTime_s: time_s(0, 200_000).optional(),
  /** Readings at 100 s and 500 s after tensioning, as shares of the first pull. */
  relaxationAt100s: percent(0.1, 1).optional(),
  relaxationAt500s: percent(0.1, 1).optional(),
});
export type Belt = z.infer<typeof beltSchema>;
