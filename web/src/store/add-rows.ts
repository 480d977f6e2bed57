import type { Following } from '../page/following.ts';
import type { EventRow } from './database.ts';

/** Done between two looks at who follows: one event alone takes far less than a screen needs. */
export const atOnce = 32;

/** The object store of events within a transaction. */
interface Events {
  add(row: EventRow): Promise<unknown>;
}

/** Adds rows; whoever follows may stop all of it until the last is added. */
export function addRows(
  events: Events,
  rows: readonly EventRow[],
  { signal, onShare }: Following,
): readonly Promise<void>[] {
  let added = 0;
  return rows.map(async (row) => {
    await events.add(row);
    added += 1;
    if (added % atOnce > 0 && added < rows.length) return;
    signal?.throwIfAborted();
    onShare?.(added / rows.length);
  });
}
