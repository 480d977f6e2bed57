import { emptyLog, extendLog, type LogState } from '@loopwright/records/log';
import type { Database, EventRow, LogRow } from './database.ts';
import { eventOf, groupedByDevice } from './event-row.ts';
import { foldMore } from './fold-events.ts';
import type { BrokenChain } from './plant-store.ts';
import { type Folded, foldedOf, isOfBefore, nothingFolded, type Snapshot } from './snapshot.ts';

/** A plant as read from the database. */
export interface Loaded {
  readonly folded: Folded;
  /** Number of this device's own events that the snapshot holds; 0 where it is worth keeping anew. */
  readonly snapshotSize: number;
  /** Every log of the plant, this device's first. */
  readonly logs: readonly LogRow[];
  readonly broken: BrokenChain | undefined;
}

/** A whole chain is trusted for its signatures at the start; `verify` checks those. Links and ids are checked here. */
const linksOnly = async () => true;

/**
 * The state of a plant: from its snapshot and the events after it, or from all events.
 *
 * @param plant - id of the plant
 * @param publicKey - of this device
 */
export async function loadPlant(db: Database, plant: string, publicKey: Uint8Array): Promise<Loaded> {
  const own = emptyLog(plant, publicKey);
  const tx = db.transaction(['events', 'snapshots', 'logs']);
  const [snapshot, logs] = await Promise.all([
    tx.objectStore('snapshots').get(plant),
    tx.objectStore('logs').getAll(IDBKeyRange.bound([plant], [plant, []])),
  ]);
  const sorted = logs.toSorted((a, b) => Number(b.device === own.device) - Number(a.device === own.device));
  const size = snapshot?.own.size ?? 0;
  const events = tx.objectStore('events');
  const [last, rows] = await Promise.all([
    size === 0 ? undefined : events.get([plant, own.device, size - 1]),
    snapshot === undefined
      ? []
      : events.getAll(IDBKeyRange.bound([plant, own.device, size], [plant, own.device, Infinity])),
  ]);
  const kept = snapshot === undefined ? undefined : foldedOf(snapshot);
  if (kept === undefined || snapshot === undefined) {
    const all = await db.getAllFromIndex('events', 'by-place', IDBKeyRange.bound([plant, 0], [plant, Infinity]));
    return { ...(await foldAll(own, all, logs)), logs: sorted, snapshotSize: 0 };
  }
  const broken = headFault(snapshot, last, own.device);
  const snapshotSize = isOfBefore(snapshot) ? 0 : size;
  return { ...(await foldTail(kept, rows, publicKey, broken)), logs: sorted, snapshotSize };
}

/** The snapshot must end where the log does: else one of the two is not what was written. */
function headFault({ own }: Snapshot, last: EventRow | undefined, device: string): BrokenChain | undefined {
  if (own.device !== device) return { device, verdict: 'wrong-device', at: undefined };
  if (own.size === 0 || last?.id === own.head) return undefined;
  return { device, verdict: last === undefined ? 'truncated' : 'history-rewritten', at: own.size - 1 };
}

interface Read {
  readonly folded: Folded;
  readonly broken: BrokenChain | undefined;
}

async function foldTail(
  kept: Folded,
  rows: readonly EventRow[],
  publicKey: Uint8Array,
  broken: BrokenChain | undefined,
): Promise<Read> {
  if (rows.length === 0) return { folded: kept, broken };
  const tail = await chained(kept.own, rows, publicKey);
  const { folded } = foldMore(kept, rows.map(eventOf), tail.state);
  return { folded, broken: broken ?? tail.broken };
}

async function foldAll(own: LogState, rows: readonly EventRow[], logs: readonly LogRow[]): Promise<Read> {
  const byDevice = groupedByDevice(rows);
  let ownState = own;
  let broken: BrokenChain | undefined;
  for (const [device, ofDevice] of byDevice) {
    const log = logs.find((each) => each.device === device);
    if (log === undefined) {
      broken ??= { device, verdict: 'wrong-device', at: undefined };
      continue;
    }
    const checked = await chained(emptyLog(own.plant, log.publicKey), ofDevice, log.publicKey);
    broken ??= checked.broken;
    if (device === own.device) ownState = checked.state;
  }
  return { folded: foldMore(nothingFolded(own), rows.map(eventOf), ownState).folded, broken };
}

async function chained(
  from: LogState,
  rows: readonly EventRow[],
  publicKey: Uint8Array,
): Promise<{ readonly state: LogState; readonly broken: BrokenChain | undefined }> {
  const lines = rows.map((row) => row.line);
  const { state, failure } = await extendLog(from, lines, { publicKey, verify: linksOnly });
  const otherId = rows.length > 0 && rows.at(-1)?.id !== state.head;
  const verdict = failure?.verdict ?? (otherId ? 'history-rewritten' : undefined);
  if (verdict === undefined) return { state, broken: undefined };
  return { state, broken: { device: from.device, verdict, at: failure?.at ?? state.size } };
}
