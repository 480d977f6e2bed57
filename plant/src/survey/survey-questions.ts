import type { Measurement, SurveyLayout } from '../things/survey.ts';
import { layoutParts } from './stations.ts';

/** One thing to measure. `id` is the key of the question in every language. */
export interface SurveyQuestion {
  readonly id: `survey.${string}`;
  readonly field: Measurement;
  /** A distance is read off a tape hooked at the infeed end or between two centres; a diameter needs a caliper. */
  readonly tool: 'tape' | 'caliper';
}

const atInfeed: readonly Measurement[] = ['infeedDiameter_m'];
const atDrive: readonly Measurement[] = [
  'driveDistance_m',
  'driveDrop_m',
  'driveDiameter_m',
  'driveSnubBefore_m',
  'driveSnubAfter_m',
  'driveSnubDrop_m',
  'driveSnubDiameter_m',
];
const atTakeUp: readonly Measurement[] = [
  'takeUpDistance_m',
  'takeUpDrop_m',
  'takeUpDiameter_m',
  'takeUpSnubBefore_m',
  'takeUpSnubAfter_m',
  'takeUpSnubDrop_m',
  'takeUpSnubDiameter_m',
];
const atDischarge: readonly Measurement[] = ['endDistance_m', 'dischargeDiameter_m'];

/**
 * What to measure on a line of this layout, in the order one walks it with a tape: from the infeed end, with
 * the goods, to the discharge end.
 *
 * @param layout - how the belt is led
 * @returns the questions in walking order
 */
export function surveyQuestions(layout: SurveyLayout): readonly SurveyQuestion[] {
  const parts = layoutParts[layout];
  const fields = [
    ...atInfeed,
    ...(parts.drive === 'bed' ? atDrive : []),
    ...(parts.takeUp === 'bed' ? atTakeUp : []),
    ...atDischarge,
  ];
  return fields.map((field) => ({
    id: `survey.${field.replace(/_m$/, '')}`,
    field,
    tool: isDiameter(field) ? 'caliper' : 'tape',
  }));
}

/** Every measurement a survey can hold, in walking order. */
export const measurements: readonly Measurement[] = [...atInfeed, ...atDrive, ...atTakeUp, ...atDischarge];

export const isDiameter = (field: Measurement): boolean => field.endsWith('Diameter_m');
