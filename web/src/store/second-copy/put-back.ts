import {
  type Countersignature,
  countersignatureFault,
  emptyLog,
  extendLog,
  type LogEvent,
  rootOfLeaves,
  sha256Hex,
  type Verify,
} from '@loopwright/records/log';
import { mergeCountersignatures } from '../countersign-logs.ts';
import type { EventRow, LogRow } from '../database.ts';
import { eventRow } from '../event-row.ts';
import type { ImportFile } from '../import-file.ts';
import type { StoreCore } from '../store-core.ts';
import { takeFile } from '../take-import.ts';
import { copyFile, readCopyFile } from './copy-folder.ts';
import { type CopyEntry, readEntries } from './copy-form.ts';

/**
 * Takes what the second copy holds into a database that lacks it, as one that the browser had to make anew: plant by plant,
 * the one written to last at the end. Each line, signature and link is checked as in any file from elsewhere; a log is taken as far as it
 * is whole. The device's key went with the database, so the old logs stay those of another device.
 *
 * @param stays - whether the plant that is shown stays so: somebody is at work
 * @returns number of events put back
 */
export async function putBack(core: StoreCore, stays: boolean): Promise<number> {
  const { name } = core.parts.db;
  const copy = await (await readCopyFile(name, copyFile))?.text();
  if (copy === undefined) return 0;
  let events = 0;
  for (const log of copiedPlants(readEntries(copy))) {
    const file = await checkedFile(log, name, core.parts.device.verify);
    if (!(await isMissing(core, file))) continue;
    await core.task(async () => {
      await takeFile(core, file, stays ? core.memory.shown : file.plant);
      await core.reload();
    });
    events += file.rows.length;
  }
  return events;
}

/** Whether the database lacks an event of a plant that the copy has. */
async function isMissing({ parts }: StoreCore, { plant, rows, logs }: ImportFile): Promise<boolean> {
  for (const { device } of logs) {
    const range = IDBKeyRange.bound([plant, device, 0], [plant, device, Infinity]);
    const copied = rows.filter((row) => row.device === device).length;
    if ((await parts.db.count('events', range)) < copied) return true;
  }
  return false;
}

interface CopiedPlant {
  readonly plant: string;
  readonly logs: Map<string, CopiedDevice>;
}

interface CopiedDevice {
  log: LogRow;
  readonly lines: Map<number, string>;
}

function copiedPlants(entries: Iterable<CopyEntry>): readonly CopiedPlant[] {
  const plants = new Map<string, CopiedPlant>();
  for (const { rows, logs } of entries) {
    for (const { key, ...log } of logs) {
      const plant = plants.get(log.plant) ?? { plant: log.plant, logs: new Map<string, CopiedDevice>() };
      // Taken out and put in again: the plant written to last comes last.
      plants.delete(log.plant);
      plants.set(log.plant, plant);
      const before = plant.logs.get(log.device);
      const witnesses = mergeCountersignatures(before?.log.witnesses, log.witnesses);
      const lines = before?.lines ?? new Map<number, string>();
      plant.logs.set(log.device, { log: { ...log, witnesses, publicKey: Uint8Array.from(key) }, lines });
    }
    for (const { plant, device, seq, line } of rows) plants.get(plant)?.logs.get(device)?.lines.set(seq, line);
  }
  return [...plants.values()];
}

async function checkedFile({ plant, logs }: CopiedPlant, store: string, verify: Verify): Promise<ImportFile> {
  const rows: EventRow[] = [];
  const events: LogEvent[] = [];
  const logRows: LogRow[] = [];
  for (const { log, lines } of logs.values()) {
    const { publicKey } = log;
    const inOrder = withoutGap(lines);
    const ids: string[] = [];
    const onEvent = (event: LogEvent, id: string) => {
      ids.push(id);
      rows.push(eventRow({ event, id, line: inOrder[event.seq] ?? '' }, rows.length));
      events.push(event);
    };
    const { state } = await extendLog(emptyLog(plant, publicKey), inOrder, { publicKey, verify, onEvent });
    if (state.size > 0) logRows.push({ ...spokenOf(log, state.size), witnesses: await soundWords(log, ids, verify) });
  }
  return { plant, rows, events, logs: logRows, blobs: await copiedBlobs(store, events), notWitnessed: 0 };
}

/** What others said of a log, as far as it is signed by them and holds of the lines that are there. */
async function soundWords(
  { plant, witnesses = [] }: LogRow,
  ids: readonly string[],
  verify: Verify,
): Promise<readonly Countersignature[]> {
  const sound: Countersignature[] = [];
  for (const each of witnesses) {
    const { size, root } = each.statement;
    if ((await countersignatureFault(each, plant, verify)) !== undefined || size > ids.length) continue;
    if (rootOfLeaves(ids.slice(0, size)) === root) sound.push(each);
  }
  return sound;
}

/** A log with its statement, where that speaks of no more than is there. */
function spokenOf({ checkpoint, ...log }: LogRow, size: number): LogRow {
  return checkpoint === undefined || checkpoint.size > size ? log : { ...log, checkpoint };
}

function withoutGap(lines: ReadonlyMap<number, string>): readonly string[] {
  const inOrder: string[] = [];
  for (let line = lines.get(0); line !== undefined; line = lines.get(inOrder.length)) inOrder.push(line);
  return inOrder;
}

/** Pictures and curves the events name, as far as their bytes are those of their hash. */
async function copiedBlobs(
  store: string,
  events: readonly LogEvent[],
): Promise<ReadonlyMap<string, Uint8Array<ArrayBuffer>>> {
  const found = new Map<string, Uint8Array<ArrayBuffer>>();
  for (const name of new Set(events.flatMap((event) => event.blobs.map((blob) => blob.sha256)))) {
    const bytes = await (await readCopyFile(store, name))?.arrayBuffer();
    if (bytes !== undefined && sha256Hex(new Uint8Array(bytes)) === name) found.set(name, new Uint8Array(bytes));
  }
  return found;
}
