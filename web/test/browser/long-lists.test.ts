import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults } from './support/faces.ts';
import { type ManyPositions, serveManyPositions } from './support/many-positions.ts';
import { pace_ms } from './support/pace.ts';
import { openReader, phone, type Reader, textOf, wide } from './support/reader.ts';

const size = { lines: 100, perLine: 100 };
/** A page with more elements than this answers slowly to touch (Lighthouse calls 1,400 too many; common practice). */
const mostElements = 3000;
const slowDown = 4;

let browser: Browser;
let server: ManyPositions;
let reader: Reader;
beforeAll(async () => {
  browser = await launchBrowser();
  server = await serveManyPositions(size.lines, size.perLine);
  // One reader for all: the plant is taken to the device once.
  reader = await openReader(browser);
  await bringAxe(reader.context);
});
afterAll(async () => {
  await browser.close();
  await server.close();
});
beforeEach(async () => {
  await reader.page.setViewportSize(phone);
});
afterEach(() => {
  expect(reader.trouble.all).toEqual([]);
});

async function open(path: string): Promise<Page> {
  await reader.page.goto(server.address + path);
  await reader.page.locator('main h1').first().waitFor();
  await reader.page.evaluate(() => document.fonts.ready.then(() => undefined));
  return reader.page;
}

interface Scrolled {
  readonly most: number;
  readonly seen: number;
  readonly blank: number;
  readonly jumps: readonly string[];
}

/**
 * Runs in the page: scrolls from top to bottom by 700 px at a time, and back faster. Counts elements, targets met and screens on
 * which nothing but undrawn parts stood two frames later; notes where what stood on the screen moved by itself.
 */
async function scrollThrough(selector: string): Promise<Scrolled> {
  const scrollerOf = (element: Element | null): Element => {
    if (element === null || element === document.body) return document.scrollingElement ?? document.body;
    return /auto|scroll/.test(getComputedStyle(element).overflowY) ? element : scrollerOf(element.parentElement);
  };
  const frames = async (count: number) => {
    for (let i = 0; i < count; i += 1) await new Promise(requestAnimationFrame);
  };
  const scroller = scrollerOf(document.querySelector('.long'));
  const seen = new Set<string>();
  const jumps: string[] = [];
  let most = 0;
  let blank = 0;
  const onScreen = () =>
    [...document.querySelectorAll<HTMLAnchorElement>(selector)].filter((link) => {
      const { top, bottom } = link.getBoundingClientRect();
      return bottom > 0 && top < innerHeight;
    });
  const step = async (by: number) => {
    scroller.scrollBy({ top: by, behavior: 'instant' });
    await frames(1);
    const [first] = onScreen();
    const before = first?.getBoundingClientRect().top ?? 0;
    await frames(2);
    const moved = (first?.isConnected ? first.getBoundingClientRect().top : before) - before;
    if (Math.abs(moved) > 2) jumps.push(`${first?.getAttribute('href')} moved by ${moved.toFixed(0)} px`);
    for (const link of onScreen()) seen.add(link.href);
    if (onScreen().length === 0) blank += 1;
    most = Math.max(most, document.querySelectorAll('*').length);
  };
  for (let before = -1; scroller.scrollTop !== before; ) {
    before = scroller.scrollTop;
    await step(700);
  }
  while (scroller.scrollTop > 0) await step(-2000);
  return { most, seen: seen.size, blank, jumps };
}

describe('ten thousand positions on a hundred lines', () => {
  test.each([
    { face: 'phone', viewport: phone },
    { face: 'wide screen', viewport: wide },
  ])(
    '[LIST-01] $face: from top to bottom every position is met, few are drawn, nothing jumps',
    async ({ viewport }) => {
      await reader.page.setViewportSize(viewport);
      const page = await open('/');
      await page.locator('.tile').first().waitFor();
      const { most, seen, blank, jumps } = await page.evaluate(scrollThrough, '.tile');
      console.log(`Lines, ${viewport.width} px: ${seen} positions met, at most ${most} elements`);
      expect(seen).toBe(size.lines * size.perLine);
      expect(most).toBeLessThan(mostElements);
      expect(blank).toBe(0);
      expect(jumps).toEqual([]);
    },
    300_000,
  );

  test('[LIST-02] the last position is found by its number and its card opens', async () => {
    const page = await open('/');
    await page.getByRole('searchbox').pressSequentially('100-100');
    expect(await page.locator('.found-row .found-id').first().textContent()).toBe('L100-100');
    await page.keyboard.press('Enter');
    await page.locator('article h1').waitFor();
    expect(new URL(page.url()).pathname).toBe('/card/L100-100');
    expect(await page.locator('.big').count()).toBeGreaterThan(0);
  });

  test('[LIST-02] the search answers at each letter, also on a slow phone', async () => {
    const page = await open('/');
    // Whoever types comes after what the first paint left for later.
    await page.locator('.line').nth(99).waitFor({ state: 'attached' });
    const session = await reader.context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowDown });
    await page.evaluate(noteKeys);
    await page.getByRole('searchbox').focus();
    for (const letter of 'infeed 77 running') await page.keyboard.press(letter === ' ' ? 'Space' : letter);
    expect(await page.locator('.found-row').count()).toBeGreaterThan(0);
    const reference_ms = await pace_ms(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const took_ms = (await page.evaluate(() => (window as unknown as { took: number[] }).took)).toSorted(
      (a, b) => a - b,
    );
    const median_ms = took_ms[Math.floor(took_ms.length / 2)] ?? Number.NaN;
    console.log(
      `Search in 10,000, ${slowDown}x slower: ${median_ms.toFixed(0)} ms a letter, at most ${took_ms.at(-1)?.toFixed(0)} ms; arithmetic ${reference_ms.toFixed(0)} ms`,
    );
    // About 1 to 2 by how busy the machine is. A search that works through all again at each letter is far beyond.
    expect(median_ms / reference_ms).toBeLessThan(8);
  });

  test('[PRINT-04] labels of a hundred lines: the page stays in hand, says how far it is, and stops when asked', async () => {
    const page = await open('/labels');
    const files: string[] = [];
    const note = (file: Download) => files.push(file.suggestedFilename());
    page.on('download', note);
    await page.getByRole('button', { name: 'Make PDF of labels' }).click();
    const progress = page.getByRole('progressbar', { name: 'Making the PDF' });
    const share = async () => Number(await progress.getAttribute('value'));
    await progress.waitFor();
    const before = await share();
    // The form answers while the file is made.
    await page.getByRole('radio', { name: 'US letter' }).check();
    await expect.poll(share, { timeout: 60_000 }).toBeGreaterThan(before);
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.getByText('Stopped. No PDF was made.').waitFor();
    expect(await progress.count()).toBe(0);
    await page.getByRole('button', { name: 'Make PDF of labels' }).waitFor();
    page.off('download', note);
    expect(files).toEqual([]);
  });

  test('[LIST-03] the keyboard meets every position in order, to the end and back', async () => {
    const page = await open('/');
    const here = () => page.evaluate(() => document.activeElement?.getAttribute('href'));
    await page.locator('.tile').first().focus();
    const met: (string | null | undefined)[] = [];
    for (let presses = 0; presses < 150; presses += 1) {
      met.push(await here());
      await page.keyboard.press('ArrowRight');
    }
    expect(met).toEqual(Array.from({ length: 150 }, (_, i) => `/card/L00${i < 100 ? 1 : 2}-${(i % 100) + 1}`));
    await page.keyboard.press('End');
    expect(await here()).toBe('/card/L100-100');
    await page.keyboard.press('ArrowLeft');
    expect(await here()).toBe('/card/L100-99');
    await page.keyboard.press('Home');
    expect(await here()).toBe('/card/L001-1');
  });

  test('[LIST-03] the tab key goes into a part that is not drawn, from both sides', async () => {
    const page = await open('/');
    const undrawn = page.locator('.undrawn').first();
    await undrawn.evaluate((part) => part.focus());
    expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toMatch(
      /^\/card\/L\d+-(1|31|61|91)$/,
    );
    await page.keyboard.press('End');
    await page
      .locator('.undrawn')
      .last()
      .evaluate((part) => part.focus());
    expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toMatch(
      /^\/card\/L\d+-(30|60|90|100)$/,
    );
  });

  test('[LIST-04] what holds the focus stays while the page scrolls on', async () => {
    const page = await open('/');
    await page.locator('.tile').first().focus();
    await page.evaluate(() => scrollTo({ top: 20_000, behavior: 'instant' }));
    await page.waitForFunction(() => {
      const tiles = [...document.querySelectorAll('.tile')];
      return tiles.some(
        (tile) => tile.getBoundingClientRect().top > 0 && tile.getBoundingClientRect().top < innerHeight,
      );
    });
    expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toBe('/card/L001-1');
  });

  test('[LIST-05] back from a card the list stands where it was left', async () => {
    const page = await open('/');
    await page.evaluate(() => scrollTo({ top: 30_000, behavior: 'instant' }));
    const tile = page.locator('.tile').nth(60);
    await tile.waitFor();
    const before = await page.evaluate(() => scrollY);
    await page.evaluate(() => {
      const tiles = [...document.querySelectorAll<HTMLElement>('.tile')];
      tiles.find((one) => one.getBoundingClientRect().top > 200)?.click();
    });
    await page.locator('article h1').waitFor();
    await page.goBack();
    await page.waitForFunction((top) => Math.abs(scrollY - top) < 100, before);
  });

  test('[LIST-01] stores: the same for the rows of a kind, and for what a search finds', async () => {
    const page = await open('/stores/positions');
    await page.locator('.found-row').first().waitFor();
    expect(await textOf(page.locator('.found-count'))).toMatch(/10[ ,.]?000/);
    expect(await page.evaluate(() => document.querySelectorAll('*').length)).toBeLessThan(mostElements);
    await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' }));
    await page.locator('.found-row[href$="L100-100"]').waitFor();
    expect(await page.evaluate(() => document.querySelectorAll('*').length)).toBeLessThan(mostElements);
    await page.getByRole('searchbox').fill('L100-100');
    await expect.poll(() => page.locator('.thing-row').count()).toBe(1);
  });

  test('[LIST-06] undrawn parts can be read, are large enough, and nothing is for axe-core to report', async () => {
    const page = await open('/');
    await page.locator('.undrawn').first().waitFor();
    const faults = await faceFaults(page);
    expect(faults).toEqual([]);
  });
});

/** Runs in the page: how long from each key until what it changed is drawn. */
function noteKeys(): void {
  const took: number[] = [];
  Object.assign(window, { took });
  addEventListener(
    'keydown',
    ({ timeStamp }) => requestAnimationFrame(() => setTimeout(() => took.push(performance.now() - timeStamp), 0)),
    { capture: true },
  );
}
