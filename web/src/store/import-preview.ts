import { bringsNews } from './brings-news.ts';
import { type ImportFile, readImport, rememberFile } from './import-file.ts';
import { mergeLogRows, mergeLogs } from './merge-logs.ts';
import type { ImportPreview } from './plant-store.ts';
import type { StoreCore } from './store-core.ts';

/**
 * Checks an export file whole and tells what taking it would do.
 *
 * @throws StoreError `file-fork` and those of `readImport`
 */
export async function previewImport(core: StoreCore, file: Blob): Promise<ImportPreview> {
  const { db, device } = core.parts;
  const read = await readImport(file, device.verify);
  const { plant } = read;
  const range = IDBKeyRange.bound([plant], [plant, []]);
  const [here, before] = await Promise.all([db.getAll('events', range), db.getAll('logs', range)]);
  const { folded, added } = mergeLogs(here, read.rows, { plant, publicKey: device.key.publicKey });
  const shown = core.folded;
  const isOther = shown.size > 0 && core.memory.shown !== plant;
  const news = { db, added: added.length, before, after: mergeLogRows(before, read.logs) };
  const preview: ImportPreview = {
    plant: { id: plant, name: folded.plant.name },
    relation: here.length > 0 ? 'same' : isOther ? 'other' : 'first',
    events: read.rows.length,
    newEvents: added.length,
    nothingNew: here.length > 0 && !isOther && !(await bringsNews(read, news)),
    devices: read.logs.length,
    positions: Object.keys(folded.plant.positions).length,
    blobs: read.blobs.size,
    missingBlobs: await missingBlobs(core, read),
    unknownEvents: folded.unknown,
    notWitnessed: read.notWitnessed,
    stepsBack: isOther ? { id: core.memory.shown, name: shown.plant.name } : undefined,
  };
  return rememberFile(preview, read);
}

async function missingBlobs({ parts }: StoreCore, { events, blobs }: ImportFile): Promise<number> {
  const named = new Set(events.flatMap((event) => event.blobs.map((blob) => blob.sha256)));
  const lacking = [...named].filter((name) => !blobs.has(name));
  const here = await Promise.all(lacking.map((name) => parts.db.count('blobs', name)));
  return here.filter((count) => count === 0).length;
}
