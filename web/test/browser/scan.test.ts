import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, test } from 'vitest';
import { cardCode } from '../../../sheets/src/code/card-code.ts';
import { plantMark, positionCode } from '../../../sheets/src/code/position-code.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { cameraFlags, photoOf, sceneOf, writeFilm } from './support/fake-camera.ts';
import { openReader, type Reader, textOf, visit } from './support/reader.ts';

const labelOf = (position: string, plant = 'quillmoor') => positionCode({ position, plant: plantMark(plant) });

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-scan-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Keeps what the browser gave as camera, so that it can be seen whether it was given back. */
function keepStreams(): void {
  const devices = navigator.mediaDevices;
  const given: MediaStream[] = [];
  Object.assign(window, { given });
  const ask = devices.getUserMedia.bind(devices);
  devices.getUserMedia = async (wanted) => {
    const stream = await ask(wanted);
    given.push(stream);
    return stream;
  };
}

/** Of each track of the cameras that were given: `live` or `ended`. */
const cameras = (page: Page) =>
  page.evaluate(() =>
    (window as unknown as { given: MediaStream[] }).given.flatMap((stream) =>
      stream.getTracks().map(({ readyState }) => readyState),
    ),
  );

let browser: Browser | undefined;
let reader: Reader | undefined;
afterEach(async () => {
  await reader?.close();
  await browser?.close();
});

/** A reader whose camera films a code. */
async function filming(payload: string, view: Parameters<typeof sceneOf>[1] = {}): Promise<Reader> {
  const film = join(folder, `${Math.abs(hash(payload))}.y4m`);
  writeFilm(film, sceneOf(payload, view));
  return withFlags(cameraFlags(film, 'allow'));
}

async function withFlags(flags: readonly string[]): Promise<Reader> {
  browser = await launchBrowser(flags);
  reader = await openReader(browser);
  await reader.context.addInitScript(keepStreams);
  return reader;
}

const hash = (text: string) => Array.from(text).reduce((sum, sign) => (sum * 31 + (sign.codePointAt(0) ?? 0)) | 0, 7);

const said = (page: Page) => page.locator('.scan-said');

describe('with a camera', () => {
  test('[SCAN-01] one tap from the lines, the label opens its card, the camera is given back, the way back leads to the lines', async () => {
    const { page, trouble } = await filming(labelOf('QM-05-2'));
    await visit({ page } as Reader, '/');
    await page.locator('.scan-link').click();
    await page.waitForURL('**/card/QM-05-2');
    await page.locator('.card-head h1').waitFor();
    expect(await textOf(page.locator('.card-head h1'))).toBe('QM-05 · 2');
    expect(await cameras(page)).toEqual(['ended']);
    await page.goBack();
    await page.locator('.tile').first().waitFor();
    expect(new URL(page.url()).pathname).toBe('/');
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-01] a printed card opens its position too', async () => {
    const { page, trouble } = await filming(cardCode({ position: 'QM-04-3', revision: 'D7N0Z9MG' }));
    await page.goto(`${inject('address')}/scan`);
    await page.waitForURL('**/card/QM-04-3');
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-02] a foreign address is named as such and never opened; the camera goes on', async () => {
    const { page, trouble } = await filming('https://example.org/card/QM-04-3');
    await visit({ page } as Reader, '/scan');
    await said(page).waitFor();
    expect(await textOf(said(page))).toContain('This code holds an address, not a position. It was not opened.');
    expect(await textOf(page.locator('.scan-text'))).toBe('https://example.org/card/QM-04-3');
    await page.waitForTimeout(1000);
    expect(new URL(page.url()).pathname).toBe('/scan');
    expect(await page.locator('a[href*="example.org"]').count()).toBe(0);
    expect(await cameras(page)).toEqual(['live']);
    expect(reader?.context.pages()).toHaveLength(1);
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-03] leaving gives the camera back', async () => {
    const { page, trouble } = await filming('4006381333931');
    await visit({ page } as Reader, '/scan');
    await said(page).waitFor();
    expect(await cameras(page)).toEqual(['live']);
    await page.locator('.back').click();
    await page.locator('.tile').first().waitFor();
    expect(await cameras(page)).toEqual(['ended']);
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-04] too dark is said, with what to do', async () => {
    const { page, trouble } = await filming('dark', { ink: 10, paper: 14 });
    await visit({ page } as Reader, '/scan');
    await page.locator('[data-trouble=dark]').waitFor();
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-04] after a while without a code it is said what helps', async () => {
    const { page, trouble } = await filming('far', { side: 24 });
    await visit({ page } as Reader, '/scan');
    await page.locator('[data-trouble=slow]').waitFor();
    expect(trouble.all).toEqual([]);
  });
});

describe('without a camera', () => {
  test('[SCAN-05] permission denied: said, with the way on; the typed position opens', async () => {
    const film = join(folder, 'denied.y4m');
    writeFilm(film, sceneOf(labelOf('QM-01-1')));
    const { page, trouble } = await withFlags(cameraFlags(film, 'deny'));
    await visit({ page } as Reader, '/scan');
    const off = page.locator('.scan-off');
    await off.waitFor();
    expect(await textOf(off)).toContain('This page may not use the camera.');
    await off.getByRole('button', { name: 'Try the camera again' }).click();
    await off.waitFor();
    expect(await cameras(page)).toEqual([]);
    await page.getByRole('searchbox').fill('QM-01-1');
    await page.locator('.found-row').first().click();
    await page.waitForURL('**/card/QM-01-1');
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-05] no camera at all: type the position', async () => {
    const { page, trouble } = await withFlags([]);
    await visit({ page } as Reader, '/scan');
    await page.locator('.scan-off').waitFor();
    expect(await textOf(page.locator('.scan-off'))).toContain('no camera');
    await page.getByRole('searchbox').fill('05-2');
    await page.locator('.found-row').first().waitFor();
    await page.getByRole('searchbox').press('Enter');
    await page.waitForURL('**/card/QM-05-2');
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-06] a photo of the label opens its card', async () => {
    const { page, trouble } = await withFlags([]);
    await visit({ page } as Reader, '/scan');
    const photo = photoOf(sceneOf(labelOf('QM-06-10'), { width: 1600, height: 1200, side: 420, turn: 1.9 }));
    await page.locator('input[type=file]').setInputFiles(photo);
    await page.waitForURL('**/card/QM-06-10');
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-07] each code that is no label of this plant is refused with its own reason, and nothing changes', async () => {
    const { page, trouble } = await withFlags([]);
    await visit({ page } as Reader, '/scan');
    const label = labelOf('QM-04-3');
    const foreign = [
      ['address', 'javascript:document.title="taken"'],
      ['foreign', '<img src=x onerror=alert(1)>'],
      ['later-form', label.replace('LW1P', 'LW2P')],
      ['malformed', `${label} again`],
      ['checksum', label.replace('QM-04-3', 'QM-04-4')],
      ['unknown', labelOf('QM-77-1')],
      ['other-plant', labelOf('QM-04-3', 'elsewhere')],
    ] as const;
    for (const [why, payload] of foreign) {
      await page.locator('input[type=file]').setInputFiles(photoOf(sceneOf(payload, { side: 440 })));
      await page.locator(`.scan-said[data-why=${why}]`).waitFor();
      expect(new URL(page.url()).pathname).toBe('/scan');
    }
    expect(await page.title()).toBe('Loopwright');
    // The label of a like-named position of another plant opens it only by a tap.
    await said(page).getByRole('link').click();
    await page.waitForURL('**/card/QM-04-3');
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-08] what is no photo, or holds no code, is said', async () => {
    const { page, trouble } = await withFlags([]);
    await visit({ page } as Reader, '/scan');
    const choose = page.locator('input[type=file]');
    const status = page.locator('.scan-photo [role=status]');
    for (const file of [
      { name: 'card.svg', mimeType: 'image/svg+xml', buffer: Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>') },
      { name: 'cut.png', mimeType: 'image/png', buffer: Buffer.from('89504e470d0a1a0a00', 'hex') },
      { name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from(labelOf('QM-04-3')) },
    ]) {
      await choose.setInputFiles(file);
      await status.getByText('This file is no photo').waitFor();
    }
    await choose.setInputFiles(photoOf(sceneOf(labelOf('QM-04-3'), { side: 20 })));
    await status.getByText('No code was found').waitFor();
    expect(trouble.all).toEqual([]);
  });

  test('[SCAN-09] a hand scanner that types opens the card; a foreign address from it is refused', async () => {
    const { page, trouble } = await withFlags([]);
    await visit({ page } as Reader, '/scan');
    const field = page.getByRole('searchbox');
    await field.fill('https://example.org/QM-04-3');
    await field.press('Enter');
    await page.locator('.scan-said[data-why=address]').waitFor();
    expect(new URL(page.url()).pathname).toBe('/scan');
    await field.fill(labelOf('QM-02-14'));
    await field.press('Enter');
    await page.waitForURL('**/card/QM-02-14');
    expect(trouble.all).toEqual([]);
  });
});
