import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../../../server/src/index.ts';
import { plantMark, positionCode } from '../../../sheets/src/code/position-code.ts';
import { launchProfile } from '../../../tools/browser/launch.ts';
import { cameraFlags, sceneOf, writeFilm } from './support/fake-camera.ts';
import { answered, phone, storeSettings, watchTrouble } from './support/reader.ts';
import { demoFolder, webFolder } from './support/serve-demo.ts';

let folder: string;
let server: RunningServer;
let context: BrowserContext;

// A server of its own, so that it can be stopped, and a browser that keeps the app's files.
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'scan-offline-'));
  await cp(webFolder, join(folder, 'web'), { recursive: true });
  server = await startServer({ plantFolder: demoFolder, demo: true, port: 0, webFolder: join(folder, 'web') });
  const film = join(folder, 'label.y4m');
  writeFilm(film, sceneOf(positionCode({ position: 'QM-03-7', plant: plantMark('quillmoor') })));
  context = await launchProfile(join(folder, 'profile'), cameraFlags(film, 'allow'));
});
afterEach(async () => {
  await context.close();
  await server.close();
  await rm(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
});

test('[SCAN-10] without a network a label is scanned as before, though nobody scanned with one', async () => {
  const trouble = await watchTrouble(context, server.address);
  await storeSettings(context, answered);
  const page = await context.newPage();
  await page.setViewportSize(phone);
  await page.goto(server.address);
  await page.locator('[data-offline="kept"]').first().waitFor({ state: 'attached' });
  await server.close();

  await page.reload();
  await page.locator('.scan-link').click();
  await page.waitForURL('**/card/QM-03-7');
  await page.locator('.card-head h1').waitFor();
  const again = await page.goto(`${server.address}/scan`);
  expect(again?.fromServiceWorker()).toBe(true);
  await page.waitForURL('**/card/QM-03-7');
  // The server that does not answer is what is tried here; the browser writes that into its console.
  expect(trouble.all.filter((line) => !line.startsWith('console: Failed to load resource'))).toEqual([]);
});
