import type { KnownLog, PlacedEvent } from '@loopwright/jobs/audit-report';
import { foldRun, type RunState } from '@loopwright/jobs/press-run';
import { emptyPlant } from '@loopwright/plant';
import { fold } from '@loopwright/records';
import { type ArchiveContent, type ArchiveVerdict, verifyArchive } from '@loopwright/records/archive';
import { causalOrder, type Sighting, type Verify } from '@loopwright/records/log';
import { type LoggedAnyEvent, runOf } from '@loopwright/records/run';

type KeptEvent = LoggedAnyEvent & PlacedEvent;

/** The press runs of an exported file, and what a report needs beside them. */
export interface ReadRuns {
  readonly verdict: ArchiveVerdict;
  /** By id, in the order in which they began. */
  readonly runs: ReadonlyMap<string, RunState>;
  readonly events: readonly KeptEvent[];
  readonly logs: readonly KnownLog[];
  readonly sightings: readonly Sighting[];
  readonly plant: { readonly id: string; readonly name?: string };
  /** Hashes of the pictures in the file. */
  readonly pictures: ReadonlySet<string>;
}

/**
 * Checks an exported file and reads its press runs.
 *
 * @param content - of the file
 * @param verify - checks a signature
 */
export async function readRuns(content: ArchiveContent, verify: Verify): Promise<ReadRuns> {
  const byDevice = new Map<string, KeptEvent[]>();
  const verdict = await verifyArchive(content, verify, (event, id) => {
    const log = byDevice.get(event.device) ?? [];
    if (log.push({ ...event, id } as KeptEvent) === 1) byDevice.set(event.device, log);
  });
  const events = causalOrder(byDevice);
  const { name } = fold(events, emptyPlant(verdict.plant ?? '', ''));
  return {
    verdict,
    runs: foldedRuns(events),
    events,
    logs: verdict.logs.map(({ publicKey, state: { device, size }, checkpoint }) => ({
      device,
      size,
      key: Buffer.from(publicKey).toString('hex'),
      ...(checkpoint && { checkpoint }),
    })),
    sightings: verdict.countersignatures.map(({ statement }) => statement),
    plant: { id: verdict.plant ?? '', ...(name !== '' && { name }) },
    pictures: new Set(content.blobs.keys()),
  };
}

function foldedRuns(events: readonly KeptEvent[]): ReadonlyMap<string, RunState> {
  const groups = new Map<string, KeptEvent[]>();
  for (const event of events) {
    const run = runOf(event);
    if (run === undefined) continue;
    const group = groups.get(run) ?? [];
    if (group.push(event) === 1) groups.set(run, group);
  }
  const states = [...groups.values()].map((group) => foldRun(group));
  return new Map(states.flatMap((state) => (state === undefined ? [] : [[state.id, state] as const])));
}
