import type { Page } from '@loopwright/sheets';
import { cardPdf, type Paper } from '@loopwright/sheets/pdf';
import regularAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import boldAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import { handOver } from '../../page/hand-over.ts';

/** Makes the card's PDF in the browser and hands it to the reader as a file. */
export async function saveCardPdf(page: Page, paper: Paper, fileName: string): Promise<void> {
  const [regular, bold] = await Promise.all([bytesOf(regularAddress), bytesOf(boldAddress)]);
  const bytes = await cardPdf(page, paper, { regular, bold });
  handOver(new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }), fileName);
}

async function bytesOf(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}
