import { type Kind, type Measurement, type SurveyLayout, surveyQuestions } from '@loopwright/plant';
import { type FormField, formFields } from '../../../form/form-field.ts';
import { asksDriveEnd, asksTakeUpEnd } from './layout-facts.ts';

function fieldOf(kind: Kind, key: string): FormField {
  const field = formFields(kind).find((known) => known.key === key);
  if (field === undefined) throw new Error(`${kind} have no field ${key}`);
  return field;
}

/** The field of one measurement. A survey that has to do without may leave it out, a layout that needs it may not. */
export function measurementField(field: Measurement): FormField {
  return { ...fieldOf('surveys', field), required: true };
}

/** How good tape and caliper are. */
export const errorFields: readonly FormField[] = ['tapeError_m', 'tapeShare', 'diameterError_m'].map((key) =>
  fieldOf('surveys', key),
);

export const sourceField = fieldOf('surveys', 'source');

/** Every field of a survey of one layout: what another layout measures is left out. */
export function surveyFields(layout: SurveyLayout): readonly FormField[] {
  const named = ['id', 'line', 'layout', 'source', 'note'].map((key) => fieldOf('surveys', key));
  const driveEnd = asksDriveEnd(layout) ? [fieldOf('surveys', 'driveEnd')] : [];
  const takeUpEnd = asksTakeUpEnd(layout) ? [fieldOf('surveys', 'takeUpEnd')] : [];
  const measured = surveyQuestions(layout).map(({ field }) => measurementField(field));
  return [...named, ...driveEnd, ...takeUpEnd, ...measured, ...errorFields];
}

/** What a row of the table of pulleys asks for; the rest of a pulley follows from its place in the table. */
export const pulleyRowFields: readonly FormField[] = [
  'role',
  'x_m',
  'y_m',
  'diameter_m',
  'turn',
  'faceWidth_m',
  'uncertainty_m',
].map((key) => fieldOf('pulleys', key));

/** Travel of the take-up from where it stands, slacker and tighter: what somebody at the line can see. */
export const takeUpFields = {
  kind: fieldOf('lines', 'takeUpKind'),
  back: travelField('takeUpReference_m', 'takeUpBack'),
  on: travelField('takeUpStroke_m', 'takeUpOn'),
  force: fieldOf('lines', 'takeUpForce_N'),
} as const;

// Nothing said is not the same as no travel, so the usual 0 of the schema is not offered.
function travelField(key: string, name: string): FormField {
  const { byDefault: _, ...field } = fieldOf('lines', key);
  return { ...field, key: name, name, required: false };
}
