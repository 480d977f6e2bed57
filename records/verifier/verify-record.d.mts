/** What the verifier says of an exported file. */
export interface RecordVerdict {
  /** `ok`, a verdict of `SPEC.md`, or `refused` for what is no such file. */
  readonly verdict: string;
  /** Why it is refused. */
  readonly code?: string;
  readonly at?: number;
  readonly field?: string;
  readonly witnessed?: number;
  readonly device?: string;
  readonly blob?: string;
  readonly witness?: number;
  readonly plant?: string;
  readonly logs: readonly {
    readonly device: string;
    readonly size: number;
    readonly head: string;
    readonly root: string;
    /** Events that its checkpoint covers. */
    readonly witnessed: number;
    /** Of that checkpoint, as on a printed card. */
    readonly code?: string;
    /** How many other devices saw it, and how many of its first events. */
    readonly seenBy: number;
    readonly seenTo: number;
  }[];
  readonly warnings: readonly {
    readonly code: string;
    readonly at?: number;
    readonly blob?: string;
    readonly name?: string;
  }[];
}

/** Checks an exported file. `witnesses`: a file of countersignatures, instead of those in the archive. */
export function verifyRecord(bytes: Uint8Array, beside?: { readonly witnesses?: Uint8Array }): Promise<RecordVerdict>;
