import type { Page } from '@loopwright/sheets';
import { type FlowPaper, flowPdf } from '@loopwright/sheets/pdf';
import { handOver } from '../../page/hand-over.ts';
import { sheetFonts } from '../../page/sheet-fonts.ts';

/** Makes the PDF of a record in the browser and hands it to the reader as a file. */
export async function saveRecordPdf(page: Page, paper: FlowPaper, run: string): Promise<void> {
  const bytes = await flowPdf(page, paper, await sheetFonts());
  handOver(new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }), `record-${run}.pdf`);
}
