import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
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

const picture_bytes = 300_000;
const writes = 12;

/** An origin of its own for each case, so that each has its own disk space. */
async function ownOrigin(name: string, quota_bytes?: number): Promise<{ page: Page; setQuota: SetQuota }> {
  const origin = server.address.replace('localhost', `${name}.localhost`);
  const page = await device.tab(origin);
  const control = await device.context.newCDPSession(page);
  const setQuota: SetQuota = async (quotaSize) => {
    await control.send('Storage.overrideQuotaForOrigin', quotaSize === undefined ? { origin } : { origin, quotaSize });
  };
  if (quota_bytes !== undefined) await setQuota(quota_bytes);
  return { page, setQuota };
}
type SetQuota = (quota_bytes?: number) => Promise<void>;

/** Appends pictures until the disk is full; tells how many were saved, and what the store is like after a reload. */
async function fillUp(page: Page, most: number, bytes: number) {
  return page.evaluate(
    async ([most, bytes]) => {
      const { page } = window as unknown as StoreWindow;
      const store = await page.openStore({ reserve_bytes: 0 });
      let saved = 0;
      let fault = 'none';
      while (saved < most && fault === 'none') {
        const change = { ...page.roll(`roll-${saved}`, saved), blobs: [page.randomBlob(bytes)] };
        fault = await page.faultOf(() => store.append([page.roll('beside', saved), change]));
        if (fault === 'none') saved += 1;
      }
      const { size, head } = store.current();
      store.close();
      const again = await page.openStore({ reserve_bytes: 0 });
      const kept = again.current().size === size && again.current().head === head;
      const { broken, brokenBlobs } = await again.verify();
      const whole = broken === undefined && brokenBlobs.length === 0 && (await page.foldsAlike(again));
      Object.assign(window, { store: again });
      return { saved, fault, size, kept, whole };
    },
    [most, bytes] as const,
  );
}

/** One append more, once there is room. */
async function appendOneMore(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const { page, store } = window as unknown as StoreWindow;
    const fault = await page.faultOf(() => store.append([page.roll('after', 1)]));
    const { broken } = await store.verify();
    store.close();
    return broken?.verdict ?? fault;
  });
}

describe('disk full', () => {
  test(`[STORE-04] the quota is exceeded at write k, k = 1 to ${writes}: never "saved" when not, the next write works`, async () => {
    for (let k = 1; k <= writes; k++) {
      const { page, setQuota } = await ownOrigin(`full-${k}`, 60_000 + (k - 0.5) * picture_bytes);
      const filled = await fillUp(page, writes, picture_bytes);
      expect(filled, `k = ${k}`).toEqual({ saved: k - 1, fault: 'quota', size: 2 * (k - 1), kept: true, whole: true });
      await setQuota();
      expect(await appendOneMore(page), `k = ${k}`).toBe('none');
      await page.close();
    }
    console.log(`Quota exceeded at write k: ${writes} of ${writes} refused whole, and ${writes} writes after it kept.`);
  });

  test('[STORE-05] the space set aside is given back, so that a running job is written to its end', async () => {
    const { page, setQuota } = await ownOrigin('reserve');
    const used_bytes = await page.evaluate(async () => {
      const { page } = window as unknown as StoreWindow;
      const store = await page.openStore({ reserve_bytes: 5_000_000, reserveAfter_ms: 0 });
      Object.assign(window, { store });
      while (store.current().storage.reserve !== 'there') await new Promise((resolve) => setTimeout(resolve, 50));
      store.close();
      return (await navigator.storage.estimate()).usage ?? 0;
    });
    await page.close();
    // The browser grants space for some seconds ahead; it asks anew once nobody holds the database open.
    await new Promise((resolve) => setTimeout(resolve, 4000));
    const origin = server.address.replace('localhost', 'reserve.localhost');
    const next = await device.tab(origin);
    await setQuotaBefore(next, origin, used_bytes + 100_000);
    const ended = await next.evaluate(async () => {
      const { page } = window as unknown as StoreWindow;
      const store = await page.openStore({ reserve_bytes: 5_000_000 });
      const before = store.current().storage.reserve;
      const change = { ...page.roll('last', 1), blobs: [page.randomBlob(1_000_000)] };
      const fault = await page.faultOf(() => store.append([change]));
      const { size, storage } = store.current();
      const { broken, brokenBlobs } = await store.verify();
      store.close();
      return { before, fault, size, after: storage.reserve, broken, brokenBlobs };
    });
    expect(ended).toEqual({ before: 'there', fault: 'none', size: 1, after: 'used', brokenBlobs: [] });
    await setQuota().catch(() => undefined);
    await next.close();
  });
});

async function setQuotaBefore(page: Page, origin: string, quotaSize: number): Promise<void> {
  const control = await device.context.newCDPSession(page);
  await control.send('Storage.overrideQuotaForOrigin', { origin, quotaSize });
}

describe('clock', () => {
  const hour_ms = 3_600_000;
  const tenYears_ms = 10 * 365.25 * 24 * hour_ms;
  const steps = 8;

  test('[STORE-06] −1 h, ±10 years between any two steps: order and state stay, the jump is written down', async () => {
    const { page } = await ownOrigin('clock');
    const jumps_ms = [-hour_ms, tenYears_ms, -tenYears_ms];
    let tried = 0;
    for (const jump_ms of jumps_ms)
      for (let step = 1; step < steps; step++, tried++) {
        const found = await liveWithJump(page, { name: `clock-${jump_ms}-${step}`, jump_ms, step, steps });
        const { jumps, ...rest } = found;
        expect(rest, `${jump_ms} ms before step ${step}`).toEqual({
          verdict: 'ok',
          ups: 'rising',
          thing: { left_m: 5, gone: true },
          historyLength: 5,
          jumpsBefore: step,
        });
        expect(jumps).toEqual([Math.round(jump_ms / 100) / 10]);
      }
    await page.close();
    console.log(
      `Clock: ${tried} jumps between any two of ${steps} steps, each written down, order and state the same.`,
    );
  });
});

interface JumpCase {
  readonly name: string;
  readonly jump_ms: number;
  readonly step: number;
  readonly steps: number;
}

/** Goes through steps with clocks that are turned by hand; before one of them the wall clock jumps. */
async function liveWithJump(page: Page, jumpCase: JumpCase) {
  return page.evaluate(async ({ name, jump_ms, step, steps }: JumpCase) => {
    const { page } = window as unknown as StoreWindow;
    const clocks = { wall: Date.parse('2026-11-25T02:00:00Z'), up: 1000 };
    const store = await page.openStore({
      name,
      reserve_bytes: 0,
      clocks: { now: () => clocks.wall, up: () => clocks.up },
    });
    for (let i = 0; i < steps; i++) {
      clocks.wall += 30_000 + (i === step ? jump_ms : 0);
      clocks.up += 30_000;
      if (i < 5) await store.append([page.roll('kept', i + 1)]);
      else if (i === 5) await store.append([page.roll('gone', 1)]);
      else if (i === 6) await store.append([{ type: 'roll.removed', body: { schema: 1, thing: { id: 'gone' } } }]);
      else await store.append([page.roll('other', 1)]);
    }
    const db = await page.openPlainDatabase(name);
    const events = (await db.getAllFromIndex('events', 'by-place')).map((row) => JSON.parse(row.line));
    db.close();
    const { broken } = await store.verify();
    const history = await store.history('rolls', 'kept');
    const { rolls } = store.current().plant;
    store.close();
    const jumps = events.filter((event) => event.type === 'device.clock-jumped');
    const ups: number[] = events.map((event) => event.up_ms);
    return {
      verdict: broken?.verdict ?? 'ok',
      ups: ups.every((up, i) => up >= (ups[i - 1] ?? 0)) ? 'rising' : 'not rising',
      thing: { left_m: rolls['kept']?.left_m, gone: rolls['gone'] === undefined },
      historyLength: history.length,
      jumps: jumps.map((event) => event.body.thing.jump_s),
      jumpsBefore: events.findIndex((event) => event.type === 'device.clock-jumped'),
    };
  }, jumpCase);
}
