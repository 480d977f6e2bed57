import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { cutText } from './support/measure.ts';
import { answered, openReader, visit } from './support/reader.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

// A5 is 148 x 210 mm (ISO 216); less 9 mm at each edge, at 96 px to the inch.
const paper = { width: Math.floor(((148 - 18) / 25.4) * 96), height: Math.floor(((210 - 18) / 25.4) * 96) };

describe('paper', () => {
  test('[WEB-14] printed, the card is black on white, without what only a screen can do', async () => {
    const reader = await openReader(browser, { viewport: paper, settings: { ...answered, theme: 'night' } });
    await visit(reader, '/card/QM-04-3');
    const { page } = reader;
    await page.emulateMedia({ media: 'print' });
    const colours = await page.evaluate(() => ({
      ground: getComputedStyle(document.documentElement).backgroundColor,
      ink: getComputedStyle(document.querySelector('article h1') ?? document.body).color,
    }));
    expect(colours).toEqual({ ground: 'rgb(255, 255, 255)', ink: 'rgb(0, 0, 0)' });
    expect(await page.locator('header.bar:visible, .ends:visible, .pane-list:visible').count()).toBe(0);
    expect(await page.locator('.big:visible').count()).toBeGreaterThan(0);
    expect(await page.evaluate(cutText)).toEqual([]);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });

  test.each(['metric', 'us'] as const)(
    '[WEB-15] %s: the PDF is made here, and its maker fetched only then',
    async (units) => {
      const reader = await openReader(browser, { settings: { ...answered, units } });
      await visit(reader, '/card/QM-04-3');
      const { page } = reader;
      const fetched: string[] = [];
      page.on('request', (request) => fetched.push(request.url()));
      const before = await page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
      expect(before.filter((name) => name.endsWith('.ttf'))).toEqual([]);
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Make PDF' }).click(),
      ]);
      expect(download.suggestedFilename()).toBe('QM-04-3.pdf');
      const bytes = await readFile(await download.path());
      expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
      expect(bytes.length).toBeGreaterThan(8000);
      // A5 is 419.53 x 595.28 points, half a US letter 396 x 612.
      expect(bytes.toString('latin1')).toMatch(
        units === 'us' ? /MediaBox \[0 0 396(\.0+)? 612/ : /MediaBox \[0 0 419\.5\d* 595\.2/,
      );
      expect(fetched.length).toBeGreaterThan(0);
      await page.getByText('The PDF is with your downloads.').waitFor();
      expect(reader.trouble.all).toEqual([]);
      await reader.close();
    },
  );
});
