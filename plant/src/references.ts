import type { Kind, Plant } from './plant.ts';

/** A field of one kind of thing that names another thing by its id. */
export interface Reference {
  readonly kind: Kind;
  readonly field: string;
  readonly to: Kind;
}

/** Every reference between things; one table for the reader, the checks and the fold. */
export const references: readonly Reference[] = [
  { kind: 'templates', field: 'die', to: 'dies' },
  { kind: 'recipes', field: 'belt', to: 'belts' },
  { kind: 'recipes', field: 'press', to: 'presses' },
  { kind: 'lines', field: 'belt', to: 'belts' },
  { kind: 'pulleys', field: 'line', to: 'lines' },
  { kind: 'positions', field: 'line', to: 'lines' },
  { kind: 'rolls', field: 'belt', to: 'belts' },
  { kind: 'surveys', field: 'line', to: 'lines' },
];

export interface DanglingReference extends Reference {
  /** The thing that refers. */
  readonly id: string;
  /** The id that nothing has. */
  readonly missing: string;
}

/**
 * References of a plant's things to things that are not there.
 *
 * @param plant - any plant
 * @returns one entry a broken reference, in the order of `references`
 */
export function danglingReferences(plant: Plant): readonly DanglingReference[] {
  return references.flatMap((reference) =>
    Object.entries(plant[reference.kind]).flatMap(([id, thing]) => {
      const target: unknown = Reflect.get(thing, reference.field);
      if (typeof target !== 'string' || Object.hasOwn(plant[reference.to], target)) return [];
      return [{ ...reference, id, missing: target }];
    }),
  );
}
