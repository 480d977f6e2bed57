import type { PositionLabel } from '@loopwright/jobs';
import { type LabelPrint, labelsPdf } from '@loopwright/sheets/pdf';
import { handOver } from '../../page/hand-over.ts';
import { sheetFonts } from '../../page/sheet-fonts.ts';

/** Makes the labels' PDF in the browser and hands it to the reader as a file. */
export async function saveLabelsPdf(labels: readonly PositionLabel[], print: Omit<LabelPrint, 'fonts'>): Promise<void> {
  const bytes = await labelsPdf(labels, { ...print, fonts: await sheetFonts() });
  const [first] = labels;
  const name = labels.length === 1 ? first?.position : first?.plant.id;
  handOver(new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }), `labels-${name}.pdf`);
}
