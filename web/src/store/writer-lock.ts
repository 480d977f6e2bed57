const patience_ms = 5000;

/**
 * Does something while no other tab of this app writes. A tab that froze with the lock in its hands is not waited for
 * for ever: the transaction itself refuses whoever wrote on from an old state, so the lock only spares a retry.
 *
 * @param name - of the lock, one a database
 */
export async function withWriterLock<T>(name: string, work: () => Promise<T>): Promise<T> {
  const { locks } = navigator as { readonly locks?: LockManager };
  if (locks === undefined) return work();
  const waiting = new AbortController();
  const timer = setTimeout(() => waiting.abort(), patience_ms);
  let begun = false;
  try {
    return await locks.request(name, { signal: waiting.signal }, () => {
      begun = true;
      clearTimeout(timer);
      return work();
    });
  } catch (cause) {
    if (begun || !waiting.signal.aborted) throw cause;
    return work();
  } finally {
    clearTimeout(timer);
  }
}
