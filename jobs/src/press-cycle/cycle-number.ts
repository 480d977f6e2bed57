import type { Kind } from '@loopwright/engine/worked';
import type { Prior, Source } from '@loopwright/plant';
import { example, given, type Quantity } from '../quantity.ts';

/** What a number belongs to. */
export const cycleGroups = ['recipe', 'outlet', 'press', 'stack', 'belt'] as const;
export type CycleGroup = (typeof cycleGroups)[number];

/** A number that a cycle was computed from, named like the field of the thing that holds it: `presses.platenLoss`. */
export interface CycleNumber {
  readonly group: CycleGroup;
  readonly field: string;
  readonly quantity: Quantity;
  /** Of a layer, how well it conducts. */
  readonly conductivity?: Quantity;
}

interface Sourced {
  readonly source: Source;
  readonly sources?: Readonly<Record<string, Source>> | undefined;
}

/** A number that a thing may hold; else its prior, an example with its range. */
export function known<T extends Sourced>(
  kind: Kind,
  thing: T | undefined,
  field: keyof T & string,
  prior: Prior,
): Quantity {
  const value = thing?.[field];
  if (thing === undefined || typeof value !== 'number') return example(kind, prior.value, [prior.low, prior.high]);
  return given(kind, value, thing, field);
}
