import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { cardCode, deviceOf } from '@loopwright/records/log';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type SignedRun, signedRun } from '../../../jobs/test/press-run/signed-run.ts';
import { wholeRun } from '../../../jobs/test/press-run/whole-run.ts';
import { readCheckpointCode } from '../../../sheets/src/code/checkpoint-code.ts';
import { codesIn } from '../../../sheets/test/label/raster.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faces, pictureOf } from './support/faces.ts';
import { poorDrawings } from './support/measure.ts';
import { answered, openReader, type Reader, textOf, visit } from './support/reader.ts';

let browser: Browser;
let folder: string;
let run: SignedRun;
beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), 'loopwright-record-'));
  run = await signedRun(wholeRun().events);
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

const takes = /^(Take all of it|Alles übernehmen|Cargarlo todo)$/;
const heading = (page: Page) => page.locator('.card-head h1');

/** Takes in the run that another device has written, as somebody does who was handed its file. */
async function taken(reader: Reader): Promise<void> {
  const { page } = reader;
  await visit(reader, '/stores/~everything');
  const incoming = page.locator('.table-part[data-at]');
  await incoming.locator('input[type=file]').setInputFiles({
    name: 'phone.jsonl',
    mimeType: 'application/x-ndjson',
    buffer: Buffer.from(run.text),
  });
  await page.locator('.table-part[data-at=found]').waitFor();
  await incoming.getByRole('button', { name: takes }).click();
  await page.locator('.table-part[data-at=taken]').waitFor();
}

describe('the record of a run', () => {
  test('[RECORD-01] checked whole, seen by this device too; its code is read back by another program; on paper it is the same', async () => {
    const reader = await openReader(browser);
    const { page } = reader;
    await taken(reader);
    await visit(reader, '/record/RUN00001');
    expect(await textOf(heading(page))).toBe('Record of press run RUN00001');
    const code = cardCode(run.checkpoint);
    expect(await textOf(page.locator('.record-digits'))).toBe(code);
    expect(await textOf(page.locator('[data-seen]'))).toBe('Another device has seen this record.');
    const first = await textOf(page.getByRole('region', { name: 'Read this first' }));
    expect(first).toContain('neither that the splice holds');
    expect(first).not.toContain('not checked');
    const picture = await page.locator('.record-code svg').screenshot();
    const [scanned = ''] = await codesIn(picture);
    expect(readCheckpointCode(scanned, (key) => deviceOf(new Uint8Array(Buffer.from(key, 'hex'))))).toEqual({
      key: run.log.key,
      checkpoint: run.checkpoint,
    });
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Paper (PDF)' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('record-RUN00001.pdf');
    const file = join(folder, 'record.pdf');
    await download.saveAs(file);
    const bytes = readFileSync(file, 'latin1');
    expect(bytes).toContain('/MediaBox [0 0 595.28 841.89]');
    expect(bytes.match(/\/Type \/Page\b(?!s)/g)?.length).toBeLessThanOrEqual(4);
    await page.getByText('The file is with your downloads.').waitFor();
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });

  test('[RECORD-02] a run that only this device has says so, and that it is under way', async () => {
    const reader = await openReader(browser);
    const { page } = reader;
    await visit(reader, '/run/new/QM-04-3');
    await page.locator('button.main-action').click();
    await page.waitForURL(/\/run\/[0-9A-Z]{8,}$/);
    const id = new URL(page.url()).pathname.split('/').at(-1) ?? '';
    await visit(reader, `/record/${id}`);
    expect(await textOf(heading(page))).toBe(`Record of press run ${id}`);
    expect(await textOf(page.locator('[data-seen]'))).toContain('on this device only');
    const first = await textOf(page.getByRole('region', { name: 'Read this first' }));
    expect(first).toContain('This run is not over');
    expect(first).toMatch(/entries of this run stand on one device only/);
    expect(await page.locator('.record-digits').count()).toBe(1);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });

  test('[RECORD-03] a run that is not here, under whatever name: said, with the way on', async () => {
    const reader = await openReader(browser);
    for (const path of ['/record/RUN99999', '/record/a%20b%2Fc']) {
      await visit(reader, path);
      expect(await reader.page.locator('.record-head').count()).toBe(0);
      expect(await reader.page.locator('main a').count()).toBeGreaterThan(0);
    }
    await reader.close();
  });

  test.each(faces)(
    '[RECORD-04] in $language, $size: nothing cut, small, pale or near; axe finds nothing',
    async ({ language, viewport }) => {
      const units = language === 'es' ? 'us' : 'metric';
      const reader = await openReader(browser, { viewport, settings: { ...answered, language, units } });
      await bringAxe(reader.context);
      const { page } = reader;
      await taken(reader);
      await visit(reader, '/record/RUN00001');
      await page.locator('.record-digits').waitFor();
      expect(await page.evaluate(poorDrawings)).toEqual([]);
      expect(await faceFaults(page, { picture: pictureOf('record', language, viewport) })).toEqual([]);
      expect(reader.trouble.all).toEqual([]);
      await reader.close();
    },
  );
});
