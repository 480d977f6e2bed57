import type { Kind, Worked } from '@loopwright/engine/worked';
import { type Source, sourceOf } from '@loopwright/plant';

/** A number a person sees: in SI, with its kind, its range, where it comes from and how it was computed. */
export interface Quantity {
  readonly value: number;
  readonly kind: Kind;
  readonly low?: number;
  readonly high?: number;
  readonly source: Source;
  readonly worked?: Worked;
  /** True while no test has confirmed the model behind it. */
  readonly uncalibrated?: boolean;
}

/** Two limits of a quantity; a plain number stands for plus and minus that much. */
export type Range = number | readonly [low: number, high: number];

function limits(value: number, range: Range | undefined): { low?: number; high?: number } {
  if (range === undefined) return {};
  if (typeof range === 'number') return { low: value - range, high: value + range };
  return { low: range[0], high: range[1] };
}

/** A computed number; pass the worked formula when one row gave it. */
export function computed(kind: Kind, result: number | Worked, range?: Range): Quantity {
  const worked = typeof result === 'number' ? undefined : result;
  const value = typeof result === 'number' ? result : result.value;
  return { value, kind, source: 'computed', ...limits(value, range), ...(worked && { worked }) };
}

/** A number of common practice: an example, not a measurement. */
export function example(kind: Kind, value: number, range?: Range): Quantity {
  return { value, kind, source: 'example', ...limits(value, range) };
}

/** A number as the plant holds it, with the source that the plant states for that field. */
export function given(
  kind: Kind,
  value: number,
  thing: Parameters<typeof sourceOf>[0],
  field: string,
  range?: Range,
): Quantity {
  return { value, kind, source: sourceOf(thing, field), ...limits(value, range) };
}
