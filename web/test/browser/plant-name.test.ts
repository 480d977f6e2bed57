import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { keptEvents } from './support/kept-events.ts';
import { openReader, type Reader, textOf, visit } from './support/reader.ts';

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

const entry = (page: Page) => page.getByLabel('What is the plant called?');
const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true });
const shownName = (page: Page) => textOf(page.locator('.lines-head .soft').first());

test('[STORES-17] renamed from the stores: kept, undone, and both stand in its history', async () => {
  const { page } = reader;
  await visit(reader, '/stores');
  const before = await shownName(page);
  await page.getByRole('link', { name: 'Name of the plant' }).last().click();
  expect(await entry(page).inputValue()).toBe(before);
  await entry(page).fill('  Quillmoor North ');
  await save(page).click();
  await page.locator('.written').waitFor();
  expect(await textOf(page.locator('.written'))).toBe('Quillmoor North is saved.Undo');
  const [first, renamed] = await keptEvents(page, 'plant');
  expect(renamed?.body.thing).toEqual({ ...first?.body.thing, name: 'Quillmoor North' });
  await page.reload();
  await entry(page).waitFor();
  expect(await entry(page).inputValue()).toBe('Quillmoor North');
  await page.locator('.history > button').click();
  const newest = page.locator('.change').first();
  expect(await textOf(newest.locator('.changed-fields'))).toBe(`Name of the plant: ${before} → Quillmoor North`);
  // The first name has nothing before it to go back to.
  expect(await page.getByRole('button', { name: 'Undo' }).count()).toBe(1);
  await newest.getByRole('button', { name: 'Undo' }).click();
  await page.getByText(`${before} is as it was before.`).waitFor();
  expect(await entry(page).inputValue()).toBe(before);
  expect((await keptEvents(page, 'plant')).map(({ type }) => type)).toEqual(Array(3).fill('plant.defined'));
  await visit(reader, '/stores');
  expect(await shownName(page)).toBe(before);
});

test('[STORES-17] the settings lead there and close; a name that is none is refused and nothing is kept', async () => {
  const { page } = reader;
  await visit(reader, '/stores');
  const before = await keptEvents(page, 'plant');
  await page.locator('.settings-button').click();
  await page.locator('#settings').getByRole('link', { name: 'Name of the plant' }).click();
  await entry(page).waitFor();
  expect(await page.locator('#settings').isVisible()).toBe(false);
  const wrong = [
    ['   ', 'Nothing is entered.'],
    ['W'.repeat(61), 'the text has 61 characters, at most 60 are allowed.'],
    ['Quill\u202emoor', 'there are signs in it that cannot be seen.'],
  ] as const;
  for (const [typed, said] of wrong) {
    await entry(page).fill(typed);
    await save(page).click();
    await page.getByRole('alert').getByText(said).waitFor();
  }
  await page.reload();
  await save(page).click();
  await page.getByRole('alert').getByText('This is its name already.').waitFor();
  expect(await keptEvents(page, 'plant')).toEqual(before);
});
