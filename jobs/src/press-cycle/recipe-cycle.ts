import { engineVersion } from '@loopwright/engine/version';
import { type Belt, diesFor, type Line, type Plant, type Press, type Recipe } from '@loopwright/plant';
import { chooseTemplate } from '../splice-card/choose.ts';
import { revisionOf } from '../splice-card/revision.ts';
import { cycleWarnings } from './cycle-warnings.ts';
import { outletOf, type Today } from './outlet.ts';
import { pressCycle } from './press-cycle.ts';
import type { PressCycleReport } from './press-cycle-report.ts';

/** What a recipe is looked at with: a belt, a press and settings of one’s choice, plugged in at a line or elsewhere. */
export interface RecipeCycleChoice {
  readonly belt: Belt;
  readonly press: Press;
  readonly recipe: Recipe;
  /** Where the press is plugged in; without it an outlet of the press's nominal voltage. */
  readonly line?: Line | undefined;
  readonly today?: Today;
  /** True when the settings are no longer those of the recipe. */
  readonly tried?: boolean;
  /** False for the numbers without their ranges, in a third of the time. */
  readonly withRange?: boolean;
}

/**
 * The press cycle of a recipe, apart from any position: for looking for settings.
 *
 * @param plant - the plant's state, for the template that fits
 * @param choice - belt, press, settings and where the press is plugged in
 * @param now - the moment of asking, ISO text in UTC
 */
export function recipeCycleReport(plant: Plant, choice: RecipeCycleChoice, now: string): PressCycleReport {
  const { belt, press, recipe, line, today, tried } = choice;
  const template = line && chooseTemplate(plant, diesFor(plant, belt, line.width_m)[0], belt, line.width_m);
  const things = { line, belt, press, recipe, template, today };
  const cycle = pressCycle(things, choice.withRange);
  return {
    now,
    engine: engineVersion,
    revision: revisionOf({ ...things, engine: engineVersion }),
    plant: { id: plant.id, name: plant.name },
    belt,
    press,
    recipe,
    cycle,
    ...(line && { line }),
    ...(template && { template }),
    ...(tried && { tried }),
    warnings: cycleWarnings(cycle, press.name),
  };
}

/** Mains, air and extension lead as they are taken while nobody says what differs today. */
export interface CycleSurroundings {
  readonly volts_V: number;
  readonly air_degC: number;
  readonly lead_m: number;
}

/**
 * What a press meets at a line.
 *
 * @param line - where it is plugged in, when that is known
 * @param press - the press
 */
export function cycleSurroundings(line: Line | undefined, press: Press): CycleSurroundings {
  const { volts, air } = outletOf(line, press);
  return { volts_V: volts.value, air_degC: air.value, lead_m: line?.outletLead_m ?? 0 };
}
