import type { Kind, Worked } from '@loopwright/engine/worked';
import type { Source } from '@loopwright/plant';

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
