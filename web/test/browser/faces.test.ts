import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faces, faultsWhenLonger } from './support/faces.ts';
import { poorDrawings } from './support/measure.ts';
import { answered, openReader, visit } from './support/reader.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

function openAllFormulas(): void {
  for (const button of document.querySelectorAll<HTMLElement>('button.how')) button.click();
}

const inUnits = faces.flatMap((face) => (['metric', 'us'] as const).map((units) => ({ ...face, units })));

describe.each(inUnits)('$language, $units, $size', ({ language, units, viewport }) => {
  test('[WEB-07] lines and card: nothing cut, readable, targets large and apart, no trouble', async () => {
    const settings = { ...answered, language, units };
    const reader = await openReader(browser, { viewport, settings });
    const { page } = reader;
    await bringAxe(reader.context);
    for (const place of ['/', '/card/QM-04-3', '/card/QM-05-2']) {
      await visit(reader, place);
      const settingsButton = page.locator('.settings-button');
      if (await settingsButton.isVisible()) await settingsButton.click();
      await page.evaluate(openAllFormulas);
      const faults = [
        ...(await page.evaluate(poorDrawings)), // Units change numbers, not roles and names.
        ...(await faceFaults(page, { axe: units === 'metric' })),
      ];
      expect(faults, place).toEqual([]);
      expect(await faultsWhenLonger(page), `${place} at +40 %`).toEqual([]);
    }
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});
