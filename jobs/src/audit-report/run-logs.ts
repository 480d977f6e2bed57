import { type Checkpoint, cardCode, type Seen } from '@loopwright/records/log';

/** What a shell knows of one device's log when it makes a report. */
export interface LogOfRun {
  readonly device: string;
  /** Number of its events. */
  readonly size: number;
  /** Public key of the device, in hex. */
  readonly key?: string;
  /** Its latest sound checkpoint. */
  readonly checkpoint?: Checkpoint;
  /** Events of the run in it: their ids, and where they stand, from 0. */
  readonly places: readonly EventPlace[];
  /** How far other devices have seen it. */
  readonly seen: Seen;
}

export interface EventPlace {
  readonly event: string;
  readonly seq: number;
}

/** One device's log, as a report prints it. */
export interface AuditLog {
  /** By which the report names it, from A on. */
  readonly letter: string;
  readonly device: string;
  readonly size: number;
  readonly key?: string;
  readonly checkpoint?: Checkpoint;
  /** The checkpoint's code of 16 letters and digits. */
  readonly code?: string;
  /** Events of the run in it, and the first and the last of them. */
  readonly events: number;
  readonly first: EventPlace;
  readonly last: EventPlace;
  /** How many of the run's events the checkpoint covers. */
  readonly covered: number;
  /** How many other devices have seen the last of them, and how many of them nobody else has seen. */
  readonly seenBy: number;
  readonly unseen: number;
}

/**
 * The logs that a run stands in; the one that holds its last event comes first.
 *
 * @param logs - of the plant, those without an event of the run among them
 * @param head - the last event of the run
 */
export function auditLogs(logs: readonly LogOfRun[], head: string): readonly AuditLog[] {
  const holding = logs.filter(({ places }) => places.length > 0);
  const holdsHead = ({ places }: LogOfRun): boolean => places.some(({ event }) => event === head);
  const order = [...holding.filter(holdsHead), ...holding.filter((log) => !holdsHead(log))];
  return order.flatMap((log, i) => auditLog(log, letterOf(i)));
}

function auditLog({ places, seen, checkpoint, ...log }: LogOfRun, letter: string): readonly AuditLog[] {
  const inOrder = places.toSorted((a, b) => a.seq - b.seq);
  const [first, last] = [inOrder[0], inOrder.at(-1)];
  if (first === undefined || last === undefined) return [];
  return [
    {
      ...log,
      letter,
      ...(checkpoint && { checkpoint, code: cardCode(checkpoint) }),
      events: places.length,
      first,
      last,
      covered: places.filter(({ seq }) => seq < (checkpoint?.size ?? 0)).length,
      seenBy: seen.by(last.seq),
      unseen: places.filter(({ seq }) => seen.by(seq) === 0).length,
    },
  ];
}

/** A to Z, then AA: more devices than letters write in no run, and a report breaks on none. */
function letterOf(index: number): string {
  const rest = Math.floor(index / 26);
  return (rest > 0 ? letterOf(rest - 1) : '') + String.fromCharCode(65 + (index % 26));
}
