import { BrowserStore, newPlantId } from './browser-store.ts';
import { type Clocks, ownClocks } from './clock-watch.ts';
import { openDatabase } from './database.ts';
import { deviceCrypto } from './device-key.ts';
import type { PlantStore } from './plant-store.ts';
import { reserve_bytes } from './reserve.ts';
import { bringUpToDate, putBackIfEmpty } from './second-copy/keep-copy.ts';
import { SecondCopy } from './second-copy/second-copy.ts';
import { storageState } from './storage-state.ts';
import { StoreCore } from './store-core.ts';

/** What tests turn; the app takes the defaults. */
export interface StoreOptions {
  readonly name?: string;
  readonly clocks?: Clocks;
  readonly reserve_bytes?: number;
  /** When the space is set aside, so that it does not hold up the start [ms]. */
  readonly reserveAfter_ms?: number;
  /** An older version in another tab keeps the store from opening: say so. */
  readonly onBlocked?: () => void;
}

const minute_ms = 60_000;
/** When nobody waits for the start any more [ms]. */
const settled_ms = 3000;
/** Events after the state kept last that are worth keeping it anew, so that the next start need not fold them again. */
const longTail = 32;

/**
 * Opens the store of this device.
 *
 * @throws StoreError `no-storage`, `newer`
 */
export async function openStore(options: StoreOptions = {}): Promise<PlantStore> {
  const { name = 'loopwright', clocks = ownClocks(), reserveAfter_ms = 15_000, onBlocked = () => undefined } = options;
  let core: StoreCore | undefined;
  const db = await openDatabase(name, { onBlocked, onLost: (why) => core?.close(why) });
  const [device, storage] = await Promise.all([deviceCrypto(db), storageState()]);
  const size_bytes = options.reserve_bytes ?? reserve_bytes;
  const copy = new SecondCopy(name);
  core = new StoreCore({ db, device, copy, clocks, reserve_bytes: size_bytes, draftPlant: newPlantId() });
  await Promise.all([core.reload(), core.reserve.look()]);
  const backAgain = await putBackIfEmpty(core);
  void core.freshJournal();
  const store = new BrowserStore(core, storage, backAgain);
  if (storage.persisted === false && !storage.asksPerson) void store.askToPersist();
  watch(core, store, reserveAfter_ms);
  return store;
}

/** The looks at clock and disk that go on while the page is open. */
function watch(core: StoreCore, store: BrowserStore, reserveAfter_ms: number): void {
  const look = () => {
    if (core.closed !== undefined) return clearInterval(timer);
    try {
      core.lookAtClock();
    } catch {
      // A clock that shows no date is said when something is to be written.
    }
    return void store.lookAtStorage().catch(() => undefined);
  };
  const timer = setInterval(look, minute_ms);
  setTimeout(() => void core.keepSnapshot(longTail).catch(() => undefined), settled_ms);
  setTimeout(() => {
    void store.lookAtStorage({ withReserve: true }).catch(() => undefined);
    void bringUpToDate(core).catch(() => undefined);
  }, reserveAfter_ms);
  // A page that was frozen looks at once when it is seen again.
  addEventListener('pageshow', look);
  document.addEventListener('visibilitychange', look);
}
