import type { Database } from './database.ts';
import { eventOf, runKey, runKeys } from './event-row.ts';
import type { PlacedRunEvent } from './plant-store.ts';

/**
 * Ids of the press runs of a plant, the latest begun first.
 *
 * @param db - of this device
 * @param plant - whose runs
 */
export async function runsOf(db: Database, plant: string): Promise<readonly string[]> {
  const ofRuns = IDBKeyRange.bound([plant, runKeys], [plant, `${runKeys}\uffff`]);
  const runs: { readonly id: string; readonly place: number }[] = [];
  let cursor = await db.transaction('events').store.index('by-thing').openCursor(ofRuns, 'nextunique');
  while (cursor !== null) {
    runs.push({ id: cursor.key[1].slice(runKeys.length), place: cursor.value.place });
    cursor = await cursor.continue();
  }
  return runs.toSorted((a, b) => b.place - a.place).map(({ id }) => id);
}

/**
 * Every event of a press run, of all devices, in the order of folding.
 *
 * @param db - of this device
 * @param plant - of the run
 * @param run - its id
 */
export async function eventsOfRun(db: Database, plant: string, run: string): Promise<readonly PlacedRunEvent[]> {
  const rows = await db.getAllFromIndex('events', 'by-thing', [plant, runKey(run)]);
  return rows.toSorted((a, b) => a.place - b.place).map((row) => ({ ...eventOf(row), id: row.id }));
}
