import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { plantMark, positionCode } from '../../../sheets/src/code/position-code.ts';
import { codesIn } from '../../../sheets/test/label/raster.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { answered, openReader, textOf, visit } from './support/reader.ts';

let browser: Browser;
let folder: string;
beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), 'loopwright-labels-'));
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

/** Presses the main action and takes the file that comes. */
async function made(page: Page, name: string): Promise<{ suggested: string; file: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Make PDF of labels' }).click(),
  ]);
  const file = join(folder, name);
  await download.saveAs(file);
  return { suggested: download.suggestedFilename(), file };
}

const pagesIn = (file: string) => readFileSync(file, 'latin1').match(/\/Type \/Page\b(?!s)/g)?.length;
const count = async (page: Page) => (await textOf(page.locator('.list-action p').first())).split(' · ');

describe('labels of positions', () => {
  test('[PRINT-01] from a line: its labels, in a PDF whose codes another program reads back', async ({ skip }) => {
    const reader = await openReader(browser);
    const { page } = reader;
    await visit(reader, '/stores/lines/QM-04');
    await page.getByRole('link', { name: 'Labels of this line' }).click();
    await page.getByRole('heading', { name: 'Position labels' }).waitFor();
    expect(await count(page)).toEqual(['6 labels', '1 sheet']);
    const { file, suggested } = await made(page, 'line.pdf');
    expect(suggested).toBe('labels-quillmoor.pdf');
    expect(pagesIn(file)).toBe(1);
    await page.getByText('The PDF is with your downloads.').waitFor();
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
    const { error } = spawnSync('pdftoppm', ['-r', '100', '-gray', '-png', file, join(folder, 'page')]);
    if (error !== undefined) skip();
    const [picture = ''] = readdirSync(folder).filter((name) => name.endsWith('.png'));
    const expected = [1, 2, 3, 4, 5, 6].map((i) =>
      positionCode({ position: `QM-04-${i}`, plant: plantMark('quillmoor') }),
    );
    expect((await codesIn(readFileSync(join(folder, picture)))).toSorted()).toEqual(expected.toSorted());
  });

  test('[PRINT-02] all, none, a line more or less, single ones; the paper of the reader’s units', async () => {
    const reader = await openReader(browser, { settings: { ...answered, units: 'us' } });
    const { page } = reader;
    await visit(reader, '/labels');
    expect(await count(page)).toEqual(['60 labels', '6 sheets']);
    expect(await page.getByRole('radio', { name: 'US letter' }).isChecked()).toBe(true);
    await page.getByRole('checkbox', { name: /^All positions/ }).uncheck();
    expect(await page.getByRole('button', { name: 'Make PDF of labels' }).count()).toBe(0);
    await page.getByText('Choose a line or a position.').waitFor();
    await page.getByRole('checkbox', { name: /^QM-03/ }).check();
    expect(await count(page)).toEqual(['12 labels', '2 sheets']);
    await page.getByRole('button', { name: 'Choose single ones: QM-03' }).click();
    await page.getByRole('button', { name: 'QM-03-5, 5' }).click();
    expect(await count(page)).toEqual(['11 labels', '2 sheets']);
    const box = page.getByRole('checkbox', { name: /^QM-03/ });
    expect(await box.evaluate((input) => (input as HTMLInputElement).indeterminate)).toBe(true);
    const { file } = await made(page, 'letter.pdf');
    expect(readFileSync(file, 'latin1')).toContain('/MediaBox [0 0 612 792]');
    expect(pagesIn(file)).toBe(2);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });

  test('[PRINT-03] of one position; an address that names nothing there begins with all', async () => {
    const reader = await openReader(browser);
    const { page } = reader;
    await visit(reader, '/stores/positions/QM-05-2');
    await page.getByRole('link', { name: 'Label of this position' }).click();
    await page.getByRole('heading', { name: 'Position labels' }).waitFor();
    expect(await count(page)).toEqual(['1 label', '1 sheet']);
    expect((await made(page, 'one.pdf')).suggested).toBe('labels-QM-05-2.pdf');
    await visit(reader, '/labels/line/%3Cimg%20src=x%3E');
    expect(await count(page)).toEqual(['60 labels', '6 sheets']);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});
