/** Why a file gives no table at all; each has a sentence `tables.fault.<code>`. */
export const fileFaults = [
  /** Larger than a table may be: `value` MB, at most `max`. */
  'too-large',
  /** A workbook of an old form, or behind a password. */
  'old-workbook',
  /** Packed like a workbook, but none, or damaged. */
  'no-workbook',
  /** The workbook holds `value` files, at most `max`. */
  'many-files',
  /** Unpacked it would have `value` MB, at most `max`. */
  'unpacks-large',
  /** One file in it unpacks to more than `max` times its size. */
  'steep',
  /** The sheet reaches to row `value`, at most `max` are read. */
  'many-rows',
  /** The sheet reaches to column `value`, at most `max` are read. */
  'many-columns',
  /** The sheet spans `value` cells, at most `max` are read. */
  'many-cells',
  /** It could not be read for a reason nobody foresaw. */
  'failed',
] as const;

/** What a person is told about it. */
export interface FileFault {
  readonly code: (typeof fileFaults)[number];
  readonly data: Readonly<Record<string, number>>;
}

/** Stops the reading of a file. */
export class FileRefused extends Error {
  readonly fault: FileFault;

  constructor(code: FileFault['code'], data: FileFault['data'] = {}) {
    super(`${code} ${JSON.stringify(data)}`);
    this.name = 'FileRefused';
    this.fault = { code, data };
  }
}
