import { causalOrder, emptyLog, type LogState, withEvent } from '@loopwright/records/log';
import { mergeCountersignatures } from './countersign-logs.ts';
import type { EventRow, LogRow } from './database.ts';
import { eventOf, groupedByDevice } from './event-row.ts';
import { foldMore } from './fold-events.ts';
import { type Folded, nothingFolded } from './snapshot.ts';
import { StoreError } from './store-error.ts';

/** The rows of a plant after a file was added to them. */
export interface Merged {
  /** All rows in the order of folding, each with its place. */
  readonly rows: readonly EventRow[];
  /** Those that are not on the device yet. */
  readonly added: readonly EventRow[];
  /** Those that are, at another place. */
  readonly moved: readonly EventRow[];
  readonly folded: Folded;
}

/**
 * Adds the logs of a file to those on the device.
 *
 * @param here - all rows of the plant on this device
 * @param given - all rows of the file
 * @param publicKey - of this device
 * @throws StoreError `file-fork` where one device said two different things at one place of its log
 */
export function mergeLogs(
  here: readonly EventRow[],
  given: readonly EventRow[],
  own: { readonly plant: string; readonly publicKey: Uint8Array },
): Merged {
  const known = new Map(here.map((row) => [nameOf(row), row]));
  const forked = given.find((row) => (known.get(nameOf(row))?.id ?? row.id) !== row.id);
  if (forked !== undefined) throw new StoreError('file-fork', { seq: forked.seq });
  const fresh = given.filter((row) => !known.has(nameOf(row)));
  const logs = groupedByDevice([...here, ...fresh].map((row) => ({ ...eventOf(row), row })));
  const rows = causalOrder(logs).map(({ row }, place) => ({ ...row, place }));
  const isNew = new Set(fresh.map(nameOf));
  return {
    rows,
    added: rows.filter((row) => isNew.has(nameOf(row))),
    moved: rows.filter((row) => known.has(nameOf(row)) && known.get(nameOf(row))?.place !== row.place),
    folded: foldedRows(rows, emptyLog(own.plant, own.publicKey)),
  };
}

/** Logs known after a file was added: for each device the statement that covers most, and of each witness too. */
export function mergeLogRows(here: readonly LogRow[], given: readonly LogRow[]): readonly LogRow[] {
  const best = new Map<string, LogRow>();
  for (const log of [...here, ...given]) {
    const before = best.get(log.device);
    const row = (before?.checkpoint?.size ?? -1) < (log.checkpoint?.size ?? 0) ? log : (before ?? log);
    const witnesses = mergeCountersignatures(before?.witnesses, log.witnesses);
    best.set(log.device, witnesses.length === 0 ? row : { ...row, witnesses });
  }
  return [...best.values()];
}

function foldedRows(rows: readonly EventRow[], own: LogState): Folded {
  const events = rows.map(eventOf);
  const state = events.reduce(
    (log, event, i) => (event.device === own.device ? withEvent(log, rows[i]?.id ?? '', event.at) : log),
    own,
  );
  return foldMore(nothingFolded(own), events, state).folded;
}

function nameOf({ device, seq }: EventRow): string {
  return `${device}/${seq}`;
}
