import type { Plant } from '../plant.ts';
import type { Pulley } from '../things/line.ts';
import type { Survey } from '../things/survey.ts';
import { surveyPulleys } from './survey-pulleys.ts';

/** The pulleys of a line in travel order; empty when nobody entered any. `survey` is there when they come from one. */
export interface LinePulleys {
  readonly pulleys: readonly Pulley[];
  readonly survey?: Survey;
}

/**
 * How the belt of a line is led: by the pulley table when it has rows for the line, else by its survey. Of several
 * surveys the last one in the order of their ids counts, so a later one is named later.
 *
 * @param plant - pulleys and surveys, by id
 * @param line - id of the line
 * @throws what `surveyPulleys` refuses
 */
export function linePulleys(plant: Pick<Plant, 'pulleys' | 'surveys'>, line: string): LinePulleys {
  const pulleys = Object.values(plant.pulleys).filter((pulley) => pulley.line === line);
  if (pulleys.length > 0) return { pulleys: pulleys.sort((a, b) => a.order - b.order) };
  const survey = Object.values(plant.surveys)
    .filter((candidate) => candidate.line === line)
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .at(-1);
  return survey ? { pulleys: surveyPulleys(survey), survey } : { pulleys: [] };
}
