import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { startServer } from '../../../server/src/index.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { keptEvents } from './support/kept-events.ts';
import { cutText, poorTargets } from './support/measure.ts';
import { openReader, phone, type Reader, textOf, visit, wide } from './support/reader.ts';
import { demoFolder, webFolder } from './support/serve-demo.ts';

const markup = '<img src=x onerror=alert(1)>';
/** Written from right to left; unless held apart, it turns round numbers beside it (Unicode Standard Annex 9). */
const turned = 'מסוע 7';
/** Turns round what follows it, and is never closed: right-to-left override. */
const overridden = 'bay \u202e7 kcar';
const formula = '=cmd()|calc!A0';
const emoji = '🔥🧑‍🔧';
const unbroken = 'W'.repeat(300);
const foreignId = 'אבג-1';

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

/** Serves the demo plant with some texts replaced by others. */
async function serveWith(changes: readonly (readonly [file: string, from: string, to: string])[]) {
  const folder = await mkdtemp(join(tmpdir(), 'hostile-'));
  await cp(demoFolder, folder, { recursive: true });
  for (const [file, from, to] of changes) {
    const before = await readFile(join(folder, file), 'utf8');
    if (!before.includes(from)) throw new Error(`${file} has no ${from}`);
    await writeFile(join(folder, file), before.replaceAll(from, to));
  }
  const server = await startServer({ plantFolder: folder, demo: false, port: 0, webFolder });
  return {
    address: server.address,
    close: async () => {
      await server.close();
      await rm(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
    },
  };
}

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address, { waitUntil: 'networkidle' });
  await page.locator('main h1').first().waitFor();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

const faults = async (page: Page) => [...(await page.evaluate(cutText)), ...(await page.evaluate(poorTargets))];

/** Nobody's text became part of the page: no picture, no dialog, nothing new on every object. */
async function isUnharmed(page: Page): Promise<boolean> {
  return page.evaluate(
    () =>
      document.querySelector('img, iframe, object, embed, [onerror]') === null &&
      Object.keys(Object.prototype).length === 0,
  );
}

describe('a plant with hostile names, from its files', () => {
  test.each([
    { face: 'phone', viewport: phone },
    { face: 'wide screen', viewport: wide },
  ])(
    '[NAME-01] [NAME-02] $face: names are text, stand apart from their sentence and cut nothing',
    async ({ viewport }) => {
      const { page } = reader;
      await page.setViewportSize(viewport);
      page.on('dialog', (dialog) => reader.trouble.all.push(`dialog: ${dialog.message()}`));
      const server = await serveWith([
        ['plant.csv', 'Quillmoor Crate Works', unbroken],
        ['lines.csv', ',Spine,', `,${markup},`],
        ['lines.csv', ',Sort,', `,${turned},`],
        ['lines.csv', ',Wash exit,', `,${unbroken},`],
        ['positions.csv', 'Spine section 3', `"${formula}"`],
        ['positions.csv', 'Spine section 4', unbroken],
        ['positions.csv', 'QM-04-3', foreignId],
        ['badges.csv', 'Heron', '__proto__'],
        ['presses.csv', ',North,', `,${emoji},`],
        ['presses.csv', ',South,', `,${unbroken},`],
        ['rolls.csv', 'F30-2610', turned],
      ]);
      for (const path of [
        '/',
        `/card/${encodeURIComponent(foreignId)}`,
        '/card/QM-04-4',
        '/card/QM-02-1',
        '/stores',
        '/stores/lines',
        '/stores/lines/QM-04',
        '/stores/lines/QM-02/edit',
        '/stores/positions/QM-04-4',
        '/stores/presses',
        '/stores/rolls/roll-F30-1',
        '/stores/badges',
      ]) {
        await open(page, server.address + path);
        const settings = page.locator('.settings-button');
        if (await settings.isVisible()) await settings.click();
        expect.soft(await faults(page), path).toEqual([]);
        expect(await isUnharmed(page), path).toBe(true);
      }
      await open(page, server.address);
      await page.locator('.line').first().waitFor();
      expect(await textOf(page.locator('#line-QM-04'))).toContain(markup);
      await page.getByRole('searchbox').fill('QM-02-1');
      await page.locator('.found-row').first().waitFor();
      expect(await page.evaluate(turnedRound, turned)).toEqual([]);
      expect(await faults(page)).toEqual([]);
      await server.close();
    },
  );

  test.each([
    { as: 'ten thousand characters', name: 'x'.repeat(10_000), why: '300' },
    { as: 'a sign that turns text round', name: overridden, why: 'U+202E' },
  ])('[NAME-03] $as in a file: refused with the place and what is allowed', async ({ name, why }) => {
    const server = await serveWith([['lines.csv', ',Spine,', `,${name},`]]);
    await open(reader.page, server.address);
    const said = await textOf(reader.page.locator('main'));
    expect(said).toContain('lines.csv');
    expect(said).toContain(why);
    expect(said.length).toBeLessThan(3000);
    expect(await faults(reader.page)).toEqual([]);
    // The browser notes the server's refusal.
    expect(reader.trouble.all.splice(0).every((trouble) => trouble.includes('422'))).toBe(true);
    await server.close();
  });
});

/** Runs in the page: text behind a name, in the same line of text, that stands before it. */
function turnedRound(name: string): string[] {
  const found: string[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode() as Text | null; node !== null; node = walker.nextNode() as Text | null) {
    if (!node.data.includes(name)) continue;
    const rectOf = (text: Text, from: number, to: number) => {
      const range = document.createRange();
      range.setStart(text, from);
      range.setEnd(text, to);
      return range.getBoundingClientRect();
    };
    const start = rectOf(node, 0, 1);
    const block = (node.parentElement as Element).closest('p, li, h1, h2, h3, a, dd, dt, button, label, div');
    const inBlock = document.createTreeWalker(block ?? document.body, NodeFilter.SHOW_TEXT);
    inBlock.currentNode = node;
    const next = inBlock.nextNode() as Text | null;
    if (next !== null && next.data.trim() !== '') {
      const rect = rectOf(next, 0, next.length);
      const sameLine = Math.abs(rect.top - start.top) < 4;
      if (sameLine && rect.left < start.left) found.push(`"${next.data}" stands before "${node.data}"`);
    }
    const behind = node.data.indexOf(name) + name.length;
    const last = node.data.length - 1;
    if (behind <= last && rectOf(node, last, last + 1).left < start.left) found.push(`"${node.data}" is turned round`);
  }
  return found;
}

const field = (page: Page, name: string) => page.locator(`[data-field="${name}"]`);
const input = (page: Page, name: string) => field(page, name).locator('input, textarea').first();

describe('hostile names in the forms', () => {
  test.each([
    { as: 'markup', id: markup },
    { as: 'a name that every object has', id: '__proto__' },
    { as: 'a formula', id: formula },
    { as: 'an emoji', id: emoji },
    { as: 'a sign that turns text round', id: 'b\u202e1' },
    { as: 'a path', id: '../b1' },
    { as: 'ten thousand characters', id: 'x'.repeat(10_000) },
  ])('[NAME-04] $as is refused as a short name, with what is allowed; nothing is kept', async ({ id }) => {
    const { page } = reader;
    await visit(reader, '/stores/badges/~new');
    await input(page, 'id').fill(id);
    await input(page, 'word').fill('Otter');
    await field(page, 'shape').getByText('star').click();
    await page.locator('button[type=submit]').click();
    await expect.poll(() => textOf(field(page, 'id'))).toMatch(/short name|cannot be seen/);
    expect(await page.locator('.written').count()).toBe(0);
    expect(await keptEvents(page, `badges/${id}`)).toEqual([]);
    expect(await faults(page)).toEqual([]);
  });

  test('[NAME-04] names that programs know but people may use are plain names', async () => {
    const { page } = reader;
    for (const id of ['constructor', 'toString', 'אבג-1', 'Größe.1']) {
      await visit(reader, '/stores/badges/~new');
      await input(page, 'id').fill(id);
      await input(page, 'word').fill(`${emoji} ${id}`);
      await field(page, 'shape').getByText('star').click();
      await page.locator('button[type=submit]').click();
      await page.locator('.written').waitFor();
      expect(await textOf(page.locator('.pane-thing h1'))).toContain(id);
      expect(await isUnharmed(page)).toBe(true);
    }
    await visit(reader, '/stores/badges');
    expect(await page.locator('.thing-row').count()).toBe(10);
    await page.locator('.who-now').click();
    await page.getByRole('button', { name: `${emoji} constructor` }).click();
    await expect.poll(() => textOf(page.locator('.who-now'))).toBe(`${emoji} constructor`);
    expect(await faults(page)).toEqual([]);
  });

  test('[NAME-01] notes and words of any signs are kept and shown as they were typed', async () => {
    const { page } = reader;
    await visit(reader, '/stores/badges/b1/edit');
    await input(page, 'word').fill(formula);
    await page.locator('button[type=submit]').click();
    await page.locator('.written').waitFor();
    await page.reload();
    await page.locator('.pane-thing h1').waitFor();
    expect(await textOf(page.locator('article'))).toContain(formula);
    const kept = await keptEvents(page, 'badges/b1');
    expect(kept.at(-1)?.body.thing['word']).toBe(formula);
  });

  test('[NAME-05] hostile addresses and searches are text', async () => {
    const { page } = reader;
    for (const path of [
      `/card/${encodeURIComponent(markup)}`,
      '/card/__proto__',
      '/card/%E2%80%AE1',
      `/card/${'x'.repeat(2000)}`,
    ]) {
      await visit(reader, path);
      expect(await isUnharmed(page), path).toBe(true);
      expect(await faults(page), path).toEqual([]);
    }
    await visit(reader, '/');
    for (const typed of [markup, '__proto__', '.*+?[', 'x'.repeat(10_000), emoji, '\u202e']) {
      await page.getByRole('searchbox').fill(typed);
      expect(await page.locator('.found-row').count(), typed.slice(0, 20)).toBe(0);
    }
    expect(await isUnharmed(page)).toBe(true);
  });
});
