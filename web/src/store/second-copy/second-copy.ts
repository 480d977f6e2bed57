import { trustedAddress } from '../../offline/trusted-address.ts';
import type { EventRow, LogRow, StoreSchema } from '../database.ts';
import { canCopy } from './copy-folder.ts';
import { entryLine } from './copy-form.ts';
import type { CopyAnswer, CopyAsk, CopySizes } from './copy-message.ts';
import workerAddress from './copy-worker.ts?worker&url';

/** What an append wrote. */
export interface Written {
  readonly rows: readonly EventRow[];
  readonly logs: readonly LogRow[];
  readonly blobs: readonly StoreSchema['blobs']['value'][];
  /** What others said of the logs is new as well. */
  readonly withWitnesses?: boolean;
}

/** `none`: this browser has no place for it. `behind`: the last try to write it failed. */
export type CopyState = 'kept' | 'behind' | 'none';

/**
 * A second copy of every log, in files apart from the database: a browser that finds its database damaged throws all of
 * it away, and what was called saved must outlive that. A failure of the copy never holds up the work.
 */
export class SecondCopy {
  state: CopyState = canCopy() ? 'kept' : 'none';
  readonly #store: string;
  readonly #open = new Map<number, (answer: CopyAnswer) => void>();
  #worker: Worker | undefined;
  #asks = 0;

  /** @param store - name of the database */
  constructor(store: string) {
    this.#store = store;
  }

  /** Adds what an append wrote; returns when it is on the disk or could not be put there. */
  async add({ rows, logs, blobs, withWitnesses = false }: Written): Promise<void> {
    if (this.state === 'none' || (rows.length === 0 && !withWitnesses)) return;
    const line = entryLine({ rows, logs, withWitnesses });
    const { kept } = await this.#ask({ ask: this.#nextAsk(), do: 'add', store: this.#store, line, blobs });
    this.state = kept ? this.state : 'behind';
  }

  /** How far the copy of each log goes. */
  async sizes(): Promise<CopySizes> {
    if (this.state === 'none') return new Map();
    const { sizes } = await this.#ask({ ask: this.#nextAsk(), do: 'measure', store: this.#store });
    return sizes ?? new Map();
  }

  close(): void {
    this.#worker?.terminate();
    this.#answerAll();
  }

  #nextAsk(): number {
    this.#asks += 1;
    return this.#asks;
  }

  #ask(asked: CopyAsk): Promise<CopyAnswer> {
    this.#worker ??= this.#started();
    this.#worker.postMessage(asked);
    return new Promise((resolve) => this.#open.set(asked.ask, resolve));
  }

  #started(): Worker {
    const worker = new Worker(trustedAddress('copy', workerAddress), { type: 'module', name: 'second-copy' });
    worker.onmessage = ({ data }: MessageEvent<CopyAnswer>) => {
      this.#open.get(data.ask)?.(data);
      this.#open.delete(data.ask);
    };
    worker.onerror = () => {
      this.state = 'none';
      this.#answerAll();
    };
    return worker;
  }

  /** Nobody waits for an answer that cannot come. */
  #answerAll(): void {
    for (const [ask, resolve] of this.#open) resolve({ ask, kept: false });
    this.#open.clear();
  }
}
