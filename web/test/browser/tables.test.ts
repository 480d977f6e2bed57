import { readFile } from 'node:fs/promises';
import { strToU8 } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { workbookCells } from '../../src/places/stores/table/workbook-cells.ts';
import { workbookOf } from '../workbook-of.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults } from './support/faces.ts';
import { keptEvents } from './support/kept-events.ts';
import { cutText, lengthen, poorTargets } from './support/measure.ts';
import { answered, openReader, phone, plainSpaces, type Reader, textOf, visit, wide } from './support/reader.ts';

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

const csvFile = (text: string) => ({ name: 'mine.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
const xlsxFile = (bytes: Uint8Array) => ({ name: 'mine.xlsx', mimeType: '', buffer: Buffer.from(bytes) });
const taking = (page: Page) => page.locator('.table-part').first();
const at = (page: Page, state: string) => page.locator(`.table-part[data-at=${state}]`).waitFor();
const takeAll = (page: Page) => taking(page).locator('.main-action');
const counts = async (page: Page) => (await page.locator('.table-number').allTextContents()).map(Number);
const rows = async (page: Page) => (await page.locator('.table-row').allTextContents()).map(plainSpaces);

async function choose(page: Page, file: ReturnType<typeof csvFile>): Promise<void> {
  await taking(page).locator('input[type=file]').setInputFiles(file);
}

const rollTable = [
  'id;source;belt;width_mm;left_m;lot;sealed;place;note',
  'roll-F30-1;measured;Flint-30;60;97,5;F30-2610;yes;stores, rack 2, bay 1;',
  'roll-F30-9;person;Flint-30;60;200;F30-2611;yes;;=cmd()|calc!A0',
  '',
].join('\n');

/** The rows of a table as the least a workbook needs. */
function sheetOf(table: readonly (readonly string[])[]): string {
  const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  const cell = (text: string, row: number, at: number) =>
    `<c r="${String.fromCharCode(65 + at)}${row}" t="inlineStr"><is><t>${escaped(text)}</t></is></c>`;
  return table
    .map((cells, at) => `<row r="${at + 1}">${cells.map((text, column) => cell(text, at + 1, column)).join('')}</row>`)
    .join('');
}

/** A download's bytes. */
async function given(page: Page, form: 'CSV' | 'XLSX'): Promise<Uint8Array> {
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: `As ${form}` }).click();
  return new Uint8Array(await readFile(await (await downloading).path()));
}

describe('tables in and out', () => {
  test('[TABLES-05] [TABLES-07] a CSV: looked at, taken in one go, kept, and taken back by one undo', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls');
    await page.getByRole('link', { name: 'Take in or give out a table' }).click();
    await page.getByRole('heading', { name: 'Rolls as a table' }).waitFor();
    await choose(page, csvFile(rollTable));
    await at(page, 'found');
    expect(await counts(page)).toEqual([1, 1, 0, 0]);
    expect(await textOf(taking(page))).toContain('roll-F30-9');
    expect(await keptEvents(page, 'rolls/roll-F30-9')).toEqual([]);
    await takeAll(page).click();
    await at(page, 'taken');
    expect(await textOf(page.locator('.written'))).toContain('1 new, 1 changed');
    const [entered] = await keptEvents(page, 'rolls/roll-F30-9');
    expect(entered?.body.thing).toMatchObject({ left_m: 200, width_m: 0.06, note: '=cmd()|calc!A0' });
    expect((await keptEvents(page, 'rolls/roll-F30-1')).at(-1)?.body.thing).toMatchObject({ left_m: 97.5 });
    await page.reload();
    await page.locator('.table-part').first().waitFor();
    await choose(page, csvFile(rollTable));
    await at(page, 'found');
    expect(await counts(page)).toEqual([0, 0, 2, 0]);
    expect(await takeAll(page).count()).toBe(0);
  });

  test('[TABLES-05] undo takes all of it back', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/~table');
    await choose(page, csvFile(rollTable));
    await takeAll(page).click();
    await page.locator('.written').getByRole('button', { name: 'Undo' }).click();
    await at(page, 'undone');
    const events = await keptEvents(page, 'rolls/roll-F30-9');
    expect(events).toHaveLength(2);
    expect((await keptEvents(page, 'rolls/roll-F30-1')).at(-1)?.body.thing).toMatchObject({ left_m: 118 });
    await visit(reader, '/stores/rolls/roll-F30-9');
    expect(await textOf(page.locator('.pane-thing'))).toContain('is not in the stores now');
  });

  test.each([
    { language: 'en' as const, where: 'Row 3, column number', why: 'Got “zero”, a number is needed' },
    { language: 'de' as const, where: 'Zeile 3, Spalte number', why: '„zero“' },
    { language: 'es' as const, where: 'Fila 3, columna number', why: '«zero»' },
  ])('[TABLES-06] $language: every row that cannot be taken is named; nothing can be taken', async (wanted) => {
    const { language, where, why } = wanted;
    await reader.close();
    reader = await openReader(browser, { settings: { ...answered, language } });
    const { page } = reader;
    await visit(reader, '/stores/positions/~table');
    const table =
      'id,source,line,number\nX-1,person,QM-01,901\nX-2,person,QM-01,zero\n,person,QM-01,3\nX-1,person,QM-01,905\nX-6,nobody,QM-9,6\n';
    await choose(page, csvFile(table));
    await at(page, 'found');
    expect(await counts(page)).toEqual([1, 0, 0, 4]);
    const said = await rows(page);
    expect(said).toHaveLength(5);
    expect(said.some((row) => row.includes(where) && row.includes(why))).toBe(true);
    expect(await takeAll(page).count()).toBe(0);
    expect(await keptEvents(page, 'positions/X-1')).toEqual([]);
  });

  test('[TABLES-01] [TABLES-07] what is given out, as CSV and as XLSX, changes nothing when taken in again', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/~table');
    await choose(page, csvFile(rollTable));
    await takeAll(page).click();
    await at(page, 'taken');
    const csv = await given(page, 'CSV');
    expect([...csv.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(new TextDecoder().decode(csv)).toContain(",'=cmd()|calc!A0");
    const xlsx = await given(page, 'XLSX');
    expect((await workbookCells(xlsx)).flat()).toContain("'=cmd()|calc!A0");
    for (const file of [{ ...csvFile(''), buffer: Buffer.from(csv) }, xlsxFile(xlsx)]) {
      await choose(page, file);
      await at(page, 'found');
      expect(await counts(page)).toEqual([0, 0, 7, 0]);
    }
    await visit(reader, '/stores/positions/~table');
    await choose(page, xlsxFile(await given(page, 'XLSX')));
    await at(page, 'found');
    expect(await counts(page)).toEqual([0, 0, 60, 0]);
  });

  test('[TABLES-10] a kind of which there is nothing gives out its headings', async () => {
    const { page } = reader;
    await visit(reader, '/start');
    await page.locator('main input[type=text]').fill('Mine');
    await page.locator('button[type=submit]').click();
    await page.getByRole('link', { name: 'Stores' }).first().waitFor({ state: 'attached' });
    await visit(reader, '/stores/rolls/~table');
    const csv = new TextDecoder().decode(await given(page, 'CSV'));
    expect(csv.trim()).toBe('id,source,note,belt,width_mm,left_mm,lot,sealed,place');
    const [headings, ...others] = await workbookCells(await given(page, 'XLSX'));
    expect(headings?.join(',')).toBe(csv.trim());
    expect(others).toEqual([]);
    await choose(page, csvFile(csv));
    await at(page, 'found');
    expect(await textOf(taking(page))).toContain('no rows below the headings');
  });

  test('[TABLES-02] [TABLES-03] a bomb, an old workbook, a cell far out, foreign bytes: refused, nothing changes', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/~table');
    const far = '<row r="1"><c r="XFD1048576"><v>1</v></c></row>';
    const cases: readonly (readonly [string, Uint8Array, string])[] = [
      ['steep', workbookOf('', { 'xl/media/a.bin': new Uint8Array(30 * 2 ** 20) }), 'more than 150 times'],
      ['large', workbookOf('', { 'a.bin': new Uint8Array(120 * 2 ** 20) }), 'at most 100 MB'],
      ['far', workbookOf(far), 'reaches to row'],
      ['cut', workbookOf(far).slice(0, 300), 'not a whole XLSX workbook'],
      ['old', Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1), 'old workbook'],
    ];
    for (const [name, bytes, said] of cases) {
      await choose(page, xlsxFile(bytes));
      await page.getByRole('alert').getByText(said).waitFor();
      expect(await textOf(page.getByRole('alert')), name).toContain('Not taken');
      expect(await takeAll(page).count()).toBe(1);
    }
    await choose(page, csvFile(String.fromCharCode(0, 1, 2)));
    await at(page, 'found');
    expect(await rows(page)).toHaveLength(1);
    expect(await keptEvents(page, 'rolls/roll-F30-9')).toEqual([]);
  });

  test('[TABLES-11] hostile names in a table: text where it is allowed, else refused by row', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/~table');
    const markup = '<img src=x onerror=alert(1)>';
    const head = ['id', 'source', 'belt', 'width_mm', 'left_m', 'note'];
    const roll = (id: string, note: string) => [id, 'person', 'Flint-30', '60', '1', note];
    const bad = [
      head,
      roll('a', 'x'.repeat(10_000)),
      roll('b', 'bay \u202e7'),
      roll(markup, ''),
      roll('__proto__', ''),
    ];
    await choose(page, xlsxFile(workbookOf(sheetOf(bad))));
    await at(page, 'found');
    const said = await rows(page);
    expect(said).toHaveLength(4);
    for (const [place, reason] of [
      ['Row 2, column note', 'at most 300 are allowed'],
      ['Row 3, column note', 'U+202E'],
      ['Row 4, column id', markup],
      ['Row 5, column id', '__proto__'],
    ] as const)
      expect(said.some((row) => row.startsWith(place) && row.includes(reason))).toBe(true);
    expect(said.every((row) => row.length < 400)).toBe(true);
    await choose(page, xlsxFile(workbookOf(sheetOf([head, roll('constructor', markup), roll('אבג-1', 'שלום')]))));
    await at(page, 'found');
    await takeAll(page).click();
    await at(page, 'taken');
    expect((await keptEvents(page, 'rolls/constructor')).at(-1)?.body.thing['note']).toBe(markup);
    expect(await page.evaluate(() => document.querySelector('img, [onerror]'))).toBeNull();
  });

  test('[TABLES-08] a long table is read beside the page, says how far it is, and can be stopped', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/~table');
    const long = Array.from({ length: 60_000 }, (_, i) => `r${i},person,Flint-30,60,1`);
    const file = csvFile(['id,source,belt,width_mm,left_m', ...long].join('\n'));
    await page.evaluate(() => {
      const gaps: number[] = [];
      Object.assign(window, { gaps });
      let last = performance.now();
      setInterval(() => {
        gaps.push(performance.now() - last);
        last = performance.now();
      }, 20);
    });
    await choose(page, file);
    await page.getByRole('progressbar').waitFor();
    expect(await textOf(taking(page))).toMatch(/Step [123] of 3/);
    await taking(page).getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped. Nothing has changed.').waitFor();
    await choose(page, file);
    await page.locator('.table-number').first().waitFor({ timeout: 60_000 });
    const longest = await page.evaluate(() => Math.max(...(window as unknown as { gaps: number[] }).gaps));
    process.stdout.write(`Longest pause of the page while 60,000 rows were read: ${longest.toFixed(0)} ms.\n`);
    expect(longest).toBeLessThan(1000);
    expect((await counts(page))[1]).toBe(0);
  });

  test('[TABLES-05] [TABLES-08] 2,000 rows are taken in one transaction; stopped before, nothing has changed', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/~table');
    const long = Array.from({ length: 2000 }, (_, i) => `r${i},person,Flint-30,60,1`);
    await choose(page, csvFile(['id,source,belt,width_mm,left_m', ...long].join('\n')));
    await at(page, 'found');
    await takeAll(page).click();
    await page.getByRole('progressbar', { name: 'Saving all rows' }).waitFor();
    await taking(page).getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped. Nothing has changed.').waitFor();
    expect(await keptEvents(page, 'rolls/r0')).toEqual([]);
    await choose(page, csvFile(['id,source,belt,width_mm,left_m', ...long].join('\n')));
    await at(page, 'found');
    const start = Date.now();
    await takeAll(page).click();
    await page.locator('.table-part[data-at=taken]').waitFor({ timeout: 60_000 });
    process.stdout.write(`2,000 rolls taken in one transaction: ${((Date.now() - start) / 1000).toFixed(1)} s.\n`);
    expect(await keptEvents(page, 'rolls/r1999')).toHaveLength(1);
  });

  test('[TABLES-09] a plant that changed after the look is held against the table once more', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/~table');
    await choose(page, csvFile(rollTable));
    await at(page, 'found');
    const other = await reader.context.newPage();
    await other.goto(page.url().replace('~table', 'roll-F30-1/edit'));
    await other.locator('[data-field=left] input').fill('97.5');
    await other.locator('[data-field=left] select').first().selectOption('m');
    await other.locator('[data-field=left] input').fill('97.5');
    await other.locator('button[type=submit]').click();
    await other.locator('.written').waitFor();
    await other.close();
    await page.waitForTimeout(300);
    await takeAll(page).click();
    await page.getByText('held against it once more').waitFor();
    expect(await counts(page)).toEqual([1, 0, 1, 0]);
    await takeAll(page).click();
    await at(page, 'taken');
  });
});

const faces = (['en', 'de', 'es'] as const).flatMap((language) =>
  (['day', 'night'] as const).map((theme, i) => ({ language, theme, viewport: i === 0 ? phone : wide })),
);

test.each(faces)('[TABLES-11] $language, $theme: nothing cut, readable, targets large and apart', async (face) => {
  await reader.close();
  const { language, theme, viewport } = face;
  reader = await openReader(browser, { viewport, settings: { ...answered, language, theme } });
  const { page } = reader;
  await bringAxe(reader.context);
  await visit(reader, '/stores/rolls/~table');
  const faultsOf = async (state: string) => {
    const faults = await faceFaults(page);
    expect(faults, state).toEqual([]);
  };
  await faultsOf('start');
  await choose(page, csvFile(rollTable));
  await at(page, 'found');
  await faultsOf('found');
  await takeAll(page).click();
  await at(page, 'taken');
  await faultsOf('taken');
  await choose(page, {
    ...csvFile(''),
    buffer: Buffer.from(strToU8(`id;source;größe\n${'W'.repeat(200)};x;1\n`, true)),
  });
  await at(page, 'found');
  await faultsOf('refused');
  await page.evaluate(lengthen);
  expect([...(await page.evaluate(cutText)), ...(await page.evaluate(poorTargets))]).toEqual([]);
});
