import type * as z from 'zod';
import { kinds } from './empty-plant.ts';
import type { Kind, Plant, plantSchema, ThingOf } from './plant.ts';

/** One thing a folder defines; unsigned, without any envelope. */
export type PlantDefinition =
  | { readonly kind: 'plant'; readonly thing: z.infer<typeof plantSchema> }
  | { readonly [K in Kind]: { readonly kind: K; readonly thing: ThingOf<K> } }[Kind];

/**
 * The definitions of everything in a plant, in an order in which nothing refers to what comes later but by id.
 *
 * @param plant - any plant
 */
export function definitionsOf(plant: Plant): readonly PlantDefinition[] {
  const { id, name, note } = plant;
  const things = kinds.flatMap((kind) => Object.values(plant[kind]).map((thing) => ({ kind, thing })));
  const self = { kind: 'plant', thing: { id, name, ...(note === undefined ? {} : { note }) } };
  return [self, ...things] as readonly PlantDefinition[];
}
