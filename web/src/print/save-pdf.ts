import type { Print } from '@loopwright/sheets';
import { trustedAddress } from '../offline/trusted-address.ts';
import type { Following } from '../page/following.ts';
import { handOver } from '../page/hand-over.ts';
import type { PrintAnswer } from './print-answer.ts';
import workerAddress from './print-worker.ts?worker&url';

/**
 * Makes a PDF in a worker of its own, so that the page stays in hand, and hands it to the reader as a file.
 *
 * @param print - what is printed
 * @param fileName - what the file is called
 * @param following - how it is followed and stopped; stopped, no file comes
 * @throws Error when the file cannot be made
 */
export async function savePdf(print: Print, fileName: string, following: Following = {}): Promise<void> {
  const bytes = await bytesOf(print, following);
  if (bytes !== undefined) handOver(new Blob([bytes], { type: 'application/pdf' }), fileName);
}

function bytesOf(print: Print, { signal, onShare }: Following): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const worker = new Worker(trustedAddress('print', workerAddress), { type: 'module' });
  return new Promise<Uint8Array<ArrayBuffer> | undefined>((resolve, reject) => {
    const fail = () => reject(new Error(`The PDF ${print.title} could not be made.`));
    signal?.addEventListener('abort', () => resolve(undefined));
    worker.onerror = fail;
    worker.onmessage = ({ data }: MessageEvent<PrintAnswer>) => {
      if (data.is === 'share') onShare?.(data.share);
      else if (data.is === 'made') resolve(data.bytes);
      else fail();
    };
    worker.postMessage(print);
  }).finally(() => worker.terminate());
}
