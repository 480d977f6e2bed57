import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { alone } from '../../../records/test/verifier/both-verifiers.ts';
import { type StoreServer, serveStorePage } from './support/store-server.ts';
import { type Device, newDevice, type StoreWindow } from './support/store-tab.ts';

let server: StoreServer;
let device: Device;
let other: Device;
beforeAll(async () => {
  server = await serveStorePage();
  [device, other] = await Promise.all([newDevice(server.address), newDevice(server.address)]);
});
afterAll(async () => {
  await Promise.all([device.throwAway(), other.throwAway()]);
  await server.close();
});

/** A tab with the plant "mill" as its files say it, and a roll that this device added. */
async function filled(where: Device, name: string): Promise<Page> {
  const tab = await where.tab();
  await tab.evaluate(async (name) => {
    const { page } = window as unknown as StoreWindow;
    const store = await page.openStore({ name, reserve_bytes: 0 });
    await store.seedFrom([page.roll('seed', 1)], { plant: 'mill', demo: false });
    await store.append([page.roll('mine', 2)]);
    Object.assign(window, { store });
  }, name);
  return tab;
}

const ownLog = (tab: Page) =>
  tab.evaluate(async () => (await (window as unknown as StoreWindow).store.witnessDesk()).own());

type Own = NonNullable<Awaited<ReturnType<typeof ownLog>>>;

/** Lets a device meet what another says of its log. */
const meet = (tab: Page, own: Own | undefined) =>
  tab.evaluate(async (own) => {
    const desk = await (window as unknown as StoreWindow).store.witnessDesk();
    if (own === undefined) throw new Error('nothing to meet');
    return desk.meet(own.key, own.checkpoint);
  }, own);

const exported = (tab: Page) =>
  tab.evaluate(async () => {
    const file = await (window as unknown as StoreWindow).store.exportAll();
    return [...new Uint8Array(await file.arrayBuffer())];
  });

test('[WIT-05] what others saw lies in the second copy too, and comes back with it', async () => {
  const [tab, witness] = [await filled(device, 'copied'), await filled(other, 'copied')];
  const met = await meet(witness, await ownLog(tab));
  if (!('countersignature' in met)) throw new Error('not countersigned');
  const text = JSON.stringify(met.countersignature);
  const taken = await tab.evaluate(async (given) => {
    const { store } = window as unknown as StoreWindow;
    const { key, statement } = JSON.parse(given) as { key: string; statement: object };
    const sorted = Object.fromEntries(Object.entries(statement).toSorted(([a], [b]) => (a < b ? -1 : 1)));
    const line = `${JSON.stringify({ key, statement: sorted, v: 1 })}\n`;
    return (await store.witnessDesk()).take(new TextEncoder().encode(line));
  }, text);
  expect(taken).toEqual({ fresh: 1, known: 0, elsewhere: 0 });
  await tab.evaluate(
    () =>
      new Promise<void>((resolve) => {
        (window as unknown as StoreWindow).store.close();
        indexedDB.deleteDatabase('copied').onsuccess = () => resolve();
      }),
  );
  const lost = await tab.evaluate(async () => {
    const { page } = window as unknown as StoreWindow;
    const store = await page.openStore({ name: 'copied', reserve_bytes: 0 });
    Object.assign(window, { store });
    const { broken } = await store.verify();
    return { lost: store.current().lost?.backAgain, broken };
  });
  expect(lost).toEqual({ lost: true, broken: undefined });
  const { verdict, logs } = await alone(Uint8Array.from(await exported(tab)));
  expect(verdict).toBe('ok');
  // The old log of this device, and beside it the new one, since the key went with the database.
  // Two have seen the old log now: the witness, and this device under its new key.
  expect(logs).toContainEqual(expect.objectContaining({ size: 3, seenBy: 2, seenTo: 3 }));
  await Promise.all([tab.close(), witness.close()]);
});

test('[WIT-06] a log that was written anew after its code was met is not taken', async () => {
  const [tab, witness] = [await filled(device, 'rewritten'), await filled(other, 'rewritten')];
  expect((await meet(witness, await ownLog(tab))).meeting).toBe('first-seen');
  // The last event and all that knows of it are taken out behind the store's back; another one is signed in its place.
  await tab.evaluate(async () => {
    const { page, store } = window as unknown as StoreWindow;
    const { id: own } = store.current().device;
    store.close();
    const db = await page.openPlainDatabase('rewritten');
    const seq = (await db.getAll('events')).filter((row) => row.device === own).length - 1;
    await db.delete('events', ['mill', own, seq]);
    await db.clear('snapshots');
    db.close();
    const again = await page.openStore({ name: 'rewritten', reserve_bytes: 0 });
    await again.append([page.roll('other', 7)]);
    await again.append([page.roll('more', 8)]);
    Object.assign(window, { store: again });
  });
  const file = await exported(tab);
  expect((await alone(Uint8Array.from(file))).verdict).toBe('ok');
  const refused = await witness.evaluate(async (bytes) => {
    const { page, store } = window as unknown as StoreWindow;
    const before = store.current().head;
    const preview = await store.previewImport(new Blob([Uint8Array.from(bytes)]));
    const fault = await page.faultOf(() => store.takeImport(preview));
    return { fault, same: store.current().head === before };
  }, file);
  expect(refused).toEqual({ fault: 'file-fork', same: true });
  expect((await meet(witness, await ownLog(tab))).meeting).toBe('not-proved');
  await Promise.all([tab.close(), witness.close()]);
});
