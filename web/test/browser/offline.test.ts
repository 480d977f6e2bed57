import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page, Response } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { engineVersion } from '../../../engine/src/version.ts';
import { type RunningServer, startServer } from '../../../server/src/index.ts';
import { securityHeaders } from '../../../server/src/security-headers.ts';
import { launchProfile } from '../../../tools/browser/launch.ts';
import { faceFaults } from './support/faces.ts';
import { answered, phone, plainSpaces, storeSettings, type Trouble, textOf, watchTrouble } from './support/reader.ts';
import { demoFolder, webFolder } from './support/serve-demo.ts';

const newBelt = '/stores/belts/~new';

let folder: string;
let server: RunningServer;
let context: BrowserContext;
let trouble: Trouble;

// A browser with a folder of its own, so that it finds again what it kept; a server of its own, so that it can be stopped.
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'offline-'));
  await cp(webFolder, join(folder, 'web'), { recursive: true });
  server = await serve(0);
  await startBrowser();
});
afterEach(async () => {
  await context.close();
  await server.close();
  await rm(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
});

const serve = (port: number) =>
  startServer({ plantFolder: demoFolder, demo: true, port, webFolder: join(folder, 'web') });

async function startBrowser(): Promise<void> {
  context = await launchProfile(join(folder, 'profile'));
  trouble = await watchTrouble(context, server.address);
  await storeSettings(context, answered);
}

/** Opens the app and waits until its files are kept on the device. */
async function openAndKeep(path = '/'): Promise<Page> {
  const page = await context.newPage();
  await page.setViewportSize(phone);
  await page.goto(server.address + path);
  await kept(page);
  return page;
}

const kept = (page: Page) => page.locator('[data-offline="kept"]').first().waitFor({ state: 'attached' });

const tiles = async (page: Page) => {
  // A phone draws first what it shows, the rest after it.
  await page.locator('.tile').nth(59).waitFor({ state: 'attached' });
  return page.locator('.tile').count();
};

// The server that does not answer is what is tried here; the browser writes that into its console.
const unexpected = () => trouble.all.filter((line) => !line.startsWith('console: Failed to load resource'));

describe('without a network', () => {
  test('[OFFLINE-01] reload, deep link, card and paper, and all of it after the browser was started again', async () => {
    const page = await openAndKeep();
    expect(await tiles(page)).toBe(60);
    await server.close();

    expect(isKept(await page.reload())).toBe(true);
    expect(await tiles(page)).toBe(60);
    expect(isKept(await page.goto(`${server.address}/card/QM-04-3`))).toBe(true);
    await cardIsWhole(page);
    await page.locator('.back, .place').filter({ visible: true }).first().click();
    expect(await tiles(page)).toBe(60);
    expect(unexpected()).toEqual([]);

    await context.close();
    await startBrowser();
    const again = await context.newPage();
    await again.setViewportSize(phone);
    expect(isKept(await again.goto(`${server.address}/card/QM-04-3`))).toBe(true);
    await cardIsWhole(again);
    expect(unexpected()).toEqual([]);
  });

  test('[OFFLINE-02] the page kept on the device is under the policy with which it was served', async () => {
    const page = await openAndKeep();
    await server.close();
    const response = await page.reload();
    expect(isKept(response)).toBe(true);
    for (const [name, value] of Object.entries(securityHeaders))
      expect(await response?.headerValue(name), name).toBe(value);
    await tiles(page);
    expect(await page.evaluate(tryInlineCode)).toBe('TypeError');
    expect(await page.evaluate(tryForeignAddress)).toBe('connect-src');
    // Both mishaps were made on purpose, and were seen by the watch of every other test.
    expect(trouble.all.filter((line) => line.startsWith('policy: '))).toHaveLength(2);
  });

  test('[OFFLINE-03] every language is there, though nobody read it before', async () => {
    const page = await openAndKeep();
    await server.close();
    await page.reload();
    await tiles(page);
    await page.getByRole('button', { name: 'Settings' }).click();
    for (const [name, heading] of [
      ['Deutsch', 'Linien'],
      ['Español', 'Líneas'],
    ] as const) {
      await page.getByText(name).click();
      await page.getByRole('heading', { name: heading, exact: true }).waitFor();
    }
    expect(unexpected()).toEqual([]);
  });
});

describe('a new version', () => {
  test('[OFFLINE-04] waits until somebody takes it, and says which one runs', async () => {
    const page = await openAndKeep();
    const first = await versionIn(join(folder, 'web'));
    expect(await shownVersion(page)).toBe(first);
    await publish('0123456789ab');
    await lookForNewer(page);
    const notice = page.locator('.app-notice');
    await notice.getByText('A new version is ready.').waitFor();
    expect(await faceFaults(page, { axe: false })).toEqual([]);
    await page.reload();
    await notice.waitFor();
    expect(await shownVersion(page)).toBe(first);

    await Promise.all([page.waitForEvent('load'), notice.getByRole('button').click()]);
    await tiles(page);
    expect(await shownVersion(page)).toBe('0123456789ab');
    expect(await notice.count()).toBe(0);
    await server.close();
    expect(isKept(await page.reload())).toBe(true);
    expect(await shownVersion(page)).toBe('0123456789ab');
    expect(unexpected()).toEqual([]);
  });

  test('[OFFLINE-05] is not offered over unsaved entries, nor from another tab, and loses none of them', async () => {
    const page = await openAndKeep(newBelt);
    const name = page.locator('form input').first();
    await name.fill('Reed-20');
    await publish('0123456789ab');
    const other = await openAndKeep('/');
    await lookForNewer(other);
    const notice = other.locator('.app-notice');
    await notice.getByText('A new version is ready.').waitFor();
    expect(await page.locator('.app-notice').count()).toBe(0);

    await notice.getByRole('button').click();
    await notice.getByText('Somewhere else on this device').waitFor();
    expect(await name.inputValue()).toBe('Reed-20');

    // The tab with the form goes; what was typed in it stays on the device.
    await page.goto(`${server.address}/`);
    await kept(page);
    await Promise.all([other.waitForEvent('load'), page.waitForEvent('load'), notice.getByRole('button').click()]);
    await tiles(page);
    expect(await shownVersion(page)).toBe('0123456789ab');
    await page.goto(server.address + newBelt);
    await name.waitFor();
    expect(await name.inputValue()).toBe('Reed-20');
    expect(unexpected()).toEqual([]);
  });

  test('[OFFLINE-06] that the server changed halfway is not installed, and the old one goes on', async () => {
    const page = await openAndKeep();
    const first = await versionIn(join(folder, 'web'));
    await publish('0123456789ab', { page: 'ba9876543210' });
    await lookForNewer(page);
    await page.waitForFunction(async () => {
      const found = await navigator.serviceWorker.getRegistration();
      return found?.installing === null && found.waiting === null;
    });
    expect(await page.locator('.app-notice').count()).toBe(0);
    await server.close();
    await page.reload();
    expect(await shownVersion(page)).toBe(first);
  });
});

const isKept = (response: Response | null) => response?.fromServiceWorker() === true && response.status() === 200;

/** The cut length of QM-04-3, derived in card.test.ts; then its paper. */
async function cardIsWhole(page: Page): Promise<void> {
  await page.locator('.big').first().waitFor();
  expect((await page.locator('.big .figure-value').allTextContents()).map(plainSpaces)).toContain('64 302');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Make PDF' }).click(),
  ]);
  const bytes = await readFile(await download.path());
  expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  await page.getByText('The PDF is with your downloads.').waitFor();
}

/** What a stranger's text would have to manage to run as code. */
function tryInlineCode(): string {
  try {
    const script = document.createElement('script');
    script.text = 'document.title = "taken"';
    document.head.append(script);
    return document.title;
  } catch (problem) {
    return problem instanceof Error ? problem.name : String(problem);
  }
}

function tryForeignAddress(): Promise<string> {
  return new Promise((resolve) => {
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) => resolve(effectiveDirective));
    fetch('http://127.0.0.1:9/').then(
      () => resolve('answered'),
      () => undefined,
    );
  });
}

async function versionIn(web: string): Promise<string> {
  const found = /name="build" content="([0-9a-f]{12})"/.exec(await readFile(join(web, 'index.html'), 'utf8'))?.[1];
  if (found === undefined) throw new Error('the page that was built carries no version');
  return found;
}

/** Puts a newer version on the server: the same files under another hash. */
async function publish(version: string, { page = version } = {}): Promise<void> {
  const web = join(folder, 'web');
  const old = await versionIn(web);
  for (const [name, next] of [
    ['service-worker.js', version],
    ['index.html', page],
  ] as const) {
    const text = await readFile(join(web, name), 'utf8');
    expect(text).toContain(old);
    await writeFile(join(web, name), text.replaceAll(old, next));
  }
}

/** What a page does by itself when it is shown again after an hour. */
async function lookForNewer(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration())?.update();
  });
}

async function shownVersion(page: Page): Promise<string | undefined> {
  const about = page.locator('[data-offline]').first();
  await about.waitFor({ state: 'attached' });
  const text = await textOf(about);
  expect(text).toContain(`engine ${engineVersion}`);
  return /Version ([0-9a-f]{12})/.exec(text)?.[1];
}
