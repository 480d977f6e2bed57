import type { Print } from '@loopwright/sheets';
import { printPdf } from '@loopwright/sheets/pdf';
import type { PrintAnswer } from './print-answer.ts';
import { sheetFonts } from './sheet-fonts.ts';

const answer = (message: PrintAnswer) =>
  self.postMessage(message, { transfer: message.is === 'made' ? [message.bytes.buffer] : [] });

self.onmessage = ({ data }: MessageEvent<Print>) => {
  void made(data).then(answer, () => answer({ is: 'failed' }));
};

async function made(print: Print): Promise<PrintAnswer> {
  const bytes = await printPdf(print, await sheetFonts(), wholePercents());
  return { is: 'made', bytes: new Uint8Array(bytes) };
}

/** Told of each line and letter that is set, it passes on whole percents. */
function wholePercents(): (share: number) => void {
  let last = 0;
  return (share) => {
    if (share < last + 0.01) return;
    last = share;
    answer({ is: 'share', share });
  };
}
