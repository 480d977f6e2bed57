/** Why a store did not do what it was asked; each has a sentence `store.<code>`. Nothing has changed then. */
export const storeFaults = [
  // Writing
  'quota',
  'blocked',
  'busy',
  'closed',
  'broken',
  'refused',
  'clock',
  'no-storage',
  'newer',
  'failed',
  // Taking back, and choosing
  'no-such-event',
  'no-such-plant',
  'nothing-to-undo',
  // Taking in a file
  'file-too-large',
  'file-many-entries',
  'file-ratio',
  'file-path',
  'file-no-archive',
  'file-no-log',
  'file-blob',
  'file-verdict',
  'file-newer',
  'file-fork',
  'file-nothing-new',
] as const;
export type StoreFault = (typeof storeFaults)[number];

/** What a sentence about the fault needs: values as plain text or numbers. */
export type FaultData = Readonly<Record<string, string | number>>;

/** A refusal of the store. `code` is the name of its sentence, `data` what the sentence says. */
export class StoreError extends Error {
  readonly code: StoreFault;
  readonly data: FaultData;

  constructor(code: StoreFault, data: FaultData = {}, cause?: unknown) {
    super(`${code} ${JSON.stringify(data)}`, cause === undefined ? {} : { cause });
    this.name = 'StoreError';
    this.code = code;
    this.data = data;
  }
}
