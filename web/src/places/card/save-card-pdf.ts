import { cardPrint, type Page, type Paper } from '@loopwright/sheets';
import { savePdf } from '../../print/save-pdf.ts';

/** Makes the card's PDF and hands it to the reader as a file. */
export function saveCardPdf(page: Page, paper: Paper, fileName: string): Promise<void> {
  return savePdf(cardPrint(page, paper), fileName);
}
