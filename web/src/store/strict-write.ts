import type { Database, Names, Writing } from './database.ts';
import { StoreError } from './store-error.ts';

/**
 * One transaction that is on the disk, all of it or nothing, when the promise resolves. `strict` makes the browser
 * flush before it says `complete`; by default most browsers answer before.
 *
 * @param names - of the object stores written to
 * @param work - asks for all writes; may wait for nothing but the transaction's own requests
 * @throws StoreError `quota`, `closed`, `failed`, and whatever `work` throws
 */
export async function strictWrite<N extends Names>(
  db: Database,
  names: N[],
  work: (tx: Writing<N>) => Promise<void> | void,
): Promise<void> {
  const tx = begun(db, names);
  const ended = tx.done.then(
    () => undefined,
    (cause: unknown) => ({ cause }),
  );
  try {
    await work(tx);
  } catch (cause) {
    abort(tx);
    await ended;
    throw cause instanceof StoreError ? cause : storeErrorOf(tx.error ?? cause);
  }
  const fault = await ended;
  if (fault !== undefined) throw storeErrorOf(fault.cause);
}

function begun<N extends Names>(db: Database, names: N[]): Writing<N> {
  try {
    return db.transaction(names, 'readwrite', { durability: 'strict' });
  } catch (cause) {
    throw storeErrorOf(cause);
  }
}

function abort(tx: { abort(): void }): void {
  try {
    tx.abort();
  } catch {
    // It has ended already, which is all that is wanted.
    return;
  }
}

/** What a failure of the browser's storage means. */
export function storeErrorOf(cause: unknown): StoreError {
  if (cause instanceof StoreError) return cause;
  const name = cause instanceof Error ? cause.name : '';
  if (name === 'QuotaExceededError') return new StoreError('quota', {}, cause);
  if (name === 'InvalidStateError') return new StoreError('closed', {}, cause);
  return new StoreError('failed', { reason: cause instanceof Error ? cause.message : String(cause) }, cause);
}
