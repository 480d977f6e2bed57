import { nobleVerifier, verifyExport } from '@loopwright/records/log';
import { strToU8, unzipSync, zipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
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

/** A tab whose store lies in a database of its own. */
async function openIn(where: Device, name: string): Promise<Page> {
  const tab = await where.tab();
  await tab.evaluate(async (name) => {
    const { page } = window as unknown as StoreWindow;
    Object.assign(window, { store: await page.openStore({ name, reserve_bytes: 0 }) });
  }, name);
  return tab;
}

describe('what is written', () => {
  test('[STORE-01] a change is in the state once it is saved, and again after a reload; a refused one leaves no trace', async () => {
    const tab = await openIn(device, 'written');
    const found = await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      const saved = await store.append([page.roll('a', 1), page.roll('b', 2)]);
      const head = store.current().head;
      const bad = { type: 'roll.defined', body: { schema: 1, thing: { id: 'c', left_m: 'much' } } };
      const large = page.roll('d', 3, 'x'.repeat(70_000));
      const faults = [
        await page.faultOf(() => store.append([page.roll('c', 1), bad])),
        await page.faultOf(() => store.append([large])),
        await page.faultOf(() => store.append([page.roll('e', Number.NaN)])),
      ];
      const same = store.current().head === head;
      store.close();
      const again = await page.openStore({ name: 'written', reserve_bytes: 0 });
      return { saved, faults, same, rolls: Object.keys(again.current().plant.rolls), size: again.current().size };
    });
    expect(found.saved.events.map(({ seq, type }) => [seq, type])).toEqual([
      [0, 'roll.defined'],
      [1, 'roll.defined'],
    ]);
    expect(found.faults).toEqual(['refused', 'refused', 'refused']);
    expect(found).toMatchObject({ same: true, rolls: ['a', 'b'], size: 2 });
    await tab.close();
  });

  test('[STORE-08] the key cannot be taken out; the device says that it cannot', async () => {
    const tab = await openIn(device, 'key');
    const found = await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      const db = await page.openPlainDatabase('key');
      const row = await db.get('keys', 'own');
      db.close();
      if (row === undefined || 'secret' in row) return 'plain bytes';
      const taken = await crypto.subtle.exportKey('pkcs8', row.privateKey).catch((cause: Error) => cause.name);
      return { taken, copied: store.current().device.keyCanBeCopied };
    });
    expect(found).toEqual({ taken: 'InvalidAccessError', copied: false });
    await tab.close();
  });

  test('[STORE-09] history says who, when and what changed; undo is a new event that names the old one', async () => {
    const tab = await openIn(device, 'history');
    const found = await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      const badge = { id: 'badge-1', source: 'person', shape: 'star', word: 'Flint' };
      await store.append([{ type: 'badge.defined', body: { schema: 1, thing: badge } }]);
      await store.chooseBadge('badge-1');
      await store.append([page.roll('r', 10)]);
      const second = await store.append([page.roll('r', 4)]);
      await store.undo([second.events[0]?.id ?? '']);
      const again = await page.faultOf(() => store.undo([second.events[0]?.id ?? '']));
      const unknown = await page.faultOf(() => store.undo(['0'.repeat(64)]));
      const left = store.current().plant.rolls['r']?.left_m;
      const history = await store.history('rolls', 'r');
      await store.undo([history[0]?.eventId ?? '']);
      return {
        history,
        left,
        again,
        unknown,
        second: second.events[0]?.id,
        gone: !('r' in store.current().plant.rolls),
      };
    });
    expect(found).toMatchObject({ left: 10, again: 'nothing-to-undo', unknown: 'no-such-event', gone: true });
    expect(found.history.map(({ by, badge, corrects }) => [by, badge?.word, corrects])).toEqual([
      ['badge-1', 'Flint', undefined],
      ['badge-1', 'Flint', undefined],
      ['badge-1', 'Flint', found.second],
    ]);
    expect(
      found.history.map(({ before, after }) => [before, after].map((thing) => (thing as { left_m?: number })?.left_m)),
    ).toEqual([
      [undefined, 10],
      [10, 4],
      [4, 10],
    ]);
    await tab.close();
  });
});

describe('starting', () => {
  test('[STORE-03] the state kept and the events after it make the state of all events', async () => {
    const tab = await openIn(device, 'loopwright');
    const found = await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      for (let i = 0; i < 30; i++)
        await store.append(Array.from({ length: 20 }, (_, k) => page.roll(`roll-${(i * 7 + k) % 90}`, i + k)));
      store.close();
      const again = await page.openStore({ reserve_bytes: 0 });
      const db = await page.openPlainDatabase();
      const [snapshot] = await db.getAll('snapshots');
      db.close();
      return { size: again.current().size, kept: snapshot?.size ?? 0, alike: await page.foldsAlike(again) };
    });
    expect(found).toMatchObject({ size: 600, alike: true });
    expect(found.kept).toBeGreaterThan(256);
    expect(found.kept).toBeLessThanOrEqual(600);
    await tab.close();
  });

  test.each([
    ['an event changed', 'bad-signature', 3],
    ['an event taken out of the middle', 'sequence-gap', 3],
  ] as const)(
    '[STORE-07] %s: said at the start or by the check, nothing more is written, export goes on',
    async (how, verdict, at) => {
      const name = `broken-${how.length}`;
      const tab = await openIn(device, name);
      const found = await tab.evaluate(
        async ([name, at, how]) => {
          const { page, store } = window as unknown as StoreWindow;
          for (let i = 0; i < 6; i++) await store.append([page.roll(`r${i}`, i)]);
          store.close();
          const db = await page.openPlainDatabase(name);
          const rows = await db.getAll('events');
          const row = rows[at];
          if (row === undefined) throw new Error('no such row');
          const key: [string, string, number] = [row.plant, row.device, row.seq];
          if (how === 'an event changed')
            await db.put('events', { ...row, line: row.line.replace('"left_m":3', '"left_m":9') });
          else await db.delete('events', key);
          db.close();
          const again = await page.openStore({ name, reserve_bytes: 0 });
          await again.verify();
          const { broken } = again.current();
          const fault = await page.faultOf(() => again.append([page.roll('new', 1)]));
          const file = await again.exportAll();
          return { broken: broken?.verdict, fault, file: file.size > 1000 };
        },
        [name, at, how] as const,
      );
      expect(found).toEqual({ fault: 'broken', file: true, broken: verdict });
      await tab.close();
    },
  );
});

describe('several tabs', () => {
  test('[STORE-10] two tabs write at once: one chain without gaps, both show the same', async () => {
    const [one, two] = [await openIn(device, 'tabs'), await openIn(device, 'tabs')];
    const write = (tab: Page, name: string) =>
      tab.evaluate(async (name) => {
        const { page, store } = window as unknown as StoreWindow;
        await Promise.all(Array.from({ length: 40 }, (_, i) => store.append([page.roll(`${name}${i}`, i)])));
      }, name);
    await Promise.all([write(one, 'one'), write(two, 'two')]);
    const look = (tab: Page) =>
      tab.evaluate(async () => {
        const { store } = window as unknown as StoreWindow;
        for (let i = 0; i < 100 && store.current().size < 80; i++)
          await new Promise((resolve) => setTimeout(resolve, 50));
        const { size, head, plant } = store.current();
        const { broken } = await store.verify();
        return { size, head, rolls: Object.keys(plant.rolls).toSorted(), broken: broken?.verdict };
      });
    const [seenByOne, seenByTwo] = [await look(one), await look(two)];
    expect(seenByOne).toEqual(seenByTwo);
    expect(seenByOne).toMatchObject({ size: 80 });
    expect(seenByOne.broken).toBeUndefined();
    await Promise.all([one.close(), two.close()]);
  });

  test('[STORE-11] a newer version opens: the older page lets go, says so and writes no more', async () => {
    const tab = await openIn(device, 'versions');
    const found = await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      await store.append([page.roll('a', 1)]);
      await new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('versions', 99);
        request.onsuccess = () => {
          request.result.close();
          resolve();
        };
        request.onerror = () => reject(request.error);
      });
      const { closed } = store.current();
      const fault = await page.faultOf(() => store.append([page.roll('b', 1)]));
      return { closed, fault, reopened: await page.faultOf(() => page.openStore({ name: 'versions' })) };
    });
    expect(found).toEqual({ closed: 'newer', fault: 'closed', reopened: 'newer' });
    await tab.close();
  });
});

/** Moves a file from the test into the page. */
async function preview(tab: Page, bytes: Uint8Array): Promise<string> {
  return tab.evaluate(async (text) => {
    const { page, store } = window as unknown as StoreWindow;
    const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
    const before = JSON.stringify(store.current());
    const fault = await page.faultOf(() => store.previewImport(new Blob([bytes])));
    return JSON.stringify(store.current()) === before ? fault : `${fault}, and something changed`;
  }, Buffer.from(bytes).toString('base64'));
}

/** Everything of a tab's store as a file in the test. */
async function exported(tab: Page): Promise<Uint8Array> {
  const text = await tab.evaluate(async () => {
    const { store } = window as unknown as StoreWindow;
    const bytes = new Uint8Array(await (await store.exportAll()).arrayBuffer());
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  });
  return new Uint8Array(Buffer.from(text, 'base64'));
}

describe('export and import', () => {
  let file: Uint8Array;

  test('[STORE-12] the file is one that anybody can check, and another device takes it whole', async () => {
    const tab = await openIn(device, 'export');
    await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      await store.startPlant('Quillmoor Annexe');
      await store.append([page.roll('a', 1), { ...page.roll('b', 2), blobs: [page.randomBlob(5000)] }]);
      await store.append([{ type: 'gauge.defined', body: { schema: 7, thing: { id: 'from-later' } } }]);
    });
    file = await exported(tab);
    const content = unzipSync(file);
    const { failure } = await verifyExport(content['log.jsonl'] ?? new Uint8Array(), { verify: nobleVerifier() });
    expect(failure).toBeUndefined();
    expect(Object.keys(content).filter((name) => /^blobs\/[0-9a-f]{64}$/.test(name))).toHaveLength(1);

    const taker = await openIn(other, 'import');
    const found = await taker.evaluate(async (text) => {
      const { page, store } = window as unknown as StoreWindow;
      await store.startPlant('Mine');
      await store.append([page.roll('mine', 1)]);
      const file = new Blob([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))]);
      const preview = await store.previewImport(file);
      const untouched = store.current().plant.name;
      await store.takeImport(preview);
      const { plant, size, unknownEvents } = store.current();
      const again = await page.faultOf(async () => store.takeImport(await store.previewImport(file)));
      await store.append([page.roll('a', 9)]);
      const { broken, brokenBlobs, devices } = await store.verify();
      const plants = (await store.plants()).map(({ name }) => name);
      return { preview, untouched, name: plant.name, size, unknownEvents, again, broken, brokenBlobs, devices, plants };
    }, Buffer.from(file).toString('base64'));
    expect(found.preview).toMatchObject({
      relation: 'other',
      events: 4,
      newEvents: 4,
      devices: 1,
      blobs: 1,
      missingBlobs: 0,
      unknownEvents: 1,
      notWitnessed: 0,
      stepsBack: { name: 'Mine' },
    });
    expect(found).toMatchObject({ untouched: 'Mine', name: 'Quillmoor Annexe', size: 5, unknownEvents: 1 });
    expect(found).toMatchObject({ again: 'file-nothing-new', brokenBlobs: [], devices: 2 });
    expect(found.broken).toBeUndefined();
    expect(found.plants).toEqual(['Quillmoor Annexe', 'Mine']);

    // And back: the first device learns what the other wrote, and both stand at the same state.
    const back = await exported(taker);
    const joined = await tab.evaluate(async (text) => {
      const { store } = window as unknown as StoreWindow;
      const preview = await store.previewImport(
        new Blob([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))]),
      );
      await store.takeImport(preview);
      const history = await store.history('rolls', 'a');
      const { broken } = await store.verify();
      return {
        relation: preview.relation,
        left: store.current().plant.rolls['a']?.left_m,
        own: history.map((each) => each.ownDevice),
        broken,
      };
    }, Buffer.from(back).toString('base64'));
    expect(joined).toMatchObject({ relation: 'same', left: 9, own: [true, false] });
    expect(joined.broken).toBeUndefined();
    await Promise.all([tab.close(), taker.close()]);
  });

  test('[STORE-22] another device that takes the file bears witness; what it has seen is no longer on one device only', async () => {
    const tab = await openIn(device, 'witnessed');
    await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      await store.startPlant('Quillmoor Annexe');
      await store.append([page.roll('a', 1), page.roll('b', 2)]);
    });
    const take = (where: Page, bytes: Uint8Array) =>
      where.evaluate(async (text) => {
        const { page, store } = window as unknown as StoreWindow;
        const file = new Blob([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))]);
        const before = store.current().device.onlyHere;
        await store.takeImport(await store.previewImport(file));
        const again = await page.faultOf(async () => store.takeImport(await store.previewImport(file)));
        return { before, after: store.current().device.onlyHere, again };
      }, Buffer.from(bytes).toString('base64'));
    const taker = await openIn(other, 'witness');
    await take(taker, await exported(tab));
    const back = await exported(taker);
    expect((await alone(back)).logs).toMatchObject([{ seenBy: 0 }, { size: 3, seenBy: 1, seenTo: 3 }]);
    // Its own note that it met the other is all that nobody else has seen.
    expect(await take(tab, back)).toEqual({ before: 3, after: 1, again: 'file-nothing-new' });
    const verified = () => tab.evaluate(() => (window as unknown as StoreWindow).store.verify());
    expect((await verified()).broken).toBeUndefined();
    const both = await alone(await exported(tab));
    expect(both).toMatchObject({
      verdict: 'ok',
      logs: [
        { size: 4, seenTo: 3 },
        { size: 1, seenBy: 1 },
      ],
    });
    await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      await store.append([page.roll('c', 3)]);
    });
    expect(await tab.evaluate(() => (window as unknown as StoreWindow).store.current().device.onlyHere)).toBe(2);
    await tab.evaluate(async () => {
      const { page } = window as unknown as StoreWindow;
      const db = await page.openPlainDatabase('witnessed');
      for (const log of await db.getAll('logs'))
        if (log.checkpoint?.size !== 1)
          await db.put('logs', { ...log, witnesses: (log.witnesses ?? []).map((each) => ({ ...each, key: 'x' })) });
      db.close();
    });
    expect((await verified()).broken).toMatchObject({ verdict: 'bad-witness', at: 0 });
    await Promise.all([tab.close(), taker.close()]);
  });

  test('[STORE-13] a flipped bit, a cut, a bomb, a stray path, a foreign file: refused by name, nothing changes', async () => {
    const tab = await openIn(device, 'refusals');
    const content = unzipSync(file);
    const log = content['log.jsonl'] ?? new Uint8Array();
    const [blobName = ''] = Object.keys(content).filter((name) => name.startsWith('blobs/'));
    const blob = content[blobName] ?? new Uint8Array();
    const flipped = (bytes: Uint8Array, at: number) => bytes.map((byte, i) => (i === at ? byte ^ 4 : byte));
    const cases: readonly (readonly [string, Uint8Array])[] = [
      ['file-verdict', zipSync({ 'log.jsonl': flipped(log, log.indexOf(0x0a) + 40) })],
      ['file-verdict', flipped(log, log.length - 30)],
      ['file-verdict', log.subarray(0, log.length - 1)],
      ['file-verdict', log.subarray(0, log.lastIndexOf(0x0a, log.length - 2) + 1)],
      ['file-blob', zipSync({ 'log.jsonl': log, [blobName]: flipped(blob, 17) })],
      ['file-no-archive', file.subarray(0, file.length - 100)],
      ['file-no-log', zipSync({ 'other.txt': strToU8('hello') })],
      ['file-path', zipSync({ 'log.jsonl': log, '../escape': strToU8('x') }, { level: 0 })],
      ['file-path', zipSync({ 'log.jsonl': log, link: [strToU8('x'), { os: 3, attrs: 0o120777 << 16 }] })],
      ['file-ratio', zipSync({ 'log.jsonl': new Uint8Array(3_000_000) })],
      ['file-no-archive', new TextEncoder().encode('position,line\n04-3,Spine\n')],
      ['file-no-archive', new Uint8Array()],
      ['none', file],
      ['none', log],
    ];
    for (const [expected, bytes] of cases) expect(await preview(tab, bytes)).toBe(expected);
    await tab.close();
  });

  test('[STORE-14] at a device key cloned elsewhere, two different things in one place are seen', async () => {
    const tab = await openIn(device, 'fork');
    await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      await store.startPlant('Forked');
      await store.append([page.roll('a', 1)]);
    });
    const before = await exported(tab);
    const found = await tab.evaluate(async () => {
      const { page, store } = window as unknown as StoreWindow;
      const { id } = (await store.plants())[0] ?? { id: '' };
      // The database as it was is what a clone goes on from.
      const db = await page.openPlainDatabase('fork');
      const rows = await db.getAll('events');
      await store.append([page.roll('b', 1)]);
      const mine = await store.exportAll();
      const last = (await db.getAll('events')).find((row) => !rows.some((old) => old.id === row.id));
      if (last === undefined) throw new Error('nothing was written');
      await db.delete('events', [id, last.device, last.seq]);
      await db.delete('snapshots', id);
      await db.put('meta', 1000, 'revision');
      db.close();
      store.close();
      const clone = await page.openStore({ name: 'fork', reserve_bytes: 0 });
      await clone.append([page.roll('c', 1)]);
      return page.faultOf(() => clone.previewImport(mine));
    });
    expect(found).toBe('file-fork');
    expect(before.length).toBeGreaterThan(500);
    await tab.close();
  });
});

test('[STORE-15] the demo plant is taken from the server at the first start; changes in its files follow until someone edits', async () => {
  const tab = await openIn(device, 'server');
  const found = await tab.evaluate(async () => {
    const { page, store } = window as unknown as StoreWindow;
    const named = (name: string) => ({ type: 'plant.defined', body: { schema: 1, thing: { id: 'quillmoor', name } } });
    const origin = { plant: 'quillmoor', demo: true };
    await store.meetServer([named('Quillmoor'), page.roll('a', 1), page.roll('b', 1)], origin);
    const first = store.current();
    await store.meetServer([named('Quillmoor'), page.roll('a', 2)], origin);
    const followed = store.current();
    await store.append([page.roll('a', 3)]);
    await store.meetServer([named('Quillmoor'), page.roll('a', 4)], origin);
    const edited = store.current();
    await store.takeOffer();
    const taken = store.current();
    const history = await store.history('rolls', 'a');
    await store.meetServer([named('Other'), page.roll('z', 4)], { plant: 'other', demo: false });
    const offered = store.current().offer;
    await store.takeOffer();
    const switched = store.current();
    const left = (state: typeof first) => state.plant.rolls['a']?.left_m;
    return {
      first: [first.demo, left(first), Object.keys(first.plant.rolls)],
      followed: [left(followed), Object.keys(followed.plant.rolls), followed.offer],
      edited: [left(edited), edited.offer?.changes],
      taken: [left(taken), taken.offer, history.length],
      offered,
      switched: [switched.plant.name, switched.demo, (await store.plants()).length],
    };
  });
  expect(found).toEqual({
    first: [true, 1, ['a', 'b']],
    followed: [2, ['a'], undefined],
    edited: [3, 1],
    taken: [4, undefined, 4],
    offered: { plant: 'other', name: 'Other', isOther: true, changes: 2 },
    switched: ['Other', false, 2],
  });
  await tab.close();
});

test('[STORE-19] storage that the browser deleted is noticed, and said until somebody has read it', async () => {
  const tab = await openIn(device, 'deleted');
  const found = await tab.evaluate(async () => {
    const { page, store } = window as unknown as StoreWindow;
    await store.startPlant('Annexe');
    await store.append([page.roll('a', 1)]);
    store.close();
    await new Promise<void>((resolve) => {
      indexedDB.deleteDatabase('deleted').onsuccess = () => resolve();
    });
    await (await navigator.storage.getDirectory()).removeEntry('second-copy-deleted', { recursive: true });
    const open = () => page.openStore({ name: 'deleted', reserve_bytes: 0 });
    const first = await open();
    const lost = first.current().lost;
    await first.append([page.roll('b', 1)]);
    const still = first.current().lost;
    first.forgetLoss();
    const read = first.current().lost;
    first.close();
    return { lost, still, read, later: (await open()).current().lost };
  });
  const gone = { name: 'Annexe', size: 2, backAgain: false };
  expect(found).toEqual({ lost: gone, still: gone });
  await tab.close();
});
