import { Refusal } from '@loopwright/engine/refusal';
import type { Plant } from '@loopwright/plant';
import { correctionOf, type LoggedEvent, history as thingHistory } from '@loopwright/records';
import type { Database } from './database.ts';
import { eventOf, thingKey } from './event-row.ts';
import type { Change, HistoryEntry, HistoryKind } from './plant-store.ts';
import { StoreError, type StoreFault } from './store-error.ts';

/** Which plant is asked about, and whose device asks. */
export interface HistoryScope {
  readonly db: Database;
  readonly plantId: string;
  readonly device: string;
  readonly plant: Plant;
}

/** Every change of a thing, oldest first. */
export async function historyOf(scope: HistoryScope, kind: HistoryKind, id: string): Promise<readonly HistoryEntry[]> {
  const events = await eventsAbout(scope, thingKey(kind, id));
  return thingHistory(events, kind, id).map(({ id: eventId, corrects, ...entry }) => ({
    ...entry,
    eventId,
    corrects,
    badge: scope.plant.badges[entry.by],
    ownDevice: entry.device === scope.device,
  }));
}

/**
 * The change that puts a thing back to what it was before an event. It names the event; nothing is taken out.
 *
 * @throws StoreError `no-such-event`, `nothing-to-undo`
 */
export async function correctionFor(scope: HistoryScope, eventId: string): Promise<Change> {
  const row = await scope.db.getFromIndex('events', 'by-id', [scope.plantId, eventId]);
  if (row === undefined) throw new StoreError('no-such-event');
  if (row.thing === undefined) throw new StoreError('nothing-to-undo');
  try {
    return correctionOf(await eventsAbout(scope, row.thing), eventId);
  } catch (cause) {
    if (cause instanceof Refusal && isUndoFault(cause.code)) throw new StoreError(cause.code, {}, cause);
    throw cause;
  }
}

function isUndoFault(code: string): code is StoreFault & ('no-such-event' | 'nothing-to-undo') {
  return code === 'no-such-event' || code === 'nothing-to-undo';
}

/** The events about one thing in the order in which they are folded. */
async function eventsAbout({ db, plantId }: HistoryScope, thing: string): Promise<readonly LoggedEvent[]> {
  const rows = await db.getAllFromIndex('events', 'by-thing', [plantId, thing]);
  return rows.toSorted((a, b) => a.place - b.place).map((row) => ({ ...eventOf(row), id: row.id }));
}
