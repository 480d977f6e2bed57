import { definitionsOf, kinds, type Plant, type PlantDefinition } from '@loopwright/plant';
import { definitions, removal } from '@loopwright/records';
import type { Change } from './plant-store.ts';

/** The changes that make one plant of another. */
export function plantDifferences(from: Plant, to: Plant): readonly Change[] {
  const old = new Map(definitionsOf(from).map((definition) => [keyOf(definition), textOf(definition)]));
  const changed = definitionsOf(to).filter((definition) => old.get(keyOf(definition)) !== textOf(definition));
  const gone = kinds.flatMap((kind) =>
    Object.keys(from[kind])
      .filter((id) => !Object.hasOwn(to[kind], id))
      .map((id) => removal(kind, id)),
  );
  return [...definitions(changed), ...gone];
}

function keyOf({ kind, thing }: PlantDefinition): string {
  return kind === 'plant' ? kind : `${kind}/${thing.id}`;
}

/** A thing as text in which the order of its fields makes no difference. */
function textOf({ thing }: PlantDefinition): string {
  return JSON.stringify(thing, (_name, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}
