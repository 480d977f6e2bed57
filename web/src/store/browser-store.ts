import { emptyPlant } from '@loopwright/plant';
import { definitions, fold } from '@loopwright/records';
import { emptyLog } from '@loopwright/records/log';
import type { Following } from '../page/following.ts';
import { prepared } from './batch.ts';
import { momentOf } from './clock-watch.ts';
import { seeded } from './device-events.ts';
import { keptLogs } from './kept-logs.ts';
import { isUntouched, keptPlants } from './kept-plants.ts';
import { writeWitness } from './kept-witness.ts';
import { lossOf } from './loss-of.ts';
import { plantDifferences } from './plant-differences.ts';
import type {
  Change,
  DeviceClock,
  HistoryEntry,
  HistoryKind,
  ImportPreview,
  KeptLog,
  KeptPlant,
  PlacedRunEvent,
  PlantStore,
  Saved,
  SeedOrigin,
  ServerOffer,
  StoreState,
  Verification,
} from './plant-store.ts';
import { eventsOfRun, runsOf } from './run-events.ts';
import { seenLog } from './seen-log.ts';
import { nothingFolded } from './snapshot.ts';
import { askToPersist, installation, storageState } from './storage-state.ts';
import type { StoreCore } from './store-core.ts';
import { StoreError } from './store-error.ts';
import { correctionFor, type HistoryScope, historyOf } from './thing-history.ts';
import type { WitnessDesk } from './witness/witness-desk.ts';

/** What the store knows of its storage, rather than the browser. */
type ToldByStore = 'reserve' | 'secondCopy';

const nothingSaved = (size: number): Saved => ({ events: [], size });

/** The store of this device in the browser. */
export class BrowserStore implements PlantStore {
  readonly #core: StoreCore;
  readonly #listeners = new Set<() => void>();
  #storage: Omit<StoreState['storage'], ToldByStore>;
  #offered:
    | { readonly changes: readonly Change[]; readonly origin: SeedOrigin; readonly offer: ServerOffer }
    | undefined;
  #lost: StoreState['lost'];
  #state: StoreState;

  constructor(core: StoreCore, storage: Omit<StoreState['storage'], ToldByStore>, backAgain: number) {
    this.#core = core;
    this.#storage = storage;
    this.#lost = lossOf(core, backAgain);
    this.#state = this.#stateNow();
    core.onChange = () => this.#publish();
  }

  current(): StoreState {
    return this.#state;
  }

  subscribe(onChange: () => void): () => void {
    this.#listeners.add(onChange);
    return () => this.#listeners.delete(onChange);
  }

  async append(changes: readonly Change[], following?: Following): Promise<Saved> {
    const ready = await prepared(changes);
    if (ready.length === 0) return nothingSaved(this.#state.size);
    const core = this.#core;
    const saved = await core.task(() => core.append(core.withClock(ready), following));
    void core.keepSnapshot().catch(() => undefined);
    return saved;
  }

  async history(kind: HistoryKind, id: string): Promise<readonly HistoryEntry[]> {
    return historyOf(this.#scope(), kind, id);
  }

  async undo(eventIds: readonly string[], following?: Following): Promise<Saved> {
    const scope = this.#scope();
    return this.append(await Promise.all(eventIds.map((eventId) => correctionFor(scope, eventId))), following);
  }

  async blob(sha256: string): Promise<Blob | undefined> {
    return (await this.#core.parts.db.get('blobs', sha256))?.bytes;
  }

  clock(): DeviceClock {
    const { parts, boot } = this.#core;
    return { ...momentOf(parts.clocks), boot };
  }

  async runs(): Promise<readonly string[]> {
    return runsOf(this.#core.parts.db, this.#core.memory.shown);
  }

  async runEvents(run: string): Promise<readonly PlacedRunEvent[]> {
    return eventsOfRun(this.#core.parts.db, this.#core.memory.shown, run);
  }

  async logs(): Promise<readonly KeptLog[]> {
    return keptLogs(this.#core);
  }

  async chooseBadge(id: string | undefined): Promise<void> {
    const core = this.#core;
    await core.task(async () => {
      await core.commit((tx) => {
        const meta = tx.objectStore('meta');
        return [id === undefined ? meta.delete('badge') : meta.put(id, 'badge')];
      });
      core.memory = { ...core.memory, badgeId: id };
    });
  }

  async startPlant(name: string): Promise<Saved> {
    const id = newPlantId();
    const changes = await prepared(definitions([{ kind: 'plant', thing: { id, name } }]));
    const core = this.#core;
    const saved = await core.task(async () => {
      const from = nothingFolded(emptyLog(id, core.parts.device.key.publicKey));
      return core.writeNewPlant(await core.batch(from, core.withClock(changes)));
    });
    this.#offered = undefined;
    return saved;
  }

  async plants(): Promise<readonly KeptPlant[]> {
    return keptPlants(this.#core);
  }

  async showPlant(id: string): Promise<void> {
    const core = this.#core;
    const plants = await this.plants();
    if (!plants.some((plant) => plant.id === id)) throw new StoreError('no-such-plant');
    await core.task(async () => {
      await core.commit((tx) => [tx.objectStore('meta').put(id, 'shown')]);
      await core.reload();
    });
  }

  async seedFrom(changes: readonly Change[], origin: SeedOrigin): Promise<Saved> {
    const core = this.#core;
    const ready = await prepared(changes);
    return core.task(async () => {
      const { folded } = await core.load(origin.plant);
      const news = { ...seeded(origin, ready.length), references: [], blobs: [] };
      return core.writeNewPlant(await core.batch(folded, core.withClock([news, ...ready])));
    });
  }

  async meetServer(changes: readonly Change[], origin: SeedOrigin): Promise<void> {
    const core = this.#core;
    await core.refresh();
    const [isFirst, isOther] = [
      this.#state.empty && (await this.plants()).length === 0,
      origin.plant !== core.memory.shown,
    ];
    const here = isOther ? emptyPlant(origin.plant, '') : core.folded.plant;
    const wanted = fold(changes, emptyPlant(origin.plant, ''));
    const news = plantDifferences(here, wanted);
    const offer = { plant: origin.plant, name: wanted.name, isOther, changes: news.length };
    this.#offered = news.length === 0 ? undefined : { changes, origin, offer };
    if (news.length > 0 && (isFirst || isUntouched(core.folded))) await this.takeOffer();
    else this.#publish();
  }

  async takeOffer(): Promise<Saved> {
    const offered = this.#offered;
    if (offered === undefined) return nothingSaved(this.#state.size);
    const { plant } = offered.origin;
    const { folded } = await this.#core.load(plant);
    const news = plantDifferences(folded.plant, fold(offered.changes, emptyPlant(plant, '')));
    const saved = await this.#takeDifferences(news, offered.origin);
    this.#offered = undefined;
    this.#publish();
    return saved;
  }

  async exportAll(): Promise<Blob> {
    const { exportPlant } = await import('./export-plant.ts');
    await this.#core.refresh();
    return exportPlant(this.#core);
  }

  async previewImport(file: Blob): Promise<ImportPreview> {
    const { previewImport } = await import('./import-preview.ts');
    return previewImport(this.#core, file);
  }

  async takeImport(preview: ImportPreview): Promise<Saved> {
    const { takeImport } = await import('./take-import.ts');
    return takeImport(this.#core, preview);
  }

  async verify(onProgress?: (done: number, of: number) => void): Promise<Verification> {
    const { verifyPlant } = await import('./verify-plant.ts');
    const found = await verifyPlant(this.#core, onProgress);
    const { broken } = found;
    // A damaged word of a witness is said; it is no reason to stop writing, for the chain itself holds.
    if (broken !== undefined && broken.verdict !== 'bad-witness') this.#core.memory = { ...this.#core.memory, broken };
    this.#publish();
    return found;
  }

  readonly personDesk = async () => (await import('./persons/person-desk.ts')).personDesk(this.#core, this);

  async witnessDesk(): Promise<WitnessDesk> {
    return (await import('./witness/witness-desk.ts')).witnessDesk(this.#core);
  }

  forgetLoss(): void {
    this.#lost = undefined;
    this.#publish();
  }

  async askToPersist(): Promise<boolean> {
    const granted = await askToPersist();
    await this.lookAtStorage();
    return granted;
  }

  close(): void {
    this.#core.close('closed');
  }

  /** Asks the browser how much is kept, and sets space aside for a job that must end. */
  async lookAtStorage({ withReserve = false } = {}): Promise<void> {
    this.#storage = await storageState();
    if (withReserve && this.#core.closed === undefined) await this.#makeReserve();
    this.#publish();
  }

  async #makeReserve(): Promise<void> {
    await this.#core.freshJournal();
    await this.#core.reserve.make(this.#storage);
  }

  async #takeDifferences(news: readonly Change[], origin: SeedOrigin): Promise<Saved> {
    if (news.length > 0) return this.seedFrom(news, origin);
    await this.showPlant(origin.plant);
    return nothingSaved(this.#state.size);
  }

  #scope(): HistoryScope {
    const { parts, folded, memory } = this.#core;
    return { db: parts.db, plantId: memory.shown, device: folded.own.device, plant: folded.plant };
  }

  #publish(): void {
    const { folded, parts } = this.#core;
    // While a loss is still to be said, what is new must not cover it: a reload says it again.
    if (folded.size > 0 && this.#lost === undefined)
      writeWitness(parts.db.name, { name: folded.plant.name, size: folded.size });
    this.#state = this.#stateNow();
    for (const listener of this.#listeners) listener();
  }

  #stateNow(): StoreState {
    const { folded, memory, parts, closed, waiting, jumped_s, reserve } = this.#core;
    const { plant, own, size, demo, unknown } = folded;
    const { badgeId, broken } = memory;
    const { copyable } = parts.device.key;
    return {
      plant,
      badge: badgeId === undefined ? undefined : plant.badges[badgeId],
      size,
      head: own.head,
      device: {
        id: own.device,
        keyCanBeCopied: copyable,
        installation: installation(),
        onlyHere: own.size - seenLog(memory.logs.find(({ device }) => device === own.device) ?? own).size,
        clockJumped_s: jumped_s,
      },
      storage: { ...this.#storage, reserve: reserve.state, secondCopy: parts.copy.state },
      demo,
      empty: size === 0,
      waiting,
      unknownEvents: unknown,
      broken,
      closed,
      offer: this.#offered?.offer,
      lost: this.#lost,
    };
  }
}

/** An id that no other device gives to a plant. */
export function newPlantId(): string {
  const digits = [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => byte.toString(16).padStart(2, '0'));
  return `plant-${digits.join('')}`;
}
