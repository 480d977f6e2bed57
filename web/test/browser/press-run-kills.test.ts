import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { seeded } from '../../../records/test/verifier/seeded.ts';
import { launchProfile } from '../../../tools/browser/launch.ts';
import { keptEvents } from './support/kept-events.ts';
import { killProfile } from './support/kill-profile.ts';
import { answered, phone, storeSettings } from './support/reader.ts';
import { RunPlayer } from './support/run-player.ts';

const kills = Number(process.env['LW_RUN_KILLS'] ?? 20);
const seed = Number(process.env['LW_KILL_SEED'] ?? 42);
const mostMoves = 9;
const night_ms = Date.parse('2026-11-25T02:10:00Z');

const entriesOf = async (page: Page, run: string): Promise<readonly string[]> =>
  (await keptEvents(page, `press-run/${run}`)).map(({ type, body }) => `${type} ${JSON.stringify(body.thing)}`);

test(
  `[PRUN-02] killed ${kills} times in mid-run at any tap: what was shown as saved is there, and the run goes on to its end`,
  async () => {
    const profile = await mkdtemp(join(tmpdir(), 'run-kills-'));
    const address = inject('address');
    const chance = seeded(seed);
    const next = () => chance.below(2 ** 32) / 2 ** 32;
    let [at_ms, killed, finished, run] = [night_ms, 0, 0, ''];
    let sure: readonly string[] = [];
    try {
      while (killed < kills) {
        const context = await launchProfile(profile, [], { viewport: phone, hasTouch: true });
        await storeSettings(context, { ...answered, press: 'P1' });
        const page = context.pages()[0] ?? (await context.newPage());
        await page.clock.install({ time: at_ms });
        const player = new RunPlayer(page);
        await (run === '' ? player.begin(address, 'QM-04-3') : player.open(address, run));
        run = await player.run();
        const kept = await entriesOf(page, run);
        expect(kept.slice(0, sure.length), `after ${killed} kills`).toEqual(sure);
        const moves = 1 + Math.floor(next() * mostMoves);
        let isOver = false;
        for (let move = 0; move < moves && !isOver; move += 1) isOver = (await player.next()).did === 'over';
        sure = await entriesOf(page, run);
        // The last tap may be on its way to the disk while everything ends.
        const main = page.locator('.run-step .run-main[data-shape=bar]').first();
        if (next() < 0.5 && !isOver && (await main.count()) > 0) {
          await page.clock.runFor(500);
          await main.dispatchEvent('click');
        }
        at_ms = (await page.evaluate(() => Date.now())) + Math.floor(next() * 5 * 60_000);
        await killProfile(profile);
        killed += 1;
        if (isOver) [run, sure, finished] = ['', [], finished + 1];
      }
    } finally {
      await killProfile(profile);
      await rm(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
    }
    console.log(`Press runs killed ${killed} times (seed ${seed}), ${finished} runs went to their end, nothing lost.`);
    expect(finished).toBeGreaterThanOrEqual(Math.floor(kills / 20));
  },
  120_000 + kills * 30_000,
);
