import { type Checkpoint, rootOfLeaves } from '@loopwright/records/log';
import type { Database, EventRow } from '../database.ts';
import { groupedByDevice } from '../event-row.ts';

/** Under what the latest checkpoint of a log is kept that was met by code, without its events. */
export function metKey({ plant, device }: Pick<Checkpoint, 'plant' | 'device'>): `met/${string}` {
  return `met/${plant}/${device}`;
}

/** The latest checkpoint of a log that was met by code. */
export async function metBefore(
  db: Database,
  log: Pick<Checkpoint, 'plant' | 'device'>,
): Promise<Checkpoint | undefined> {
  const kept = await db.get('meta', metKey(log));
  return typeof kept === 'string' ? (JSON.parse(kept) as Checkpoint) : undefined;
}

/**
 * The first size at which a log is not what its own device said of it when it was met.
 *
 * @param plant - id of the plant
 * @param rows - of all logs, each in its order
 */
export async function contradictsMet(
  db: Database,
  plant: string,
  rows: readonly EventRow[],
): Promise<number | undefined> {
  for (const [device, ofDevice] of groupedByDevice(rows)) {
    const met = await metBefore(db, { plant, device });
    if (met === undefined || met.size > ofDevice.length) continue;
    if (rootOfLeaves(ofDevice.slice(0, met.size).map(({ id }) => id)) !== met.root) return met.size;
  }
  return undefined;
}
