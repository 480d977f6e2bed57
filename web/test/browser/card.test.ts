import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { answered, openReader, plainSpaces, type Reader, textOf, visit } from './support/reader.ts';

let browser: Browser;
let reader: Reader;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  reader = await openReader(browser);
});
afterEach(async () => {
  expect(reader.trouble.all).toEqual([]);
  await reader.close();
});

const bigNumbers = async () => (await reader.page.locator('.big .figure-value').allTextContents()).map(plainSpaces);

describe('splice card', () => {
  // Derived: the loop of 64.80 m at 0.90 % set elongation is 64 800 / 1.009 = 64 222 mm slack; one finger of
  // 80 mm more, tip to tip, is 64 302 mm.
  test('[WEB-06] the card of QM-04-3 gives the cut length large, with the finger in it', async () => {
    await visit(reader, '/card/QM-04-3');
    expect(await bigNumbers()).toContain('64 302');
    const cut = reader.page.locator('.big', { hasText: '302' }).first();
    const size = await cut.locator('.figure-value').evaluate((element) => {
      const style = getComputedStyle(element);
      return { size: style.fontSize, weight: style.fontWeight, digits: style.fontVariantNumeric };
    });
    expect(Number.parseFloat(size.size)).toBeCloseTo(52, 0);
    expect(size.weight).toBe('800');
    expect(size.digits).toContain('tabular-nums');
    expect(await textOf(cut.locator('.figure-range'))).toMatch(/^± \d/);
  });

  test('[WEB-06] the same length in inches for a reader of US units', async () => {
    // 64 302.0 mm / 25.4 = 2 531.6 in.
    await reader.close();
    reader = await openReader(browser, { settings: { ...answered, units: 'us' } });
    await visit(reader, '/card/QM-04-3');
    expect(await textOf(reader.page.locator('article'))).toMatch(/2[ ,]?531\.[56]/);
  });

  test('[WEB-08] "How it was computed" opens the formula in place, with the numbers in it', async () => {
    await visit(reader, '/card/QM-04-3');
    const cut = reader.page.locator('.big', { hasText: '302' }).first();
    const how = cut.getByRole('button', { name: 'How it was computed' });
    expect(await how.getAttribute('aria-expanded')).toBe('false');
    await how.click();
    expect(await how.getAttribute('aria-expanded')).toBe('true');
    const worked = await textOf(cut.locator('.worked'));
    expect(worked).toContain('64 222');
    expect(worked).toContain('80');
    expect(worked).toContain('64 302');
    expect(worked).toContain('Source');
    await how.click();
    expect(await cut.locator('.worked').count()).toBe(0);
  });

  test('[WEB-08] every switch on the card opens a formula', async () => {
    await visit(reader, '/card/QM-04-3');
    const switches = reader.page.locator('button.how');
    const count = await switches.count();
    expect(count).toBeGreaterThan(10);
    for (let at = 0; at < count; at += 1) await switches.nth(at).click();
    expect(await reader.page.locator('.worked').count()).toBe(count);
    for (const text of await reader.page.locator('.formula-numbers').allTextContents()) expect(text).toMatch(/\d/);
  });

  test('[WEB-09] alone or two people is asked once and remembered', async () => {
    await reader.close();
    reader = await openReader(browser, { settings: undefined });
    await visit(reader, '/card/QM-04-3');
    const { page } = reader;
    const time = async () => await textOf(page.locator('.card-time'));
    const alone = await time();
    await page.locator('.ask').getByRole('button', { name: 'Two people' }).click();
    expect(await page.locator('.ask').count()).toBe(0);
    expect(await time()).not.toBe(alone);
    await page.reload();
    await page.locator('article h1').waitFor();
    expect(await page.locator('.ask').count()).toBe(0);
  });

  test('[WEB-10] language, units, theme and press change in place and outlive a reload', async () => {
    await visit(reader, '/card/QM-04-3');
    const { page } = reader;
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByText('Deutsch').click();
    await page.getByText('Zoll, °F, psi').click();
    await page.getByText('Nacht', { exact: true }).click();
    await page.getByText('P2 South').click();
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    const dark = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    await page.reload();
    await page.locator('article h1').waitFor();
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    expect(await page.getByRole('link', { name: 'Linien' }).filter({ visible: true }).count()).toBe(1);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(dark);
    expect(await textOf(page.locator('article'))).toContain('South');
  });

  test('[WEB-11] a link to a card opens that card, also after a reload', async () => {
    await visit(reader, '/card/QM-01-2');
    await reader.page.reload();
    await reader.page.locator('article h1').waitFor();
    expect(await textOf(reader.page.locator('article h1'))).toContain('QM-01');
  });

  test('[WEB-11] a position that does not exist is said, with the way to the list', async () => {
    await visit(reader, '/card/QM-99-1');
    const { page } = reader;
    expect(await page.getByText('There is no position QM-99-1 in this plant.').isVisible()).toBe(true);
    await page.locator('.said').getByRole('link', { name: 'Lines' }).click();
    await page.getByRole('searchbox').waitFor();
  });

  test('[WEB-11] an address of a stranger is text, never a part of the page', async () => {
    await visit(reader, `/card/${encodeURIComponent('<img src=x onerror=alert(1)>')}`);
    expect(await reader.page.locator('main img').count()).toBe(0);
    expect(await reader.page.getByText('<img src=x').isVisible()).toBe(true);
  });

  test('[WEB-12] storage forbidden: the card is there all the same', async () => {
    await reader.close();
    reader = await openReader(browser, { settings: undefined });
    await reader.context.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      });
    });
    await visit(reader, '/card/QM-04-3');
    await reader.page.locator('.ask').getByRole('button', { name: 'Alone' }).click();
    expect(await bigNumbers()).toContain('64 302');
  });
});
