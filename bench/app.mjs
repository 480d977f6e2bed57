import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { build as buildPage } from 'vite';
import { build, isBuilt } from '../tools/build.mjs';
import { findChromium } from '../tools/chromium.mjs';
import { at } from '../tools/root.mjs';

// The app in a real browser whose processor is slowed down four times, as a phone of the middle class: DevTools' own measure.
const slowDown = 4;
const rounds = Number(process.env.LW_ROUNDS ?? 7);
const big = { lines: 100, positionsPerLine: 100, events: Number(process.env.LW_EVENTS ?? 100_000) };
const phone = { width: 390, height: 844 };
const flags = ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-sync'];

if (!isBuilt()) {
  const failure = await build();
  if (failure) {
    console.error(`${failure.output}\nThe build stopped while ${failure.what}. Mend what is named above.`);
    process.exit(1);
  }
}
const found = await findChromium();
if (found.sentence) {
  console.error(found.sentence);
  process.exit(1);
}
const { startServer } = await import(at('server/dist/index.js'));

/** A device that has never seen the app, with a server of its own that can be cut. */
async function withDevice(work) {
  const folder = mkdtempSync(join(tmpdir(), 'bench-app-'));
  const web = join(folder, 'web');
  cpSync(at('web/dist'), web, { recursive: true });
  await buildFill(web);
  const server = await startServer({ plantFolder: at('demo'), demo: true, port: 0, webFolder: web });
  const context = await chromium.launchPersistentContext(join(folder, 'profile'), {
    executablePath: found.path,
    args: flags,
    viewport: phone,
  });
  await context.addInitScript(watchPaint);
  try {
    return await work({ context, server, open: (path, slow) => openPage(context, server.address + path, slow) });
  } finally {
    await context.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The page that fills the store, laid beside the app because a store belongs to its address. */
function buildFill(web) {
  return buildPage({
    configFile: false,
    root: at('bench/fill'),
    base: '/fill/',
    publicDir: false,
    resolve: { conditions: ['source', 'module', 'browser', 'development|production'] },
    logLevel: 'warn',
    build: { outDir: join(web, 'fill'), emptyOutDir: false, modulePreload: { polyfill: false } },
  });
}

// Runs in the page: when something asked for stands on the screen, counted from the start of the page or from a tap.
function watchPaint() {
  const painted = (selector, from_ms) =>
    new Promise((resolve) => {
      const look = () => {
        if (document.querySelector(selector) === null) return void requestAnimationFrame(look);
        requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - from_ms), 0));
      };
      look();
    });
  window.firstPaint = painted('.tile', 0);
  addEventListener(
    'click',
    (event) => {
      window.cardPaint = painted('.big', event.timeStamp);
    },
    { capture: true, once: true },
  );
}

async function openPage(context, address, slow) {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  if (slow) await session.send('Emulation.setCPUThrottlingRate', { rate: slowDown });
  await page.goto(address);
  return Object.assign(page, { busy_ms: () => busy_ms(session) });
}

/** Processor time that the page's main thread has used: what remains of a wall time when nobody else wants the machine. */
async function busy_ms(session) {
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * metrics.find(({ name }) => name === 'TaskDuration').value;
}

async function keepApp(open) {
  const page = await open('/', false);
  await page.locator('[data-offline="kept"]').first().waitFor({ state: 'attached' });
  await page.close();
}

/** Start and card without a network: a new tab each time, the card's part fetched in the quiet after the start. */
async function measureStarts(open, count, slow = true) {
  const starts = [];
  const cards = [];
  for (let i = 0; i < count; i += 1) {
    const page = await open('/', slow);
    const start_ms = await page.evaluate(() => window.firstPaint);
    starts.push({ wall_ms: start_ms, busy_ms: await page.busy_ms() });
    await page.waitForTimeout(5000);
    const before_ms = await page.busy_ms();
    await page.locator('.main-action:visible').first().click();
    const card_ms = await page.evaluate(() => window.cardPaint);
    cards.push({ wall_ms: card_ms, busy_ms: (await page.busy_ms()) - before_ms });
    await page.close();
  }
  return { starts, cards };
}

function line(name, times, goal_s) {
  const sorted = times.map(({ wall_ms }) => wall_ms).toSorted((a, b) => a - b);
  const wall_ms = median(sorted);
  const seconds = (ms) => (ms / 1000).toFixed(2);
  const busy = seconds(median(times.map(({ busy_ms }) => busy_ms)));
  const verdict = wall_ms <= goal_s * 1000 ? 'met' : 'MISSED';
  console.log(`${name}
  ${seconds(wall_ms)} s (${seconds(sorted[0])} to ${seconds(sorted.at(-1))}, ${sorted.length} rounds), of which ${busy} s processor time
  goal: at most ${goal_s} s: ${verdict}
`);
}

function median(numbers) {
  const sorted = numbers.toSorted((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)];
}

function listChunks() {
  const folder = at('web/dist/assets');
  const scripts = readdirSync(folder).filter((name) => name.endsWith('.js'));
  const sizes = scripts.map((name) => [name, gzipSync(readFileSync(join(folder, name))).length]);
  console.log('JavaScript of the build, gzip:');
  for (const [name, bytes] of sizes.sort((a, b) => b[1] - a[1]).filter(([, bytes]) => bytes >= 1000))
    console.log(`  ${(bytes / 1000).toFixed(1).padStart(7)} kB  ${name}`);
  console.log('');
}

listChunks();
console.log(`Network cut, medians; the browser slowed down ${slowDown} times where nothing else is said.\n`);

await withDevice(async ({ server, open }) => {
  await keepApp(open);
  await server.close();
  const { starts, cards } = await measureStarts(open, rounds);
  line('First useful paint, demo plant of 60 positions', starts, 1);
  line('Card after the tap', cards, 0.5);
});

await withDevice(async ({ server, open }) => {
  const filling = await open('/fill/index.html', false);
  await filling.waitForFunction(() => 'fill' in window);
  const began = Date.now();
  const size = await filling.evaluate((asked) => window.fill(asked, () => {}), big);
  console.log(`${size} signed events written in ${((Date.now() - began) / 1000).toFixed(0)} s.\n`);
  await filling.close();
  await keepApp(open);
  await server.close();
  const plant = `${big.lines * big.positionsPerLine} positions, ${size} events`;
  const asItIs = await measureStarts(open, Math.min(rounds, 5), false);
  line(`Start from the snapshot, ${plant}, not slowed down`, asItIs.starts, 2);
  const { starts, cards } = await measureStarts(open, Math.min(rounds, 5));
  line(`Start from the snapshot, ${plant}`, starts, 2);
  line('Card after the tap, same plant', cards, 0.5);
});
