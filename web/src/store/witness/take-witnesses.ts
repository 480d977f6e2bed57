import {
  type Countersignature,
  checkCountersignatures,
  noEvent,
  rootOfLeaves,
  sizesWitnessed,
} from '@loopwright/records/log';
import { mergeCountersignatures } from '../countersign-logs.ts';
import type { LogRow } from '../database.ts';
import { groupedByDevice } from '../event-row.ts';
import type { StoreCore } from '../store-core.ts';
import type { WitnessesTaken } from './witness-desk.ts';

/**
 * Takes countersignatures of logs that lie here, after each was checked by itself and against its log; all or none.
 *
 * @param file - text of a file of countersignatures
 */
export async function takeWitnesses(core: StoreCore, file: Uint8Array): Promise<WitnessesTaken> {
  return core.task(async () => {
    const { db, device, copy } = core.parts;
    const plant = core.memory.shown;
    const logs = await heldLogs(core, file);
    const held = { plant, verify: device.verify, logs };
    const { failure, countersignatures, elsewhere } = await checkCountersignatures(file, held);
    if (failure !== undefined) return { failure };
    const before = await db.getAll('logs', IDBKeyRange.bound([plant], [plant, []]));
    const merged = before.map((log) => withWords(log, countersignatures));
    const changed = merged.filter((log, i) => log !== before[i]);
    const fresh = changed.reduce((sum, log) => sum + newWords(log, before), 0);
    if (changed.length > 0) {
      await core.commit((tx) => changed.map((log) => tx.objectStore('logs').put(log)));
      await copy.add({ rows: [], blobs: [], logs: changed, withWitnesses: true });
      await core.reload();
    }
    return { fresh, known: countersignatures.length - elsewhere.length - fresh, elsewhere: elsewhere.length };
  });
}

/** Size, root and last event of the logs that lie here, at the sizes that the file speaks of. */
async function heldLogs(core: StoreCore, file: Uint8Array) {
  const plant = core.memory.shown;
  const rows = await core.parts.db.getAll('events', IDBKeyRange.bound([plant], [plant, []]));
  const sizes = sizesWitnessed(file);
  return new Map(
    [...groupedByDevice(rows)].map(([device, ofDevice]) => {
      const ids = ofDevice.map(({ id }) => id);
      const marks = [...(sizes.get(device) ?? [])].map((size) => {
        const seen = ids.slice(0, size);
        return [size, { root: rootOfLeaves(seen), head: seen.at(-1) ?? noEvent }] as const;
      });
      return [device, { size: ids.length, marks: new Map(marks) }] as const;
    }),
  );
}

/** The same object where nothing is said of the log that was not known. */
function withWords(log: LogRow, given: readonly Countersignature[]): LogRow {
  const of = given.filter(({ statement }) => statement.device === log.device);
  const witnesses = mergeCountersignatures(log.witnesses, of);
  const isKnown = witnesses.every((each) => log.witnesses?.includes(each) === true);
  return isKnown ? log : { ...log, witnesses };
}

function newWords({ device, witnesses = [] }: LogRow, before: readonly LogRow[]): number {
  const known = before.find((log) => log.device === device)?.witnesses ?? [];
  return witnesses.filter((each) => !known.includes(each)).length;
}
