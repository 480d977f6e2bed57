import type { PersonRow, PersonStore } from '@loopwright/records/person';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** Which person wears a badge. After erasing only that somebody was erased, and when. */
export interface BadgeRow {
  readonly plant: string;
  readonly badge: string;
  readonly alias?: string;
  readonly erasedAt?: string;
}

interface PersonsSchema extends DBSchema {
  persons: { key: [plant: string, alias: string]; value: PersonRow };
  badges: { key: [plant: string, badge: string]; value: BadgeRow };
}

/** What is known about people on this device: in a database of its own, in no export and in no second copy. */
export interface PersonRows extends PersonStore {
  badge(plant: string, badge: string): Promise<BadgeRow | undefined>;
  putBadge(row: BadgeRow): Promise<void>;
}

/**
 * Opens the rows about people.
 *
 * @param store - name of the database of the records
 */
export async function personRows(store: string): Promise<PersonRows> {
  const db = await openDB<PersonsSchema>(`${store}.persons`, 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('persons', { keyPath: ['plant', 'alias'] });
      fresh.createObjectStore('badges', { keyPath: ['plant', 'badge'] });
    },
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
  });
  return {
    get: (plant, alias) => db.get('persons', [plant, alias]),
    put: (row) => strictly(db, 'persons', (rows) => rows.put(row)),
    destroy: (plant, alias) => strictly(db, 'persons', (rows) => rows.delete([plant, alias])),
    badge: (plant, badge) => db.get('badges', [plant, badge]),
    putBadge: (row) => strictly(db, 'badges', (rows) => rows.put(row)),
  };
}

type Rows = 'persons' | 'badges';

/** Resolves when it is on the disk, as far as a page can make sure. */
async function strictly<Name extends Rows>(
  db: IDBPDatabase<PersonsSchema>,
  name: Name,
  work: (rows: ReturnType<typeof storeOf<Name>>) => Promise<unknown>,
): Promise<void> {
  const rows = storeOf(db, name);
  await Promise.all([work(rows), rows.transaction.done]);
}

function storeOf<Name extends Rows>(db: IDBPDatabase<PersonsSchema>, name: Name) {
  return db.transaction(name, 'readwrite', { durability: 'strict' }).store;
}
