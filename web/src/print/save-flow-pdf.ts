import { type FlowPaper, flowPrint, type Page } from '@loopwright/sheets';
import { savePdf } from './save-pdf.ts';

/** Makes the PDF of a page over as many sheets as it needs and hands it to the reader as a file. */
export function saveFlowPdf(page: Page, paper: FlowPaper, fileName: string): Promise<void> {
  return savePdf(flowPrint(page, paper), fileName);
}
