import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { answered, openReader, type Reader, textOf, visit, wide } from './support/reader.ts';

let browser: Browser;
let reader: Reader;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  reader = await openReader(browser);
  await visit(reader, '/');
});
afterEach(async () => {
  expect(reader.trouble.all).toEqual([]);
  await reader.close();
});

const found = () => reader.page.locator('.found-row .found-id').allTextContents();

describe('lines', () => {
  // The invented plant has six lines with 8, 14, 12, 6, 10 and 10 positions; QM-04-3 is the torn one.
  test('[WEB-01] all 60 positions stand on their lines, each with shape, word and number', async () => {
    const { page } = reader;
    // What a phone does not show at once comes right after the first paint.
    await page.locator('.line').nth(5).waitFor();
    expect(await page.locator('.line').count()).toBe(6);
    expect(await page.locator('.tile').count()).toBe(60);
    expect(await page.locator('.line').nth(1).locator('.tile').count()).toBe(14);
    expect(await page.locator('.tile svg').count()).toBe(60);
    const torn = page.getByRole('link', { name: 'QM-04-3, 3 Torn' });
    expect(await textOf(torn.locator('.tile-number'))).toMatch(/3$/);
    expect(await torn.getByText('Torn').isVisible()).toBe(true);
  });

  test('[WEB-01] the counts of the states add up to the positions', async () => {
    const texts = await reader.page.locator('.count').allTextContents();
    const counts = texts.map((text) => Number(/\d+$/.exec(text.trim())?.[0]));
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(60);
    expect(texts[0]).toMatch(/^\s*Torn\s*1\s*$/);
  });

  test('[WEB-02] the torn position is one tap away', async () => {
    const { page } = reader;
    await page.getByRole('link', { name: 'Splice card QM-04-3' }).click();
    await page.getByRole('heading', { level: 1 }).filter({ visible: true }).waitFor();
    expect(new URL(page.url()).pathname).toBe('/card/QM-04-3');
  });

  test('[WEB-03] the search answers as one types, and says what to type when it finds nothing', async () => {
    const { page } = reader;
    const field = page.getByRole('searchbox');
    await field.pressSequentially('spi');
    expect(await found()).toHaveLength(6);
    await field.pressSequentially('ne torn');
    expect(await found()).toEqual(['QM-04-3']);
    await field.fill('vulcanizar');
    expect(await found()).toEqual(['QM-04-3', 'QM-03-12']);
    await field.fill('flint');
    expect(await found()).toHaveLength(16);
    await field.fill('nothing of the kind');
    expect(await page.getByText('0 positions found').isVisible()).toBe(true);
    expect(await page.getByText('Type part of a position').isVisible()).toBe(true);
    await field.press('Escape');
    await page.locator('.tile').nth(59).waitFor({ state: 'attached' });
    expect(await page.locator('.tile').count()).toBe(60);
  });

  test('[WEB-03] a state shows its own positions, and all again at a second press', async () => {
    const { page } = reader;
    const torn = page.getByRole('button', { name: /^Torn/ });
    await torn.click();
    expect(await torn.getAttribute('aria-pressed')).toBe('true');
    expect(await found()).toEqual(['QM-04-3']);
    await torn.click();
    await page.locator('.tile').nth(59).waitFor({ state: 'attached' });
    expect(await page.locator('.tile').count()).toBe(60);
  });

  test('[WEB-04] by keyboard alone: search, card, formula, and back', async () => {
    const { page } = reader;
    const focused = (selector: string) => page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector);
    for (let presses = 0; presses < 10 && !(await focused('input[type=search]')); presses += 1) {
      await page.keyboard.press('Tab');
    }
    expect(await focused('input[type=search]')).toBe(true);
    await page.keyboard.type('04');
    await page.keyboard.press('ArrowDown');
    expect(await focused('.found-row')).toBe(true);
    // The torn position stands first among those found.
    await page.keyboard.press('ArrowDown');
    expect(await focused('.found-row[href$="QM-04-1"]')).toBe(true);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await page.locator('article h1').waitFor();
    expect(new URL(page.url()).pathname).toBe('/card/QM-04-3');
    expect(await focused('article h1')).toBe(true);
    for (let presses = 0; presses < 60 && !(await focused('.how-alone')); presses += 1)
      await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.locator('.worked').count()).toBe(1);
    await page.keyboard.press('Enter');
    expect(await page.locator('.worked').count()).toBe(0);
    await page.goBack();
    expect(new URL(page.url()).pathname).toBe('/');
  });

  test('[WEB-04] Enter in the search opens the first position found', async () => {
    await reader.page.getByRole('searchbox').fill('04-3');
    await reader.page.keyboard.press('Enter');
    await reader.page.locator('article h1').waitFor();
    expect(new URL(reader.page.url()).pathname).toBe('/card/QM-04-3');
  });
});

describe('wide screen', () => {
  test('[WEB-05] places left, list in the middle, the chosen thing right', async () => {
    const other = await openReader(browser, { viewport: wide, settings: answered });
    await visit(other, '/card/QM-04-3');
    const left = async (selector: string) => (await other.page.locator(selector).boundingBox())?.x ?? Number.NaN;
    const places = await left('.places');
    const list = await left('.pane-list');
    const thing = await left('.pane-thing');
    expect(places).toBeLessThan(list);
    expect(list).toBeLessThan(thing);
    expect(await textOf(other.page.locator('.tile[aria-current="page"]'))).toMatch(/3/);
    await other.page.getByRole('link', { name: /^QM-01-2,/ }).click();
    await other.page.getByRole('heading', { level: 1, name: /QM-01/ }).waitFor();
    expect(other.trouble.all).toEqual([]);
    await other.close();
  });
});
