import type { PositionLabel } from '@loopwright/jobs';
import { type LabelPrint, layOutLabels, type Print } from '@loopwright/sheets';
import { type Following, partOf } from '../../page/following.ts';
import { savePdf } from '../../print/save-pdf.ts';

/** Of all the work, what is done when every sheet is laid out. */
const layingOut = 0.2;

/** Makes the labels' PDF and hands it to the reader as a file, unless it is stopped. */
export async function saveLabelsPdf(
  labels: readonly PositionLabel[],
  how: LabelPrint,
  following: Following,
): Promise<void> {
  const print = await laidOut(labels, how, partOf(following, 0, layingOut));
  if (print === undefined) return;
  const [first] = labels;
  const name = labels.length === 1 ? first?.position : first?.plant.id;
  await savePdf(print, `labels-${name}.pdf`, partOf(following, layingOut, 1));
}

/** Sheet by sheet, the page in hand between them. */
async function laidOut(
  labels: readonly PositionLabel[],
  how: LabelPrint,
  { signal, onShare }: Following,
): Promise<Print | undefined> {
  const sheets = layOutLabels(labels, how);
  for (;;) {
    const { done, value } = sheets.next();
    if (done) return value;
    onShare?.(value.sheet / value.of);
    await new Promise((resolve) => setTimeout(resolve));
    if (signal?.aborted) return undefined;
  }
}
