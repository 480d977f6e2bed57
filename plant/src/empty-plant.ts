import type { Kind, Plant } from './plant.ts';

// Named once more, so that whoever only folds or shows a plant need not load the schemas.
const everyKind: Readonly<Record<Kind, true>> = {
  belts: true,
  dies: true,
  templates: true,
  presses: true,
  recipes: true,
  lines: true,
  pulleys: true,
  positions: true,
  rolls: true,
  badges: true,
  surveys: true,
};

/** The kinds of things in the order of the table of schemas. */
export const kinds = Object.keys(everyKind) as readonly Kind[];

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
