import { engineVersion } from '@loopwright/engine/version';
import type { Belt, Line, Plant, Position, Press, Recipe, Template } from '@loopwright/plant';
import { type CardOptions, groundOf } from '../splice-card/ground.ts';
import { revisionOf } from '../splice-card/revision.ts';
import { type CycleWarning, cycleWarnings } from './cycle-warnings.ts';
import type { Today } from './outlet.ts';
import { type PressCycle, pressCycle } from './press-cycle.ts';
import type { NoCycle } from './run-cycle.ts';

export interface PressCycleOptions extends Pick<CardOptions, 'now' | 'press'> {
  /** What somebody says of the outlet and the air of today. */
  readonly today?: Today;
}

/** The press cycle of one position, or of a recipe that is looked at apart from any, with what it was made from. */
export interface PressCycleReport {
  readonly now: string;
  readonly engine: string;
  /** Fingerprint of the inputs: the same inputs make the same one. */
  readonly revision: string;
  readonly plant: { readonly id: string; readonly name: string };
  readonly position?: Position;
  readonly line?: Line;
  readonly belt: Belt;
  readonly press?: Press;
  readonly recipe?: Recipe;
  readonly template?: Template;
  /** True when somebody tries settings that are no longer those of the recipe. */
  readonly tried?: boolean;
  /** Absent without a press or a recipe. */
  readonly cycle?: PressCycle | NoCycle;
  readonly warnings: readonly CycleWarning[];
}

/**
 * What happens in the press at a position: time line, curve, energy, current, grade, and what they rest on.
 *
 * @param plant - the plant's state
 * @param positionId - where the belt runs
 * @param options - moment, press, and what differs today
 * @throws unknown-position, unknown-press, dangling-line, dangling-belt
 */
export function pressCycleReport(plant: Plant, positionId: string, options: PressCycleOptions): PressCycleReport {
  const ground = groundOf(plant, positionId, options);
  const { line, belt, press, recipe, template, roll, position } = ground;
  const { today } = options;
  const things = { line, belt, template, roll, today };
  const cycle = press && recipe && pressCycle({ ...things, press, recipe });
  return {
    now: options.now,
    engine: engineVersion,
    revision: revisionOf({ ...things, press, recipe, engine: engineVersion }),
    plant: { id: plant.id, name: plant.name },
    position,
    line,
    belt,
    ...(press && { press }),
    ...(recipe && { recipe }),
    ...(template && { template }),
    ...(cycle && { cycle }),
    warnings: cycle && press ? cycleWarnings(cycle, press.name) : [],
  };
}
