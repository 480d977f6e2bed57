import type { TableAnswer, TableAsk, TableStage } from './table-ask.ts';
import workerAddress from './table-worker.ts?worker&url';

interface PolicyFactory {
  createPolicy(
    name: string,
    rules: { createScriptURL(input: string): string },
  ): { createScriptURL(input: string): string };
}

/** In the form that a browser with trusted types asks for; the policy makes no other address, whatever it is given. */
function trustedAddress(): string {
  const { trustedTypes } = window as { readonly trustedTypes?: PolicyFactory };
  if (trustedTypes === undefined) return workerAddress;
  const rules = { createScriptURL: () => workerAddress };
  return trustedTypes.createPolicy('loopwright-tables', rules).createScriptURL(workerAddress);
}

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
  const worker = new Worker(trustedAddress(), { type: 'module' });
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
