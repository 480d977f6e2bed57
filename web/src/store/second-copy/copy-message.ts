/** What the worker that keeps the second copy is asked. */
export type CopyAsk =
  | {
      readonly ask: number;
      readonly do: 'add';
      readonly store: string;
      readonly line: string;
      readonly blobs: readonly { readonly sha256: string; readonly bytes: Blob }[];
    }
  | { readonly ask: number; readonly do: 'measure'; readonly store: string };

/** How many lines of each log the copy holds without a gap, under `plant/device`. */
export type CopySizes = ReadonlyMap<string, number>;

/** What it answers; `sizes` after measuring. */
export interface CopyAnswer {
  readonly ask: number;
  readonly kept: boolean;
  readonly sizes?: CopySizes;
}
