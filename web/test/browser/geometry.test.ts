import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faces, faultsWhenLonger } from './support/faces.ts';
import { keptEvents } from './support/kept-events.ts';
import { poorDrawings } from './support/measure.ts';
import { answered, openReader, phone, type Reader, textOf, visit, wide } from './support/reader.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function opened(path: string, size: typeof phone): Promise<Reader> {
  const reader = await openReader(browser, { viewport: size });
  await visit(reader, path);
  await reader.page.locator('.geometry').waitFor();
  return reader;
}

async function closed(reader: Reader): Promise<void> {
  expect(reader.trouble.all).toEqual([]);
  await reader.close();
}

const lengthShown = async (page: Page) => textOf(page.locator('.geometry .figure-value').first());
const row = (page: Page, number: number) => page.getByRole('group', { name: `Pulley ${number}`, exact: true });
const input = (page: Page, name: string) => page.locator(`.geometry [data-field="${name}"] input`).first();
const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true });

/** Two end pulleys of 100 mm, 9 m apart, the take-up at one of them. */
async function enterSurvey(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'I measure with a tape' }).check();
  await page.getByRole('radio', { name: /^Drive at an end, take-up at the other/ }).check();
  await input(page, 'infeedDiameter').fill('100');
  await input(page, 'endDistance').fill('9000');
  await input(page, 'dischargeDiameter').fill('100');
}

describe('coordinates', () => {
  // The demo plant's readme gives the loop of QM-02 as 37.40 m and says which pulleys stand where.
  test('[GEOMETRY-03] [GEOMETRY-04] drawn as one types; what stands in the way is named, marked and not saved', async () => {
    const reader = await opened('/stores/lines/QM-02/geometry', wide);
    const { page } = reader;
    expect(await lengthShown(page)).toBe('37 400');
    expect(await page.locator('.wraps tbody tr').count()).toBe(8);
    expect(await save(page).count()).toBe(0);
    const drawn = await page.locator('.geometry .drawing').innerHTML();
    const x = row(page, 8).locator('[data-field=x] input');
    await x.fill('17986.1');
    // Both strands are pulled 100 mm longer, within a hundredth for the flat angle at the end.
    await expect.poll(() => lengthShown(page)).toBe('37 600');
    expect(await save(page).count()).toBe(1);
    await row(page, 3).locator('[data-field=diameter] input').fill('120');
    await expect.poll(() => page.locator('.geometry .drawing').innerHTML()).not.toBe(drawn);
    expect(await page.locator('.geometry .drawing circle.line-stop').count()).toBe(0);
    await x.fill('12830');
    await row(page, 8).locator('[data-field=y] input').fill('-60');
    await page.locator('.geometry .caution-stop').waitFor();
    expect(await textOf(page.locator('.geometry .caution-stop'))).toMatch(/pulleys 8 and 7|pulleys 7 and 8|pulley 8/);
    expect(await page.locator('.geometry .drawing circle.line-stop').count()).toBe(1);
    expect(await save(page).count()).toBe(0);
    await closed(reader);
  });

  test('[GEOMETRY-06] [GEOMETRY-10] a survey takes their place in one go, and undo brings all of them back', async () => {
    const reader = await opened('/stores/lines/QM-03/geometry', wide);
    const { page } = reader;
    const before = await lengthShown(page);
    await enterSurvey(page);
    // 2 x 9000 + pi x (100 + 1.8)
    await expect.poll(() => lengthShown(page)).toBe('18 320');
    await save(page).click();
    await page.locator('.written').waitFor();
    expect((await keptEvents(page, 'surveys/QM-03.survey')).map(({ type }) => type)).toEqual(['survey.defined']);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => lengthShown(page)).toBe(before);
    const events = await keptEvents(page, 'surveys/QM-03.survey');
    expect(events.map(({ type }) => type)).toEqual(['survey.defined', 'survey.removed']);
    expect(events[1]?.body.corrects).toBeDefined();
    await enterSurvey(page);
    await save(page).click();
    await page.locator('.written').waitFor();
    await page.reload();
    await page.locator('.geometry').waitFor();
    expect(await lengthShown(page)).toBe('18 320');
    await closed(reader);
  });

  test('[GEOMETRY-11] pulleys are added, moved and removed by buttons, without a mouse to drag', async () => {
    const reader = await opened('/stores/lines/QM-01/geometry', wide);
    const { page } = reader;
    const xOf = (number: number) => row(page, number).locator('[data-field=x] input').inputValue();
    const [first, second] = [await xOf(1), await xOf(2)];
    await page.getByRole('button', { name: 'Move pulley 1 down' }).press('Enter');
    expect([await xOf(1), await xOf(2)]).toEqual([second, first]);
    await page.getByRole('button', { name: 'Move pulley 2 up' }).press('Enter');
    expect([await xOf(1), await xOf(2)]).toEqual([first, second]);
    const count = await page.locator('.pulley').count();
    await page.getByRole('button', { name: 'Add a pulley' }).press('Enter');
    expect(await page.locator('.pulley').count()).toBe(count + 1);
    expect(await textOf(page.locator('.geometry [role=status]').filter({ hasText: 'complete' }))).toMatch(/^1 pulley/);
    await page.getByRole('button', { name: `Remove pulley ${count + 1}` }).press('Enter');
    expect(await page.locator('.pulley').count()).toBe(count);
    await closed(reader);
  });
});

describe('survey on a phone', () => {
  test('[GEOMETRY-02] [GEOMETRY-07] one question a screen, in walking order; a reload loses nothing', async () => {
    const reader = await opened('/stores/lines/QM-01/geometry', phone);
    const { page } = reader;
    const forward = page.getByRole('button', { name: 'Next', exact: true });
    await page.getByRole('radio', { name: 'I measure with a tape' }).check();
    await page.getByRole('radio', { name: /^Drive at an end, take-up under the bed/ }).check();
    await forward.click();
    expect(await page.locator('.number-entry').count()).toBe(1);
    // An empty answer does not lead on; it is said what is missing.
    await forward.click();
    expect(await page.locator('.field-wrong').count()).toBe(1);
    const answers = ['100', '40000', '400', '100', '90', '90', '90', '70', '22100', '100'];
    for (const [at, answer] of answers.entries()) {
      expect(await textOf(page.locator('.survey-step h2').first())).toBe(`Measurement ${at + 1} of ${answers.length}`);
      await page.locator('.number-entry input').fill(answer);
      if (at === 4) {
        await page.reload();
        await page.locator('.geometry').waitFor();
        expect(await textOf(page.locator('.survey-step h2').first())).toBe(`Measurement 6 of ${answers.length}`);
        continue;
      }
      await forward.click();
    }
    expect(await page.locator('.survey-step').getAttribute('data-step')).toBe('take-up');
    await forward.click();
    // A take-up 40 m along a bed of 22.1 m: the question that must be answered again is named.
    expect(await textOf(page.locator('.geometry .caution-stop'))).toContain(
      'From the infeed centre to the discharge centre',
    );
    await page.getByRole('button', { name: /^From the infeed centre along the bed to the take-up centre/ }).click();
    await page.locator('.number-entry input').fill('11000');
    while ((await page.locator('.survey-step').getAttribute('data-step')) !== 'result') await forward.click();
    await expect.poll(() => page.locator('.wraps tbody tr').count()).toBe(5);
    // What makes the length uncertain leads back to its question.
    await page.getByRole('button', { name: 'Measure this again' }).click();
    expect(await page.locator('.survey-step').getAttribute('data-step')).toBe('endDistance_m');
    await closed(reader);
  });
});

async function judge(page: Page, where: string): Promise<void> {
  const faults = [...(await page.evaluate(poorDrawings)), ...(await faceFaults(page))];
  expect(faults, where).toEqual([]);
  expect(await faultsWhenLonger(page), `${where} at +40 %`).toEqual([]);
}

describe.each(faces)('$language, $size', ({ language, viewport }) => {
  test('[GEOMETRY-12] [START-05] [WEB-07] nothing cut, readable, targets large and apart', async () => {
    const units = viewport === wide ? 'us' : 'metric';
    const settings = { ...answered, language, units } as const;
    const reader = await openReader(browser, { viewport, settings });
    const { page } = reader;
    await bringAxe(reader.context);
    for (const line of ['QM-01', 'QM-05']) {
      await visit(reader, `/stores/lines/${line}/geometry`);
      await page.locator('.geometry .figure-value').first().waitFor();
      await judge(page, `coordinates of ${line}`);
    }
    await visit(reader, '/stores/lines/QM-01/geometry');
    await page.locator('.geometry input[type=radio]').first().check();
    await page.locator('.layout-option').nth(5).click();
    await judge(page, 'layouts');
    await visit(reader, '/stores/lines/QM-01/geometry');
    await page.locator('.geometry [data-field=infeedDiameter]').waitFor();
    await judge(page, 'survey');
    await visit(reader, '/start');
    await judge(page, 'start');
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});
