import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { faultsWhenLonger } from './support/faces.ts';
import { cutText, poorContrast, poorDrawings, poorTargets, smallText } from './support/measure.ts';
import { openReader, phone, visit, wide } from './support/reader.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

function openAllFormulas(): void {
  for (const button of document.querySelectorAll<HTMLElement>('button.how')) button.click();
}

/** What axe-core finds, all rules of WCAG A to AAA and good practice, one line each. */
async function axeFaults(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run: (options: object) => Promise<AxeResult> } };
    const { violations } = await axe.run({ resultTypes: ['violations'] });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
  });
}

interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
}

const faces = (['en', 'de', 'es'] as const).flatMap((language) =>
  (['day', 'night'] as const).flatMap((theme) =>
    (['metric', 'us'] as const).flatMap((units) => [
      { language, theme, units, size: 'phone', viewport: phone },
      { language, theme, units, size: 'wide screen', viewport: wide },
    ]),
  ),
);

describe.each(faces)('$language, $theme, $units, $size', ({ language, theme, units, viewport }) => {
  test('[WEB-07] lines and card: nothing cut, readable, targets large and apart, no trouble', async () => {
    const settings = { language, theme, units, people: 1, press: '' } as const;
    const reader = await openReader(browser, { viewport, settings });
    const { page } = reader;
    await page.addInitScript(axeSource);
    for (const place of ['/', '/card/QM-04-3', '/card/QM-05-2']) {
      await visit(reader, place);
      const settingsButton = page.locator('.settings-button');
      if (await settingsButton.isVisible()) await settingsButton.click();
      await page.evaluate(openAllFormulas);
      const faults = async () => [
        ...(await page.evaluate(cutText)),
        ...(await page.evaluate(poorDrawings)),
        ...(await page.evaluate(poorTargets)),
        ...(await page.evaluate(poorContrast)),
        ...(await page.evaluate(smallText)),
        // Units change numbers, not roles and names.
        ...(units === 'metric' ? await axeFaults(page) : []),
      ];
      expect(await faults(), place).toEqual([]);
      expect(await faultsWhenLonger(page), `${place} at +40 %`).toEqual([]);
    }
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});
