import { type ArchiveFailure, verifyArchive } from '@loopwright/records/archive';
import { type Checkpoint, type LogEvent, sha256Hex, type Verify } from '@loopwright/records/log';
import type { EventRow, LogRow } from './database.ts';
import { eventRow } from './event-row.ts';
import type { ImportPreview } from './plant-store.ts';
import { readArchive } from './read-archive.ts';
import { StoreError } from './store-error.ts';

/** An export file that was found whole. */
export interface ImportFile {
  readonly plant: string;
  /** Every event; their places are not settled yet. */
  readonly rows: readonly EventRow[];
  readonly events: readonly LogEvent[];
  readonly logs: readonly LogRow[];
  readonly blobs: ReadonlyMap<string, Uint8Array<ArrayBuffer>>;
  readonly notWitnessed: number;
}

/**
 * Reads an export file and checks every line, signature, link and blob of it.
 *
 * @throws StoreError `file-verdict` and those of `readArchive`
 */
export async function readImport(file: Blob, verify: Verify): Promise<ImportFile> {
  const { log, blobs, ...beside } = await readArchive(file);
  for (const [name, bytes] of blobs) if (sha256Hex(bytes) !== name) throw new StoreError('file-blob', { name });
  const events: LogEvent[] = [];
  const ids: string[] = [];
  const onEvent = (event: LogEvent, id: string) => {
    events.push(event);
    ids.push(id);
  };
  // The blobs have been held against their names; those that the file lacks may be here already.
  const found = await verifyArchive({ log, blobs: new Map(), ...beside }, verify, onEvent);
  const { failure, plant, logs, countersignatures } = found;
  const lines = new TextDecoder().decode(log).trimEnd().split('\n');
  if (failure !== undefined || plant === undefined) throw badExport(failure ?? { verdict: 'bad-envelope' }, lines);
  const rows = events.map((event, i) => eventRow({ event, id: ids[i] ?? '', line: lines[i + 1] ?? '' }, i));
  const { checkpoints } = JSON.parse(lines.at(-1) ?? '') as { readonly checkpoints: readonly Checkpoint[] };
  const logRows = logs.map(({ publicKey, state }, i) => {
    const checkpoint = checkpoints[i];
    const witnesses = countersignatures.filter(({ statement }) => statement.device === state.device);
    return { plant, device: state.device, publicKey, witnesses, ...(checkpoint === undefined ? {} : { checkpoint }) };
  });
  const notWitnessed = logs.reduce((sum, { state, witnessed }) => sum + state.size - witnessed, 0);
  return { plant, rows, events, logs: logRows, blobs, notWitnessed };
}

function badExport({ verdict, at }: ArchiveFailure, lines: readonly string[]): StoreError {
  const version = verdict === 'bad-envelope' ? versionOf(lines[at ?? 0]) : 0;
  if (version > knownVersion) return new StoreError('file-newer', { version, known: knownVersion });
  return new StoreError('file-verdict', { verdict, ...(at === undefined ? {} : { line: at + 1 }) });
}

/** Of the lines of an export, which all say in what form they are written. */
const knownVersion = 1;

function versionOf(line = ''): number {
  try {
    const { v } = JSON.parse(line) as { readonly v?: unknown };
    return Number.isSafeInteger(v) ? Number(v) : 0;
  } catch {
    return 0;
  }
}

/** What has been read stands behind the preview that was shown of it, until it is taken or forgotten. */
const files = new WeakMap<ImportPreview, ImportFile>();

export function rememberFile(preview: ImportPreview, file: ImportFile): ImportPreview {
  files.set(preview, file);
  return preview;
}

/** The file behind a preview. */
export function fileOf(preview: ImportPreview): ImportFile {
  const file = files.get(preview);
  if (file === undefined) throw new StoreError('file-no-archive');
  return file;
}
