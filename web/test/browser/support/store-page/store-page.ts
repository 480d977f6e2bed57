import { fold } from '@loopwright/records';
import { canonicalText } from '@loopwright/records/log';
import { openDatabase } from '../../../../src/store/database.ts';
import { eventOf } from '../../../../src/store/event-row.ts';
import { openStore, type StoreOptions } from '../../../../src/store/open-store.ts';
import type { Change, PlantStore } from '../../../../src/store/plant-store.ts';
import { StoreError } from '../../../../src/store/store-error.ts';

/** What the tests reach from outside of the page. */
export interface StorePage {
  readonly openStore: typeof openStore;
  readonly openPlainDatabase: (name?: string) => ReturnType<typeof openDatabase>;
  readonly roll: typeof roll;
  readonly faultOf: (work: () => Promise<unknown>) => Promise<string>;
  readonly foldsAlike: (store: PlantStore) => Promise<boolean>;
  readonly randomBlob: (bytes: number, type?: string) => Blob;
}

/** A change that defines a roll of belt; `lot` says to which batch it belongs. */
export function roll(id: string, left_m: number, lot = 'one'): Change {
  const thing = { id, source: 'person', belt: 'belt', width_m: 0.03, left_m, sealed: false, lot };
  return { type: 'roll.defined', body: { schema: 1, thing } };
}

/** Bytes that cannot be packed. */
export function randomBlob(bytes: number, type = 'image/jpeg'): Blob {
  const pieces = Array.from({ length: Math.ceil(bytes / 65_536) }, (_, i) =>
    crypto.getRandomValues(new Uint8Array(Math.min(65_536, bytes - i * 65_536))),
  );
  return new Blob(pieces, { type });
}

/** The code with which something is refused; `none` when it is not. */
async function faultOf(work: () => Promise<unknown>): Promise<string> {
  try {
    await work();
    return 'none';
  } catch (cause) {
    return cause instanceof StoreError ? cause.code : `no StoreError: ${String(cause)}`;
  }
}

async function openPlainDatabase(name = 'loopwright') {
  return openDatabase(name, { onBlocked: () => undefined, onLost: () => undefined });
}

/** Whether the state kept is the one that all events of the log fold to, read past the store. */
async function foldsAlike(store: PlantStore): Promise<boolean> {
  const db = await openPlainDatabase();
  const rows = (await db.getAllFromIndex('events', 'by-place')).map(eventOf);
  db.close();
  const { plant } = store.current();
  const { id: _, ...folded } = fold(rows.filter((row) => row.plant === rows.at(-1)?.plant));
  const { id: __, ...kept } = plant;
  return canonicalText(JSON.parse(JSON.stringify(folded))) === canonicalText(JSON.parse(JSON.stringify(kept)));
}

interface Rolled {
  readonly thing: { readonly lot: string };
}

/** What a restarted page found, told to the server of the test. */
export interface Found {
  readonly ids: readonly string[];
  readonly lots: readonly string[];
  readonly verdict: string;
  readonly foldsAlike: boolean;
  readonly strayBlobs: number;
  readonly brokenBlobs: number;
  readonly start_ms: number;
  /** What the browser says of a database that it threw away because it was damaged. */
  readonly dataLoss: string;
}

// Chromium tells a page this much, and only at the moment when the page makes its database anew.
let dataLoss = 'nothing';
const openPlain = indexedDB.open.bind(indexedDB);
indexedDB.open = (...asked: Parameters<typeof openPlain>) => {
  const request = openPlain(...asked);
  request.addEventListener('upgradeneeded', (event) => {
    const { oldVersion } = event;
    const said = event as unknown as { dataLoss?: string; dataLossMessage?: string };
    dataLoss = `made anew from version ${oldVersion}, data loss ${said.dataLoss} ${said.dataLossMessage}`;
  });
  return request;
};

async function found(store: PlantStore, start_ms: number): Promise<Found> {
  const db = await openPlainDatabase();
  const rows = await db.getAll('events');
  const blobs = await db.getAllKeys('blobs');
  db.close();
  const events = rows.map(eventOf);
  const named = new Set(events.flatMap((event) => event.blobs.map((blob) => blob.sha256)));
  const { broken, brokenBlobs } = await store.verify();
  return {
    ids: rows.map((row) => row.id),
    lots: events.flatMap(({ type, body }) => (type === 'roll.defined' ? [(body as Rolled).thing.lot] : [])),
    verdict: broken?.verdict ?? 'ok',
    foldsAlike: await foldsAlike(store),
    strayBlobs: blobs.filter((name) => !named.has(name)).length,
    brokenBlobs: brokenBlobs.length,
    start_ms,
    dataLoss,
  };
}

async function tell(path: string, body: unknown): Promise<void> {
  const text = body instanceof Blob ? body : JSON.stringify(body);
  await fetch(path, { method: 'POST', body: text });
}

/** Appends batches of one to five events, every seventh with a picture, until the browser is killed. */
async function appendForEver(store: PlantStore, run: string): Promise<void> {
  for (let batch = 0; ; batch++) {
    const count = 1 + ((crypto.getRandomValues(new Uint8Array(1))[0] ?? 0) % 5);
    const changes = Array.from({ length: count }, (_, i) => ({
      ...roll(`roll-${batch % 40}-${i}`, batch + i, `${run}.${batch} of ${count}`),
      blobs: batch % 7 === 3 && i === 0 ? [randomBlob(20_000)] : [],
    }));
    const before = performance.now();
    const { events } = await store.append(changes);
    const ms = performance.now() - before;
    void tell('/acknowledged', { ids: events.map((event) => event.id), ms, run });
  }
}

async function runUntilKilled(run: string): Promise<void> {
  const before = performance.now();
  const store = await openStore(options);
  await tell('/found', await found(store, performance.now() - before));
  await appendForEver(store, run);
}

async function exportAndEnd(): Promise<void> {
  const store = await openStore(options);
  await tell('/found', await found(store, 0));
  await tell('/export', await store.exportAll());
}

// The space set aside is not what is tried here, and writing 20 MB at each start would take its time.
const options: StoreOptions = { reserve_bytes: 0 };
const asked = new URLSearchParams(location.search);
const run = asked.get('run');
if (run !== null) void runUntilKilled(run).catch((problem: unknown) => tell('/problem', String(problem)));
if (asked.has('export')) void exportAndEnd().catch((problem: unknown) => tell('/problem', String(problem)));

const page: StorePage = { openStore, openPlainDatabase, roll, faultOf, foldsAlike, randomBlob };
Object.assign(window, { page });
