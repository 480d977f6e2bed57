import { type Checkpoint, deviceOf, emptyLog } from '@loopwright/records/log';
import { nobody } from '@loopwright/records/run';
import { type Following, partOf } from '../page/following.ts';
import { addRows } from './add-rows.ts';
import { type Batch, makeBatch, type PreparedChange, type Writer } from './batch.ts';
import { type Clocks, clockJump, type Moment, momentOf } from './clock-watch.ts';
import type { Database, EventRow, LogRow, Writing } from './database.ts';
import { clockJumped } from './device-events.ts';
import type { DeviceCrypto } from './device-key.ts';
import { beginFreshJournal } from './fresh-journal.ts';
import { type Loaded, loadPlant } from './load-plant.ts';
import type { Change, Saved, StoreState } from './plant-store.ts';
import { Reserve } from './reserve.ts';
import type { SecondCopy } from './second-copy/second-copy.ts';
import { type Folded, nothingFolded, snapshotOf } from './snapshot.ts';
import { StoreError } from './store-error.ts';
import { storeErrorOf, strictWrite } from './strict-write.ts';
import { withWriterLock } from './writer-lock.ts';

/** Events after which the folded state is kept anew. */
export const snapshotEvery = 256;

/** Of all the work of an append, what is done when every event is signed. */
const signing = 0.15;

/** Tries after another tab wrote in between. */
const mostTries = 20;

type PlantStores = 'events' | 'blobs' | 'logs' | 'snapshots' | 'meta';
const plantStores: PlantStores[] = ['events', 'blobs', 'logs', 'snapshots', 'meta'];
export type PlantWriting = Writing<PlantStores>;

/** What a store is made of. */
export interface CoreParts {
  readonly db: Database;
  readonly device: DeviceCrypto;
  readonly copy: SecondCopy;
  readonly clocks: Clocks;
  readonly reserve_bytes: number;
  readonly draftPlant: string;
}

interface WriteOptions {
  /** Whether the folded state is kept too. */
  readonly snapshot?: boolean;
  readonly following?: Following;
}

/** A plant as it stands in memory, and what else a page knows. */
export interface Memory extends Loaded {
  readonly shown: string;
  readonly badgeId: string | undefined;
}

/**
 * The part of the store that writes. Everything goes through one row of tasks; each looks first whether another tab
 * wrote, and its transaction refuses to complete when one did so meanwhile.
 */
export class StoreCore {
  readonly parts: CoreParts;
  readonly reserve: Reserve;
  readonly boot: string = crypto.getRandomValues(new Uint32Array(4)).join('-');
  memory: Memory;
  closed: StoreState['closed'];
  waiting = 0;
  jumped_s: number | undefined;
  onChange: () => void = () => undefined;
  #revision = -1;
  #tasks: Promise<unknown> = Promise.resolve();
  #fresh: Promise<void> | undefined;
  #lastLook: Moment | undefined;
  #jumps: readonly Change[] = [];
  readonly #others: BroadcastChannel | undefined;

  constructor(parts: CoreParts) {
    this.parts = parts;
    this.reserve = new Reserve(parts.db, parts.reserve_bytes);
    this.memory = this.#nothing(parts.draftPlant);
    if (typeof BroadcastChannel === 'undefined') return;
    this.#others = new BroadcastChannel(parts.db.name);
    this.#others.onmessage = () => void this.refresh();
  }

  get folded(): Folded {
    return this.memory.folded;
  }

  /** Catches up with what other tabs wrote. */
  async refresh(): Promise<void> {
    await this.#inRow(() => this.#catchUp()).catch(() => undefined);
  }

  /** Makes ready for the first write; done once, early, so that nobody waits for it. */
  async freshJournal(): Promise<void> {
    this.#fresh ??= beginFreshJournal(`${this.parts.db.name}-scratch`);
    return this.#fresh;
  }

  /** Does one writing task when its turn comes. `work` may be done again from a newer state. */
  async task<T>(work: () => Promise<T>): Promise<T> {
    this.waiting += 1;
    this.onChange();
    try {
      return await this.#inRow(() => withWriterLock(this.parts.db.name, () => this.#tried(work)));
    } finally {
      this.waiting -= 1;
      this.onChange();
    }
  }

  /** A transaction on the state as it is in memory; all of it or nothing. */
  async commit(fill: (tx: PlantWriting) => readonly Promise<unknown>[]): Promise<void> {
    const expected = this.#revision;
    await strictWrite(this.parts.db, plantStores, async (tx) => {
      const meta = tx.objectStore('meta');
      if (((await meta.get('revision')) ?? 0) !== expected) throw new StoreError('busy');
      await Promise.all([meta.put(expected + 1, 'revision'), ...fill(tx)]);
    });
    this.#revision = expected + 1;
    this.#others?.postMessage('changed');
  }

  /** Signed events of changes after a state, none of them written yet. */
  async batch(from: Folded, changes: readonly PreparedChange[]): Promise<Batch> {
    return makeBatch(from, changes, this.#writer(from));
  }

  /** Changes as this device writes them now: what it noticed of its clock comes first. */
  withClock(changes: readonly PreparedChange[]): readonly PreparedChange[] {
    this.lookAtClock();
    return [...this.#jumps.map((change) => ({ ...change, references: [], blobs: [] })), ...changes];
  }

  /** Signs changes, writes them and shows the state after them. */
  async append(changes: readonly PreparedChange[], following: Following = {}): Promise<Saved> {
    const batch = await makeBatch(this.folded, changes, this.#writer(this.folded), partOf(following, 0, signing));
    return this.write(batch, { following: partOf(following, signing, 1) });
  }

  /** Writes a batch and shows the state after it. */
  async write(batch: Batch, { snapshot = false, following = {} }: WriteOptions = {}): Promise<Saved> {
    const { rows, blobs, folded, checkpoint } = batch;
    const { own } = folded;
    const log = this.ownLog(own.plant, checkpoint);
    await this.commit((tx) => [
      ...addRows(tx.objectStore('events'), rows, following),
      ...blobs.map((blob) => tx.objectStore('blobs').put(blob)),
      tx.objectStore('logs').put(log),
      tx.objectStore('meta').put(own.plant, 'shown'),
      ...(snapshot ? [tx.objectStore('snapshots').put(snapshotOf(folded))] : []),
    ]);
    await this.parts.copy.add({ rows, blobs, logs: [log] });
    const { memory } = this;
    const others = memory.logs.filter((each) => each.device !== own.device);
    const snapshotSize = snapshot ? own.size : memory.snapshotSize;
    this.#jumps = [];
    this.memory = { ...memory, shown: own.plant, folded, snapshotSize, logs: [log, ...others] };
    this.onChange();
    return { events: batch.rows.map(savedEvent), size: folded.size };
  }

  /** This device's log in a plant, with what others said of it so far. */
  ownLog(plant: string, checkpoint: Checkpoint, known: readonly LogRow[] = this.memory.logs): LogRow {
    const { publicKey } = this.parts.device.key;
    const device = deviceOf(publicKey);
    const witnesses = known.find((log) => log.plant === plant && log.device === device)?.witnesses;
    return { plant, device, publicKey, checkpoint, ...(witnesses === undefined ? {} : { witnesses }) };
  }

  /** Writes the first events of a plant, or many at once, and shows that plant. */
  async writeNewPlant(batch: Batch): Promise<Saved> {
    const saved = await this.write(batch, { snapshot: true });
    // The logs of other devices in that plant, if it was here before.
    await this.reload();
    return saved;
  }

  /** Keeps the folded state when many events, or as many as said, came since it was kept last. */
  async keepSnapshot(least = snapshotEvery): Promise<void> {
    const { folded, snapshotSize, broken } = this.memory;
    if (broken !== undefined || folded.own.size - snapshotSize < least) return;
    await this.task(async () => {
      const now = this.folded;
      await this.commit((tx) => [tx.objectStore('snapshots').put(snapshotOf(now))]);
      this.memory = { ...this.memory, snapshotSize: now.own.size };
    });
  }

  /** Compares the two clocks with the last look; a jump becomes an event in front of what is written next. */
  lookAtClock(): void {
    const now = momentOf(this.parts.clocks);
    const before = this.#lastLook ?? lastWritten(this.folded, now);
    this.#lastLook = now;
    const jump = clockJump(before, now);
    if (jump === undefined) return;
    this.jumped_s = jump.jump_s;
    this.#jumps = [...this.#jumps, clockJumped(jump)];
    this.onChange();
  }

  /** The state of another plant on this device. */
  async load(plant: string): Promise<Loaded> {
    return loadPlant(this.parts.db, plant, this.parts.device.key.publicKey);
  }

  /** Reads everything anew. */
  async reload(): Promise<void> {
    const { db } = this.parts;
    const tx = db.transaction('meta');
    const [revision = 0, shown, badge] = await Promise.all([
      tx.store.get('revision'),
      tx.store.get('shown'),
      tx.store.get('badge'),
    ]);
    const plant = typeof shown === 'string' ? shown : this.parts.draftPlant;
    const badgeId = typeof badge === 'string' ? badge : undefined;
    this.memory = { ...(await this.load(plant)), shown: plant, badgeId };
    this.#revision = Number(revision);
    this.onChange();
  }

  close(why: NonNullable<StoreState['closed']>): void {
    this.closed ??= why;
    this.#others?.close();
    this.parts.db.close();
    this.parts.copy.close();
    this.onChange();
  }

  #nothing(plant: string): Memory {
    const folded = nothingFolded(emptyLog(plant, this.parts.device.key.publicKey));
    return { folded, snapshotSize: 0, logs: [], broken: undefined, shown: plant, badgeId: undefined };
  }

  /** A badge chosen in another plant, or taken away since, signs nothing: what is written is what the screen shows. */
  #writer({ plant }: Folded): Writer {
    const { badgeId = nobody } = this.memory;
    const by = Object.hasOwn(plant.badges, badgeId) ? badgeId : nobody;
    return { key: this.parts.device.key, boot: this.boot, by, moment: momentOf(this.parts.clocks) };
  }

  #inRow<T>(work: () => Promise<T>): Promise<T> {
    const turn = this.#tasks.then(work);
    this.#tasks = turn.catch(() => undefined);
    return turn;
  }

  async #catchUp(): Promise<void> {
    if (this.closed !== undefined) throw new StoreError('closed');
    const revision = (await this.parts.db.get('meta', 'revision')) ?? 0;
    if (revision !== this.#revision) await this.reload();
  }

  async #tried<T>(work: () => Promise<T>): Promise<T> {
    for (let tries = 1; ; tries++) {
      try {
        await this.freshJournal();
        await this.#catchUp();
        if (this.memory.broken !== undefined) throw new StoreError('broken');
        return await work();
      } catch (cause) {
        const fault = storeErrorOf(cause);
        if (!(await this.#mayTryAgain(fault, tries))) throw fault;
      }
    }
  }

  /** Another tab wrote first: again from its state. The disk is full: once more with the space set aside. */
  async #mayTryAgain({ code }: StoreError, tries: number): Promise<boolean> {
    if (tries >= mostTries) return false;
    return code === 'busy' || (code === 'quota' && (await this.reserve.free()));
  }
}

function savedEvent({ id, device, seq, line }: EventRow): Saved['events'][number] {
  return { id, device, seq, type: (JSON.parse(line) as { readonly type: string }).type };
}

/**
 * Before the first look of a page only the last event can tell of a clock that was set back; time that passed since is
 * no jump.
 */
function lastWritten({ own }: Folded, now: Moment): Moment {
  const backwards = own.lastAt !== undefined && Date.parse(own.lastAt) > Date.parse(now.at);
  return backwards && own.lastAt !== undefined ? { at: own.lastAt, up_ms: now.up_ms } : now;
}
