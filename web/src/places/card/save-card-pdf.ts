import type { Page } from '@loopwright/sheets';
import { cardPdf, type Paper } from '@loopwright/sheets/pdf';
import regularAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import boldAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';

/** Makes the card's PDF in the browser and hands it to the reader as a file. */
export async function saveCardPdf(page: Page, paper: Paper, fileName: string): Promise<void> {
  const [regular, bold] = await Promise.all([bytesOf(regularAddress), bytesOf(boldAddress)]);
  const bytes = await cardPdf(page, paper, { regular, bold });
  const address = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser reads the file after the click; give it a minute before the memory is freed.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

async function bytesOf(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}
