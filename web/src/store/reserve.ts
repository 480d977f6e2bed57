import type { Database } from './database.ts';
import type { StorageState } from './plant-store.ts';

/** Space set aside [bytes]: enough for the events, curve and photos of many jobs. */
export const reserve_bytes = 20 * 2 ** 20;

/** Set aside only where it leaves plenty. */
const leastShare = 5;

/** Space that is taken early and given back when the disk is full, so that a running job can be written to its end. */
export class Reserve {
  state: StorageState['reserve'] = 'none';
  readonly #db: Database;
  readonly #size_bytes: number;

  constructor(db: Database, size_bytes: number) {
    this.#db = db;
    this.#size_bytes = size_bytes;
  }

  /** Looks whether the space is set aside already. */
  async look(): Promise<void> {
    const there = (await this.#db.count('reserve')) > 0;
    if (there) this.state = 'there';
    else if (this.state === 'there') this.state = 'used';
  }

  /** Sets the space aside where there is plenty of it. */
  async make({ used_bytes = 0, quota_bytes = 0 }: Pick<StorageState, 'used_bytes' | 'quota_bytes'>): Promise<void> {
    if (this.state === 'there' || quota_bytes - used_bytes < leastShare * this.#size_bytes) return;
    try {
      await this.#db.put('reserve', new Blob([new Uint8Array(this.#size_bytes)]), 'filler');
      this.state = 'there';
    } catch {
      // No room for it: then there is none, and the state says so.
      return;
    }
  }

  /** Gives the space back. True when there was some. */
  async free(): Promise<boolean> {
    await this.look();
    if (this.state !== 'there') return false;
    await this.#db.delete('reserve', 'filler');
    this.state = 'used';
    return true;
  }
}
