import { type Plant, references } from '@loopwright/plant';
import type { PlainThing } from '../../form/entries.ts';
import type { StoreKind } from '../../form/thing-layout.ts';

/**
 * What stands in the form of a new thing: a free short name where people have none of their own, and the other thing
 * it belongs to when there is only one.
 *
 * @param plant - as it stands
 * @param kind - of the new thing
 * @param beginning - of its short name, where one is proposed
 */
export function proposedThing(plant: Plant, kind: StoreKind, beginning: string | undefined): PlainThing {
  const only = references.flatMap((reference): [string, string][] => {
    const there = Object.keys(plant[reference.to]);
    const [first] = there;
    const needed = reference.kind === kind && reference.field !== 'press';
    return needed && there.length === 1 && first !== undefined ? [[reference.field, first]] : [];
  });
  const source = kind === 'belts' ? 'data sheet' : kind === 'badges' ? 'person' : undefined;
  return {
    ...Object.fromEntries(only),
    ...(beginning === undefined ? {} : { id: freeName(plant, kind, beginning) }),
    ...(source === undefined ? {} : { source }),
  };
}

function freeName(plant: Plant, kind: StoreKind, beginning: string): string {
  let number = 1;
  while (Object.hasOwn(plant[kind], `${beginning}-${number}`)) number += 1;
  return `${beginning}-${number}`;
}
