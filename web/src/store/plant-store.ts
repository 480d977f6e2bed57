import type { Badge, Kind, Plant } from '@loopwright/plant';
import type { Checkpoint, Sighting, Verdict } from '@loopwright/records/log';
import type { LoggedAnyEvent } from '@loopwright/records/run';
import type { Following } from '../page/following.ts';
import type { PersonDesk } from './persons/person-desk.ts';
import type { WitnessDesk } from './witness/witness-desk.ts';

/** Something to write down; its type and body as `definitions` and `removal` of records make them. */
export interface Change {
  readonly type: string;
  readonly body: unknown;
  /** Pictures and curves that belong to it, kept under the hash of their bytes. */
  readonly blobs?: readonly Blob[];
}

/** What was written: it is on the device's disk, as far as a page can make sure. */
export interface Saved {
  readonly events: readonly SavedEvent[];
  /** Number of events on this device now. */
  readonly size: number;
}

export interface SavedEvent {
  readonly id: string;
  readonly device: string;
  readonly seq: number;
  readonly type: string;
}

/** Both clocks of this device at one moment, as its records carry them. */
export interface DeviceClock {
  /** Wall clock, UTC. */
  readonly at: string;
  /** Start of this page. */
  readonly boot: string;
  /** Since that start, with its sleep [ms]. */
  readonly up_ms: number;
}

/** A kind of thing that has a history: those in stock, and the plant itself. */
export type HistoryKind = Kind | 'plant';

/** One change of one thing. */
export interface HistoryEntry {
  readonly eventId: string;
  readonly type: string;
  /** Wall clock of the device that wrote it, UTC. It may have been wrong; the order of entries does not rest on it. */
  readonly at: string;
  /** Alias of the badge. */
  readonly by: string;
  /** The badge itself, where it is known. */
  readonly badge: Badge | undefined;
  readonly device: string;
  readonly ownDevice: boolean;
  /** The thing before and after; undefined where it was not there. */
  readonly before: unknown;
  readonly after: unknown;
  /** Id of the event that this one takes back. */
  readonly corrects: string | undefined;
}

/** The device as a writer of records. */
export interface DeviceState {
  /** SHA-256 of its public key. */
  readonly id: string;
  /** True where the key lies as plain bytes in the browser's storage and can be copied; the device says so. */
  readonly keyCanBeCopied: boolean;
  /**
   * `installed`: runs from the home screen. `install-first`: install before the first record. `practice-only`: a tab
   * whose records the browser deletes after a week without use.
   */
  readonly installation: 'installed' | 'install-first' | 'practice-only';
  /** Events of this device that only this device has: no other copy vouches for them. */
  readonly onlyHere: number;
  /** Set when the wall clock of this device was seen to jump since the app started [s], forward positive. */
  readonly clockJumped_s: number | undefined;
}

/** What the browser promises about keeping what is stored. Undefined where it does not say. */
export interface StorageState {
  /** False: the browser may delete everything when space is short. */
  readonly persisted: boolean | undefined;
  /** True where asking makes the browser ask the person, so that the reason must be said first. */
  readonly asksPerson: boolean;
  readonly used_bytes: number | undefined;
  readonly quota_bytes: number | undefined;
  /** At 80 % of the quota or more. */
  readonly nearlyFull: boolean;
  /** Not persisted and little room: most likely a private window, whose records end with it. */
  readonly perhapsPrivate: boolean;
  /** The space set aside so that a running job can be written to its end: `used` when it was needed. */
  readonly reserve: 'there' | 'used' | 'none';
  /** Whether all records also lie apart from the database. `none`: this browser has no place for that. */
  readonly secondCopy: 'kept' | 'behind' | 'none';
}

/** An event of a run with its place in the log of its device. */
export type PlacedRunEvent = LoggedAnyEvent & { readonly seq: number };

/** A device's log as this device holds it. */
export interface KeptLog {
  readonly device: string;
  /** Number of its events here. */
  readonly size: number;
  /** Public key of the device, in hex. */
  readonly key: string;
  /** The latest signed statement of its size that is known. */
  readonly checkpoint?: Checkpoint;
  /** What others said that they saw of it. */
  readonly sightings: readonly Sighting[];
}

/** Where the chain of records was found broken. The store then only reads and exports. */
export interface BrokenChain {
  readonly device: string;
  readonly verdict: Verdict | 'bad-witness';
  readonly at: number | undefined;
}

/** What the plant's files on the server say otherwise than this device. */
export interface ServerOffer {
  readonly plant: string;
  readonly name: string;
  /** Another plant than the one shown. */
  readonly isOther: boolean;
  /** Changes it would take to make this device's plant that of the server. */
  readonly changes: number;
}

/** Everything the screen knows of the store at one moment. Replaced whole, never changed. */
export interface StoreState {
  readonly plant: Plant;
  /** Who works now. */
  readonly badge: Badge | undefined;
  /** Number of events of this plant on this device. */
  readonly size: number;
  /** Id of the last event of this device's own log. */
  readonly head: string;
  readonly device: DeviceState;
  readonly storage: StorageState;
  /** The invented plant, to try things with. */
  readonly demo: boolean;
  /** True until the first event: nothing has been defined, not even the plant's name. */
  readonly empty: boolean;
  /** Appends that wait for the disk. Zero: everything entered is kept. */
  readonly waiting: number;
  /** Events of types or forms that this version does not know: kept, but not shown. */
  readonly unknownEvents: number;
  readonly broken: BrokenChain | undefined;
  /**
   * Set when this page cannot write. `newer`: a newer version opened in another tab, so load the page again.
   * `no-storage`: the browser forbids storage, `blocked`: an older page holds it; then the plant is only shown.
   */
  readonly closed: 'newer' | 'closed' | 'no-storage' | 'blocked' | undefined;
  readonly offer: ServerOffer | undefined;
  /** What was kept here and was gone: the browser deleted it, or it was damaged. Some of it may be `backAgain`. */
  readonly lost: { readonly name: string; readonly size: number; readonly backAgain: boolean } | undefined;
}

/** A plant kept on this device. */
export interface KeptPlant {
  readonly id: string;
  readonly name: string;
  readonly size: number;
  readonly demo: boolean;
  readonly shown: boolean;
}

/** What an export file holds and what taking it would do. Nothing has been taken yet. */
export interface ImportPreview {
  readonly plant: { readonly id: string; readonly name: string };
  /** `other`: the shown plant stays on the device and steps back. `same`: its events are added. */
  readonly relation: 'first' | 'same' | 'other';
  readonly events: number;
  readonly newEvents: number;
  /** The plant is shown, and the file brings no events, no words of witnesses and no pictures that are not here. */
  readonly nothingNew: boolean;
  readonly devices: number;
  readonly positions: number;
  readonly blobs: number;
  /** Pictures and curves that events name and the file does not hold. */
  readonly missingBlobs: number;
  /** Events of types or forms that a newer version wrote: taken and kept, not shown. */
  readonly unknownEvents: number;
  /** Events that no signed statement of their device vouches for. */
  readonly notWitnessed: number;
  /** The plant shown now, when another takes its place. */
  readonly stepsBack: { readonly id: string; readonly name: string } | undefined;
}

/** Result of checking every line of every log again. */
export interface Verification {
  readonly events: number;
  readonly devices: number;
  readonly broken: BrokenChain | undefined;
  /** Pictures and curves whose bytes are not those of their hash, or are missing. */
  readonly brokenBlobs: readonly string[];
}

/**
 * The plant of this device: a signed log from which its state is folded. Every promise that is refused carries a
 * `StoreError`; nothing has changed then.
 */
export interface PlantStore {
  /** State now; the same object until something changes. */
  current(): StoreState;
  subscribe(onChange: () => void): () => void;
  /**
   * Appends changes as signed events in one strict transaction; resolves after it completed, and only then. It can be
   * stopped until the last of them is handed to the disk, share 1; nothing has changed then.
   */
  append(changes: readonly Change[], following?: Following): Promise<Saved>;
  /** Every event about a thing, oldest first. */
  history(kind: HistoryKind, id: string): Promise<readonly HistoryEntry[]>;
  /** Appends the correcting events that put things back to what they were before the named events, all or none. */
  undo(eventIds: readonly string[], following?: Following): Promise<Saved>;
  /** The bytes kept under a hash; undefined when this device does not have them. */
  blob(sha256: string): Promise<Blob | undefined>;
  /** Both clocks now. */
  clock(): DeviceClock;
  /** Ids of the press runs in the shown plant, of all devices, the latest begun first. */
  runs(): Promise<readonly string[]>;
  /** Every event of a press run, of all devices, in the order of folding. */
  runEvents(run: string): Promise<readonly PlacedRunEvent[]>;
  /** The logs of all devices in the shown plant. */
  logs(): Promise<readonly KeptLog[]>;
  /** Who works from now on; undefined: nobody said. */
  chooseBadge(id: string | undefined): Promise<void>;
  /** Begins an empty plant of one's own and shows it. The one shown before stays on the device. */
  startPlant(name: string): Promise<Saved>;
  plants(): Promise<readonly KeptPlant[]>;
  showPlant(id: string): Promise<void>;
  /** Writes the definitions of another source as this device's events, in one transaction. */
  seedFrom(changes: readonly Change[], origin: SeedOrigin): Promise<Saved>;
  /**
   * Holds what the plant's files on the server say against this device: at the first start, and while nobody changed
   * anything here, it is taken at once; else it becomes an `offer`.
   */
  meetServer(changes: readonly Change[], origin: SeedOrigin): Promise<void>;
  /** Takes what the plant's files on the server say; does what `offer` told. */
  takeOffer(): Promise<Saved>;
  /** Everything of the shown plant as one file: an archive with `log.jsonl` and `blobs/<sha256>`. */
  exportAll(): Promise<Blob>;
  /** Checks an export file whole and tells what taking it would do. */
  previewImport(file: Blob): Promise<ImportPreview>;
  /** Takes all of it in one transaction, or nothing. */
  takeImport(preview: ImportPreview): Promise<Saved>;
  /** Checks every line, signature, link and blob again, in small steps. */
  verify(onProgress?: (done: number, of: number) => void): Promise<Verification>;
  /** Where this device bears witness to others, and keeps what they say of it. */
  witnessDesk(): Promise<WitnessDesk>;
  /** Where it is noted who wears a badge, apart from the records. */
  personDesk(): Promise<PersonDesk>;
  /** Asks the browser to keep the records. Call it from a tap where `storage.asksPerson`. */
  askToPersist(): Promise<boolean>;
  /** Somebody has read that records were lost; it need not be said any more. */
  forgetLoss(): void;
  close(): void;
}

/** Where seeded definitions come from. */
export interface SeedOrigin {
  readonly plant: string;
  readonly demo: boolean;
}
