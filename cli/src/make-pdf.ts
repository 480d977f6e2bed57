import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { PositionLabel } from '@loopwright/jobs';
import {
  cardPrint,
  type FlowPaper,
  flowPapers,
  flowPrint,
  type LabelPrint,
  labelsPrint,
  type Page,
  type Paper,
  type Print,
  papers,
} from '@loopwright/sheets';
import { printPdf, sheetFontFiles } from '@loopwright/sheets/pdf';

const find = createRequire(import.meta.url);

/** The card as a PDF file's bytes; `paper` as people type it, in any case. */
export function makePdf(page: Page, paper: string): Promise<Uint8Array> {
  return made(cardPrint(page, paperOf(paper)));
}

/** Labels of positions as a PDF file's bytes. */
export function makeLabels(labels: readonly PositionLabel[], how: LabelPrint): Promise<Uint8Array> {
  return made(labelsPrint(labels, how));
}

/** A page that flows over sheets as a PDF file's bytes; `paper` as people type it, in any case. */
export function makeFlowPdf(page: Page, paper: string): Promise<Uint8Array> {
  const named: FlowPaper | undefined = flowPapers.find((each) => each.toLowerCase() === paper);
  return made(flowPrint(page, named ?? 'A4'));
}

async function made(print: Print): Promise<Uint8Array> {
  const [regular, bold] = await Promise.all([fontBytes(sheetFontFiles.regular), fontBytes(sheetFontFiles.bold)]);
  return printPdf(print, { regular, bold });
}

function paperOf(typed: string): Paper {
  return papers.find((paper) => paper.toLowerCase() === typed) ?? 'A5';
}

function fontBytes(file: string): Promise<Uint8Array> {
  return readFile(find.resolve(file));
}
