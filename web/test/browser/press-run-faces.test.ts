import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import type { Settings } from '../../src/settings/settings.ts';
import { axeFaults, bringAxe } from './support/axe.ts';
import { cutText, poorContrast, smallText } from './support/measure.ts';
import { answered, openReader, phone, wide } from './support/reader.ts';
import { RunPlayer } from './support/run-player.ts';

const night_ms = Date.parse('2026-11-25T02:10:00Z');

/** Targets of a run that gloves miss, or that lie too near to each other; digits that nobody reads from three metres. */
function poorRunTargets(): string[] {
  const faults: string[] = [];
  const seen = [...document.querySelectorAll<HTMLElement>('.run button, .run a, .run label')].filter((each) =>
    each.checkVisibility(),
  );
  const targets = seen
    .filter((each) => each.closest('.run-alarm') !== null || document.querySelector('.run-alarm') === null)
    .map((element) => ({ element, rect: element.getBoundingClientRect(), name: element.textContent.trim() }));
  for (const { element, rect, name } of targets) {
    const least = element.classList.contains('run-main') ? 152 : 126;
    if (rect.width < 125.9 || rect.height < least - 0.1)
      faults.push(`"${name}" is ${rect.width.toFixed(0)} x ${rect.height.toFixed(0)} px`);
  }
  targets.forEach((a, at) => {
    for (const b of targets.slice(at + 1)) {
      const dx = Math.max(a.rect.left - b.rect.right, b.rect.left - a.rect.right, 0);
      const dy = Math.max(a.rect.top - b.rect.bottom, b.rect.top - a.rect.bottom, 0);
      if (Math.hypot(dx, dy) < 11.9) faults.push(`"${a.name}" and "${b.name}" lie ${Math.hypot(dx, dy)} px apart`);
    }
  });
  for (const timer of document.querySelectorAll('.run-timer'))
    if (Number.parseFloat(getComputedStyle(timer).fontSize) < 120) faults.push('the digits are too small');
  return faults;
}

/** How far a step reaches below the screen [px]. */
const below = () => Math.max(0, document.documentElement.scrollHeight - window.innerHeight);

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const faces = [
  { language: 'en', theme: 'day', viewport: phone, size: 'phone', units: 'us' },
  { language: 'de', theme: 'night', viewport: phone, size: 'phone', units: 'metric' },
  { language: 'es', theme: 'day', viewport: phone, size: 'phone', units: 'metric' },
  { language: 'de', theme: 'day', viewport: wide, size: 'wide screen', units: 'metric' },
] as const;

describe('every step of a run', () => {
  test.each(faces)('[PRUN-04] $language, $theme, $size: large targets, nothing cut, no scrolling', async (face) => {
    const { language, theme, viewport, units } = face;
    const settings: Settings = { ...answered, language, theme, units, press: 'P1' };
    const reader = await openReader(browser, { hasTouch: true, viewport, settings });
    await bringAxe(reader.context);
    const { page } = reader;
    await page.clock.install({ time: night_ms });
    const player = new RunPlayer(page);
    const faults: string[] = [];
    const look = async (where: string, withAxe: boolean) => {
      const found = [
        ...(await page.evaluate(cutText)),
        ...(await page.evaluate(smallText)),
        ...(await page.evaluate(poorRunTargets)),
        ...(withAxe ? await page.evaluate(poorContrast) : []),
        ...(withAxe ? await axeFaults(page) : []),
      ];
      const reach = await page.evaluate(below);
      if (reach > 0 && viewport === phone && !where.startsWith(',')) found.push(`reaches ${reach} px below the screen`);
      faults.push(...found.map((fault) => `${where}: ${fault}`));
    };
    await page.goto(`${inject('address')}/run/new/QM-04-3`);
    await page.locator('.run-start .main-action').waitFor();
    await look(', before', true);
    await player.begin(inject('address'), 'QM-04-3');
    const withAxe = new Set(['cause', 'lock-out', 'outlet-live', 'match', 'heat', 'open', 'lock-off', 'unlock']);
    const looked = new Set<string>();
    for (;;) {
      await page.clock.runFor(500);
      const step = await player.step();
      const waits = (await page.locator('.run-step .run-main').count()) === 0;
      const rings = (await page.locator('.run-alarm').count()) > 0;
      const where = `${step}${waits ? ', waiting' : ''}${rings ? ', ringing' : ''}`;
      if (!looked.has(where)) await look(where, withAxe.has(step));
      looked.add(where);
      if ((await page.locator('.run').getAttribute('data-phase')) === 'over') break;
      await player.next();
    }
    await page.goto(`${inject('address')}/run`);
    await page.locator('.run-entry').waitFor();
    await look(', all runs', true);
    expect(looked.size).toBeGreaterThan(40);
    expect(faults).toEqual([]);
    expect(reader.trouble.all).toEqual([]);
    await reader.close();
  });
});
