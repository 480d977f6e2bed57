import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { startBareBrowser } from './support/bare-browser.ts';
import { faceFaults, faces, faultsWhenLonger, pictureOf } from './support/faces.ts';
import type { PhotoPage } from './support/photo-page/photo-page.tsx';
import { jpegOf } from './support/picture-files.ts';
import { answered, openReader, plainSpaces, type Reader } from './support/reader.ts';
import { type StoreServer, servePhotoPage } from './support/store-server.ts';

type PhotoWindow = { readonly page: PhotoPage };

let server: StoreServer;
let browser: Browser;
let told: (path: string, body: unknown) => void = () => undefined;
beforeAll(async () => {
  [server, browser] = [
    await servePhotoPage((path, body) => told(path, JSON.parse(body.toString()))),
    await launchBrowser(),
  ];
});
afterAll(async () => {
  await browser.close();
  await server.close();
});

const picture = jpegOf({ width_px: 640, height_px: 480, colourAt: (x, y) => [(x * 3) & 255, (y * 4) & 255, 90] });

async function choose(page: Page, bytes = picture): Promise<void> {
  const file = { name: 'splice.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) };
  await page.locator('input[capture]').setInputFiles(file);
}

const at = (page: Page, state: string) => page.locator(`[data-photo=${state}]`).waitFor({ timeout: 10_000 });

/** A picture that cannot be packed: every square of another colour. */
const noisy = jpegOf({
  width_px: 2400,
  height_px: 1600,
  colourAt: (x, y) => [(x * 7919 * (y + 1)) & 255, (y * 104729 * (x + 3)) & 255, (x * y * 31) & 255],
});

/** Room for the store and small pictures, and none for a noisy one; without a size all there is. */
async function setRoom({ context, page }: Reader, quotaSize?: number): Promise<void> {
  const control = await context.newCDPSession(page);
  const { origin } = new URL(server.address);
  await control.send('Storage.overrideQuotaForOrigin', quotaSize === undefined ? { origin } : { origin, quotaSize });
}
const little_bytes = 150_000;

async function device(): Promise<Reader> {
  const reader = await openReader(browser);
  await reader.page.goto(server.address);
  await reader.page.locator('.photo').waitFor();
  return reader;
}

interface Found {
  readonly size: number;
  readonly broken?: unknown;
  readonly brokenBlobs: readonly string[];
  readonly there: number;
}

/** Opens the browser on a profile and kills it soon after so many photos were said to be kept. */
async function live(
  profile: string,
  sure: readonly string[],
  photos: number,
): Promise<{ found: Found; kept: string[] }> {
  const kept: string[] = [];
  let found: Found | undefined;
  const done = new Promise<void>((resolve, reject) => {
    const tooLong = setTimeout(() => reject(new Error('the page said nothing for a minute')), 60_000);
    told = (path, body) => {
      if (path === '/found') found = body as Found;
      if (path === '/kept') kept.push((body as { readonly sha256: string }).sha256);
      if (found === undefined || kept.length < photos) return;
      clearTimeout(tooLong);
      resolve();
    };
  });
  const bare = await startBareBrowser(profile, `${server.address}/?run=${kept.length}&sure=${sure.join(',')}`);
  try {
    await done;
  } finally {
    await bare.kill();
    told = () => undefined;
  }
  if (found === undefined) throw new Error('the page never told what it found');
  return { found, kept };
}

describe('a kept photo', () => {
  test('[PHOTO-07] the browser killed as soon as “kept” is on the screen: each is there, whole, with its event', async () => {
    const profile = await mkdtemp(join(tmpdir(), 'photo-kills-'));
    const sure: string[] = [];
    for (let kill = 0; kill < 6; kill++) {
      const { found, kept } = await live(profile, sure, 1 + (kill % 3));
      const { size, broken, brokenBlobs, there } = found;
      expect([broken, brokenBlobs, there], `kill ${kill}`).toEqual([undefined, [], sure.length]);
      expect(size).toBeGreaterThan(sure.length);
      sure.push(...kept);
    }
    console.log(`Photos: ${sure.length} said to be kept, 6 kills, all there.`);
    await rm(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
  });

  test('[PHOTO-08] leaves with the export, and comes back with it; a device that lacks the picture gets it from the file', async () => {
    const [here, there] = [await device(), await device()];
    await choose(here.page);
    await at(here.page, 'kept');
    const file = await here.page.evaluate(async () => {
      const { store } = (window as unknown as PhotoWindow).page;
      return [...new Uint8Array(await (await store.exportAll()).arrayBuffer())];
    });
    const take = async () =>
      there.page.evaluate(async (bytes) => {
        const { store, photoOf } = (window as unknown as PhotoWindow).page;
        const preview = await store.previewImport(new Blob([Uint8Array.from(bytes)]));
        const { nothingNew, blobs, missingBlobs } = preview;
        if (!nothingNew) await store.takeImport(preview);
        const sha256 = await store.exportAll().then(async () => {
          const db = indexedDB.open('loopwright');
          const names = await new Promise<IDBValidKey[]>((resolve) => {
            db.onsuccess = () => {
              const asked = db.result.transaction('blobs').objectStore('blobs').getAllKeys();
              asked.onsuccess = () => resolve(asked.result);
            };
          });
          db.result.close();
          return String(names[0]);
        });
        const photo = await photoOf(store, sha256);
        const { brokenBlobs } = await store.verify();
        return { nothingNew, blobs, missingBlobs, sha256, type: photo?.type, size: photo?.size, brokenBlobs };
      }, file);
    const taken = await take();
    expect(taken).toMatchObject({ nothingNew: false, blobs: 1, missingBlobs: 0, type: 'image/jpeg', brokenBlobs: [] });
    await there.page.goto(`${server.address}/?show=${taken.sha256}`);
    const image = there.page.getByRole('img', { name: 'Pulley side' });
    await image.waitFor();
    expect(await image.evaluate((each: HTMLImageElement) => each.decode().then(() => each.naturalWidth))).toBe(640);
    expect((await take()).nothingNew).toBe(true);
    // The picture goes, as a browser may lose it; the events stay.
    await there.page.evaluate(async () => {
      const db = indexedDB.open('loopwright');
      await new Promise<void>((resolve) => {
        db.onsuccess = () => {
          const going = db.result.transaction('blobs', 'readwrite');
          going.objectStore('blobs').clear();
          going.oncomplete = () => resolve();
        };
      });
      db.result.close();
    });
    await there.page.reload();
    await there.page.getByText('Pulley side: the photo is not on this device').waitFor();
    expect(await take()).toMatchObject({ nothingNew: false, brokenBlobs: [], size: taken.size });
    for (const each of [here, there]) {
      expect(each.trouble.all.filter((what) => !what.includes('404'))).toEqual([]);
      await each.close();
    }
  });

  test('[PHOTO-08] what came in as a picture and is none is shown as none, and runs nothing', async () => {
    const reader = await device();
    const sha256 = await reader.page.evaluate(async () => {
      const { store } = (window as unknown as PhotoWindow).page;
      const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9" onload="document.title=\'ran\'"/>';
      const blob = new Blob([svg], { type: 'image/svg+xml' });
      const { events } = await store.append([{ type: 'test.picture', body: {}, blobs: [blob] }]);
      const hash = await crypto.subtle.digest('SHA-256', await blob.arrayBuffer());
      return events.length === 1
        ? [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
        : '';
    });
    await reader.page.goto(`${server.address}/?show=${sha256}`);
    await reader.page.getByText('Pulley side: the photo is damaged').waitFor();
    expect(await reader.page.title()).toBe('Photos alone');
    await reader.close();
  });

  test('[PHOTO-09] disk full: said, the photo is held, and kept once there is room', async () => {
    const reader = await openReader(browser);
    const { page } = reader;
    await setRoom(reader, little_bytes);
    await page.goto(server.address);
    await choose(page, noisy);
    await at(page, 'not-kept');
    const said = plainSpaces((await page.locator('.photo [role=status]').textContent()) ?? '');
    expect(said).toContain('The photo was read and is not kept yet. Not saved: the disk is full.');
    await page.getByRole('button', { name: 'Try again to keep it' }).click();
    await at(page, 'not-kept');
    await setRoom(reader);
    await page.getByRole('button', { name: 'Try again to keep it' }).click();
    await at(page, 'kept');
    const { size } = await page.evaluate(() => (window as unknown as PhotoWindow).page.store.current());
    expect(size).toBe(2);
    await reader.close();
  });
});

describe.each(faces)('$language, $size', ({ language, viewport }) => {
  test('[PHOTO-10] nothing cut, readable, targets large and apart: nothing yet, kept, a fault, no room', async () => {
    const settings = { ...answered, language };
    const reader = await openReader(browser, { viewport, settings });
    const { page } = reader;
    await bringAxe(reader.context);
    await setRoom(reader, little_bytes);
    await page.goto(`${server.address}/?show=${'0'.repeat(64)}`);
    const look = async (name: string) => {
      expect(await faceFaults(page, { picture: pictureOf(`photo-${name}`, language, viewport) }), name).toEqual([]);
      const { height = 0 } = (await page.locator('.photo-large').first().boundingBox()) ?? {};
      expect(height, name).toBeGreaterThanOrEqual(126);
    };
    await at(page, 'idle');
    // The words of this part come after the first ones.
    await page.locator('.photo-large').filter({ hasText: /\S/ }).first().waitFor();
    await look('idle');
    await choose(page);
    await at(page, 'kept');
    await page.locator('.photo img').waitFor();
    await look('kept');
    await page.locator('.photo-thumb button').click();
    await look('larger');
    await choose(page, new Uint8Array(40));
    await at(page, 'fault');
    await look('fault');
    await choose(page, noisy);
    await at(page, 'not-kept');
    await look('no-room');
    expect(await faultsWhenLonger(page), 'at +40 %').toEqual([]);
    await reader.close();
  });
});
