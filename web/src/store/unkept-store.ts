import { emptyPlant } from '@loopwright/plant';
import { fold } from '@loopwright/records';
import { noEvent } from '@loopwright/records/log';
import type { Change, PlantStore, SeedOrigin, StoreState } from './plant-store.ts';
import { installation } from './storage-state.ts';
import { StoreError } from './store-error.ts';

/**
 * A store for a browser that forbids storage: it shows the plant of the server and keeps nothing; or for a page that is
 * older than what is stored, or newer than a page that holds it. Whatever should be
 * kept is refused, so that nothing is called saved that is not.
 */
export function unkeptStore(why: 'no-storage' | 'newer' | 'blocked'): PlantStore {
  const listeners = new Set<() => void>();
  let state: StoreState = { ...nothingKept(), closed: why };
  const refuse = async (): Promise<never> => {
    throw new StoreError(why);
  };
  return {
    current: () => state,
    subscribe: (onChange) => {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
    meetServer: async (changes: readonly Change[], { plant, demo }: SeedOrigin) => {
      state = { ...state, plant: fold(changes, emptyPlant(plant, '')), demo, empty: false };
      for (const listener of listeners) listener();
    },
    history: async () => [],
    plants: async () => [],
    blob: async () => undefined,
    clock: () => ({ at: new Date().toISOString(), boot: 'none', up_ms: Math.round(performance.now()) }),
    runs: async () => [],
    runEvents: async () => [],
    logs: async () => [],
    verify: async () => ({ events: 0, devices: 0, broken: undefined, brokenBlobs: [] }),
    askToPersist: async () => false,
    forgetLoss: () => undefined,
    close: () => undefined,
    append: refuse,
    undo: refuse,
    chooseBadge: refuse,
    startPlant: refuse,
    showPlant: refuse,
    seedFrom: refuse,
    takeOffer: refuse,
    exportAll: refuse,
    previewImport: refuse,
    takeImport: refuse,
    witnessDesk: refuse,
    personDesk: refuse,
  };
}

function nothingKept(): StoreState {
  const storage = { persisted: false, asksPerson: false, used_bytes: undefined, quota_bytes: undefined } as const;
  const device = { id: '', keyCanBeCopied: false, installation: installation(), onlyHere: 0, clockJumped_s: undefined };
  return {
    plant: emptyPlant('plant', ''),
    badge: undefined,
    size: 0,
    head: noEvent,
    device,
    storage: { ...storage, nearlyFull: false, perhapsPrivate: false, reserve: 'none', secondCopy: 'none' },
    demo: false,
    empty: true,
    waiting: 0,
    unknownEvents: 0,
    broken: undefined,
    closed: 'no-storage',
    offer: undefined,
    lost: undefined,
  };
}
