import { beltPath } from '@loopwright/engine/loop';
import { Refusal } from '@loopwright/engine/refusal';
import { type BeltThickness, pathInput } from '../path-input.ts';
import type { Measurement, Survey } from '../things/survey.ts';
import { measured_m } from './check-survey.ts';
import { surveyStations } from './stations.ts';
import { measurementUncertainty_m, surveyPulleys } from './survey-pulleys.ts';
import { surveyQuestions } from './survey-questions.ts';

/** What one measurement does to the length of the loop. */
export interface SurveyShare {
  readonly field: Measurement;
  /** Growth of the loop per growth of the measurement. */
  readonly sensitivity: number;
  /** Standard uncertainty of the measurement. */
  readonly uncertainty_m: number;
  /** Its share of the variance of the length, 0 to 1. */
  readonly share: number;
}

export interface SurveyUncertainty {
  /** Length of the loop that the survey gives, at the take-up position at which it was made. */
  readonly length_m: number;
  /** Standard uncertainty of that length. */
  readonly uncertainty_m: number;
  /** Largest share first: what to measure again, if one must. */
  readonly shares: readonly SurveyShare[];
}

// Small beside a tape's error, large beside rounding: L is smooth over millimetres.
const step_m = 1e-5;

/**
 * Length of a surveyed loop with its standard uncertainty. Every measurement errs by itself; coordinates that share
 * one err together.
 *
 * u(L)^2 = sum((dL/dm)^2 * u(m)^2), dL/dm by central differences through the belt path.
 *
 * @param survey - what was measured
 * @param belt - thickness and neutral line [m]
 * @throws what `surveyPulleys` refuses; a path that no belt can run, by the measurement that placed the pulley
 * @source JCGM 100:2008 (GUM) 5.1.2
 */
export function surveyUncertainty(survey: Survey, belt: BeltThickness): SurveyUncertainty {
  const length_m = surveyLength_m(survey, belt);
  const parts = surveyQuestions(survey.layout).map(({ field }) => {
    const sensitivity = sensitivityTo(field, survey, belt);
    const uncertainty_m = measurementUncertainty_m(survey, field);
    return { field, sensitivity, uncertainty_m, effect: (sensitivity * uncertainty_m) ** 2 };
  });
  const variance = parts.reduce((sum, { effect }) => sum + effect, 0);
  const shares = parts.map(({ effect, ...part }) => ({ ...part, share: variance === 0 ? 0 : effect / variance }));
  return { length_m, uncertainty_m: Math.sqrt(variance), shares: shares.sort((a, b) => b.share - a.share) };
}

function sensitivityTo(field: Measurement, survey: Survey, belt: BeltThickness): number {
  const moved = (by_m: number) => surveyLength_m({ ...survey, [field]: measured_m(survey, field) + by_m }, belt);
  return (moved(step_m) - moved(-step_m)) / (2 * step_m);
}

/** Length of the loop of a survey [m]; a refusal of the path names the measurement that placed the pulley. */
function surveyLength_m(survey: Survey, belt: BeltThickness): number {
  const pulleys = surveyPulleys(survey);
  try {
    return beltPath(pathInput(pulleys, belt)).length_m;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const index = Number(/^pulleys\[(\d+)\]/.exec(error.path)?.[1]);
    const station = surveyStations(survey)[index];
    if (!station) throw error;
    throw new Refusal(error.code, station.x.at(-1)?.[1] ?? station.diameter, error.data);
  }
}
