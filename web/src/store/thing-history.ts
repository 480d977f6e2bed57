import type { Plant, PlantDefinition } from '@loopwright/plant';
import { definitions, removal } from '@loopwright/records';
import { canonicalText } from '@loopwright/records/log';
import type { Database, EventRow } from './database.ts';
import { effectOf, eventOf, thingKey, thingOfBody } from './event-row.ts';
import type { Change, HistoryEntry, HistoryKind } from './plant-store.ts';
import { StoreError } from './store-error.ts';

/** Which plant is asked about, and whose device asks. */
export interface HistoryScope {
  readonly db: Database;
  readonly plantId: string;
  readonly device: string;
  readonly plant: Plant;
}

/** Every change of a thing, oldest first. */
export async function thingHistory(
  { db, plantId, device, plant }: HistoryScope,
  kind: HistoryKind,
  id: string,
): Promise<readonly HistoryEntry[]> {
  const rows = await db.getAllFromIndex('events', 'by-thing', [plantId, thingKey(kind, id)]);
  let before: unknown;
  return rows
    .toSorted((a, b) => a.place - b.place)
    .map((row) => {
      const event = eventOf(row);
      const after = effectOf(event.type)?.effect === 'defined' ? thingOfBody(event.body) : undefined;
      const { type, at, by } = event;
      const entry = { eventId: row.id, type, at, by, device: row.device, ownDevice: row.device === device };
      const change = { before, after, corrects: correctedBy(event.body), badge: plant.badges[by] };
      before = after;
      return { ...entry, ...change };
    });
}

function correctedBy(body: unknown): string | undefined {
  const corrects: unknown = typeof body === 'object' && body !== null ? Reflect.get(body, 'corrects') : undefined;
  return typeof corrects === 'string' ? corrects : undefined;
}

/**
 * The change that puts a thing back to what it was before an event. It names the event; nothing is taken out.
 *
 * @throws StoreError `no-such-event`, `nothing-to-undo`
 */
export async function correctionOf(scope: HistoryScope, eventId: string): Promise<Change> {
  const row = await scope.db.getFromIndex('events', 'by-id', [scope.plantId, eventId]);
  if (row === undefined) throw new StoreError('no-such-event');
  const { kind, id } = subjectOf(row);
  const entries = await thingHistory(scope, kind, id);
  const before = entries.find((entry) => entry.eventId === eventId)?.before;
  if (same(before, entries.at(-1)?.after)) throw new StoreError('nothing-to-undo');
  const { type, body } = changeTo(kind, id, before);
  return { type, body: { ...body, corrects: eventId } };
}

function subjectOf(row: EventRow): { readonly kind: HistoryKind; readonly id: string } {
  const event = eventOf(row);
  const effect = effectOf(event.type);
  const thing = thingOfBody(event.body);
  if (effect === undefined || thing === undefined) throw new StoreError('nothing-to-undo');
  return { kind: effect.kind, id: thing.id };
}

function changeTo(kind: HistoryKind, id: string, thing: unknown): { readonly type: string; readonly body: object } {
  if (thing !== undefined) {
    const [definition] = definitions([{ kind, thing } as PlantDefinition]);
    if (definition !== undefined) return definition;
  }
  // A plant cannot be without a name, so its first definition stays.
  if (kind === 'plant') throw new StoreError('nothing-to-undo');
  return removal(kind, id);
}

function same(a: unknown, b: unknown): boolean {
  if (a === undefined || b === undefined) return a === b;
  return canonicalText(a) === canonicalText(b);
}
