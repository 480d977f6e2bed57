import type { Press, Recipe, Template } from '@loopwright/plant';
import type { PressCycle } from '../press-cycle/press-cycle.ts';
import type { NoCycle } from '../press-cycle/run-cycle.ts';
import type { Quantity } from '../quantity.ts';

/** The press stack in the order of the hands, bottom first. */
export const stackLayers = ['bottom-plate', 'template', 'belt', 'release-cloth', 'press-plate', 'sensor-lead'] as const;
export type StackLayer = (typeof stackLayers)[number];

export interface CardPress {
  readonly press?: Press;
  readonly checkAge_days?: number;
  readonly recipe?: Recipe;
  readonly template?: Template;
  readonly stripHeight: Quantity;
  readonly beltPressure?: Quantity;
  /** Gauge pressure with edge strips of belt thickness, and on the lone belt without them. */
  readonly gaugePressure?: Quantity;
  readonly pressureWithoutStrips?: Quantity;
  /** The cycle as computed for this press at this outlet; why there is none; absent without press or recipe. */
  readonly cycle?: PressCycle | NoCycle;
  /** As computed; else as somebody timed it. */
  readonly readyAt?: Quantity;
  readonly dwell?: Quantity;
  readonly openAt?: Quantity;
}
