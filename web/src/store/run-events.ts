import type { Database } from './database.ts';
import { eventOf, runKey, runKeys } from './event-row.ts';
import type { PlacedRunEvent } from './plant-store.ts';

/**
 * Ids of the press runs of a plant.
 *
 * @param db - of this device
 * @param plant - whose runs
 */
export async function runsOf(db: Database, plant: string): Promise<readonly string[]> {
  const ofRuns = IDBKeyRange.bound([plant, runKeys], [plant, `${runKeys}\uffff`]);
  const runs: string[] = [];
  let cursor = await db.transaction('events').store.index('by-thing').openKeyCursor(ofRuns, 'nextunique');
  while (cursor !== null) {
    runs.push(cursor.key[1].slice(runKeys.length));
    cursor = await cursor.continue();
  }
  return runs;
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
