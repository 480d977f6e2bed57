import { type ImportFile, readImport, rememberFile } from './import-file.ts';
import { mergeLogs } from './merge-logs.ts';
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
  const here = await db.getAll('events', IDBKeyRange.bound([plant], [plant, []]));
  const { folded, added } = mergeLogs(here, read.rows, { plant, publicKey: device.key.publicKey });
  const shown = core.folded;
  const isOther = shown.size > 0 && core.memory.shown !== plant;
  const preview: ImportPreview = {
    plant: { id: plant, name: folded.plant.name },
    relation: here.length > 0 ? 'same' : isOther ? 'other' : 'first',
    events: read.rows.length,
    newEvents: added.length,
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
