import { readFile } from 'node:fs/promises';
import { strFromU8, unzipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { alone } from '../../../records/test/verifier/both-verifiers.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faces, faultsWhenLonger, pictureOf } from './support/faces.ts';
import { answered, openReader, type Reader, textOf, visit } from './support/reader.ts';

const name = 'Wilhelmina Quillfeather';
const path = '/stores/badges/b1';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const at = (page: Page, is: string) => page.locator(`[data-wearer=${is}]`).waitFor();

async function note(page: Page): Promise<void> {
  await page.locator('.wearer-note input').fill(name);
  await page.locator('.wearer-note button').click();
  await at(page, 'known');
}

async function exported(reader: Reader): Promise<Uint8Array> {
  const { page } = reader;
  await visit(reader, '/stores/~everything');
  const downloading = page.waitForEvent('download');
  await page.locator('[data-out] > button').click();
  return new Uint8Array(await readFile(await (await downloading).path()));
}

/** Everything that the browser keeps for this page, as text: databases, files, small storage. */
async function allKept(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const kept: string[] = [JSON.stringify(localStorage)];
    const plain = (_key: string, value: unknown) =>
      value instanceof Uint8Array ? `${new TextDecoder('latin1').decode(value)}` : value;
    for (const { name = '' } of await indexedDB.databases()) {
      const opening = indexedDB.open(name);
      await new Promise((resolve) => {
        opening.onsuccess = resolve;
      });
      const db = opening.result;
      for (const rows of db.objectStoreNames) {
        const asked = db.transaction(rows).objectStore(rows).getAll();
        await new Promise((resolve) => {
          asked.onsuccess = resolve;
        });
        kept.push(`${name}/${rows}: ${JSON.stringify(asked.result, plain)}`);
      }
      db.close();
    }
    const folder = await navigator.storage
      .getDirectory()
      .then((root) => root.getDirectoryHandle('second-copy-loopwright'));
    kept.push(await (await (await folder.getFileHandle('log.txt')).getFile()).text());
    return kept.join('\n');
  });
}

describe('who wears a badge', () => {
  test('[WEARER-01] the form of a badge has no room for a note; one from the plant’s files stays as it is', async () => {
    const reader = await openReader(browser);
    await visit(reader, `${path}/edit`);
    await reader.page.locator('[data-field=word] input').waitFor();
    expect(await reader.page.locator('[data-field=note]').count()).toBe(0);
    await reader.page.locator('[data-field=word] input').fill('Heron two');
    await reader.page.locator('button[type=submit]').click();
    await reader.page.locator('.written').waitFor();
    expect(await textOf(reader.page.locator('.thing'))).toContain('crew A');
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });

  test('[WEARER-01] a noted name is read here again, and stands nowhere in the clear: not in the records, not in a copy', async () => {
    const reader = await openReader(browser);
    const { page } = reader;
    await visit(reader, path);
    await at(page, 'nobody-noted');
    await note(page);
    await page.reload();
    await at(page, 'known');
    expect(await textOf(page.locator('.wearer [role=status]'))).toBe(name);
    const kept = await allKept(page);
    expect(kept).toContain('person.noted');
    for (const part of [name, ...name.split(' ')]) expect(kept.includes(part), part).toBe(false);
    const file = await exported(reader);
    const log = strFromU8(unzipSync(file)['log.jsonl'] ?? new Uint8Array());
    const noted = log.split('\n').find((line) => line.includes('"person.noted"')) ?? '';
    const { thing } = (JSON.parse(noted) as { readonly body: { readonly thing: object } }).body;
    expect(Object.keys(thing).sort()).toEqual(['alias', 'commitment']);
    expect(log).not.toContain('Wilhelmina');
    expect(await alone(file)).toMatchObject({ verdict: 'ok' });
    // What it says changes nothing in the plant, and is no record that this version does not know.
    expect(await page.getByText('written by a newer version').count()).toBe(0);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });

  test('[WEARER-02] held for a second, it is erased for good; the records say so and hold as before', async () => {
    const reader = await openReader(browser);
    const { page } = reader;
    await visit(reader, path);
    await note(page);
    const erase = page.locator('.wearer .run-hold');
    await erase.click();
    await page.waitForTimeout(300);
    await at(page, 'known');
    await erase.hover();
    await page.mouse.down();
    await at(page, 'erased');
    await page.mouse.up();
    await page.reload();
    await at(page, 'erased');
    expect(await page.locator('.wearer').textContent()).not.toContain(name);
    const kept = await allKept(page);
    expect(kept).toMatch(/loopwright\.persons\/persons: \[\]/);
    const log = unzipSync(await exported(reader))['log.jsonl'] ?? new Uint8Array();
    const alias = /"alias":"([0-9a-f]{32})"[^\n]*"person\.erased"/.exec(strFromU8(log))?.[1] ?? '';
    expect(alias).toHaveLength(32);
    expect(kept.split('\n').find((line) => line.startsWith('loopwright.persons/badges'))).not.toContain(alias);
    expect(await alone(log)).toMatchObject({ verdict: 'ok' });
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});

describe.each(faces)('$language, $size', ({ language, viewport }) => {
  test('[WEARER-03] [WEB-07] nothing cut, readable, targets large and apart, no trouble', async () => {
    const settings = { ...answered, language };
    const reader = await openReader(browser, { viewport, settings });
    const { page } = reader;
    await bringAxe(reader.context);
    await visit(reader, path);
    for (const is of ['nobody-noted', 'known']) {
      await at(page, is);
      const faults = await faceFaults(page, { picture: pictureOf(`wearer-${is}`, language, viewport) });
      expect(faults, is).toEqual([]);
      if (is !== 'known') await note(page);
    }
    expect(await faultsWhenLonger(page), 'at +40 %').toEqual([]);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});
