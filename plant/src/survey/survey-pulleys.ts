import type { Pulley } from '../things/line.ts';
import type { Measurement, Survey } from '../things/survey.ts';
import { checkSurvey, measured_m, sum_m } from './check-survey.ts';
import { layoutParts, type Station, type Sum, surveyStations } from './stations.ts';
import { isDiameter } from './survey-questions.ts';

/** Which measurements each number of a surveyed pulley comes from; an empty list: fixed by where x and y start. */
export interface PulleyOrigin {
  readonly pulley: string;
  readonly x_m: readonly Measurement[];
  readonly y_m: readonly Measurement[];
  readonly diameter_m: readonly Measurement[];
}

/**
 * Pulleys of a surveyed line in travel order, with x = 0, y = 0 at the centre of the infeed end pulley.
 * `uncertainty_m` of a pulley is the larger standard uncertainty of its two coordinates; coordinates that share
 * a measurement err together, so the uncertainty of the length comes from `surveyUncertainty`, not from these.
 *
 * @param survey - what was measured; distances and diameters [m]
 * @returns the pulleys, source `measured`
 * @throws measurement-missing, measurement-not-used, not-finite, measurement-out-of-order, same-end
 */
export function surveyPulleys(survey: Survey): readonly Pulley[] {
  checkSurvey(survey);
  return surveyStations(survey).map((station, index) => ({
    id: pulleyId(survey, station),
    source: 'measured',
    line: survey.line,
    order: index + 1,
    role: roleOf(survey, station),
    x_m: sum_m(survey, station.x),
    y_m: sum_m(survey, station.y),
    diameter_m: measured_m(survey, station.diameter),
    turn: station.turn,
    uncertainty_m: Math.max(sumUncertainty_m(survey, station.x), sumUncertainty_m(survey, station.y)),
  }));
}

/**
 * Says for every pulley of a survey which measurements its coordinates and its diameter depend on.
 *
 * @param survey - what was measured
 * @returns one row a pulley, in travel order
 */
export function surveyOrigins(survey: Survey): readonly PulleyOrigin[] {
  const fields = (sum: Sum): readonly Measurement[] => sum.map(([, field]) => field);
  return surveyStations(survey).map((station) => ({
    pulley: pulleyId(survey, station),
    x_m: fields(station.x),
    y_m: fields(station.y),
    diameter_m: [station.diameter],
  }));
}

/**
 * Standard uncertainty of one measurement: half-width of its error over the square root of 3, as for a value
 * equally likely anywhere within limits.
 *
 * @param survey - what was measured, with the error of tape and caliper
 * @param field - which measurement
 * @returns standard uncertainty [m]
 * @throws measurement-missing, not-finite
 * @source JCGM 100:2008 (GUM) 4.3.7
 */
export function measurementUncertainty_m(survey: Survey, field: Measurement): number {
  const value_m = Math.abs(measured_m(survey, field));
  const halfWidth_m = isDiameter(field) ? survey.diameterError_m : survey.tapeError_m + survey.tapeShare * value_m;
  return halfWidth_m / Math.sqrt(3);
}

function sumUncertainty_m(survey: Survey, sum: Sum): number {
  return Math.hypot(...sum.map(([, field]) => measurementUncertainty_m(survey, field)));
}

function roleOf(survey: Survey, station: Station): Pulley['role'] {
  if (station.name === 'drive' || station.name === 'take-up') return station.name;
  if (station.name !== 'infeed' && station.name !== 'discharge') return 'snub';
  const parts = layoutParts[survey.layout];
  if (parts.drive === 'end' && station.name === survey.driveEnd) return 'drive';
  if (parts.takeUp === 'end' && station.name === takeUpEnd(survey)) return 'take-up';
  return 'end';
}

function takeUpEnd(survey: Survey): Survey['driveEnd'] {
  if (survey.takeUpEnd) return survey.takeUpEnd;
  const driveAtDischarge = layoutParts[survey.layout].drive === 'end' && survey.driveEnd === 'discharge';
  return driveAtDischarge ? 'infeed' : 'discharge';
}

const pulleyId = (survey: Survey, station: Station): string => `${survey.line}.${station.name}`;
