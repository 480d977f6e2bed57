import { type Checkpoint, type Sighting, seenOf } from '@loopwright/records/log';
import { type LoggedAnyEvent, runOf } from '@loopwright/records/run';
import type { LogOfRun } from './run-logs.ts';

/** A log as a shell holds it. */
export interface KnownLog {
  readonly device: string;
  /** Number of its events. */
  readonly size: number;
  /** Public key of the device, in hex. */
  readonly key?: string;
  readonly checkpoint?: Checkpoint;
}

/** An event with its place in the log of its device. */
export type PlacedEvent = Pick<LoggedAnyEvent, 'id' | 'device' | 'type' | 'body'> & { readonly seq: number };

/**
 * The logs of a plant as the report of one run needs them.
 *
 * @param run - id
 * @param events - of all logs, in any order
 * @param known - the logs
 * @param sightings - what witnesses say of them
 */
export function logsOfRun(
  run: string,
  events: Iterable<PlacedEvent>,
  known: readonly KnownLog[],
  sightings: readonly Sighting[],
): readonly LogOfRun[] {
  const places = new Map<string, { event: string; seq: number }[]>();
  for (const event of events) {
    if (runOf(event) !== run) continue;
    places.set(event.device, [...(places.get(event.device) ?? []), { event: event.id, seq: event.seq }]);
  }
  return known.map((log) => ({
    ...log,
    places: places.get(log.device) ?? [],
    seen: seenOf(sightings, log.device),
  }));
}
