import { type Checkpoint, type Countersignature, sha256Hex } from '@loopwright/records/log';
import type { EventRow, LogRow } from '../database.ts';

/** What one append adds to the second copy of the log: lines as they were signed, and whose logs they belong to. */
export interface CopyEntry {
  readonly rows: readonly Pick<EventRow, 'plant' | 'device' | 'seq' | 'line'>[];
  readonly logs: readonly CopiedLog[];
}

interface CopiedLog {
  readonly plant: string;
  readonly device: string;
  /** Bytes of the public key; a text cannot hold them otherwise. */
  readonly key: readonly number[];
  readonly checkpoint?: Checkpoint;
  /** Only where they changed: they would else be written with every append. */
  readonly witnesses?: readonly Countersignature[];
}

interface CopyContent {
  readonly rows: readonly EventRow[];
  readonly logs: readonly LogRow[];
  /** Whether what others said of the logs goes with them. */
  readonly withWitnesses?: boolean;
}

/** An entry as a line of the copy: its hash first, so that a line written in part is known for what it is. */
export function entryLine({ rows, logs, withWitnesses = false }: CopyContent): string {
  const entry: CopyEntry = {
    rows: rows.map(({ plant, device, seq, line }) => ({ plant, device, seq, line })),
    logs: logs.map(({ publicKey, witnesses, ...log }) => ({
      ...log,
      key: [...publicKey],
      ...(withWitnesses && witnesses !== undefined ? { witnesses } : {}),
    })),
  };
  const text = JSON.stringify(entry);
  return `${sha256Hex(text)} ${text}\n`;
}

/** The entries of a copy, oldest first. A line that is not whole was never called saved; it is passed over. */
export function* readEntries(copy: string): Generator<CopyEntry> {
  for (const line of copy.split('\n')) {
    const text = line.slice(65);
    if (line[64] === ' ' && sha256Hex(text) === line.slice(0, 64)) yield JSON.parse(text) as CopyEntry;
  }
}
