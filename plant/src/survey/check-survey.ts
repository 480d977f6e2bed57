import { Refusal } from '@loopwright/engine/refusal';
import type { Measurement, Survey } from '../things/survey.ts';
import { layoutParts, type Station, surveyStations } from './stations.ts';
import { measurements, surveyQuestions } from './survey-questions.ts';

/** A measurement that the layout needs, or a refusal that names it. */
export function measured_m(survey: Survey, field: Measurement): number {
  const value = survey[field];
  if (value === undefined) throw new Refusal('measurement-missing', field, { layout: survey.layout });
  if (!Number.isFinite(value)) throw new Refusal('not-finite', field, { value: String(value), unit: 'm' });
  return value;
}

/** The coordinate that a sum of measurements gives [m]. */
export function sum_m(survey: Survey, sum: Station['x']): number {
  return sum.reduce((total, [sign, field]) => total + sign * measured_m(survey, field), 0);
}

/**
 * Refuses a survey whose measurements cannot be the layout's: one missing, one too many, a pulley beyond the
 * end it should stand before, drive and take-up entangled, drive and take-up at the same end.
 *
 * @param survey - the survey as read
 * @throws measurement-missing, measurement-not-used, not-finite, measurement-out-of-order, same-end
 */
export function checkSurvey(survey: Survey): void {
  checkFields(survey);
  checkEnds(survey);
  checkOrder(survey);
}

function checkFields(survey: Survey): void {
  const needed = new Set(surveyQuestions(survey.layout).map((question) => question.field));
  for (const field of measurements) {
    const value = survey[field];
    if (needed.has(field)) measured_m(survey, field);
    else if (value !== undefined) {
      throw new Refusal('measurement-not-used', field, { layout: survey.layout, value, unit: 'm' });
    }
  }
}

function checkEnds(survey: Survey): void {
  const parts = layoutParts[survey.layout];
  if (parts.drive === 'end' && parts.takeUp === 'end' && survey.takeUpEnd === survey.driveEnd) {
    throw new Refusal('same-end', 'takeUpEnd', { value: survey.driveEnd });
  }
}

/** Centres must follow each other from infeed to discharge; names the last measurement of the first that does not. */
function checkOrder(survey: Survey): void {
  let before_m = 0;
  for (const station of surveyStations(survey).slice(1)) {
    const x_m = sum_m(survey, station.x);
    if (x_m <= before_m) {
      const field = station.x.at(-1)?.[1] ?? 'endDistance_m';
      throw new Refusal('measurement-out-of-order', field, {
        value: measured_m(survey, field),
        reached: x_m,
        min: before_m,
        unit: 'm',
        pulley: station.name,
      });
    }
    before_m = x_m;
  }
}
