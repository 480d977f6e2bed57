import { trustedAddress } from '../../../offline/trusted-address.ts';
import type { TableAnswer, TableAsk, TableStage } from './table-ask.ts';
import workerAddress from './table-worker.ts?worker&url';

/** How the asking is followed and stopped. */
export interface Following {
  readonly signal?: AbortSignal;
  readonly onStage?: (stage: TableStage) => void;
}

/**
 * Asks a worker of its own; it ends with its answer, or at once when nobody wants the answer any more.
 *
 * @returns the answer; undefined when it was stopped
 */
export function askWorker(ask: TableAsk, { signal, onStage }: Following = {}): Promise<TableAnswer | undefined> {
  const worker = new Worker(trustedAddress('tables', workerAddress), { type: 'module' });
  return new Promise<TableAnswer | undefined>((resolve) => {
    signal?.addEventListener('abort', () => resolve(undefined));
    worker.onerror = () => resolve({ is: 'refused', fault: { code: 'failed', data: {} } });
    worker.onmessage = ({ data }: MessageEvent<TableAnswer>) => {
      if (data.is === 'stage') onStage?.(data.stage);
      else resolve(data);
    };
    worker.postMessage(ask, ask.do === 'read' ? [ask.bytes] : []);
  }).finally(() => worker.terminate());
}
