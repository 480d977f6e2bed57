import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { axeFaults, bringAxe } from './support/axe.ts';
import { faces, faultsWhenLonger } from './support/faces.ts';
import { cameraFlags, sceneOf, writeFilm } from './support/fake-camera.ts';
import { cutText, poorContrast, poorTargets, smallText } from './support/measure.ts';
import { openReader, visit } from './support/reader.ts';

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

const faultsOf = async (page: Page) => [
  ...(await page.evaluate(cutText)),
  ...(await page.evaluate(poorTargets)),
  ...(await page.evaluate(poorContrast)),
  ...(await page.evaluate(smallText)),
  ...(await axeFaults(page)),
];

describe.each(faces)('$language, $theme, $size', ({ language, theme, viewport }) => {
  test('[SCAN-11] [WEB-07] scan and labels: nothing cut, readable, targets large and apart, no trouble', async () => {
    const settings = { language, theme, units: 'metric', people: 1, press: '' } as const;
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
      const shots = process.env['LW_SHOTS'];
      if (shots !== undefined)
        await page.screenshot({ path: join(shots, `${name}-${language}-${theme}-${viewport.width}.png`) });
      await openAll(page);
      if (path === '/scan') await page.getByRole('searchbox').fill('04');
      expect(await faultsOf(page), name).toEqual([]);
      expect(await faultsWhenLonger(page), `${name} at +40 %`).toEqual([]);
      expect(reader.trouble.all).toEqual([]);
      await reader.close();
    }
  });
});
