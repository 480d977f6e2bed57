import * as z from 'zod';
import { beltSchema } from './things/belt.ts';
import { id, text } from './things/field.ts';
import { lineSchema, pulleySchema } from './things/line.ts';
import { badgeSchema, positionSchema, rollSchema } from './things/position.ts';
import { surveySchema } from './things/survey.ts';
import { dieSchema, pressSchema, recipeSchema, templateSchema } from './things/tooling.ts';

/** The kinds of things a plant consists of, each with its schema. One table, walked by reader, fold and tests. */
export const thingSchemas = {
  belts: beltSchema,
  dies: dieSchema,
  templates: templateSchema,
  presses: pressSchema,
  recipes: recipeSchema,
  lines: lineSchema,
  pulleys: pulleySchema,
  positions: positionSchema,
  rolls: rollSchema,
  badges: badgeSchema,
  surveys: surveySchema,
} as const;

export type Kind = keyof typeof thingSchemas;
export type ThingOf<K extends Kind> = z.infer<(typeof thingSchemas)[K]>;

/** Who and where the plant is. */
export const plantSchema = z.strictObject({ id, name: text, note: text.optional() });

/** The plant's state: what the fold over all events says exists now. Plain data, keyed by id. */
export type Plant = z.infer<typeof plantSchema> & {
  readonly [K in Kind]: Readonly<Record<string, ThingOf<K>>>;
};
