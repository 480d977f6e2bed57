import { appendFile, cp, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { nobleVerifier, verifyExport } from '@loopwright/records/log';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { seeded } from '../../../records/test/verifier/seeded.ts';
import { startBareBrowser } from './support/bare-browser.ts';
import type { Found } from './support/store-page/store-page.ts';
import { type StoreServer, serveStorePage } from './support/store-server.ts';

const kills = Number(process.env['LW_KILLS'] ?? 40);
const seed = Number(process.env['LW_KILL_SEED'] ?? 42);
/** A profile is used for so many kills, then a new one starts, so that starting stays quick. */
const killsPerProfile = 20;
/** Most kills come soon after the first append, some later, when the folded state has been kept anew. */
const latest_ms = 400;
const silence_ms = 60_000;
/** Where a profile is kept with which something went wrong. */
const lostProfile = join(import.meta.dirname, '../../../.cache/lost-profile');

let server: StoreServer;
/** What the browser said, kept here, outside of every process that is killed. */
let acknowledged: string[] = [];
let appends_ms: number[] = [];
let told: (path: string, body: Buffer) => void = () => undefined;

beforeAll(async () => {
  server = await serveStorePage((path, body) => told(path, body));
});
afterAll(() => server.close());

interface Heard {
  readonly found: Found;
  readonly export: Buffer | undefined;
}

/** Opens the page, lets it work until `until` ms after its first word of an append, and kills the browser. */
async function live(profile: string, question: string, until_ms: number | undefined): Promise<Heard> {
  let found: Found | undefined;
  let exported: Buffer | undefined;
  const done = new Promise<void>((resolve, reject) => {
    const tooLong = setTimeout(() => reject(new Error(`the page said nothing for ${silence_ms} ms`)), silence_ms);
    const end = (after_ms: number) => {
      clearTimeout(tooLong);
      setTimeout(resolve, after_ms);
    };
    told = (path, body) => {
      if (path === '/problem') return reject(new Error(body.toString()));
      if (path === '/found') found = JSON.parse(body.toString());
      if (path === '/export') {
        exported = body;
        end(0);
      }
      if (path === '/acknowledged') {
        const { ids, ms, run } = JSON.parse(body.toString()) as { ids: string[]; ms: number; run: string };
        acknowledged.push(...ids);
        appends_ms.push(ms);
        // A last word of the browser killed before may still be on its way.
        if (until_ms !== undefined && question === `run=${run}`) end(until_ms);
      }
    };
  });
  const browser = await startBareBrowser(profile, `${server.address}/?${question}`);
  try {
    await done;
  } finally {
    await browser.kill();
  }
  if (found === undefined) throw new Error('the page never told what it found');
  return { found, export: exported };
}

/** Every acknowledged event, whole batches only, one chain, pictures and state as the log says. */
function judge(found: Found, sure: readonly string[], round: string): void {
  const present = new Set(found.ids);
  const lost = sure.filter((id) => !present.has(id));
  const count = `${lost.length} of ${sure.length} acknowledged events are gone, ${found.ids.length} are there`;
  expect(lost.length, `${round}: ${count}; the browser said: ${found.dataLoss}`).toBe(0);
  const { verdict, foldsAlike, strayBlobs, brokenBlobs } = found;
  expect({ verdict, foldsAlike, strayBlobs, brokenBlobs }, round).toEqual({
    verdict: 'ok',
    foldsAlike: true,
    strayBlobs: 0,
    brokenBlobs: 0,
  });
  const members = new Map<string, number>();
  for (const lot of found.lots) members.set(lot, (members.get(lot) ?? 0) + 1);
  const torn = [...members].filter(([lot, count]) => count !== Number(lot.split(' of ')[1]));
  expect(torn, `${round}: half-written appends`).toEqual([]);
}

/** The export of a profile, checked here in Node by another implementation of the signature. */
async function judgeExport(archive: Buffer, found: Found): Promise<void> {
  const log = unzipSync(archive)['log.jsonl'] ?? new Uint8Array();
  const ids: string[] = [];
  const { failure } = await verifyExport(log, { verify: nobleVerifier(), onEvent: (_event, id) => ids.push(id) });
  expect(failure).toBeUndefined();
  expect(ids.toSorted()).toEqual(found.ids.toSorted());
}

test(
  `[STORE-02] the browser killed ${kills} times while it writes: nothing acknowledged is lost, nothing half-written is left`,
  async () => {
    const chance = seeded(seed);
    const next = () => chance.below(2 ** 32) / 2 ** 32;
    let [killed, sure, unsaid] = [0, 0, 0];
    while (killed < kills) {
      const profile = await mkdtemp(join(tmpdir(), 'store-kills-'));
      acknowledged = [];
      try {
        for (let i = 0; i < killsPerProfile && killed < kills; i++, killed++) {
          const before = [...acknowledged];
          const { found } = await live(profile, `run=${killed}`, Math.floor(next() ** 2 * latest_ms));
          judge(found, before, `start ${killed}`);
        }
        const last = await live(profile, 'export', undefined);
        judge(last.found, acknowledged, `last start after ${killed} kills`);
        await judgeExport(last.export ?? Buffer.alloc(0), last.found);
        sure += acknowledged.length;
        unsaid += last.found.ids.length - acknowledged.length;
      } catch (problem) {
        await cp(profile, lostProfile, { recursive: true });
        throw problem;
      } finally {
        await rm(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
      }
    }
    expect(sure).toBeGreaterThan(kills);
    const median_ms = appends_ms.toSorted((a, b) => a - b)[Math.floor(appends_ms.length / 2)] ?? 0;
    console.log(
      `Browser kills: ${killed} (seed ${seed}), ${sure} events acknowledged, 0 lost, ` +
        `${unsaid} more were whole but not yet said; an append took ${median_ms.toFixed(1)} ms (median of ${appends_ms.length}).`,
    );
    appends_ms = [];
  },
  120_000 + kills * 15_000,
);

/** The head of a record of the browser's journal: checksum, length 100, whole; what should follow was never written. */
const tornRecord = Buffer.from([1, 2, 3, 4, 100, 0, 1]);

/** Ends the browser's journal as a kill between two of its writes does. */
async function tearJournal(profile: string): Promise<number> {
  const folder = join(profile, 'Default/IndexedDB');
  const databases = (await readdir(folder)).filter((name) => name.endsWith('.leveldb'));
  const files = await Promise.all(
    databases.map(async (name) =>
      readdir(join(folder, name)).then((all) => all.map((file) => join(folder, name, file))),
    ),
  );
  const journals = files.flat().filter((file) => file.endsWith('.log'));
  for (const file of journals) await appendFile(file, tornRecord);
  return journals.length;
}

test('[STORE-18] a torn end of the browser’s own journal costs nothing, at the next start and at those after it', async () => {
  const profile = await mkdtemp(join(tmpdir(), 'store-torn-'));
  acknowledged = [];
  try {
    for (let start = 0; start < 4; start++) {
      const before = [...acknowledged];
      const { found } = await live(profile, `run=torn-${start}`, 100);
      judge(found, before, `start ${start}`);
      if (start > 0) expect(before.length).toBeGreaterThan(start);
      expect(await tearJournal(profile)).toBeGreaterThan(0);
    }
  } finally {
    await rm(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
  }
});
