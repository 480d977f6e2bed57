import { type MetLog, noEvent } from '@loopwright/records/log';
import { prepared } from './batch.ts';
import { bringsNews } from './brings-news.ts';
import { momentOf } from './clock-watch.ts';
import { countersignLogs } from './countersign-logs.ts';
import type { EventRow, LogRow, StoreSchema } from './database.ts';
import { met } from './device-events.ts';
import { eventOf, groupedByDevice } from './event-row.ts';
import { fileOf, type ImportFile } from './import-file.ts';
import { mergeLogRows, mergeLogs } from './merge-logs.ts';
import type { ImportPreview, Saved } from './plant-store.ts';
import { snapshotOf } from './snapshot.ts';
import type { StoreCore } from './store-core.ts';
import { StoreError } from './store-error.ts';
import { contradictsMet } from './witness/met-checkpoints.ts';

/**
 * Takes an export file: its events and blobs, the folded state, and an event of this device that says what it met, all
 * in one transaction.
 *
 * @throws StoreError `file-nothing-new`, `file-fork`, `quota`
 */
export async function takeImport(core: StoreCore, preview: ImportPreview): Promise<Saved> {
  const file = fileOf(preview);
  return core.task(async () => {
    const saved = await takeFile(core, file);
    await core.reload();
    return saved;
  });
}

/**
 * Takes a file that was checked; the state in memory is read anew afterwards.
 *
 * @param shown - plant that is shown then
 */
export async function takeFile(core: StoreCore, file: ImportFile, shown = file.plant): Promise<Saved> {
  const { db, device } = core.parts;
  const { plant } = file;
  const range = IDBKeyRange.bound([plant], [plant, []]);
  const [here, knownLogs] = await Promise.all([db.getAll('events', range), db.getAll('logs', range)]);
  const { publicKey } = device.key;
  const merged = mergeLogs(here, file.rows, { plant, publicKey });
  const contradicted = await contradictsMet(db, plant, merged.rows);
  if (contradicted !== undefined) throw new StoreError('file-fork', { seq: contradicted - 1 });
  const isShown = core.memory.shown === plant && here.length > 0;
  const known = mergeLogRows(knownLogs, file.logs);
  const news = { db, added: merged.added.length, before: knownLogs, after: known };
  if (isShown && !(await bringsNews(file, news))) throw new StoreError('file-nothing-new');
  const logs = await countersignLogs(known, device.key, momentOf(core.parts.clocks).at);
  const changes = core.withClock(await prepared([met(headsOf(logs, merged.rows))]));
  const { rows, folded, checkpoint } = await core.batch(merged.folded, changes);
  const own = core.ownLog(plant, checkpoint, logs);
  await core.commit((tx) => [
    ...[...merged.added, ...merged.moved, ...rows].map((row) => tx.objectStore('events').put(row)),
    ...blobsOf(file).map((blob) => tx.objectStore('blobs').put(blob)),
    ...[...logs, own].map((log) => tx.objectStore('logs').put(log)),
    tx.objectStore('snapshots').put(snapshotOf(folded)),
    tx.objectStore('meta').put(shown, 'shown'),
  ]);
  await core.parts.copy.add({
    rows: [...merged.added, ...rows],
    logs: [...logs, own],
    blobs: blobsOf(file),
    withWitnesses: true,
  });
  const events = [...merged.added, ...rows].map((row) => ({ ...row, type: eventOf(row).type }));
  return { events: events.map(({ id, device, seq, type }) => ({ id, device, seq, type })), size: folded.size };
}

function blobsOf({ blobs }: ImportFile): StoreSchema['blobs']['value'][] {
  return [...blobs].map(([sha256, bytes]) => ({ sha256, bytes: new Blob([bytes]) }));
}

/** How far each log has come. */
function headsOf(logs: readonly LogRow[], rows: readonly EventRow[]): readonly MetLog[] {
  const byDevice = groupedByDevice(rows);
  return logs.map(({ device }) => {
    const ofDevice = byDevice.get(device) ?? [];
    return { device, size: ofDevice.length, head: ofDevice.at(-1)?.id ?? noEvent };
  });
}
