import { type SentenceData, sentenceWithoutPlace, surveyWords, withPlace } from './sentence.ts';
import type { Voice } from './speak.ts';

/** Something wrong in a file of a plant folder; any object of this shape will do. */
export interface FileProblem {
  readonly file: string;
  readonly row?: number;
  readonly field?: string;
  readonly code: string;
  readonly data: SentenceData;
}

/** The sentence for a problem of a plant folder: file, row and column in front, then what, allowed, next step. */
export function problemSentence(voice: Voice, problem: FileProblem): string {
  return withPlace(placeText(voice, problem), problemText(voice, problem));
}

/** The same sentence without file, row and column, where these stand beside it. */
export function problemReason(voice: Voice, problem: FileProblem): string {
  return withPlace('', problemText(voice, problem));
}

function problemText(voice: Voice, problem: FileProblem): string {
  const row = problem.row === undefined ? {} : { row: problem.row };
  const words = problem.field === undefined ? {} : surveyWords(voice, problem.field, problem.data);
  return sentenceWithoutPlace(voice, problem.code, { ...row, ...problem.data, ...words }, 'problem');
}

function placeText(voice: Voice, { file, row, field }: FileProblem): string {
  const where = { file, ...(row !== undefined && { row: String(row) }), ...(field !== undefined && { field }) };
  if (row !== undefined && field !== undefined) return voice.say('place.row-field', where);
  if (row !== undefined) return voice.say('place.row', where);
  return field === undefined ? voice.say('place.file', where) : voice.say('place.field', where);
}
