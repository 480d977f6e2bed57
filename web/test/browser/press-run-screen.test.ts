import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, inject, test } from 'vitest';
import { launchBrowser } from '../../../tools/browser/launch.ts';
import { keptEvents } from './support/kept-events.ts';
import { answered, openReader, type Reader, textOf } from './support/reader.ts';
import { RunPlayer } from './support/run-player.ts';

const address = inject('address');
const night_ms = Date.parse('2026-11-25T02:10:00Z');
const hour_s = 3600;

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

let reader: Reader;
let page: Page;
let player: RunPlayer;
beforeEach(async () => {
  reader = await openReader(browser, { hasTouch: true, settings: { ...answered, press: 'P1' } });
  ({ page } = reader);
  await page.clock.install({ time: night_ms });
  player = new RunPlayer(page);
});
afterEach(async () => {
  expect(reader.trouble.all).toEqual([]);
  await reader.close();
});

const said = async (place: string) => textOf(page.locator(place));
/** What is tapped is shown when it is on the disk. */
const shows = (place: string, text: string) => page.locator(place).filter({ hasText: text }).first().waitFor();
const eventsOf = async (run: string) => keptEvents(page, `press-run/${run}`);
const tile = (text: string | RegExp) => page.locator('.run-tile').filter({ hasText: text });

async function timerLeft_s(): Promise<number> {
  const [minutes = 0, seconds = 0] = (await textOf(page.locator('.run-timer'))).split(':').map(Number);
  return 60 * minutes + seconds;
}

async function holdTile(text: string): Promise<void> {
  const held = tile(text).and(page.locator('.run-hold'));
  await held.dispatchEvent('pointerdown');
  await page.clock.runFor(1100);
}

describe('clocks', () => {
  test('[PRUN-03] a clock set three hours back and three on moves no timer, and the moment shown follows it', async () => {
    await player.heat(address, 'QM-04-3');
    for (const hours of [3, -3]) {
      const before_s = await timerLeft_s();
      const now_ms = await page.evaluate(() => Date.now());
      await page.clock.setSystemTime(now_ms + hours * hour_s * 1000);
      await page.clock.runFor(2000);
      expect(before_s - (await timerLeft_s())).toBeLessThan(10);
      const shown = (await textOf(page.locator('.run-when').first())).match(/\d\d:\d\d/)?.[0];
      const then = await page.evaluate(
        (left_s) => new Date(Date.now() + left_s * 1000).toTimeString().slice(0, 5),
        await timerLeft_s(),
      );
      expect(shown).toBe(then);
    }
  });

  test('[PRUN-03] another time zone moves no timer: it says the moment as the wall there shows it', async () => {
    await player.heat(address, 'QM-04-3');
    const left_s = await timerLeft_s();
    const here = (await textOf(page.locator('.run-when').first())).match(/\d\d:\d\d/)?.[0] ?? '';
    const session = await reader.context.newCDPSession(page);
    await session.send('Emulation.setTimezoneOverride', { timezoneId: 'Asia/Kolkata' });
    await page.clock.runFor(2000);
    expect(Math.abs((await timerLeft_s()) - left_s)).toBeLessThan(10);
    const shown = (await textOf(page.locator('.run-when').first())).match(/\d\d:\d\d/)?.[0] ?? '';
    const minutesOf = (text: string) => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));
    expect((minutesOf(shown) - minutesOf(here) + 1440) % 60).toBe(30);
  });
});

describe('taps', () => {
  test('[PRUN-05] taps of their own stand elsewhere than the tap before, and no key takes them', async () => {
    await page.goto(address);
    await player.begin(address, 'QM-04-3');
    const own: string[] = [];
    let before = { x: 0, y: 0, shape: '' };
    for (;;) {
      const step = await player.step();
      const main = page.locator('.run-step .run-main').first();
      if ((await main.count()) > 0) {
        const box = await main.boundingBox();
        const here = {
          x: (box?.x ?? 0) + (box?.width ?? 0) / 2,
          y: (box?.y ?? 0) + (box?.height ?? 0) / 2,
          shape: (await main.getAttribute('data-shape')) ?? '',
        };
        if (here.shape !== 'bar') {
          own.push(step);
          expect(here.shape).not.toBe(before.shape);
          expect(Math.hypot(here.x - before.x, here.y - before.y)).toBeGreaterThan(100);
          await page.clock.runFor(500);
          for (const key of ['Enter', ' ', 'PageDown', 'ArrowRight']) await page.keyboard.press(key);
          expect(await player.step()).toBe(step);
        }
        before = here;
      }
      if ((await player.next()).did === 'over') break;
      if ((await page.locator('.run').getAttribute('data-phase')) === 'over') break;
    }
    expect(own).toEqual(['lock-out', 'match', 'open', 'lock-off', 'unlock']);
  });

  test('[PRUN-05] one key does the next step; a bounce takes nothing along; a hold let go sooner does nothing', async () => {
    await player.begin(address, 'QM-04-3');
    await page.clock.runFor(500);
    await page.keyboard.press('PageDown');
    await page.locator('[data-step=gather]').waitFor();
    const main = page.locator('.run-main');
    await main.dispatchEvent('click');
    await page.clock.runFor(200);
    expect(await player.step()).toBe('gather');
    await page.clock.runFor(500);
    await tile('More').tap();
    await tile('Go on without').tap();
    const reason = tile('Tool is missing');
    await reason.dispatchEvent('pointerdown');
    await page.clock.runFor(700);
    await reason.dispatchEvent('pointerup');
    await page.clock.runFor(1000);
    expect(await reason.count()).toBe(1);
    await holdTile('Tool is missing');
    await page.locator('[data-step=stop]').waitFor();
    const [passed] = (await eventsOf(await player.run())).slice(-1);
    expect(passed).toMatchObject({
      type: 'run.step-passed',
      body: { thing: { step: 'gather', reason: 'tool-missing' } },
    });
  });

  test('[PRUN-05] somebody who knows the work gets to the end in 14 taps', async () => {
    await player.chooseGroups();
    await player.begin(address, 'QM-04-3');
    await player.until('alarm-tried');
    await shows('.run-step', 'Switch the heat on and tap in the same moment.');
    expect(await said('.run-step .run-main')).toBe('Heat is on');
    await player.until('nothing more');
    await shows('.run-panel h1', 'Finished');
    expect(player.taps).toBeLessThanOrEqual(14);
  });
});

describe('two presses at once', () => {
  test('[PRUN-06] differ by shape and word, show each other, and ring over each other and everywhere', async () => {
    await player.heat(address, 'QM-04-3');
    const [firstRun, firstSign] = [await player.run(), await said('.run-head .run-sign')];
    await page.goto(`${address}/run/new/QM-01-2`);
    await shows('.run-start .caution', 'The press North is taken: the run at QM-04-3 needs it.');
    await player.begin(address, 'QM-01-2');
    expect(await said('.run-head .run-sign')).not.toBe(firstSign);
    const other = page.locator('.run-other');
    expect(await textOf(other)).toContain(`${firstSign} · QM-04-3`);
    expect(await textOf(other)).toMatch(/\d\d:\d\d/);
    await page.clock.runFor(20 * 60_000);
    await shows('.run-alarm', 'QM-04-3');
    await page.goto(address);
    await page.locator('.run-banner a').nth(1).waitFor();
    await page.locator('.run-alarm').waitFor();
    await shows('.run-alarm', firstSign);
    await page.locator('.run-alarm button').tap();
    await page.locator('.run-alarm').waitFor({ state: 'detached' });
    await page.locator('.run-banner a').filter({ hasText: 'QM-04-3' }).tap();
    await page.locator(`[data-run="${firstRun}"]`).waitFor();
    expect((await eventsOf(firstRun)).at(-1)?.type).toBe('run.alarm-heard');
  });
});

describe('ways on', () => {
  test('[PRUN-07] not dry, not the same, the display says otherwise, opened early, no photo', async () => {
    await player.begin(address, 'QM-04-3');
    await player.until('dry');
    const run = await player.run();
    await tile('Another answer').tap();
    await tile('Not dry').tap();
    await shows('.run-panel', 'Take a sealed roll or another lot, dry this one');
    await holdTile('Lead was asked');
    await page.locator('.run-step').waitFor();
    await player.until('match');
    await page.clock.runFor(500);
    await tile('Not the same').tap();
    await tile(/^Different$/).tap();
    await tile('Back to the press: set it').tap();
    await shows('.run-told', 'Set the press to the card');
    await player.until('open');
    await tile('More').tap();
    await tile('Display says otherwise').tap();
    await tile('Hold has begun').tap();
    await page.locator('.run-step').waitFor();
    await shows('.run-title', 'Holding');
    await tile('More').tap();
    await holdTile('It was opened');
    await page.locator('[data-step=lift-out]').waitFor();
    await player.until('faces');
    await tile('Photos').tap();
    await tile('No photo possible').tap();
    await tile('Roller side').tap();
    await holdTile('Too dark');
    await page.locator('.run-step').waitFor();
    await player.until('nothing more');
    const told = await said('.run-panel');
    for (const sentence of [
      'The belt was not dry.',
      'The display said it after',
      'It was opened early.',
      'No photo: Roller side.',
    ])
      expect(told).toContain(sentence);
    const types = (await eventsOf(run)).map(({ type }) => type);
    for (const type of ['run.dry-said', 'run.recipe-compared', 'run.display-said', 'run.opened-early', 'run.no-photo'])
      expect(types).toContain(type);
  });

  test('[PRUN-07] a deviation is accepted by another badge only', async () => {
    await player.begin(address, 'QM-04-3');
    await page.clock.runFor(500);
    const who = async (word: string) => {
      await tile('More').tap();
      await tile('Who works?').tap();
      await tile(word).tap();
      await page.locator('.run-step').waitFor();
    };
    await who('Heron');
    await tile('More').tap();
    await tile('Go on without').tap();
    await holdTile('The line must run');
    await page.locator('[data-step=gather]').waitFor();
    await tile('More').tap();
    expect(await tile('I have seen it').count()).toBe(0);
    await page.locator('.run-back').tap();
    await who('Otter');
    await tile('More').tap();
    await tile('I have seen it').tap();
    await tile('Gone on without: Cause.').tap();
    await page.locator('.run-step').waitFor();
    const [accepted] = (await eventsOf(await player.run())).slice(-1);
    expect(accepted?.type).toBe('run.deviation-accepted');
  });
});

describe('readings', () => {
  test('[PRUN-08] by two large buttons; outlet and air give another prediction', async () => {
    await player.begin(address, 'QM-04-3');
    await player.until('outlet-live');
    const run = await player.run();
    await tile('Enter 2 readings').tap();
    const value = page.locator('.run-read-value');
    expect(await textOf(value)).toBe('230 V');
    const less = page.getByRole('button', { name: 'Less: At the outlet' });
    for (let press = 0; press < 5; press += 1) await less.tap();
    expect(await textOf(value)).toBe('225 V');
    await less.tap();
    expect(await textOf(value)).toBe('215 V');
    await page.clock.runFor(500);
    await page.locator('.run-main').tap();
    await page.getByRole('heading', { name: 'Air' }).waitFor();
    await page.clock.runFor(500);
    await page.locator('.run-main').tap();
    await page.locator('.run-step').waitFor();
    const events = await eventsOf(run);
    const predictions = events.filter(({ type }) => type === 'run.predicted');
    expect(predictions.length).toBe(3);
    const ready = predictions.map(({ body }) => (body.thing['cycle'] as { ready_s: { value: number } }).ready_s.value);
    expect(ready[1]).toBeGreaterThan(1.05 * (ready[0] ?? 0));
    await shows('.run-readings', '215 V read');
  });

  test('[PRUN-08] the displays, around what they should show; what cannot be cannot be set', async () => {
    await player.heat(address, 'QM-04-3');
    await page.clock.runFor(6.5 * 60_000);
    await tile('Read both displays').tap();
    const [shown = 0] = (await said('.run-read')).match(/\d+/)?.map(Number) ?? [];
    expect(shown).toBeGreaterThan(150);
    const more = page.getByRole('button', { name: 'More: Top platen' });
    for (let press = 0; press < 25; press += 1) await more.tap();
    const [most = 0] = (await said('.run-read')).match(/\d+/)?.map(Number) ?? [];
    expect(most).toBeLessThan(240);
    await page.clock.runFor(500);
    await page.locator('.run-main').tap();
    await page.getByRole('heading', { name: 'Bottom platen' }).waitFor();
    expect(await page.locator('.run-read').count(), 'one platen at a time').toBe(1);
    await page.clock.runFor(500);
    await page.locator('.run-main').tap();
    await page.locator('.run-curve').waitFor();
    const [read] = (await eventsOf(await player.run())).slice(-1);
    expect(read).toMatchObject({ type: 'run.display-read', body: { thing: { top_degC: most } } });
  });
});

describe('in the middle of a run', () => {
  test('[PRUN-09] language and light change, and it is handed over', async () => {
    await player.heat(address, 'QM-04-3');
    const run = await player.run();
    await tile('More').tap();
    await tile('More (1 of 2)').tap();
    await tile('Language, light').tap();
    await tile('Deutsch').tap();
    await tile('Nacht').tap();
    await page.locator('.run-back').tap();
    await page.locator('.run-back').tap();
    await shows('.run-title', 'Aufheizen');
    expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('night');
    await tile('Mehr').tap();
    await tile('Übergeben').tap();
    await tile('Otter').tap();
    await page.locator('.run-step').waitFor();
    await shows('.run-kept', 'Otter');
    expect(await player.run()).toBe(run);
    expect((await eventsOf(run)).at(-1)).toMatchObject({ type: 'run.handed-over' });
  });

  test('[PRUN-10] a tap that cannot be kept says so, and the step stands as before', async () => {
    await player.begin(address, 'QM-04-3');
    // The database is closed under the page, as a browser does that throws away what it stored.
    await page.evaluate(() => {
      IDBDatabase.prototype.transaction = () => {
        throw new DOMException('gone', 'InvalidStateError');
      };
    });
    await page.clock.runFor(500);
    await page.locator('.run-main').tap();
    await page.locator('.run-fault').waitFor();
    expect((await said('.run-fault')).length).toBeGreaterThan(20);
    expect(await player.step()).toBe('cause');
    await page.reload();
    await page.locator('.run-step').waitFor();
    const types = (await eventsOf(await player.run())).map(({ type }) => type);
    expect(types).toEqual(['run.started', 'run.predicted']);
  });

  test('[PRUN-10] an alarm is quiet once it is heard, also where that cannot be kept', async () => {
    await player.heat(address, 'QM-04-3');
    await page.clock.runFor(20 * 60_000);
    await page.locator('.run-alarm').waitFor();
    await page.evaluate(() => {
      IDBDatabase.prototype.transaction = () => {
        throw new DOMException('gone', 'InvalidStateError');
      };
    });
    await page.locator('.run-alarm button').tap();
    await page.locator('.run-alarm').waitFor({ state: 'detached' });
    await page.locator('.run-fault').waitFor();
    expect(await player.step()).toBe('open');
    await page.reload();
    await page.locator('.run-alarm').waitFor();
  });

  test('[PRUN-07] a step opened from the list asks as it does in its turn', async () => {
    await player.begin(address, 'QM-04-3');
    await page.clock.runFor(500);
    await tile('All steps').tap();
    await tile('More (1 of').tap();
    await tile('Dry?').tap();
    await tile('How dry?').tap();
    expect(await tile('Not dry').count()).toBe(1);
    expect((await eventsOf(await player.run())).map(({ type }) => type)).toEqual(['run.started', 'run.predicted']);
  });

  test('[PRUN-11] the screen is asked to stay on, again when it is seen again; the app counts as busy', async () => {
    await page.addInitScript(() => {
      const asked: string[] = [];
      (window as unknown as { asked: string[] }).asked = asked;
      Object.defineProperty(navigator, 'wakeLock', {
        value: {
          request: async (kind: string) => {
            asked.push(kind);
            return Object.assign(new EventTarget(), { released: true, release: async () => undefined });
          },
        },
      });
    });
    await player.begin(address, 'QM-04-3');
    const asked = () => page.evaluate(() => (window as unknown as { asked: string[] }).asked.length);
    expect(await asked()).toBeGreaterThan(0);
    const before = await asked();
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await page.clock.runFor(100);
    expect(await asked()).toBeGreaterThan(before);
    const held = await page.evaluate(async () => (await navigator.locks.query()).held?.map(({ name }) => name));
    expect(held).toContain('loopwright.busy');
  });
});

describe('what is seen', () => {
  test('[PRUN-12] bubbles are cut out by the catalogue; somebody who runs them on all the same says why', async () => {
    await player.begin(address, 'QM-04-3');
    await player.until('verdict');
    await tile('What is seen?').tap();
    await tile('Voids').tap();
    await tile('Roller side').tap();
    await tile('In a flank').tap();
    for (let press = 0; press < 5; press += 1) await page.locator('.run-step-button').nth(1).tap();
    expect(await textOf(page.locator('.run-read-value'))).toBe('2.50 mm');
    await page.clock.runFor(500);
    await page.locator('.run-main').tap();
    while ((await page.locator('.run-defect').count()) === 0) await page.locator('.run-back .run-tile').last().tap();
    await page.clock.runFor(500);
    await page.locator('.run-main').tap();
    await shows('.run-panel h1', 'Cut out');
    await shows('.run-panel', 'A look proves no strength.');
    await tile('Another answer').tap();
    await tile('Run it').tap();
    await holdTile('Lead was asked');
    await page.locator('[data-step="tension-three-quarters"]').waitFor();
    const inspected = (await eventsOf(await player.run())).findLast(({ type }) => type === 'run.inspected');
    expect(inspected?.body.thing).toMatchObject({
      verdict: 'run',
      proposed: 'cut-out',
      reason: 'asked-lead',
      findings: [{ defect: 'voids', face: 'roller', value: 0.0025 }],
    });
    await player.until('nothing more');
    await shows('.run-panel', 'Milder than proposed: Run it instead of Cut out.');
  });

  test('[PRUN-13] a platen that stays behind is said at once, with what to do', async () => {
    await player.heat(address, 'QM-04-3');
    await page.clock.runFor(4 * 60_000);
    expect(await page.locator('.run-curve').count()).toBe(1);
    await tile('Read both displays').tap();
    for (let press = 0; press < 10; press += 1) await page.getByRole('button', { name: 'Less: Top platen' }).tap();
    for (const heading of ['Top platen', 'Bottom platen']) {
      await page.getByRole('heading', { name: heading }).waitFor();
      await page.clock.runFor(500);
      await page.locator('.run-main').tap();
    }
    await page.locator('.run-step [role=alert]').waitFor();
    expect(await said('.run-step [role=alert]')).toMatch(/One side behind \(top\): \d+ °C, the other \d+ °C\./);
  });
});

describe('a logger', () => {
  test('[PRUN-14] its file is read into the run and kept with it; one that cannot be read is said', async () => {
    await player.heat(address, 'QM-04-3');
    const run = await player.run();
    await tile('More').tap();
    await tile('More (1 of 2)').tap();
    await tile('Logger’s curve').tap();
    const choose = page.locator('.run-panel input[type=file]');
    await choose.setInputFiles({ name: 'card.pdf', mimeType: 'application/pdf', buffer: Buffer.from('%PDF-1.7 x') });
    await page.locator('.run-fault').waitFor();
    const comma = (value: number) => value.toFixed(1).replace('.', ',');
    const rise = (s: number, most: number) => comma(20 + Math.min(s, most) / 2);
    const rows = Array.from({ length: 1200 }, (_, s) => `${s};${rise(s, 340)};${rise(s, 330)}`);
    const csv = ['time s;top °C;bottom °C', ...rows].join('\r\n');
    await choose.setInputFiles({ name: 'logger.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
    await page.locator('[data-logger=read] .run-main').waitFor();
    await shows('.run-panel', '1 200 rows, no gap');
    await page.clock.runFor(500);
    await page.locator('.run-main').tap();
    await page.locator('.run-step').waitFor();
    const [read] = (await eventsOf(run)).slice(-1);
    expect(read?.type).toBe('run.curve-read');
    const { curve, rows: count } = (read?.body.thing ?? {}) as {
      curve: { times_s: number[]; top_degC: number[] };
      rows: number;
    };
    expect(count).toBe(1200);
    expect(curve.times_s.length).toBeLessThanOrEqual(400);
    // 340 s of rise at half a kelvin a second from 20 °C.
    expect(Math.max(...curve.top_degC)).toBe(190);
  });
});

describe('all runs', () => {
  test('[PRUN-15] are found from the stores, those under way first; one of them is opened again', async () => {
    await page.goto(`${address}/stores`);
    await page.getByRole('link', { name: 'Press runs' }).tap();
    await page.getByText('No run yet.').waitFor();
    await player.begin(address, 'QM-04-3');
    const first = await player.run();
    await player.begin(address, 'QM-01-2');
    await page.clock.runFor(500);
    await tile('More').tap();
    await tile('More (1 of 2)').tap();
    await tile('Stop this run').tap();
    await holdTile('Wrong position');
    await page.locator('[data-phase=over]').waitFor();
    await page.goto(`${address}/run`);
    const entries = page.locator('main .run-entry');
    await entries.nth(1).waitFor();
    expect((await entries.allTextContents()).map((text) => text.slice(0, 7))).toEqual(['QM-04-3', 'QM-01-2']);
    await entries.first().tap();
    await page.locator(`[data-run="${first}"]`).waitFor();
  });
});
