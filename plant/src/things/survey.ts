import * as z from 'zod';
import { id, length_m, percent, provenance } from './field.ts';

/** Ways a live-roller belt is led, as met in practice: where the drive stands, then where the take-up stands. */
export const surveyLayouts = [
  'end-drive',
  'end-drive-end-take-up',
  'end-drive-bed-take-up',
  'bed-drive',
  'bed-drive-end-take-up',
  'bed-drive-bed-take-up',
] as const;
export type SurveyLayout = (typeof surveyLayouts)[number];

export const surveyEnds = ['infeed', 'discharge'] as const;

/**
 * A line measured with a tape, without a drawing. One stands where goods pass from left to right and walks with
 * them. Distances run along the bed from the centre of the infeed end pulley; a drop is how far a centre lies
 * below the straight line through the two end centres. Which measurements a layout needs: `surveyQuestions`.
 */
export const surveySchema = z.strictObject({
  id,
  ...provenance,
  line: id,
  layout: z.enum(surveyLayouts),
  /** At which end an end drive stands. */
  driveEnd: z.enum(surveyEnds).default('infeed'),
  /** At which end an end take-up stands. Default: the end without the drive, so with a drive under the bed discharge. */
  takeUpEnd: z.enum(surveyEnds).optional(),
  infeedDiameter_m: length_m(0.01, 3),
  driveDistance_m: length_m(0.02, 2000).optional(),
  driveDrop_m: length_m(0, 20).optional(),
  driveDiameter_m: length_m(0.01, 3).optional(),
  /** From the drive centre along the bed to the snub before and after it, in goods direction. */
  driveSnubBefore_m: length_m(0, 20).optional(),
  driveSnubAfter_m: length_m(0, 20).optional(),
  driveSnubDrop_m: length_m(-1, 20).optional(),
  driveSnubDiameter_m: length_m(0.01, 3).optional(),
  takeUpDistance_m: length_m(0.02, 2000).optional(),
  takeUpDrop_m: length_m(0, 20).optional(),
  takeUpDiameter_m: length_m(0.01, 3).optional(),
  takeUpSnubBefore_m: length_m(0, 20).optional(),
  takeUpSnubAfter_m: length_m(0, 20).optional(),
  takeUpSnubDrop_m: length_m(-1, 20).optional(),
  takeUpSnubDiameter_m: length_m(0.01, 3).optional(),
  endDistance_m: length_m(0.1, 2000),
  dischargeDiameter_m: length_m(0.01, 3),
  /** A tape reading is taken to lie within +/- (tapeError + tapeShare x length). Common practice, no source. */
  tapeError_m: length_m(0, 0.1).default(0.003),
  tapeShare: percent(0, 0.05).default(0.0005),
  /** A diameter, taken with a caliper or a tape round the pulley, lies within +/- this. Common practice, no source. */
  diameterError_m: length_m(0, 0.1).default(0.001),
});
export type Survey = z.infer<typeof surveySchema>;

/** The fields of a survey that are measured; the rest says what was surveyed and how well. */
export type Measurement = Extract<
  keyof Survey,
  `${string}Distance_m` | `${string}Drop_m` | `${string}Diameter_m` | `${string}Before_m` | `${string}After_m`
>;
