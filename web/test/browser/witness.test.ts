import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { sha256Hex, writeCountersignatures } from '../../../records/src/log/index.ts';
import { checkpointCode, readCheckpointCode, readWitnessCode } from '../../../sheets/src/index.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faces, faultsWhenLonger, pictureOf } from './support/faces.ts';
import { answered, openReader, type Reader, textOf, visit } from './support/reader.ts';

const path = '/stores/~witnesses';

let browser: Browser;
beforeAll(async () => {
  const wasm = await readFile(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
  prepareZXingModule({ overrides: { wasmBinary: Uint8Array.from(wasm).buffer } });
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function device(): Promise<Reader> {
  const reader = await openReader(browser);
  await visit(reader, path);
  await reader.page.locator('.witness-code').first().waitFor();
  return reader;
}

/** What a code on the screen holds, read from a picture of the screen by another program. */
async function codeOn(page: Page, label: string): Promise<string> {
  const picture = await page.getByRole('img', { name: label }).screenshot();
  const [code] = await readBarcodes(Uint8Array.from(picture), { formats: ['QRCode'] });
  if (code === undefined) throw new Error(`no code can be read from the screen: ${label}`);
  return code.text;
}

const ownCode = (page: Page) => codeOn(page, 'Code with what this device says');
const answerOn = (page: Page) => codeOn(page, 'Code with the countersignature');

async function type(page: Page, code: string): Promise<void> {
  await page.locator('.witness-typed input').fill(code);
  await page.locator('.witness-typed button').click();
}

async function writeSomething({ page }: Reader): Promise<void> {
  await page.goto(new URL('/stores/~plant', page.url()).href);
  await page.locator('main input[type=text]').fill(`Quillmoor ${Math.random()}`);
  await page.locator('button[type=submit]').click();
  await page.locator('.written').waitFor();
  await page.goto(new URL(path, page.url()).href);
  await page.locator('.witness-code').first().waitFor();
}

const deviceOf = (key: string) => sha256Hex(Buffer.from(key, 'hex'));
const onlyHere = (page: Page) => textOf(page.locator('[data-only-here]'));

async function done(...readers: readonly Reader[]): Promise<void> {
  for (const reader of readers) {
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  }
}

describe('who has seen the records', () => {
  test('[WIT-01] [WIT-02] on this device only, until another device read the code and its answer was read here', async () => {
    const [here, there] = [await device(), await device()];
    expect(await onlyHere(here.page)).toMatch(/^On this device only: all of its \d+ records\./);
    expect(await textOf(here.page.locator('.witness-digits'))).toMatch(
      /^Code: ([0-9A-HJKMNP-TV-Z]{4}-){3}[0-9A-HJKMNP-TV-Z]{4}$/,
    );
    await type(there.page, await ownCode(here.page));
    await there.page.locator('[data-meeting=first-seen]').waitFor();
    // It was only looked at: its own records nobody has seen.
    expect(await onlyHere(there.page)).toContain('On this device only');
    const answer = await answerOn(there.page);
    await type(here.page, answer);
    await here.page.locator('[data-fresh="1"]').waitFor();
    expect(await onlyHere(here.page)).toMatch(/^Seen by another device: all of its \d+ records\.$/);
    await here.page.reload();
    await here.page.locator('.witness-list li').waitFor();
    const witness = readWitnessCode(answer, deviceOf)?.statement.witness ?? '';
    expect(await textOf(here.page.locator('.witness-list'))).toContain(`Device ${witness.slice(0, 8)} saw`);
    await type(here.page, answer);
    await here.page.getByText('Nothing new: One was known.').waitFor();
    await writeSomething(here);
    expect(await onlyHere(here.page)).toMatch(/but the last one\.$/);
    await done(here, there);
  });

  test('[WIT-03] older, not shown to contain what is known, its own, damaged, forged, foreign: said, nothing is signed', async () => {
    const [here, there, third] = [await device(), await device(), await device()];
    const first = await ownCode(here.page);
    await writeSomething(here);
    const second = await ownCode(here.page);
    await type(there.page, first);
    await there.page.locator('[data-meeting=first-seen]').waitFor();
    await type(there.page, second);
    await there.page.locator('[data-meeting=not-proved]').getByText('ask for the whole log').waitFor();
    await type(third.page, second);
    await third.page.locator('[data-meeting=first-seen]').waitFor();
    await type(third.page, first);
    await third.page.locator('[data-meeting=older]').waitFor();
    expect(await third.page.getByRole('img', { name: 'Code with the countersignature' }).count()).toBe(0);
    const given = readCheckpointCode(second, deviceOf);
    if (given === undefined) throw new Error('the code cannot be read');
    const forged = (change: object) => checkpointCode({ ...given, checkpoint: { ...given.checkpoint, ...change } });
    const cases: readonly (readonly [string, string])[] = [
      [await ownCode(third.page), 'This is the code of this device itself.'],
      [`${second.slice(0, 60)}X${second.slice(61)}`, 'This code was not read whole.'],
      [forged({ size: given.checkpoint.size + 1 }), 'not signed by the device it names'],
      [forged({ plant: 'elsewhere' }), 'This code is of another plant.'],
      ['https://example.org/', 'This is no code of this page.'],
      ['LW1P QM-01-1', 'This is no code of this page.'],
    ];
    for (const [code, said] of cases) {
      await type(third.page, code);
      await third.page.getByRole('alert').getByText(said).waitFor();
      expect(await third.page.getByRole('img', { name: 'Code with the countersignature' }).count()).toBe(0);
    }
    await done(here, there, third);
  });

  test('[WIT-04] a bare file of countersignatures is taken whole or not at all', async () => {
    const [here, there] = [await device(), await device()];
    await type(there.page, await ownCode(here.page));
    await there.page.locator('[data-meeting=first-seen]').waitFor();
    const given = readWitnessCode(await answerOn(there.page), deviceOf);
    if (given === undefined) throw new Error('the answer cannot be read');
    const choose = (text: string) =>
      here.page
        .locator('.witness-other input[type=file]')
        .setInputFiles({ name: 'witnesses.jsonl', mimeType: 'text/plain', buffer: Buffer.from(text) });
    const bad = { ...given, statement: { ...given.statement, size: given.statement.size - 1 } };
    await choose(writeCountersignatures([given, bad]));
    await here.page
      .locator('[data-verdict=bad-witness]')
      .getByText('None of the countersignatures was taken')
      .waitFor();
    expect(await onlyHere(here.page)).toContain('On this device only');
    await choose('');
    await here.page.locator('[data-fresh="0"]').waitFor();
    await choose(writeCountersignatures([given]));
    await here.page.locator('[data-fresh="1"]').waitFor();
    await done(here, there);
  });
});

describe.each(faces)('$language, $size', ({ language, viewport }) => {
  test('[WIT-07] [WEB-07] nothing cut, readable, targets large and apart, no trouble', async () => {
    const settings = { ...answered, language };
    const [reader, other] = [await openReader(browser, { viewport, settings }), await device()];
    const { page } = reader;
    await bringAxe(reader.context);
    await visit(reader, path);
    await type(page, await ownCode(other.page));
    await page.locator('[data-meeting=first-seen]').waitFor();
    expect(await faceFaults(page, { picture: pictureOf('witness', language, viewport) })).toEqual([]);
    expect(await faultsWhenLonger(page), 'at +40 %').toEqual([]);
    await done(reader, other);
  });
});
