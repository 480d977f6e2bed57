import type { PositionLabel } from '@loopwright/jobs';
import type { Voice } from '@loopwright/words';
import type { LabelPaper } from '../label/label-paper.ts';
import { labelSheets } from '../label/label-sheets.ts';
import { drawingsPdf, type SheetFonts } from './drawings-pdf.ts';

/** How labels are printed. `now` is ISO text and stands as creation date. */
export interface LabelPrint {
  readonly paper: LabelPaper;
  readonly speech: Voice;
  readonly now: string;
  /** Bytes of the files named in `sheetFontFiles`. */
  readonly fonts: SheetFonts;
}

/**
 * Labels of positions as a PDF. The same labels give the same bytes, in Node and browser.
 * @param labels - at least one
 * @param print - paper, language and units, moment, typeface
 * @returns the file
 */
export function labelsPdf(
  labels: readonly PositionLabel[],
  { paper, speech, now, fonts }: LabelPrint,
): Promise<Uint8Array> {
  const title = `${speech.say('labels.title')} · ${labels[0]?.plant.name ?? ''}`;
  return drawingsPdf(labelSheets(labels, paper, speech), { title, language: speech.language, now }, fonts);
}
