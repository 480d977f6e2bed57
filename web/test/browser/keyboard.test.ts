import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { keptEvents } from './support/kept-events.ts';
import { choose, pressOn, typeInto } from './support/keyboard.ts';
import { openReader, type Reader, textOf, visit, wide } from './support/reader.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

let reader: Reader;
let page: Page;
beforeEach(async () => {
  reader = await openReader(browser, { viewport: wide });
  ({ page } = reader);
});
afterEach(async () => {
  expect(reader.trouble.all).toEqual([]);
  await reader.close();
});

const button = (name: string | RegExp) => page.getByRole('button', { name });
const field = (name: string) => page.locator(`.geometry [data-field="${name}"] input`).first();

describe('by keyboard alone', () => {
  test('[WEB-04] labels: none, one line, one less, another paper, the file', async () => {
    await visit(reader, '/labels');
    await pressOn(page, page.getByRole('checkbox', { name: /^All positions/ }), 'Space');
    await pressOn(page, page.getByRole('checkbox', { name: /^QM-03/ }), 'Space');
    await pressOn(page, button('Choose single ones: QM-03'));
    await pressOn(page, button('QM-03-5, 5'));
    await choose(page, page.getByRole('radio', { name: 'US letter' }));
    const [file] = await Promise.all([page.waitForEvent('download'), pressOn(page, button('Make PDF of labels'))]);
    expect(readFileSync(await file.path(), 'latin1')).toContain('/MediaBox [0 0 612 792]');
    expect(await textOf(page.locator('.list-action p').first())).toBe('11 labels · 2 sheets');
  });

  test('[WEB-04] a table: chosen, looked at, taken, and taken back', async () => {
    await visit(reader, '/stores/rolls/~table');
    const table = 'id,source,belt,width_mm,left_m\nroll-new,person,Flint-30,60,12\n';
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), pressOn(page, button('Choose a file'))]);
    await chooser.setFiles({ name: 'rolls.csv', mimeType: 'text/csv', buffer: Buffer.from(table) });
    await page.locator('.table-part[data-at=found]').waitFor();
    await pressOn(page, page.locator('.table-part .main-action'));
    await page.locator('.table-part[data-at=taken]').waitFor();
    expect(await keptEvents(page, 'rolls/roll-new')).toHaveLength(1);
    await pressOn(page, button('Undo'));
    await page.locator('.table-part[data-at=undone]').waitFor();
    expect(await keptEvents(page, 'rolls/roll-new')).toHaveLength(2);
  });

  test('[WEB-04] scanning: the number is typed instead, and its card opens', async () => {
    await visit(reader, '/scan');
    await typeInto(page, page.getByRole('searchbox'), '04-3');
    await page.locator('.found-row').first().waitFor();
    await page.keyboard.press('Enter');
    await page.locator('article h1').waitFor();
    expect(new URL(page.url()).pathname).toBe('/card/QM-04-3');
  });

  test('[WEB-04] how a belt runs: a survey is entered, saved and taken back', async () => {
    await visit(reader, '/stores/lines/QM-03/geometry');
    await page.locator('.geometry').waitFor();
    const before = await textOf(page.locator('.geometry .figure-value').first());
    await choose(page, page.getByRole('radio', { name: 'I measure with a tape' }));
    await choose(page, page.getByRole('radio', { name: /^Drive at an end, take-up at the other/ }));
    await typeInto(page, field('infeedDiameter'), '100');
    await typeInto(page, field('endDistance'), '9000');
    await typeInto(page, field('dischargeDiameter'), '100');
    const length = () => textOf(page.locator('.geometry .figure-value').first());
    await expect.poll(length).toBe('18 320');
    await pressOn(page, button('Save'));
    await page.locator('.written').waitFor();
    await pressOn(page, button('Undo'));
    await expect.poll(length).toBe(before);
  });
});
