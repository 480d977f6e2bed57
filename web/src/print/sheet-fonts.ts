import type { SheetFonts } from '@loopwright/sheets/pdf';
import regularAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import boldAddress from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';

/** The typeface of what is printed, fetched when something is. */
export async function sheetFonts(): Promise<SheetFonts> {
  const [regular, bold] = await Promise.all([bytesOf(regularAddress), bytesOf(boldAddress)]);
  return { regular, bold };
}

async function bytesOf(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}
