import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { keptEvents } from './support/kept-events.ts';
import { pressOn, tabTo, typeInto } from './support/keyboard.ts';
import { answered, openReader, plainSpaces, type Reader, textOf, visit, wide } from './support/reader.ts';

let browser: Browser;
let reader: Reader;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  reader = await openReader(browser, { settings: { ...answered, units: 'us' } });
});
afterEach(async () => {
  expect(reader.trouble.all).toEqual([]);
  await reader.close();
});

const field = (page: Page, name: string): Locator => page.locator(`[data-field="${name}"]`);
const input = (page: Page, name: string): Locator => field(page, name).locator('input, textarea').first();
const save = (page: Page): Locator => page.locator('button[type=submit]');
const title = (page: Page): Locator => page.locator('.pane-thing h1');

/** A belt as an American data sheet gives it. */
const sheet = {
  dataSheet: 'Reed sheet, edition 3',
  thickness: '0.09',
  areaMass: '0.5',
  minPulley: '2',
  k1: '60',
  fingerPitch: '0.5',
  fingerLength: '3',
};

async function enterBelt(page: Page, id: string): Promise<void> {
  await input(page, 'id').fill(id);
  for (const [name, text] of Object.entries(sheet)) await input(page, name).fill(text);
}

async function saved(page: Page): Promise<void> {
  await save(page).click();
  await page.locator('.written').waitFor();
}

describe('stores', () => {
  test('[STORES-01] all kinds with their counts, and a search over everything', async () => {
    const { page } = reader;
    await visit(reader, '/stores');
    const rows = await page.locator('.kind-row').allTextContents();
    expect(rows.map(plainSpaces)).toEqual([
      'Belts4',
      'Dies2',
      'Templates3',
      'Presses2',
      'Recipes5',
      'Lines6',
      'Positions60',
      'Rolls6',
      'Badges6',
    ]);
    await page.getByRole('searchbox').fill('bay 4');
    await page.getByText('1 entry').waitFor();
    expect(await textOf(page.locator('.thing-row'))).toMatch(/^P2 ?Press · South/);
    await page.getByRole('searchbox').press('Enter');
    await title(page).waitFor();
    expect(new URL(page.url()).pathname).toBe('/stores/presses/P2');
  });

  test('[STORES-04] [STORES-05] a belt entered in US units is kept in SI to the last digit, with its sources', async () => {
    const { page } = reader;
    await visit(reader, '/stores/belts/~new');
    await enterBelt(page, 'Reed-09');
    await page.getByRole('button', { name: 'Numbers from different sources' }).click();
    await page.getByLabel('Source of Thickness').selectOption('measured');
    await saved(page);
    expect(await textOf(page.locator('.written'))).toBe('Reed-09 is saved.Undo');
    expect(new URL(page.url()).pathname).toBe('/stores/belts/Reed-09');
    const [event] = await keptEvents(page, 'belts/Reed-09');
    expect(event?.type).toBe('belt.defined');
    // 1 in = 0.0254 m exactly (NIST SP 811, appendix B).
    expect(event?.body.thing).toMatchObject({
      id: 'Reed-09',
      source: 'data sheet',
      dataSheet: 'Reed sheet, edition 3',
      thickness_m: 0.002286,
      minPulley_m: 0.0508,
      fingerPitch_m: 0.0127,
      fingerLength_m: 0.0762,
      friction: 0.3,
    });
    expect(event?.body.thing['sources']).toMatchObject({ thickness_m: 'measured', friction: 'example' });
    const row = (label: string) => page.locator('.row').filter({ hasText: label });
    expect(await textOf(row('Smallest pulley diameter'))).toContain('2 indata sheet');
    expect(await textOf(row('Thickness'))).toContain('0.09 inmeasured');
    expect(await textOf(row('Friction on dry steel'))).toContain('0.3example');
    await page.reload();
    await title(page).waitFor();
    expect(await textOf(row('Finger length'))).toContain('3 in');
  });

  test('[STORES-04] the unit of a field is remembered, and a value that stands keeps its value in another unit', async () => {
    const { page } = reader;
    await visit(reader, '/stores/belts/Alder-24/edit');
    expect(await input(page, 'thickness').inputValue()).toBe('0.0944882');
    await page.getByLabel('Unit of Thickness').selectOption('mm');
    expect(await input(page, 'thickness').inputValue()).toBe('2.4');
    expect(await textOf(field(page, 'thickness'))).toContain('= 0.09449 in');
    expect(await save(page).count()).toBe(0);
    await visit(reader, '/stores/belts/~new');
    expect(await page.getByLabel('Unit of Thickness').inputValue()).toBe('mm');
    await input(page, 'thickness').fill('2.5');
    await page.getByLabel('Unit of Thickness').selectOption('cm');
    expect(await input(page, 'thickness').inputValue()).toBe('2.5');
    await expect.poll(() => textOf(field(page, 'thickness'))).toContain('Got 2.5 cm, must be 0.03 to 2 cm.');
  });

  test('[STORES-06] out of range is said while one types, with value, unit, range and next step; nothing is saved', async () => {
    const { page } = reader;
    await visit(reader, '/stores/belts/~new');
    await enterBelt(page, 'Reed-10');
    await input(page, 'minPulley').fill('50');
    const wrong = field(page, 'minPulley').locator('.field-wrong');
    expect(await textOf(wrong)).toBe('Got 50 in, must be 0.1969 to 39.37 in. Check the number and its unit.');
    expect(await input(page, 'minPulley').getAttribute('aria-invalid')).toBe('true');
    await save(page).click();
    await page.getByText('1 thing to mend before it can be saved.').waitFor();
    expect(await page.evaluate(() => document.activeElement?.closest('[data-field]')?.getAttribute('data-field'))).toBe(
      'minPulley',
    );
    expect(await keptEvents(page, 'belts/Reed-10')).toEqual([]);
    await input(page, 'minPulley').fill('2,125');
    expect(await textOf(wrong)).toMatch(/can be a thousand or a decimal/);
    await input(page, 'minPulley').fill('2 1/8');
    await saved(page);
    expect((await keptEvents(page, 'belts/Reed-10'))[0]?.body.thing['minPulley_m']).toBe(0.053975);
  });

  test('[STORES-08] what contradicts itself is not saved, what deserves a look is', async () => {
    const { page } = reader;
    await visit(reader, '/stores/belts/Alder-24/edit');
    await input(page, 'maxElongation').fill('0.2');
    const stop = page.locator('.findings .caution-stop');
    await stop.waitFor();
    expect(await textOf(stop)).toMatch(/Belt Alder-24 · Least elongation: the least elongation 0.30 % is not below/);
    await save(page).click();
    expect(await page.locator('.written').count()).toBe(0);
    expect(await keptEvents(page, 'belts/Alder-24')).toHaveLength(1);
    await input(page, 'maxElongation').fill('0.9');
    await stop.waitFor({ state: 'detached' });
    // QM-01 is set to 1.00 %, QM-05 to 0.95 %.
    const care = page.locator('.findings .caution-care');
    expect(await textOf(care)).toMatch(/It can be saved as it is.*Line QM-01.*Line QM-05/);
    await saved(page);
    expect(await keptEvents(page, 'belts/Alder-24')).toHaveLength(2);
  });

  test('[STORES-09] the history says who, when and what from and to; undo puts it back by a new event', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/roll-A24-1/edit');
    await input(page, 'left').fill('300');
    await saved(page);
    await page.locator('.history .more-button').click();
    const changes = page.locator('.change');
    expect(await changes.count()).toBe(2);
    const last = await textOf(changes.first());
    expect(last).toContain('nobody chosen');
    expect(last).toMatch(/\d{1,2} \w{3} \d{4}, \d{2}:\d{2} UTC/);
    expect(last).toContain('Left on the roll: 314.96 ft → 300 ft');
    await page.locator('.written').getByRole('button', { name: 'Undo' }).click();
    await page.getByText('roll-A24-1 is as it was before.').waitFor();
    await page.getByText('Undone: an earlier change was taken back').waitFor();
    const events = await keptEvents(page, 'rolls/roll-A24-1');
    expect(events.map(({ body }) => body.thing['left_m'])).toEqual([96, 91.44, 96]);
    expect(events[2]?.body.corrects).toMatch(/\w/);
    await page.reload();
    await title(page).waitFor();
    expect(await textOf(page.locator('.row').filter({ hasText: 'Left on the roll' }))).toContain('314.96 ft');
  });

  test('[STORES-10] removing is asked once, says what refers to it, stays in the history and can be undone', async () => {
    const { page } = reader;
    await visit(reader, '/stores/dies/die-10x80');
    await page.getByRole('button', { name: 'Remove die-10x80' }).click();
    const ask = page.locator('.ask');
    expect(await textOf(ask)).toMatch(/Templates: 2 refer to it \(template-alder-50 and template-flint-60\)/);
    await ask.getByRole('button', { name: 'Remove' }).click();
    await page.getByText('die-10x80 is removed.').waitFor();
    await page.reload();
    await page.getByText('die-10x80 is not in the stores now.').waitFor();
    await page.locator('.history .more-button').click();
    await page.locator('.change').first().getByRole('button', { name: 'Undo' }).click();
    await page.getByText('die-10x80 is as it was before.').waitFor();
    expect(await textOf(page.locator('.row').filter({ hasText: 'Finger pitch' }))).toContain('0.3937 in');
    const types = (await keptEvents(page, 'dies/die-10x80')).map(({ type }) => type);
    expect(types).toEqual(['die.defined', 'die.removed', 'die.defined']);
  });

  test('[STORES-11] a form that was begun outlives a reload and says so; throwing it away is asked once', async () => {
    const { page } = reader;
    await visit(reader, '/stores/belts/~new');
    await input(page, 'id').fill('Reed-11');
    await input(page, 'thickness').fill('0.1');
    await page.getByText('What you typed is kept on this device').waitFor();
    await page.reload();
    await title(page).waitFor();
    expect(await input(page, 'id').inputValue()).toBe('Reed-11');
    expect(await input(page, 'thickness').inputValue()).toBe('0.1');
    await page.getByRole('button', { name: 'Throw away what I typed' }).click();
    await page.getByRole('button', { name: 'Throw away', exact: true }).click();
    await visit(reader, '/stores/belts/~new');
    expect(await input(page, 'id').inputValue()).toBe('');
  });

  test('[STORES-11] fields nobody touched take what was saved elsewhere meanwhile, and the form says so', async () => {
    const { page, context } = reader;
    await visit(reader, '/stores/rolls/roll-A24-1/edit');
    await input(page, 'place').fill('rack 9');
    await page.getByText('What you typed is kept').waitFor();
    const other = await context.newPage();
    await visit({ ...reader, page: other }, '/stores/rolls/roll-A24-1/edit');
    expect(await input(other, 'place').inputValue()).toBe('rack 9');
    await input(other, 'place').fill('stores, rack 2, bay 2');
    await input(other, 'left').fill('300');
    await saved(other);
    await other.close();
    await page.getByText('This was changed elsewhere while your form was open').waitFor();
    expect(await input(page, 'left').inputValue()).toBe('300');
    await saved(page);
    const event = (await keptEvents(page, 'rolls/roll-A24-1')).at(-1);
    expect(event?.body.thing).toMatchObject({ place: 'rack 9', left_m: 91.44 });
  });

  test('[STORES-12] positions 1 to n of a line in one go; those there already stay', async () => {
    const { page } = reader;
    await visit(reader, '/stores/lines/QM-04');
    await page.getByRole('link', { name: 'Enter positions 1 to n' }).click();
    await page.getByLabel('From number').fill('5');
    await page.getByLabel('To number').fill('9');
    await page.getByText('3 new positions. 2 are there already').waitFor();
    await page.getByRole('button', { name: 'Save 3 positions' }).click();
    await page.getByRole('heading', { name: 'Positions that use it: 9' }).waitFor();
    expect((await keptEvents(page, 'positions/QM-04-8'))[0]?.body.thing).toMatchObject({ line: 'QM-04', number: 8 });
    expect(await keptEvents(page, 'positions/QM-04-5')).toHaveLength(1);
  });

  test('[STORES-13] by keyboard alone: search, open, change a number, save, undo', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls');
    const focused = (selector: string) => page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector);
    await tabTo(page, page.getByRole('searchbox').first());
    await page.keyboard.type('alder');
    await page.getByText('2 entries').waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await title(page).waitFor();
    expect(await focused('h1')).toBe(true);
    await pressOn(page, page.locator('a.main-action'));
    await page.locator('form h2').first().waitFor();
    await typeInto(page, page.locator('[data-field=left] input'), '200');
    await page.keyboard.press('Enter');
    await page.locator('.written').waitFor();
    expect(await focused('h1')).toBe(true);
    await pressOn(page, page.locator('.written button'));
    await page.getByText('is as it was before').waitFor();
  });

  test('[STORES-14] nothing there yet: the list says what to do first', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls');
    for (let left = 6; left > 0; left -= 1) {
      await page.locator('.thing-row').first().click();
      await page.getByRole('button', { name: /^Remove / }).click();
      await page.locator('.ask').getByRole('button', { name: 'Remove' }).click();
      await page.getByText(/is removed\.$/).waitFor();
      await page.locator('.bar .back').click();
    }
    await page.getByText('No rolls yet. Enter what lies on the shelf').waitFor();
    await page.getByRole('link', { name: 'Enter a roll' }).click();
    await title(page).waitFor();
    expect(await input(page, 'id').inputValue()).toBe('roll-1');
  });

  test('[STORES-15] hostile names and addresses are text or refused, and nothing changes', async () => {
    const { page } = reader;
    await visit(reader, '/stores/rolls/~new');
    await input(page, 'id').fill('<img src=x onerror=alert(1)>');
    expect(await textOf(field(page, 'id'))).toContain('cannot be a short name');
    await input(page, 'id').fill('roll-9');
    await field(page, 'belt').locator('select').selectOption('Alder-24');
    await field(page, 'source').getByText('measured').click();
    await input(page, 'width').fill('2');
    await input(page, 'left').fill('10');
    await input(page, 'place').fill('x'.repeat(10_000));
    expect(await textOf(field(page, 'place'))).toContain('10 000 characters, at most 300 are allowed');
    await input(page, 'place').fill('bay\u202e7');
    expect(await textOf(field(page, 'place'))).toContain('signs in it that cannot be seen');
    await save(page).click();
    expect(await keptEvents(page, 'rolls/roll-9')).toEqual([]);
    await input(page, 'place').fill('<img src=x onerror=alert(1)> =cmd()');
    await saved(page);
    expect(await page.locator('article img').count()).toBe(0);
    expect(await textOf(page.locator('article'))).toContain('<img src=x onerror=alert(1)> =cmd()');
    for (const path of ['/stores/nothing', '/stores/__proto__/x', '/stores/belts/constructor']) {
      await visit(reader, path);
    }
    expect(await textOf(page.locator('main'))).toContain('constructor is not in the stores now.');
  });
});

describe('wide screen', () => {
  test('[STORES-16] places left, list in the middle, the thing right', async () => {
    const other = await openReader(browser, { viewport: wide, settings: answered });
    await visit(other, '/stores/presses/P2');
    const left = async (selector: string) => (await other.page.locator(selector).boundingBox())?.x ?? Number.NaN;
    expect(await left('.places')).toBeLessThan(await left('.pane-list'));
    expect(await left('.pane-list')).toBeLessThan(await left('.pane-thing'));
    expect(await textOf(other.page.locator('.thing-row[aria-current="page"]'))).toMatch(/^P2/);
    await other.page.getByRole('link', { name: /^P1/ }).click();
    await other.page.getByRole('heading', { level: 1, name: 'P1 North' }).waitFor();
    expect(other.trouble.all).toEqual([]);
    await other.close();
  });
});
