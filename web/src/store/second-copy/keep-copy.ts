import type { EventRow } from '../database.ts';
import { eventOf } from '../event-row.ts';
import type { StoreCore } from '../store-core.ts';
import { canCopy, copyFile, readCopyFile } from './copy-folder.ts';
import type { CopySizes } from './copy-message.ts';

/** Rows handed over at once, so that a long log does not stand in memory twice. */
const rowsAtOnce = 1000;

/**
 * Puts everything back from the second copy when the database holds nothing at all: it is the first start, or the browser
 * threw its database away.
 *
 * @returns number of events put back
 */
export async function putBackIfEmpty(core: StoreCore): Promise<number> {
  const { db } = core.parts;
  if (!canCopy() || (await db.count('logs')) > 0) return 0;
  return (await readCopyFile(db.name, copyFile)) === undefined ? 0 : putBack(core, false);
}

/** Adds to the copy what a kill kept from it, and to the database what only the copy has. */
export async function bringUpToDate(core: StoreCore): Promise<void> {
  if (core.parts.copy.state === 'none') return;
  const sizes = await core.task(() => addMissing(core));
  if (await copyHasMore(core, sizes)) await putBack(core, core.folded.size > 0);
}

async function putBack(core: StoreCore, stays: boolean): Promise<number> {
  const { putBack: all } = await import('./put-back.ts');
  return all(core, stays);
}

/** @returns how far the copy went before */
async function addMissing(core: StoreCore): Promise<CopySizes> {
  const { db, copy } = core.parts;
  const sizes = await copy.sizes();
  // The plant shown comes last: it is the one to show again.
  const isShown = (plant: string) => Number(plant === core.memory.shown);
  for (const log of (await db.getAll('logs')).toSorted((a, b) => isShown(a.plant) - isShown(b.plant))) {
    const { plant, device } = log;
    const from = sizes.get(`${plant}/${device}`) ?? 0;
    const range = IDBKeyRange.bound([plant, device, from], [plant, device, Infinity]);
    for (let rows = await db.getAll('events', range, rowsAtOnce); rows.length > 0; ) {
      await copy.add({ rows, logs: [log], blobs: await blobsOf(core, rows), withWitnesses: true });
      const next = (rows.at(-1)?.seq ?? 0) + 1;
      rows = await db.getAll('events', IDBKeyRange.bound([plant, device, next], [plant, device, Infinity]), rowsAtOnce);
    }
  }
  return sizes;
}

async function blobsOf({ parts }: StoreCore, rows: readonly EventRow[]) {
  const names = new Set(rows.flatMap((row) => eventOf(row).blobs.map(({ sha256 }) => sha256)));
  const found = await Promise.all([...names].map((name) => parts.db.get('blobs', name)));
  return found.filter((blob) => blob !== undefined);
}

async function copyHasMore({ parts }: StoreCore, sizes: CopySizes): Promise<boolean> {
  for (const [log, size] of sizes) {
    const [plant = '', device = ''] = log.split('/');
    const range = IDBKeyRange.bound([plant, device, 0], [plant, device, Infinity]);
    if ((await parts.db.count('events', range)) < size) return true;
  }
  return false;
}
