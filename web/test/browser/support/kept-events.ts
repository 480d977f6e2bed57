import type { Page } from 'playwright-core';

/** An event as the browser keeps it, read past the app. */
export interface KeptEvent {
  readonly type: string;
  /** Alias of the badge. */
  readonly by: string;
  readonly body: { readonly thing: Readonly<Record<string, unknown>>; readonly corrects?: string };
}

/** The events about one thing that lie in the browser's database, oldest first. */
export async function keptEvents(page: Page, thing: string): Promise<readonly KeptEvent[]> {
  const lines = await page.evaluate(async (name) => {
    const all: { readonly line: string; readonly place: number; readonly thing?: string }[] = [];
    for (const { name: database = '' } of await indexedDB.databases()) {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open(database);
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      if (db.objectStoreNames.contains('events')) {
        const rows = await new Promise<typeof all>((resolve, reject) => {
          const reading = db.transaction('events').objectStore('events').getAll();
          reading.onsuccess = () => resolve(reading.result);
          reading.onerror = () => reject(reading.error);
        });
        all.push(...rows);
      }
      db.close();
    }
    return all
      .filter((row) => row.thing === name)
      .sort((a, b) => a.place - b.place)
      .map(({ line }) => line);
  }, thing);
  return lines.map((line) => JSON.parse(line) as KeptEvent);
}
