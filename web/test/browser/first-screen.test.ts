import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { openReader, visit } from './support/reader.ts';
import { webFolder } from './support/serve-demo.ts';

const most_bytes = 180_000;

const fileSize = (path: string) => gzipSync(readFileSync(join(webFolder, path))).length;

test('[SPEED-01] the first screen needs at most 180 kB of JavaScript, and none that makes a card or its paper', async () => {
  const browser = await launchBrowser();
  // Whatever is fetched while nobody waits stays out: the page never gets to it.
  const reader = await openReader(browser);
  await reader.context.addInitScript(() => {
    window.requestIdleCallback = () => 0;
  });
  await visit(reader, '/');
  await reader.page.locator('.tile').first().waitFor();
  const addresses = await reader.page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
  const scripts = [...new Set(addresses.map((name) => new URL(name).pathname).filter((path) => path.endsWith('.js')))];
  const sizes = scripts.map((path) => ({ path, bytes: fileSize(path) })).sort((a, b) => b.bytes - a.bytes);
  const sum = sizes.reduce((total, { bytes }) => total + bytes, 0);
  process.stdout.write(
    `JavaScript of the first screen: ${(sum / 1000).toFixed(1)} kB gzip in ${scripts.length} files, of at most ${most_bytes / 1000} kB.\n`,
  );
  expect(scripts.length).toBeGreaterThan(0);
  expect(sum, JSON.stringify(sizes)).toBeLessThanOrEqual(most_bytes);
  expect(await silentTargets(reader.page)).toEqual([]);
  for (const later of ['card-place', 'save-card-pdf', 'stores-place'])
    expect(scripts.filter((path) => path.includes(later))).toEqual([]);
  await reader.close();
  await browser.close();
});

/** What a person could press or read as a heading and that says nothing: its words were to come later. */
function silentTargets(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('a, button, h1, h2, h3, p, legend, label')]
      .filter((element) => (element.textContent ?? '').trim() === '' && element.getAttribute('role') !== 'status')
      .map((element) => element.outerHTML.slice(0, 120)),
  );
}
