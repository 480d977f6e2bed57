import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faces, faultsWhenLonger } from './support/faces.ts';
import { answered, openReader, visit, wide } from './support/reader.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** Opens all that can be opened and leaves faults in the form, so that everything it can say is said. */
async function openAll(page: Page): Promise<void> {
  const submit = page.locator('button[type=submit]');
  if ((await submit.count()) > 0) {
    const number = page.locator('[data-field=thickness] input');
    if ((await number.count()) > 0) await number.fill('99999');
    await submit.click();
  }
  const closed = page.locator('main button[aria-expanded=false], main button[aria-pressed=false]');
  while ((await closed.count()) > 0) await closed.first().click();
  const remove = page.locator('.remove');
  if ((await remove.count()) > 0) await remove.click();
}

const places = [
  '/stores',
  '/stores/belts',
  '/stores/belts/~new',
  '/stores/belts/Alder-24',
  '/stores/presses/P2/edit',
  '/stores/positions/~many/QM-04',
];

/** Each of these once in every language; in which size goes by turns. */
const inTurn = [
  ['/stores/~plant', '/stores/dies/~new', '/stores/lines/QM-05'],
  ['/stores/templates/~new', '/stores/recipes/~new', '/stores/rolls'],
  ['/stores/lines/QM-01/edit', '/stores/rolls/~new', '/stores/unicorns'],
  ['/stores/positions/QM-04-3/edit', '/stores/badges/~new', '/stores/positions/QM-04-3'],
];

describe.each(faces)('$language, $size', ({ language, viewport }) => {
  test('[STORES-16] [WEB-07] stores: nothing cut, readable, targets large and apart, no trouble', async () => {
    const units = viewport === wide ? 'us' : 'metric';
    const settings = { ...answered, language, units } as const;
    const turn = (language === 'de' ? 1 : 0) + (viewport === wide ? 1 : 0);
    const reader = await openReader(browser, { viewport, settings });
    const { page } = reader;
    await bringAxe(reader.context);
    for (const place of [...places, ...inTurn.filter((_, at) => at % 2 === turn % 2).flat()]) {
      await visit(reader, place);
      await openAll(page);
      const faults = await faceFaults(page);
      expect(faults, place).toEqual([]);
      expect(await faultsWhenLonger(page), `${place} at +40 %`).toEqual([]);
    }
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});
