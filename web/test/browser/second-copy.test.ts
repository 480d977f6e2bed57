import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type StoreServer, serveStorePage } from './support/store-server.ts';
import { type Device, newDevice, type StoreWindow } from './support/store-tab.ts';

let server: StoreServer;
let device: Device;
beforeAll(async () => {
  server = await serveStorePage();
  device = await newDevice(server.address);
});
afterAll(async () => {
  await device.throwAway();
  await server.close();
});

/** A tab with a plant of two rolls, one of them with a picture, and another plant begun before; all closed again. */
async function filled(name: string): Promise<{ readonly tab: Page; readonly ids: readonly string[] }> {
  const tab = await device.tab();
  const ids = await tab.evaluate(async (name) => {
    const { page } = window as unknown as StoreWindow;
    const store = await page.openStore({ name, reserve_bytes: 0 });
    await store.startPlant('Mill');
    await store.append([page.roll('m', 3)]);
    const { events } = await store.startPlant('Annexe');
    const { events: more } = await store.append([page.roll('a', 1)]);
    const { events: last } = await store.append([{ ...page.roll('b', 2), blobs: [page.randomBlob(50_000)] }]);
    store.close();
    return [...events, ...more, ...last].map(({ id }) => id);
  }, name);
  return { tab, ids };
}

/** Does away with the database as a browser does that finds it damaged. */
async function deleteDatabase(tab: Page, name: string): Promise<void> {
  await tab.evaluate(
    (name) =>
      new Promise<void>((resolve) => {
        indexedDB.deleteDatabase(name).onsuccess = () => resolve();
      }),
    name,
  );
}

/** What a page finds that opens the store anew. */
async function reopened(tab: Page, name: string) {
  return tab.evaluate(async (name) => {
    const { page } = window as unknown as StoreWindow;
    const store = await page.openStore({ name, reserve_bytes: 0 });
    const { lost, plant, broken } = store.current();
    const plants = (await store.plants()).map((kept) => kept.name).sort();
    const { brokenBlobs } = await store.verify();
    const saved = await store.append([page.roll('c', 9)]);
    const history = (await store.history('rolls', 'b')).length;
    const file = await store.exportAll();
    const isWhole = await page.faultOf(() => store.previewImport(file));
    store.close();
    return { lost, rolls: Object.keys(plant.rolls), broken, brokenBlobs, plants, saved, history, isWhole };
  }, name);
}

const allBack = {
  rolls: ['a', 'b'],
  plants: ['Annexe', 'Mill'],
  broken: undefined,
  brokenBlobs: [],
  history: 1,
  isWhole: 'none',
};

test('[STORE-21] a database that is gone comes back whole from the second copy, and that is said', async () => {
  const { tab, ids } = await filled('gone');
  await deleteDatabase(tab, 'gone');
  const found = await reopened(tab, 'gone');
  expect(found).toMatchObject({ ...allBack, lost: { name: 'Annexe', backAgain: true } });
  expect(ids.length).toBe(3);
  // Gone once more: what the device wrote since, with its new key, comes back as well.
  await deleteDatabase(tab, 'gone');
  const again = await reopened(tab, 'gone');
  expect(again.rolls).toEqual(['a', 'b', 'c']);
  expect(again.isWhole).toBe('none');
  await tab.close();
});

test('[STORE-21] a line of the copy written in part costs nothing but itself', async () => {
  const { tab } = await filled('torn-line');
  await tab.evaluate(async () => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('second-copy-torn-line');
    const file = await folder.getFileHandle('log.txt');
    const { size } = await file.getFile();
    const writing = await file.createWritable({ keepExistingData: true });
    await writing.write({ type: 'write', position: size, data: `${'a'.repeat(64)} {"rows":[{"plant":"` });
    await writing.close();
  });
  await reopened(tab, 'torn-line');
  await deleteDatabase(tab, 'torn-line');
  const found = await reopened(tab, 'torn-line');
  expect(found).toMatchObject({ ...allBack, rolls: ['a', 'b', 'c'] });
  await tab.close();
});

test('[STORE-21] what a kill kept from the copy is added at the next start', async () => {
  const { tab } = await filled('behind');
  await tab.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    await root.removeEntry('second-copy-behind', { recursive: true });
    const { page } = window as unknown as StoreWindow;
    const store = await page.openStore({ name: 'behind', reserve_bytes: 0, reserveAfter_ms: 0 });
    const lines = async () => {
      const folder = await root.getDirectoryHandle('second-copy-behind');
      return (await (await (await folder.getFileHandle('log.txt')).getFile()).text()).split('\n').length;
    };
    for (let tries = 0; tries < 100 && (await lines().catch(() => 0)) < 3; tries++)
      await new Promise((resolve) => setTimeout(resolve, 50));
    store.close();
  });
  await deleteDatabase(tab, 'behind');
  expect(await reopened(tab, 'behind')).toMatchObject(allBack);
  await tab.close();
});

test('[STORE-21] a plant that comes back meanwhile takes nobody away from the one they look at', async () => {
  const { tab } = await filled('meanwhile');
  const shown = await tab.evaluate(async () => {
    const { page } = window as unknown as StoreWindow;
    const name = 'meanwhile';
    const before = await page.openStore({ name, reserve_bytes: 0 });
    const plants = await before.plants();
    const [mill = '', annexe = ''] = ['Mill', 'Annexe'].map((each) => plants.find((kept) => kept.name === each)?.id);
    await before.showPlant(mill);
    before.close();
    const opened = indexedDB.open(name);
    const db = await new Promise<IDBDatabase>((resolve) => {
      opened.onsuccess = () => resolve(opened.result);
    });
    const tx = db.transaction(['events', 'logs', 'snapshots'], 'readwrite');
    for (const each of ['events', 'logs']) tx.objectStore(each).delete(IDBKeyRange.bound([annexe], [annexe, []]));
    tx.objectStore('snapshots').delete(annexe);
    await new Promise((resolve) => {
      tx.oncomplete = resolve;
    });
    db.close();
    const store = await page.openStore({ name, reserve_bytes: 0, reserveAfter_ms: 0 });
    const seen = new Set<string>();
    store.subscribe(() => seen.add(store.current().plant.name));
    for (let tries = 0; tries < 100 && (await store.plants()).length < 2; tries++)
      await new Promise((resolve) => setTimeout(resolve, 50));
    const names = (await store.plants()).map((kept) => kept.name).sort();
    store.close();
    return { names, seen: [...seen] };
  });
  expect(shown).toEqual({ names: ['Annexe', 'Mill'], seen: ['Mill'] });
  await tab.close();
});
