import * as z from 'zod';
import { day, id, length_m, moment, percent, plain, provenance, text } from './field.ts';

/** What somebody said of a position. Due and past-life are computed, not said. */
export const positionStatuses = ['running', 'torn', 'empty'] as const;

/** One place on a line where a belt runs. */
export const positionSchema = z.strictObject({
  id,
  ...provenance,
  line: id,
  number: plain(1, 10_000),
  name: text.optional(),
  status: z.enum(positionStatuses).default('running'),
  /** Since when the status holds. */
  since: moment.optional(),
  fittedOn: day.optional(),
  lastTensionedOn: day.optional(),
  /** Days from fitting to the re-tension visit. */
  retensionAfter_days: plain(0, 3650).optional(),
  /** Life after which a belt here is past what was expected. */
  expectedRevolutions: plain(0, 1e10).optional(),
  /** Revolutions at failure or today, when somebody counted them; else computed from date and speed. */
  revolutions: plain(0, 1e10).optional(),
  /** Where the take-up stood before it was wound slack. */
  takeUp_m: length_m(0, 20).optional(),
  /** Endless length in the last splice record, and its uncertainty. */
  recordedLength_m: length_m(0.2, 10_000).optional(),
  recordedUncertainty_m: length_m(0, 10).optional(),
  /** The old belt laid slack and flat, tape from tip to root; set from its life subtracted by `oldBeltSet`. */
  oldBeltLength_m: length_m(0.2, 10_000).optional(),
  oldBeltUncertainty_m: length_m(0, 10).optional(),
  oldBeltSet: percent(0, 0.05).optional(),
  /** True when the old belt was measured in place, under tension. */
  oldBeltTensioned: z.boolean().optional(),
  lot: text.optional(),
});
export type Position = z.infer<typeof positionSchema>;

/** A roll of belt on the shelf. */
export const rollSchema = z.strictObject({
  id,
  ...provenance,
  belt: id,
  width_m: length_m(0.005, 1),
  left_m: length_m(0, 10_000),
  lot: text.optional(),
  sealed: z.boolean().default(false),
  place: text.optional(),
});
export type Roll = z.infer<typeof rollSchema>;

export const badgeShapes = ['triangle', 'circle', 'square', 'diamond', 'star', 'hexagon'] as const;

/** A badge: a pseudonym with a shape and a word. */
export const badgeSchema = z.strictObject({
  id,
  ...provenance,
  shape: z.enum(badgeShapes),
  word: text,
});
export type Badge = z.infer<typeof badgeSchema>;
