import type { Checkpoint, Countersignature } from '@loopwright/records/log';
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB, type StoreNames } from 'idb';
import type { Snapshot } from './snapshot.ts';
import { StoreError } from './store-error.ts';

/** An event as it rests on the device. */
export interface EventRow {
  readonly plant: string;
  readonly device: string;
  readonly seq: number;
  readonly id: string;
  /** The exact canonical text that was signed. */
  readonly line: string;
  /** Place among the events of all devices, from 0, in the order in which they are folded. */
  readonly place: number;
  /** The thing it is about, as `kind/id`; for its history. */
  readonly thing?: string;
}

/** A device's log within a plant: what is needed to check and to export it. */
export interface LogRow {
  readonly plant: string;
  readonly device: string;
  readonly publicKey: Uint8Array;
  /** The latest signed statement of its size that is known. */
  readonly checkpoint?: Checkpoint;
  /** What others said that they saw of it, of each the one that covers most. */
  readonly witnesses?: readonly Countersignature[];
}

/** The device's key: two halves that cannot be read, or plain bytes where the browser knows no better. */
export type KeyRow =
  | { readonly privateKey: CryptoKey; readonly publicKey: CryptoKey }
  | { readonly secret: Uint8Array<ArrayBuffer> };

export interface StoreSchema extends DBSchema {
  events: {
    key: [plant: string, device: string, seq: number];
    value: EventRow;
    indexes: { 'by-id': [string, string]; 'by-thing': [string, string]; 'by-place': [string, number] };
  };
  blobs: { key: string; value: { readonly sha256: string; readonly bytes: Blob } };
  logs: { key: [plant: string, device: string]; value: LogRow };
  snapshots: { key: string; value: Snapshot };
  keys: { key: 'own'; value: KeyRow };
  /** Beside the three: checkpoints of other devices that were met by code, as text. */
  meta: { key: 'revision' | 'shown' | 'badge' | `met/${string}`; value: string | number };
  reserve: { key: 'filler'; value: Blob };
}

export type Database = IDBPDatabase<StoreSchema>;
export type Names = StoreNames<StoreSchema>;
export type Writing<N extends Names> = IDBPTransaction<StoreSchema, N[], 'readwrite'>;

const version = 1;

interface Opening {
  /** An older page in another tab keeps this version from opening. */
  readonly onBlocked: () => void;
  /** A newer page wants to open, or the browser ended the connection. */
  readonly onLost: (why: 'newer' | 'closed') => void;
}

/**
 * Opens the database of this device.
 *
 * @throws StoreError `no-storage` where the browser refuses storage, `newer` where a newer version has been here
 */
export async function openDatabase(name: string, { onBlocked, onLost }: Opening): Promise<Database> {
  if (typeof indexedDB === 'undefined') throw new StoreError('no-storage');
  try {
    const db: Database = await openDB<StoreSchema>(name, version, {
      upgrade: createStores,
      blocked: onBlocked,
      // Closing at once lets the newer version open; this page says that it must be loaded again.
      blocking: (_current, _blocked, event) => {
        onLost('newer');
        (event.target as IDBDatabase).close();
      },
      terminated: () => onLost('closed'),
    });
    return db;
  } catch (cause) {
    const isNewer = cause instanceof DOMException && cause.name === 'VersionError';
    throw new StoreError(isNewer ? 'newer' : 'no-storage', {}, cause);
  }
}

function createStores(db: Database): void {
  const events = db.createObjectStore('events', { keyPath: ['plant', 'device', 'seq'] });
  events.createIndex('by-id', ['plant', 'id'], { unique: true });
  events.createIndex('by-thing', ['plant', 'thing']);
  events.createIndex('by-place', ['plant', 'place']);
  db.createObjectStore('blobs', { keyPath: 'sha256' });
  db.createObjectStore('logs', { keyPath: ['plant', 'device'] });
  db.createObjectStore('snapshots', { keyPath: 'plant' });
  db.createObjectStore('keys');
  db.createObjectStore('meta');
  db.createObjectStore('reserve');
}
