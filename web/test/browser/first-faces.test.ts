import { appendFile, cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { voice, wholeLanguage } from '@loopwright/words';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../../../server/src/index.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faces, faultsWhenLonger, pictureOf } from './support/faces.ts';
import { answered, openReader, type Reader, visit, wide } from './support/reader.ts';
import { demoFolder, webFolder } from './support/serve-demo.ts';

let browser: Browser;
let plantFolder: string;
let server: RunningServer;
beforeAll(async () => {
  browser = await launchBrowser();
  plantFolder = await mkdtemp(join(tmpdir(), 'plant-'));
  await cp(demoFolder, plantFolder, { recursive: true });
  await appendFile(join(plantFolder, 'positions.csv'), 'this,is,no,position\n');
  server = await startServer({ plantFolder, port: 0, webFolder });
});
afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(plantFolder, { recursive: true, force: true });
});

const belt = ['Heath-20', '2', '3', '50', '12', '10', '80'];
const line = ['Infeed', '50', '1', '1', '16', '25', '20'];
const survey = { infeedDiameter: '120', endDistance: '22100', dischargeDiameter: '120' };
const goOn = (page: Page) => page.locator('.main-action').last();

/** Types into the empty fields of a step, from its top. */
async function fillIn(page: Page, values: readonly string[]): Promise<void> {
  const fields = page.locator('[data-start] input[type=text]');
  const texts = await fields.evaluateAll((all) => all.map((each) => (each as HTMLInputElement).value));
  const empty = texts.flatMap((text, at) => (text === '' ? [at] : []));
  for (const [at, value] of values.entries()) await fields.nth(empty[at] ?? 0).fill(value);
}

const at = (page: Page, step: string) => page.locator(`[data-start=${step}]`).waitFor();

describe.each(faces)('$language, $size', ({ language, viewport }) => {
  const opened = async (): Promise<Reader> => {
    const reader = await openReader(browser, { viewport, settings: { ...answered, language } });
    await bringAxe(reader.context);
    return reader;
  };
  const look = async (page: Page, name: string) =>
    expect(await faceFaults(page, { picture: pictureOf(`first-${name}`, language, viewport) }), name).toEqual([]);

  test('[START-05] [WEB-07] each step from nothing to the first card', async () => {
    await wholeLanguage(language);
    const { say } = voice(language, 'metric');
    const reader = await opened();
    const { page } = reader;
    await visit(reader, '/start');
    await fillIn(page, ['Plant North']);
    await goOn(page).click();
    await at(page, 'belts');
    await look(page, 'belts');
    await goOn(page).click();
    await page.locator('.field-wrong').first().waitFor();
    await look(page, 'belts-missing');
    await fillIn(page, belt);
    await goOn(page).click();
    await at(page, 'lines');
    await fillIn(page, line);
    await look(page, 'lines');
    await goOn(page).click();
    await at(page, 'measure');
    await page.locator('.layout-option').first().waitFor();
    await look(page, 'measure');
    await page.locator('.layout-option input').first().check();
    for (const [name, value] of Object.entries(survey)) {
      const forward = page.getByRole('button', { name: say('geometry.next'), exact: true });
      if (viewport !== wide) await forward.click();
      await page.locator(`.geometry [data-field="${name}"] input`).first().fill(value);
    }
    if (viewport !== wide) await page.getByRole('button', { name: say('geometry.next'), exact: true }).click();
    await page.locator('.geometry .figure-value').first().waitFor();
    await look(page, 'measured');
    await page.getByRole('button', { name: say('start.next') }).click();
    await at(page, 'positions');
    await look(page, 'positions');
    await fillIn(page, ['8']);
    await goOn(page).click();
    await at(page, 'ready');
    await look(page, 'ready');
    expect(await faultsWhenLonger(page), 'ready at +40 %').toEqual([]);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });

  test('[OFFLINE-07] [WEB-13] [WEB-07] the offer to install; a plant that cannot be read, and why', async () => {
    const reader = await opened();
    const { page } = reader;
    await visit(reader, '/');
    await page.evaluate(() => dispatchEvent(new Event('beforeinstallprompt', { cancelable: true })));
    await page.locator('.app-notice').waitFor();
    await look(page, 'install');
    expect(await faultsWhenLonger(page), 'install at +40 %').toEqual([]);
    await page.goto(server.address);
    await page.locator('main .list li').first().waitFor();
    await look(page, 'mistakes');
    expect(await faultsWhenLonger(page), 'mistakes at +40 %').toEqual([]);
    const others = reader.trouble.all.filter((each) => !each.includes('Failed to load resource'));
    expect(others).toEqual([]);
    await reader.close();
  });
});
