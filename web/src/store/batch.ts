import { Refusal } from '@loopwright/engine/refusal';
import {
  appendEvent,
  type BlobKind,
  type BlobReference,
  blobReference,
  type Checkpoint,
  type DeviceKey,
  signCheckpoint,
} from '@loopwright/records/log';
import type { Following } from '../page/following.ts';
import { atOnce } from './add-rows.ts';
import type { Moment } from './clock-watch.ts';
import type { EventRow, StoreSchema } from './database.ts';
import { eventRow } from './event-row.ts';
import { foldMore } from './fold-events.ts';
import type { Change } from './plant-store.ts';
import type { Folded } from './snapshot.ts';
import { StoreError } from './store-error.ts';

type BlobRow = StoreSchema['blobs']['value'];

/** A change whose pictures and curves have been read and hashed. */
export interface PreparedChange {
  readonly type: string;
  readonly body: unknown;
  readonly references: readonly BlobReference[];
  readonly blobs: readonly BlobRow[];
}

/** Reads and hashes the blobs of changes. It takes time, so it is done before anyone is kept waiting. */
export async function prepared(changes: readonly Change[]): Promise<readonly PreparedChange[]> {
  return Promise.all(
    changes.map(async ({ type, body, blobs = [] }) => {
      const read = await Promise.all(blobs.map(readBlob));
      return { type, body, references: read.map((each) => each.reference), blobs: read.map((each) => each.row) };
    }),
  );
}

async function readBlob(blob: Blob): Promise<{ readonly reference: BlobReference; readonly row: BlobRow }> {
  const reference = blobReference(new Uint8Array(await blob.arrayBuffer()), blobKindOf(blob.type));
  return { reference, row: { sha256: reference.sha256, bytes: blob } };
}

function blobKindOf(mediaType: string): BlobKind {
  if (mediaType.startsWith('image/')) return 'photo';
  return mediaType === 'text/csv' ? 'curve' : 'document';
}

/** Who writes, when. */
export interface Writer {
  readonly key: DeviceKey;
  readonly boot: string;
  readonly by: string;
  readonly moment: Moment;
}

/** Signed events ready to be stored, and the state after them. */
export interface Batch {
  readonly rows: readonly EventRow[];
  readonly blobs: readonly BlobRow[];
  readonly folded: Folded;
  readonly checkpoint: Checkpoint;
}

/**
 * Makes signed events of changes.
 *
 * @throws StoreError `refused` when a thing is not what its type asks for, or is too large; AbortError when stopped
 */
export async function makeBatch(
  from: Folded,
  changes: readonly PreparedChange[],
  writer: Writer,
  { signal, onShare }: Following = {},
): Promise<Batch> {
  const { key, boot, by, moment } = writer;
  const rows: EventRow[] = [];
  let own = from.own;
  for (const { type, body, references } of changes) {
    const happening = { ...moment, boot, by, type, body, blobs: references };
    const { state, ...written } = await appendEvent(own, happening, key.sign).catch(refuse);
    rows.push(eventRow(written, from.size + rows.length));
    own = state;
    if (rows.length % atOnce > 0 && rows.length < changes.length) continue;
    signal?.throwIfAborted();
    onShare?.(rows.length / changes.length);
  }
  const { folded, refused } = foldMore(from, changes, own);
  const [first] = refused;
  if (first !== undefined) throw new StoreError('refused', { type: first.type });
  const checkpoint = await signCheckpoint(own, moment.at, key.sign);
  return { rows, folded, checkpoint, blobs: changes.flatMap((change) => change.blobs) };
}

function refuse(cause: unknown): never {
  if (cause instanceof Refusal) throw new StoreError('refused', { type: cause.code }, cause);
  throw cause;
}
