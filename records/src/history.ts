import type { Kind } from '@loopwright/plant';
import { type AnyEvent, effects } from './event.ts';
import { foldAndReport } from './fold.ts';

/** What can have a history: a kind of thing, or the plant itself. */
export type HistoryKind = Kind | 'plant';

/** An event as it stands in a log. */
export interface LoggedEvent extends AnyEvent {
  readonly id: string;
  readonly at: string;
  /** Alias of the badge. */
  readonly by: string;
  readonly device: string;
}

/** One change of a thing: who made it, when, from what to what. */
export interface HistoryEntry {
  readonly id: string;
  readonly type: string;
  readonly at: string;
  readonly by: string;
  readonly device: string;
  /** The thing before; undefined when it was not there. */
  readonly before: unknown;
  /** The thing after; undefined when it was taken away. */
  readonly after: unknown;
  /** The event that this one corrects. */
  readonly corrects?: string;
}

/** Which thing an event is about, and what it does to it. */
export interface Subject {
  readonly kind: HistoryKind;
  readonly id: string;
  readonly effect: 'defined' | 'removed';
}

/**
 * What an event is about; undefined for events about no thing that this version knows.
 *
 * @param event - any
 */
export function subjectOf({ type, body }: AnyEvent): Subject | undefined {
  const known = type === 'plant.defined' ? ({ kind: 'plant', effect: 'defined' } as const) : effects.get(type);
  const thing = fieldOf(body, 'thing');
  const id = fieldOf(thing, 'id');
  return known === undefined || typeof id !== 'string' ? undefined : { ...known, id };
}

/**
 * Every change of a thing, oldest first; also of one that is no longer there.
 *
 * @param events - of all devices, in the order of folding
 * @param kind - of the thing
 * @param id - of the thing; of the plant any, since it has but one
 */
export function history(events: Iterable<LoggedEvent>, kind: HistoryKind, id: string): readonly HistoryEntry[] {
  const entries: HistoryEntry[] = [];
  for (const event of events) {
    const subject = subjectOf(event);
    if (subject?.kind !== kind || (kind !== 'plant' && subject.id !== id) || !isApplied(event)) continue;
    const after = subject.effect === 'defined' ? fieldOf(event.body, 'thing') : undefined;
    entries.push({ ...origin(event), before: entries.at(-1)?.after, after });
  }
  return entries;
}

/** Whether the fold takes an event; what it passes over has changed nothing. */
function isApplied(event: AnyEvent): boolean {
  const { refused, unknownTypes } = foldAndReport([event]);
  return refused.length === 0 && unknownTypes.size === 0;
}

function origin({ id, type, at, by, device, body }: LoggedEvent): Omit<HistoryEntry, 'before' | 'after'> {
  const corrects = fieldOf(body, 'corrects');
  return { id, type, at, by, device, ...(typeof corrects === 'string' ? { corrects } : {}) };
}

function fieldOf(value: unknown, name: string): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, name)) return undefined;
  return (value as Readonly<Record<string, unknown>>)[name];
}
