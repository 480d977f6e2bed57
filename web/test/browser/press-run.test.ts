import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { alone, ours } from '../../../records/test/verifier/both-verifiers.ts';
import { launchProfile } from '../../../tools/browser/launch.ts';
import { keptEvents } from './support/kept-events.ts';
import { killProfile } from './support/kill-profile.ts';
import { answered, phone, storeSettings, type Trouble, textOf, watchTrouble } from './support/reader.ts';
import { RunPlayer } from './support/run-player.ts';

const position = 'QM-04-3';
const night = Date.parse('2026-11-25T02:10:00Z');

let profile: string;
beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'press-run-'));
});
afterAll(() => rm(profile, { recursive: true, force: true }));

/** The phone switched on at some time of the night. */
async function switchOn(at_ms: number): Promise<{ context: BrowserContext; page: Page; trouble: Trouble }> {
  const context = await launchProfile(profile, [], { viewport: phone, hasTouch: true, timezoneId: 'Europe/Berlin' });
  const trouble = await watchTrouble(context);
  await storeSettings(context, { ...answered, press: 'P1' });
  const page = context.pages()[0] ?? (await context.newPage());
  await page.clock.install({ time: at_ms });
  return { context, page, trouble };
}

const said = async (page: Page, place: string) => textOf(page.locator(place));

describe('the torn belt at two in the morning', () => {
  test('[PRUN-01] is led by touch from the card to running, the phone dies twice, and the record proves itself', async () => {
    const address = inject('address');
    // From the card, with a badge, to the heat.
    const first = await switchOn(night);
    let player = new RunPlayer(first.page);
    await first.page.goto(`${address}/card/${position}`);
    await first.page.locator('.ends .main-action').tap();
    await first.page.locator('.run-start').waitFor();
    await first.page.locator('.who-now').tap();
    await first.page.locator('.who-tile').filter({ hasText: 'Heron' }).tap();
    await first.page.locator('.who-now').filter({ hasText: 'Heron' }).waitFor();
    await first.page.locator('.run-start .main-action').tap();
    await first.page.locator('.run-step').waitFor();
    await player.until('cut');
    const run = await player.run();
    expect(first.trouble.all).toEqual([]);
    expect(await killProfile(profile)).toBeGreaterThan(0);

    // Dead between two cuts: the same step stands there again.
    const second = await switchOn(night + 20 * 60_000);
    player = new RunPlayer(second.page);
    await second.page.goto(address);
    await second.page.locator('.run-banner a').tap();
    await second.page.locator('.run-panel, .run-step').first().waitFor();
    expect(await said(second.page, '.run-panel')).toContain(
      'This page was closed, or the device off. The times follow the time of day.',
    );
    await player.next();
    expect(await player.step()).toBe('cut');
    await player.until('open');
    const timer = second.page.locator('.run-timer');
    await second.page.clock.runFor(4 * 60_000);
    const [minutes = 0] = (await textOf(timer)).split(':').map(Number);
    expect(minutes).toBeGreaterThan(8);
    expect(minutes).toBeLessThan(15);
    expect(second.trouble.all).toEqual([]);
    const diedAt = await second.page.evaluate(() => Date.now());
    await killProfile(profile);

    // Dead in the heat: the press went on, and the cycle is over when somebody looks again.
    const third = await switchOn(diedAt + 20 * 60_000);
    player = new RunPlayer(third.page);
    await player.open(address, run);
    await third.page.locator('.run-alarm').waitFor();
    expect(await said(third.page, '.run-alarm')).toContain('QM-04-3');
    await player.next();
    const meanwhile = await said(third.page, '.run-panel');
    expect(meanwhile).toMatch(/The cycle ended about \d+ min ago\. Check the platens before you open: 50 °C or less\./);
    await player.next();
    expect(await player.step()).toBe('open');
    expect(await said(third.page, '.run-told')).toContain('by the time of day, over a restart or another device');
    await player.until('nothing more');
    expect(await said(third.page, '.run-panel h1')).toBe('Finished');

    // The plant knows of the new belt, in the same append as the last tap.
    const [after] = (await keptEvents(third.page, `positions/${position}`)).slice(-1);
    expect(after?.body.thing).toMatchObject({ id: position, status: 'running' });
    expect(after?.by).toBe((await keptEvents(third.page, `press-run/${run}`))[0]?.by);

    // The record, checked by both verifiers and by the program.
    await third.page.goto(`${address}/stores/~everything`);
    const download = third.page.waitForEvent('download');
    await third.page.getByRole('button', { name: 'Export everything' }).tap();
    const bytes = new Uint8Array(await readFile(await (await download).path()));
    const file = join(profile, 'record.zip');
    await writeFile(file, bytes);
    expect((await alone(bytes)).verdict).toBe('ok');
    expect((await ours(bytes)).verdict).toBe('ok');
    expect(await alone(bytes)).toEqual(await ours(bytes));
    const program = spawnSync(process.execPath, ['cli/dist/main.js', 'verify', file], { encoding: 'utf8' });
    expect(program.status).toBe(0);
    expect(third.trouble.all).toEqual([]);
    await third.context.close();
  });
});
