import { type Kind, type Plant, thingSchemas } from './plant.ts';

/** The kinds of things in the order of the table. */
export const kinds = Object.keys(thingSchemas) as readonly Kind[];

/**
 * Things by their id. Without a prototype, so that an id like `constructor` names a thing or nothing.
 *
 * @param things - each with its id; of two with one id the later stays
 */
export function byId<T extends { readonly id: string }>(things: Iterable<T>): Readonly<Record<string, T>> {
  const record: Record<string, T> = Object.create(null);
  for (const thing of things) record[thing.id] = thing;
  return record;
}

/**
 * A plant in which nothing stands yet.
 *
 * @param id - of the plant
 * @param name - as people call it
 */
export function emptyPlant(id: string, name: string): Plant {
  const nothing = Object.fromEntries(kinds.map((kind) => [kind, byId([])]));
  return { id, name, ...nothing } as unknown as Plant;
}
