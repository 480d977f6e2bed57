import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { PositionLabel } from '@loopwright/jobs';
import type { Page } from '@loopwright/sheets';
import {
  cardPdf,
  type FlowPaper,
  flowPapers,
  flowPdf,
  type LabelPrint,
  labelsPdf,
  type Paper,
  papers,
  type SheetFonts,
  sheetFontFiles,
} from '@loopwright/sheets/pdf';

const find = createRequire(import.meta.url);

/** The card as a PDF file's bytes; `paper` as people type it, in any case. */
export async function makePdf(page: Page, paper: string): Promise<Uint8Array> {
  return cardPdf(page, paperOf(paper), await fonts());
}

/** Labels of positions as a PDF file's bytes. */
export async function makeLabels(
  labels: readonly PositionLabel[],
  print: Omit<LabelPrint, 'fonts'>,
): Promise<Uint8Array> {
  return labelsPdf(labels, { ...print, fonts: await fonts() });
}

/** A page that flows over sheets as a PDF file's bytes; `paper` as people type it, in any case. */
export async function makeFlowPdf(page: Page, paper: string): Promise<Uint8Array> {
  const named: FlowPaper | undefined = flowPapers.find((each) => each.toLowerCase() === paper);
  return flowPdf(page, named ?? 'A4', await fonts());
}

async function fonts(): Promise<SheetFonts> {
  const [regular, bold] = await Promise.all([fontBytes(sheetFontFiles.regular), fontBytes(sheetFontFiles.bold)]);
  return { regular, bold };
}

function paperOf(typed: string): Paper {
  return papers.find((paper) => paper.toLowerCase() === typed) ?? 'A5';
}

function fontBytes(file: string): Promise<Uint8Array> {
  return readFile(find.resolve(file));
}
