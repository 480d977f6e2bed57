import { appendFile, cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../../../server/src/index.ts';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { openReader, textOf } from './support/reader.ts';
import { demoFolder, webFolder } from './support/serve-demo.ts';

let browser: Browser;
let plantFolder: string;
let server: RunningServer;
beforeAll(async () => {
  browser = await launchBrowser();
  plantFolder = await mkdtemp(join(tmpdir(), 'plant-'));
  await cp(demoFolder, plantFolder, { recursive: true });
  server = await startServer({ plantFolder, port: 0, webFolder });
});
afterAll(async () => {
  await browser.close();
  await rm(plantFolder, { recursive: true, force: true });
});

describe('when the plant cannot be read', () => {
  test('[WEB-13] mistakes are named, a silent server is said, and once mended the lines come', async () => {
    const reader = await openReader(browser);
    const { page } = reader;
    const positions = join(plantFolder, 'positions.csv');
    await appendFile(positions, 'this,is,no,position\n');
    await page.goto(server.address);
    await page.getByRole('heading', { name: 'The plant cannot be read.' }).waitFor();
    expect(await textOf(page.locator('main .list'))).toContain('positions.csv');

    const port = Number(new URL(server.address).port);
    await server.close();
    await page.getByRole('button', { name: 'Read again' }).click();
    await page.getByText('The server does not answer.').waitFor();
    expect(await textOf(page.locator('main'))).toContain('npm start');

    await cp(join(demoFolder, 'positions.csv'), positions);
    server = await startServer({ plantFolder, port, webFolder });
    await page.getByRole('button', { name: 'Read again' }).click();
    await page.locator('.tile').nth(59).waitFor({ state: 'attached' });
    expect(await page.locator('.tile').count()).toBe(60);
    expect(reader.trouble.all.filter((line) => !line.startsWith('console: Failed to load resource'))).toEqual([]);
    await reader.close();
  });

  test('[WEB-13] a plant without torn belts has no main action; without lines it says what to do', async () => {
    const reader = await openReader(browser);
    const { page } = reader;
    const positions = await page.request.get(`${server.address}/plant/events.json`);
    const { events } = (await positions.json()) as { events: { type: string; body: { thing: { status?: string } } }[] };
    expect(events.some(({ body }) => body.thing.status === 'torn')).toBe(true);
    await emptyOf(plantFolder, ['positions.csv', 'pulleys.csv', 'lines.csv']);
    await page.goto(server.address);
    await page.getByText('This plant has no lines yet.').waitFor();
    expect(await page.locator('.main-action:visible').count()).toBe(0);
    await reader.close();
    await server.close();
  });
});

/** Leaves only the remarks and the heading of each file. */
async function emptyOf(folder: string, files: readonly string[]): Promise<void> {
  for (const file of files) {
    const lines = (await readFile(join(folder, file), 'utf8')).split('\n');
    const heading = lines.findIndex((line) => !line.startsWith('#'));
    await writeFile(join(folder, file), `${lines.slice(0, heading + 1).join('\n')}\n`);
  }
}
