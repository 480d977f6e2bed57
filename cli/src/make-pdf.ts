import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from '@loopwright/sheets';
import { cardPdf, type Paper, papers, sheetFontFiles } from '@loopwright/sheets/pdf';

const find = createRequire(import.meta.url);

/** The card as a PDF file's bytes; `paper` as people type it, in any case. */
export async function makePdf(page: Page, paper: string): Promise<Uint8Array> {
  const [regular, bold] = await Promise.all([fontBytes(sheetFontFiles.regular), fontBytes(sheetFontFiles.bold)]);
  return cardPdf(page, paperOf(paper), { regular, bold });
}

function paperOf(typed: string): Paper {
  return papers.find((paper) => paper.toLowerCase() === typed) ?? 'A5';
}

function fontBytes(file: string): Promise<Uint8Array> {
  return readFile(find.resolve(file));
}
