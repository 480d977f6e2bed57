import { subjectOf } from '@loopwright/records';
import type { LogEvent } from '@loopwright/records/log';
import { runOf } from '@loopwright/records/run';
import type { EventRow } from './database.ts';
import type { HistoryKind } from './plant-store.ts';

/**
 * An event as a row of the database.
 *
 * @param event - with its id and exact text
 * @param place - in the order of folding
 */
export function eventRow({ event, id, line }: WrittenEvent, place: number): EventRow {
  const { plant, device, seq } = event;
  const thing = thingKeyOf(event);
  return { plant, device, seq, id, line, place, ...(thing === undefined ? {} : { thing }) };
}

export interface WrittenEvent {
  readonly event: LogEvent;
  readonly id: string;
  readonly line: string;
}

/** The event of a row. Its text was checked when it was written and is checked again by `verify`. */
export function eventOf(row: EventRow): LogEvent {
  return JSON.parse(row.line) as LogEvent;
}

/** The name under which the history of a thing is found. No kind contains a slash. */
export function thingKey(kind: HistoryKind, id: string): string {
  return kind === 'plant' ? 'plant' : `${kind}/${id}`;
}

/** The name under which the events of a run are found. No kind of thing is called so. */
export function runKey(run: string): string {
  return `${runKeys}${run}`;
}

/** How the names of all runs begin. */
export const runKeys = 'press-run/';

function thingKeyOf(event: LogEvent): string | undefined {
  const run = runOf(event);
  if (run !== undefined) return runKey(run);
  const subject = subjectOf(event);
  return subject === undefined ? undefined : thingKey(subject.kind, subject.id);
}

/** Rows by device, each device's by `seq`. */
export function groupedByDevice<R extends { readonly device: string; readonly seq: number }>(
  rows: readonly R[],
): ReadonlyMap<string, readonly R[]> {
  const groups = new Map<string, R[]>();
  for (const row of rows.toSorted((a, b) => a.seq - b.seq)) {
    const group = groups.get(row.device);
    if (group === undefined) groups.set(row.device, [row]);
    else group.push(row);
  }
  return groups;
}
