import type { Measurement, Survey, SurveyLayout } from '../things/survey.ts';

/** Where drive and take-up stand in each layout. */
export const layoutParts: Readonly<
  Record<SurveyLayout, { readonly drive: 'end' | 'bed'; readonly takeUp: 'none' | 'end' | 'bed' }>
> = {
  'end-drive': { drive: 'end', takeUp: 'none' },
  'end-drive-end-take-up': { drive: 'end', takeUp: 'end' },
  'end-drive-bed-take-up': { drive: 'end', takeUp: 'bed' },
  'bed-drive': { drive: 'bed', takeUp: 'none' },
  'bed-drive-end-take-up': { drive: 'bed', takeUp: 'end' },
  'bed-drive-bed-take-up': { drive: 'bed', takeUp: 'bed' },
};

/** A coordinate is a sum of measurements, each taken once forwards (1) or backwards (-1). */
export type Sum = readonly (readonly [sign: 1 | -1, field: Measurement])[];

/** One pulley that a survey finds, with the measurements its place and size come from. */
export interface Station {
  readonly name: 'infeed' | 'discharge' | 'drive' | 'take-up' | `${'drive' | 'take-up'}-snub-${'before' | 'after'}`;
  readonly turn: 'left' | 'right';
  readonly x: Sum;
  readonly y: Sum;
  readonly diameter: Measurement;
}

const infeed: Station = { name: 'infeed', turn: 'left', x: [], y: [], diameter: 'infeedDiameter_m' };
const discharge: Station = {
  name: 'discharge',
  turn: 'left',
  x: [[1, 'endDistance_m']],
  y: [],
  diameter: 'dischargeDiameter_m',
};

const driveGroup: readonly Station[] = [
  {
    name: 'drive-snub-before',
    turn: 'right',
    x: [
      [1, 'driveDistance_m'],
      [-1, 'driveSnubBefore_m'],
    ],
    y: [[-1, 'driveSnubDrop_m']],
    diameter: 'driveSnubDiameter_m',
  },
  {
    name: 'drive',
    turn: 'left',
    x: [[1, 'driveDistance_m']],
    y: [[-1, 'driveDrop_m']],
    diameter: 'driveDiameter_m',
  },
  {
    name: 'drive-snub-after',
    turn: 'right',
    x: [
      [1, 'driveDistance_m'],
      [1, 'driveSnubAfter_m'],
    ],
    y: [[-1, 'driveSnubDrop_m']],
    diameter: 'driveSnubDiameter_m',
  },
];

const takeUpGroup: readonly Station[] = [
  {
    name: 'take-up-snub-before',
    turn: 'right',
    x: [
      [1, 'takeUpDistance_m'],
      [-1, 'takeUpSnubBefore_m'],
    ],
    y: [[-1, 'takeUpSnubDrop_m']],
    diameter: 'takeUpSnubDiameter_m',
  },
  {
    name: 'take-up',
    turn: 'left',
    x: [[1, 'takeUpDistance_m']],
    y: [[-1, 'takeUpDrop_m']],
    diameter: 'takeUpDiameter_m',
  },
  {
    name: 'take-up-snub-after',
    turn: 'right',
    x: [
      [1, 'takeUpDistance_m'],
      [1, 'takeUpSnubAfter_m'],
    ],
    y: [[-1, 'takeUpSnubDrop_m']],
    diameter: 'takeUpSnubDiameter_m',
  },
];

/**
 * Pulleys of a surveyed line in travel order: along the lower strand from the infeed end, which is also the
 * way one walks; the belt comes back on the upper strand, under the rollers, against the goods.
 */
export function surveyStations(
  survey: Pick<Survey, 'layout' | 'driveDistance_m' | 'takeUpDistance_m'>,
): readonly Station[] {
  const parts = layoutParts[survey.layout];
  const drive = parts.drive === 'bed' ? driveGroup : [];
  const takeUp = parts.takeUp === 'bed' ? takeUpGroup : [];
  const takeUpFirst = (survey.takeUpDistance_m ?? 0) < (survey.driveDistance_m ?? 0);
  return [infeed, ...(takeUpFirst ? [...takeUp, ...drive] : [...drive, ...takeUp]), discharge];
}
