import {
  type Line,
  type Measurement,
  type Plant,
  type Pulley,
  type Survey,
  type SurveyLayout,
  surveyLayouts,
  surveyQuestions,
} from '@loopwright/plant';
import type { Language } from '@loopwright/words';
import type { Entries, PlainThing } from '../../../form/entries.ts';
import { formFields } from '../../../form/form-field.ts';
import { type EntryContext, type EntryProblem, readEntries } from '../../../form/read-entries.ts';
import type { Geometry, KnownGeometry, Way } from './geometry.ts';
import { surveyFields } from './geometry-fields.ts';
import { hasTakeUp, type LineEnd, outwards, takeUpEnd } from './layout-facts.ts';
import { type Presence, readTakeUp } from './read-take-up.ts';

export type Problems = Readonly<Record<string, EntryProblem>>;

/** What the editor says, as far as it can be read. */
export interface GeometryReading {
  readonly layout: SurveyLayout | undefined;
  readonly driveEnd: LineEnd;
  readonly takeUpEnd: LineEnd | undefined;
  readonly survey: Survey | undefined;
  readonly surveyProblems: Problems;
  /** Measurements that the layout needs and that cannot be read yet, in walking order. */
  readonly missing: readonly Measurement[];
  /** One for each row, in order; undefined where a row cannot be read. */
  readonly pulleys: readonly (Pulley | undefined)[];
  readonly pulleyProblems: readonly Problems[];
  /** The line with its take-up as it would be saved. */
  readonly line: Line | undefined;
  readonly takeUpProblems: Problems;
}

interface Reader {
  readonly plant: Plant;
  readonly known: KnownGeometry;
  readonly language: Language;
}

/** Reads everything in the editor. */
export function readGeometry(geometry: Geometry, reader: Reader): GeometryReading {
  const survey = readSurvey(geometry.survey, reader);
  const rows = geometry.rows.map((row, at) => readRow(row.entries, row.key, at + 1, reader));
  const withSurvey = geometry.way === 'survey';
  // An end take-up moves outwards, one under the bed as somebody says.
  const direction = withSurvey && survey.takeUpEnd !== undefined ? outwards(survey.takeUpEnd) : undefined;
  return {
    ...survey,
    pulleys: rows.map(({ thing }) => thing as Pulley | undefined),
    pulleyProblems: rows.map(({ problems }) => problems),
    ...readTakeUp(geometry.takeUp, {
      presence: takeUpPresence(geometry.way, survey.layout),
      direction,
      line: reader.known.line,
      language: reader.language,
    }),
  };
}

/** Whether the line has a take-up: a layout says it, coordinates leave it open. */
export function takeUpPresence(way: Way, layout: SurveyLayout | undefined): Presence {
  if (way === 'coordinates' || layout === undefined) return 'open';
  return hasTakeUp(layout) ? 'there' : 'none';
}

type SurveyReading = Pick<
  GeometryReading,
  'layout' | 'driveEnd' | 'takeUpEnd' | 'survey' | 'surveyProblems' | 'missing'
>;

function readSurvey(entries: Entries, { plant, known, language }: Reader): SurveyReading {
  const context = contextOf(plant, language, known.survey);
  const said = (key: string) => {
    const entry = entries[key];
    return entry?.kept === true ? textOf(known.survey, key) : entry?.text;
  };
  const layout = surveyLayouts.find((known) => known === said('layout'));
  const driveEnd: LineEnd = said('driveEnd') === 'discharge' ? 'discharge' : 'infeed';
  const end = takeUpEnd(layout ?? 'end-drive', driveEnd, said('takeUpEnd') === 'infeed' ? 'infeed' : undefined);
  if (layout === undefined) {
    return { layout, driveEnd, takeUpEnd: end, survey: undefined, surveyProblems: {}, missing: [] };
  }
  const { thing, problems } = readEntries('surveys', surveyFields(layout), entries, context);
  const missing = surveyQuestions(layout)
    .map(({ field }) => field)
    .filter((field) => problems[field] !== undefined);
  return { layout, driveEnd, takeUpEnd: end, survey: thing as Survey | undefined, surveyProblems: problems, missing };
}

function textOf(thing: PlainThing | undefined, key: string): string | undefined {
  const value = thing?.[key];
  return typeof value === 'string' ? value : undefined;
}

function contextOf(plant: Plant, language: Language, original: PlainThing | undefined): EntryContext {
  return { language, original, exists: (kind, id) => Object.hasOwn(Reflect.get(plant, kind) ?? {}, id) };
}

function readRow(entries: Entries, id: string, order: number, { plant, language, known }: Reader) {
  const original = known.pulleys.find((pulley) => pulley.id === id);
  const placed = { ...entries, order: { text: String(order) } };
  return readEntries('pulleys', formFields('pulleys'), placed, contextOf(plant, language, original));
}
