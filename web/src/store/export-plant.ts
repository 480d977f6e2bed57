import {
  type Checkpoint,
  emptyLog,
  type LogState,
  type LogToExport,
  signCheckpoint,
  withEvent,
  writeCountersignatures,
  writeExport,
} from '@loopwright/records/log';
import { strToU8 } from 'fflate';
import { momentOf } from './clock-watch.ts';
import type { EventRow, LogRow } from './database.ts';
import { eventOf, groupedByDevice } from './event-row.ts';
import type { StoreCore } from './store-core.ts';
import { writeArchive } from './write-archive.ts';

/** Everything of the shown plant as one file, also when its chain is broken: what is there can always leave. */
export async function exportPlant(core: StoreCore): Promise<Blob> {
  const { db } = core.parts;
  const plant = core.memory.shown;
  const rows = groupedByDevice(await db.getAll('events', IDBKeyRange.bound([plant], [plant, []])));
  const logs = await logsToExport(core, rows);
  const log = await writeExport(plant, logs, core.parts.device.key.sign);
  const names = [...new Set([...rows.values()].flat().flatMap((row) => eventOf(row).blobs.map((blob) => blob.sha256)))];
  const witnesses = core.memory.logs.flatMap((each) => each.witnesses ?? []);
  return writeArchive(strToU8(log), names, {
    blob: async (name) => (await db.get('blobs', name))?.bytes,
    witnesses: strToU8(writeCountersignatures(witnesses)),
  });
}

/** This device's log first, vouched for now; then those of others as far as they vouched for them. */
async function logsToExport(
  core: StoreCore,
  rows: ReadonlyMap<string, readonly EventRow[]>,
): Promise<readonly LogToExport[]> {
  const { key } = core.parts.device;
  const { own } = core.folded;
  const ownRows = rows.get(own.device) ?? [];
  const { at } = momentOf(core.parts.clocks);
  const checkpoint = await signCheckpoint(stateOf(core, ownRows), at, key.sign);
  const others = core.memory.logs.filter((log) => log.device !== own.device).filter(isVouchedFor);
  return [
    { publicKey: key.publicKey, lines: ownRows.map((row) => row.line), checkpoint },
    ...others.map((log) => ({ ...log, lines: (rows.get(log.device) ?? []).map((row) => row.line) })),
  ];
}

/** The log as its rows stand, which differs from the one in memory only where the chain is broken. */
function stateOf(core: StoreCore, rows: readonly EventRow[]): LogState {
  if (core.memory.broken === undefined) return core.folded.own;
  const start = emptyLog(core.memory.shown, core.parts.device.key.publicKey);
  return rows.reduce((state, row) => withEvent(state, row.id, eventOf(row).at), start);
}

function isVouchedFor(log: LogRow): log is LogRow & { readonly checkpoint: Checkpoint } {
  return log.checkpoint !== undefined;
}
