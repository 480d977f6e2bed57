import {
  erasePerson,
  notePerson,
  type PersonKeeping,
  personsIn,
  readPerson,
  type SealingSubtle,
  webPersonCrypto,
} from '@loopwright/records/person';
import { momentOf } from '../clock-watch.ts';
import { eventOf } from '../event-row.ts';
import type { PlantStore } from '../plant-store.ts';
import type { StoreCore } from '../store-core.ts';
import { personRows } from './person-rows.ts';

/** Who wears a badge, as far as this device knows. */
export type BadgeWearer =
  | { readonly is: 'nobody-noted' }
  | { readonly is: 'known'; readonly texts: readonly string[] }
  | { readonly is: 'erased'; readonly at: string }
  /** Noted once; what was noted is not on this device or does not open. */
  | { readonly is: 'not-here' };

/** Where it is noted who wears a badge: apart from the records, which hold a check value only. */
export interface PersonDesk {
  wearer(badge: string): Promise<BadgeWearer>;
  /** Notes a name; resolves when it is sealed on the disk and the records say that there is one. */
  note(badge: string, name: string): Promise<void>;
  /** Destroys for good what is known of the wearer; resolves when the records say so. */
  erase(badge: string): Promise<void>;
}

/**
 * @param core - of the store
 * @param store - appends what the records say
 */
export async function personDesk(core: StoreCore, store: Pick<PlantStore, 'append'>): Promise<PersonDesk> {
  const rows = await personRows(core.parts.db.name);
  const plant = core.memory.shown;
  const keeping: PersonKeeping = { plant, store: rows, crypto: sealing() };
  return {
    wearer: async (badge) => {
      const { alias, erasedAt } = (await rows.badge(plant, badge)) ?? {};
      if (erasedAt !== undefined) return { is: 'erased', at: erasedAt };
      if (alias === undefined) return { is: 'nobody-noted' };
      const known = await readPerson(keeping, alias, await personsInLog(core, plant));
      return known.is === 'erased' ? { is: 'not-here' } : known;
    },
    note: async (badge, name) => {
      const { alias, event } = await notePerson(keeping, name);
      await rows.putBadge({ plant, badge, alias });
      await store.append([event]);
    },
    erase: async (badge) => {
      const { alias } = (await rows.badge(plant, badge)) ?? {};
      if (alias === undefined) return;
      // The alias stays until the records say that its person is gone, so that it can be said again.
      await store.append([await erasePerson({ plant, store: rows }, alias)]);
      await rows.putBadge({ plant, badge, erasedAt: momentOf(core.parts.clocks).at });
    },
  };
}

async function personsInLog({ parts }: StoreCore, plant: string) {
  const all = await parts.db.getAllFromIndex('events', 'by-place', IDBKeyRange.bound([plant, 0], [plant, Infinity]));
  return personsIn(all.filter(({ line }) => line.includes('"person.')).map(eventOf));
}

function sealing() {
  return webPersonCrypto<CryptoKey>({
    subtle: crypto.subtle as SealingSubtle<CryptoKey>,
    getRandomValues: (bytes) => crypto.getRandomValues(bytes),
  });
}
