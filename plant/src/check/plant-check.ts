import type { RefusalData } from '@loopwright/engine/refusal';
import type { Kind, Plant, ThingOf } from '../plant.ts';
import type { CheckCode } from './check-codes.ts';
import type { LedLines } from './led-lines.ts';

/** One thing that does not go together with another. */
export interface Finding {
  readonly kind: Kind;
  readonly id: string;
  /** Key in the schema. */
  readonly field?: string;
  readonly data: RefusalData;
}

/** A rule between fields: one row of the table of rules. */
export interface PlantCheck {
  readonly code: CheckCode;
  readonly level: 'error' | 'care';
  /** Kinds of things the rule looks at; it is silent unless all of them are known whole. */
  readonly reads: readonly Kind[];
  find(plant: Plant, led: LedLines): readonly Finding[];
}

/** What a rule says of one thing: the field at fault and the numbers, or nothing. */
export type Fault = { readonly field?: string; readonly data: RefusalData } | undefined;

/** Asks every thing of one kind; `fault` answers with what is wrong with it. */
export function each<K extends Kind>(kind: K, fault: (thing: ThingOf<K>, plant: Plant, led: LedLines) => Fault) {
  return (plant: Plant, led: LedLines): readonly Finding[] =>
    (Object.values(plant[kind]) as ThingOf<K>[]).flatMap((thing) => {
      const found = fault(thing, plant, led);
      return found ? [{ kind, id: thing.id, ...found }] : [];
    });
}
