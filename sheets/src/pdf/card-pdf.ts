import type { Page } from '../page/page.ts';
import { paperSides } from '../paper/paper-sides.ts';
import type { Paper } from '../paper/paper-size.ts';
import { drawingsPdf, type SheetFonts } from './drawings-pdf.ts';

/**
 * The card as a PDF of one sheet, front and back. The same page gives the same bytes, in Node and browser.
 * @param page - the page
 * @param paper - `A5` or `half-letter`
 * @param fonts - bytes of the files named in `sheetFontFiles`
 * @returns the file
 */
export function cardPdf(page: Page, paper: Paper, fonts: SheetFonts): Promise<Uint8Array> {
  const title = `${page.title} · ${page.subtitle}`;
  return drawingsPdf(paperSides(page, paper), { title, language: page.language, now: page.now }, fonts);
}
