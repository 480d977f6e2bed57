import { readFile } from 'node:fs/promises';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { startServer } from '../../../server/src/index.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults } from './support/faces.ts';
import { cutText, lengthen, poorTargets } from './support/measure.ts';
import { answered, openReader, phone, type Reader, textOf, visit, wide } from './support/reader.ts';
import { webFolder } from './support/serve-demo.ts';

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

const path = '/stores/~everything';
const incoming = (page: Page) => page.locator('.table-part[data-at]');
const at = (page: Page, state: string) => page.locator(`.table-part[data-at=${state}]`).waitFor();

async function choose(page: Page, bytes: Uint8Array, name = 'everything.zip'): Promise<void> {
  const file = { name, mimeType: 'application/zip', buffer: Buffer.from(bytes) };
  await incoming(page).locator('input[type=file]').setInputFiles(file);
}

/** A plant of one's own with a single belt roll's worth of records, given out by another device. */
async function fileOfAnother(name: string): Promise<Uint8Array> {
  const other = await openReader(browser);
  const { page } = other;
  await visit(other, '/start');
  await page.locator('main input[type=text]').fill(name);
  await page.locator('button[type=submit]').click();
  await page.locator('[data-start=belts]').waitFor();
  await visit(other, '/stores/badges/~new');
  await page.locator('[data-field=id] input').fill('b1');
  await page.locator('[data-field=word] input').fill('Otter');
  await page.locator('[data-field=shape]').getByText('star').click();
  await page.locator('button[type=submit]').click();
  await page.locator('.written').waitFor();
  await visit(other, '/stores');
  await page.locator('main').getByRole('link', { name: 'Export or import everything' }).click();
  await page.getByRole('heading', { name: 'Everything as one file' }).waitFor();
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export everything' }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/^[\p{L}\p{N}-]+-\d{4}-\d\d-\d\d\.zip$/u);
  await page.locator('[data-out=done]').waitFor();
  const bytes = new Uint8Array(await readFile(await download.path()));
  expect(other.trouble.all).toEqual([]);
  await other.close();
  return bytes;
}

describe('everything as one file', () => {
  test('[WHOLE-01] another device looks at it, takes it whole, and has it after a reload', async () => {
    const { page } = reader;
    const bytes = await fileOfAnother('Fernhill <b>Annexe</b>');
    await visit(reader, path);
    await choose(page, bytes);
    await at(page, 'found');
    const said = await textOf(incoming(page));
    expect(said).toContain('Fernhill <b>Annexe</b>');
    expect(said).toContain('Quillmoor Crate Works stays on the device');
    expect(await textOf(page.locator('.pane-list'))).toContain('Quillmoor Crate Works');
    await page.getByRole('button', { name: 'Take all of it' }).click();
    await at(page, 'taken');
    await page.reload();
    await page.locator('main h1').first().waitFor();
    expect(await textOf(page.locator('.pane-list'))).toContain('Fernhill <b>Annexe</b>');
    await choose(page, bytes);
    await at(page, 'found');
    expect(await textOf(incoming(page))).toContain('has everything in the file already');
    expect(await page.getByRole('button', { name: 'Take all of it' }).count()).toBe(0);
  });

  test('[WHOLE-02] cut, flipped, of a later form, foreign: refused with what to do; nothing changes', async () => {
    const { page } = reader;
    const whole = await fileOfAnother('Annexe');
    const log = unzipSync(whole)['log.jsonl'] ?? new Uint8Array();
    const lines = strFromU8(log).trimEnd().split('\n');
    const later = lines.map((line, i) => (i === 0 ? line.replace('"v":1', '"v":2') : line));
    const laterEvent = lines.map((line, i) => (i === 1 ? line.replace(/"v":1(?=[,}])/g, '"v":3') : line));
    const logOf = (changed: readonly string[]) => strToU8(`${changed.join('\n')}\n`);
    const flipped = log.map((byte, i) => (i === log.indexOf(0x0a) + 60 ? byte ^ 1 : byte));
    const cases: readonly (readonly [string, Uint8Array, string])[] = [
      ['cut archive', whole.slice(0, whole.length - 40), 'not a whole export file'],
      ['cut log', zipSync({ 'log.jsonl': logOf(lines.slice(0, -1)) }), 'Copy the file once more'],
      ['flipped', zipSync({ 'log.jsonl': flipped }), 'line 2 of the file'],
      ['later', zipSync({ 'log.jsonl': logOf(later) }), 'written by a newer version of this app (form 2'],
      ['later event', zipSync({ 'log.jsonl': logOf(laterEvent) }), 'written by a newer version of this app (form 3'],
      ['foreign', zipSync({ 'other.txt': strToU8('x') }), 'holds no records'],
      ['bomb', zipSync({ 'log.jsonl': new Uint8Array(30 * 2 ** 20) }), 'more than 100 times'],
    ];
    await visit(reader, path);
    const before = await textOf(page.locator('.pane-list'));
    for (const [name, bytes, said] of cases) {
      await choose(page, bytes);
      await page.getByRole('alert').getByText(said).waitFor();
      expect(await textOf(page.getByRole('alert')), name).toContain('Not taken');
      expect(await textOf(page.locator('.pane-list')), name).toBe(before);
    }
    await page.reload();
    await page.locator('main h1').first().waitFor();
    expect(await textOf(page.locator('.pane-list'))).toBe(before);
  });

  test('[WHOLE-03] a device on which nothing is yet begins with the file', async () => {
    const bytes = await fileOfAnother('Annexe');
    const server = await startServer({ plantFolder: '/nowhere', demo: false, port: 0, webFolder });
    const empty = await openReader(browser);
    await empty.page.goto(server.address);
    await empty.page.locator('main').getByRole('link', { name: 'Export or import everything' }).click();
    await choose(empty.page, bytes);
    await at(empty.page, 'found');
    expect(await textOf(incoming(empty.page))).toContain('Nothing is on this device yet');
    await empty.page.getByRole('button', { name: 'Take all of it' }).click();
    await at(empty.page, 'taken');
    await empty.page.goto(`${server.address}/stores/badges`);
    await empty.page.locator('.thing-row').first().waitFor();
    expect(await textOf(empty.page.locator('.thing-row'))).toContain('Otter');
    await empty.close();
    await server.close();
  });

  const faces = (['en', 'de', 'es'] as const).flatMap((language) =>
    (['day', 'night'] as const).map((theme, i) => ({ language, theme, viewport: i === 0 ? phone : wide })),
  );

  test.each(faces)('[WHOLE-04] $language, $theme: nothing cut, readable, targets large and apart', async (face) => {
    const bytes = await fileOfAnother('Annexe');
    await reader.close();
    const { language, theme, viewport } = face;
    reader = await openReader(browser, { viewport, settings: { ...answered, language, theme } });
    const { page } = reader;
    await bringAxe(reader.context);
    await visit(reader, path);
    const faultsOf = async (state: string) => {
      const faults = await faceFaults(page);
      expect(faults, state).toEqual([]);
    };
    await faultsOf('start');
    await choose(page, bytes.slice(0, 50));
    await page.getByRole('alert').waitFor();
    await faultsOf('refused');
    await choose(page, bytes);
    await at(page, 'found');
    await faultsOf('found');
    await page.evaluate(lengthen);
    expect([...(await page.evaluate(cutText)), ...(await page.evaluate(poorTargets))]).toEqual([]);
  });
});
