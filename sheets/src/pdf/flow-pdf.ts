import type { Page } from '../page/page.ts';
import { type FlowPaper, flowSheets } from '../paper/flow-sheets.ts';
import { drawingsPdf, type SheetFonts } from './drawings-pdf.ts';

/**
 * A page as a PDF over as many sheets as it needs: a press cycle, the record of a run. The same page gives the same
 * bytes, in Node and browser.
 * @param page - the page
 * @param paper - `A4`, `A5` or `letter`
 * @param fonts - bytes of the files named in `sheetFontFiles`
 * @returns the file
 */
export function flowPdf(page: Page, paper: FlowPaper, fonts: SheetFonts): Promise<Uint8Array> {
  const title = `${page.title} · ${page.subtitle}`;
  return drawingsPdf(flowSheets(page, paper), { title, language: page.language, now: page.now }, fonts);
}
