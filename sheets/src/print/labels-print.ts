import type { PositionLabel } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import { type LabelPaper, labelsOnSheet } from '../label/label-paper.ts';
import { labelSheet } from '../label/label-sheets.ts';
import type { Drawing } from '../page/page.ts';
import type { Print } from './print.ts';

/** How labels are printed. `now` is ISO text and stands as creation date. */
export interface LabelPrint {
  readonly paper: LabelPaper;
  readonly speech: Voice;
  readonly now: string;
}

/**
 * Labels of positions on as many sheets as they need, laid out one sheet after the other: a thousand labels take
 * seconds, so whoever asks may do something else in between, or stop.
 * @param labels - at least one, in the order in which they are printed
 * @param how - paper, language and units, moment
 * @returns after each sheet the number of sheets laid out; at the end all of it
 */
export function* layOutLabels(
  labels: readonly PositionLabel[],
  { paper, speech, now }: LabelPrint,
): Generator<{ readonly sheet: number; readonly of: number }, Print, undefined> {
  const of = Math.ceil(labels.length / labelsOnSheet);
  const sheets: Drawing[] = [];
  for (let sheet = 1; sheet <= of; sheet += 1) {
    sheets.push(labelSheet(labels, sheet, paper, speech));
    yield { sheet, of };
  }
  const title = `${speech.say('labels.title')} · ${labels[0]?.plant.name ?? ''}`;
  return { sheets, title, language: speech.language, now };
}

/** The same in one go. */
export function labelsPrint(labels: readonly PositionLabel[], how: LabelPrint): Print {
  const layingOut = layOutLabels(labels, how);
  for (;;) {
    const { done, value } = layingOut.next();
    if (done) return value;
  }
}
