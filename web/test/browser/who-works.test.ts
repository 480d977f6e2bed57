import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../../../server/src/index.ts';
import { launchBrowser, launchProfile } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faultsWhenLonger } from './support/faces.ts';
import { keptEvents } from './support/kept-events.ts';
import {
  answered,
  openReader,
  phone,
  type Reader,
  storeSettings,
  textOf,
  visit,
  watchTrouble,
  wide,
} from './support/reader.ts';
import { demoFolder, webFolder } from './support/serve-demo.ts';

/** One of every kind of screen. */
const screens = [
  '/',
  '/card/QM-04-3',
  '/card/nowhere',
  '/stores',
  '/stores/belts',
  '/stores/belts/~new',
  '/stores/belts/Alder-24',
  '/stores/presses/P2/edit',
  '/stores/lines/QM-04/geometry',
  '/stores/positions/~many/QM-04',
  '/stores/nothing',
  '/start',
];

/** The word of each badge of the demo plant is found nowhere else on a page. */
const [first, second] = ['Heron', 'Lantern'];

const now = (page: Page) => page.locator('.who-now');
const tile = (page: Page, word: string) => page.locator('.who-tile').filter({ hasText: word });

async function handOver(page: Page, word: string): Promise<void> {
  await now(page).tap();
  await tile(page, word).tap();
  await now(page).filter({ hasText: word }).waitFor();
}

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

describe('who works here', () => {
  let reader: Reader;
  beforeEach(async () => {
    reader = await openReader(browser, { hasTouch: true });
  });
  afterEach(async () => {
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });

  test('[WHO-01] a badge is picked from large tiles, each with its own shape and word, and never a name', async () => {
    const { page } = reader;
    await visit(reader, '/');
    expect(await textOf(now(page))).toBe('Who works?');
    await now(page).tap();
    const tiles = page.locator('.who-tile');
    expect(await tiles.allInnerTexts()).toEqual(['Heron', 'Otter', 'Lantern', 'Bramble', 'Kestrel', 'Anvil']);
    const shapes = await tiles.locator('svg').evaluateAll((all) => all.map((shape) => shape.innerHTML));
    expect(new Set(shapes).size).toBe(6);
    for (const box of await tiles.evaluateAll((all) => all.map((each) => each.getBoundingClientRect().toJSON()))) {
      expect(box.width).toBeGreaterThanOrEqual(150);
      expect(box.height).toBeGreaterThanOrEqual(76);
    }
    await tile(page, first).tap();
    await now(page).filter({ hasText: first }).waitFor();
    expect(await tiles.count()).toBe(0);
  });

  test('[WHO-02] who works stands on every screen, in sight without scrolling', async () => {
    const { page } = reader;
    await visit(reader, '/');
    await handOver(page, first);
    for (const size of [phone, wide]) {
      await page.setViewportSize(size);
      for (const screen of screens) {
        await visit(reader, screen);
        const box = await now(page).filter({ hasText: first }).boundingBox();
        expect(box, `${screen} at ${size.width} px`).not.toBeNull();
        expect((box?.y ?? size.height) + (box?.height ?? 0), screen).toBeLessThanOrEqual(size.height);
      }
    }
    console.log(`Who works: in sight on ${screens.length} screens in 2 sizes.`);
  });

  test('[WHO-03] handing over takes two taps, in the middle of a form, and what is written next is the other one’s', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/roll-A24-1/edit');
    await handOver(page, first);
    const left = page.locator('[data-field=left] input');
    await left.fill('90');
    let taps = 0;
    for (const found of [now(page), tile(page, second)]) {
      await found.tap();
      taps += 1;
    }
    await now(page).filter({ hasText: second }).waitFor();
    expect(taps).toBe(2);
    expect(await left.inputValue()).toBe('90');
    await page.locator('button[type=submit]').tap();
    await page.locator('.written').waitFor();
    await page.locator('.history .more-button').tap();
    const last = await textOf(page.locator('.change').first());
    expect(last).toContain(second);
    expect(last).not.toContain(first);
    expect(await keptEvents(page, 'rolls/roll-A24-1')).toHaveLength(2);
  });

  test('[WHO-04] a badge of one plant writes nothing in another: there nobody is chosen', async () => {
    const { page } = reader;
    await visit(reader, '/');
    await handOver(page, first);
    await page.goto(new URL('/start', page.url()).href);
    await page.getByRole('textbox').fill('A plant of our own');
    await page.locator('button[type=submit]').tap();
    await page.locator('[data-start=belts]').waitFor();
    await visit(reader, '/stores/badges/~new');
    expect(await textOf(now(page))).toBe('Who works?');
    // The id that the badge has in the other plant.
    await page.locator('[data-field=id] input').fill('b1');
    await page.locator('[data-field=word] input').fill('Willow');
    await page.locator('[data-field=shape]').getByText('Star').tap();
    await page.locator('button[type=submit]').tap();
    await page.locator('.written').waitFor();
    const events = await keptEvents(page, 'badges/b1');
    expect(events.filter(({ body }) => body.thing['word'] === 'Willow').map(({ by }) => by)).toEqual(['no-badge']);
  });

  test('[WHO-05] by keyboard alone: who works keeps the focus, Escape changes nobody', async () => {
    const { page } = reader;
    await visit(reader, '/');
    await now(page).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await now(page).filter({ hasText: 'Otter' }).waitFor();
    const inHand = () => now(page).evaluate((element) => element === document.activeElement);
    expect(await inHand()).toBe(true);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Escape');
    expect(await page.locator('.who-tile').count()).toBe(0);
    expect(await inHand()).toBe(true);
    expect(await textOf(now(page))).toBe('Otter');
  });

  test('[WHO-06] a plant without badges says what a badge is and leads to the first one', async () => {
    const { page } = reader;
    await visit(reader, '/start');
    await page.getByRole('textbox').fill('Nobody yet');
    await page.locator('button[type=submit]').tap();
    await page.locator('[data-start=belts]').waitFor();
    await now(page).tap();
    await page.getByText('A badge is a shape and a word, never a name.').waitFor();
    await page.locator('.who-tiles a').tap();
    await page.locator('[data-field=word] input').waitFor();
  });
});

describe('without a network', () => {
  let folder: string;
  let server: RunningServer;
  let context: BrowserContext;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'who-works-'));
    await cp(webFolder, join(folder, 'web'), { recursive: true });
    server = await startServer({ plantFolder: demoFolder, demo: true, port: 0, webFolder: join(folder, 'web') });
    context = await launchProfile(join(folder, 'profile'));
  });
  afterEach(async () => {
    await context.close();
    await server.close();
    await rm(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
  });

  async function open(path: string): Promise<Page> {
    const page = await context.newPage();
    await page.setViewportSize(phone);
    await page.goto(server.address + path);
    await page.locator('main h1').first().waitFor();
    return page;
  }

  test('[WHO-07] a hand-over with the server gone is kept, over a reload and over the end of the browser', async () => {
    await watchTrouble(context, server.address);
    await storeSettings(context, answered);
    const page = await open('/');
    await page.locator('[data-offline="kept"]').first().waitFor({ state: 'attached' });
    await server.close();
    for (const word of [first, second]) {
      await now(page).click();
      await tile(page, word).click();
      await now(page).filter({ hasText: word }).waitFor();
    }
    await page.reload();
    await now(page).filter({ hasText: second }).waitFor();
    await context.close();
    context = await launchProfile(join(folder, 'profile'));
    const again = await open('/card/QM-04-3');
    await now(again).filter({ hasText: second }).waitFor();
  });

  test('[WHO-08] another tab shows the hand-over at once', async () => {
    await storeSettings(context, answered);
    const [one, other] = [await open('/'), await open('/stores')];
    await now(one).click();
    await tile(one, second).click();
    await now(other).filter({ hasText: second }).waitFor();
  });
});

describe.each([
  { language: 'en', theme: 'day', viewport: phone },
  { language: 'de', theme: 'night', viewport: phone },
  { language: 'es', theme: 'night', viewport: wide },
  { language: 'de', theme: 'day', viewport: wide },
] as const)('tiles in $language, $theme, $viewport.width px', ({ language, theme, viewport }) => {
  test('[WHO-01] [WEB-07] nothing cut, readable, targets large and apart', async () => {
    const reader = await openReader(browser, { viewport, settings: { ...answered, language, theme } });
    const { page } = reader;
    await bringAxe(reader.context);
    await visit(reader, '/stores');
    await now(page).click();
    await tile(page, first).click();
    await now(page).filter({ hasText: first }).waitFor();
    await now(page).click();
    const faults = await faceFaults(page);
    expect(faults).toEqual([]);
    expect(await faultsWhenLonger(page), 'at +40 %').toEqual([]);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});
