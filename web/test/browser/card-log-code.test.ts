import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { openReader, textOf, visit } from './support/reader.ts';

const code = /(?:[0-9A-Z]{4}-){3}[0-9A-Z]{4}/;

test('[WIT-08] a card on paper bears the code of the log as it stood, the same that the screen shows', async ({
  skip,
}) => {
  const browser = await launchBrowser();
  const reader = await openReader(browser);
  const { page } = reader;
  await visit(reader, '/card/QM-04-3');
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'PDF' }).click();
  const file = await (await downloading).path();
  const { error, stdout } = spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
  await visit(reader, '/stores/~witnesses');
  const shown = (await textOf(page.locator('.witness-digits'))).match(code)?.[0];
  expect(shown).toMatch(code);
  expect(reader.trouble.all).toEqual([]);
  await browser.close();
  if (error !== undefined) return skip('pdftotext is not installed, so nobody reads the paper');
  expect(stdout.match(code)?.[0]).toBe(shown);
  expect(stdout).toMatch(/log of \d[\d,  ]* records:/);
});
