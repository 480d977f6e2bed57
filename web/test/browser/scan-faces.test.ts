import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { bringAxe } from './support/axe.ts';
import { faceFaults, faces, faultsWhenLonger, pictureOf } from './support/faces.ts';
import { cameraFlags, sceneOf, writeFilm } from './support/fake-camera.ts';
import { answered, openReader, visit } from './support/reader.ts';

let folder: string;
let filming: Browser;
let blind: Browser;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-scan-faces-'));
  const film = join(folder, 'foreign.y4m');
  writeFilm(film, sceneOf('https://example.org/a-long-address/of-somebody-else?with=much&behind=it'));
  [filming, blind] = [await launchBrowser(cameraFlags(film, 'allow')), await launchBrowser(cameraFlags(film, 'deny'))];
});
afterAll(async () => {
  await Promise.all([filming.close(), blind.close()]);
  rmSync(folder, { recursive: true });
});

async function openAll(page: Page): Promise<void> {
  const closed = page.locator('main button[aria-expanded=false]');
  while ((await closed.count()) > 0) await closed.first().click();
}

describe.each(faces)('$language, $size', ({ language, viewport }) => {
  test('[SCAN-11] [WEB-07] scan and labels: nothing cut, readable, targets large and apart, no trouble', async () => {
    const settings = { ...answered, language };
    const places = [
      { browser: filming, path: '/scan', ready: '.scan-said', name: 'scan' },
      { browser: blind, path: '/scan', ready: '.scan-off', name: 'scan-off' },
      { browser: blind, path: '/labels', ready: '.labels-line', name: 'labels' },
    ];
    for (const { browser, path, ready, name } of places) {
      const reader = await openReader(browser, { viewport, settings });
      const { page } = reader;
      await bringAxe(reader.context);
      await visit(reader, path);
      await page.locator(ready).first().waitFor();
      await openAll(page);
      if (path === '/scan') await page.getByRole('searchbox').fill('04');
      expect(await faceFaults(page, { picture: pictureOf(name, language, viewport) }), name).toEqual([]);
      expect(await faultsWhenLonger(page), `${name} at +40 %`).toEqual([]);
      expect(reader.trouble.all).toEqual([]);
      await reader.close();
    }
  });
});
