import { type Mark, markOf, startMark } from '../log/check-checkpoints.ts';
import {
  type Countersignature,
  checkCountersignatures,
  sizesWitnessed,
  type WitnessFailure,
} from '../log/countersignatures.ts';
import type { LogEvent } from '../log/log-event.ts';
import type { Verify } from '../log/signing.ts';
import type { Failure, LogWarning } from '../log/verdict.ts';
import { type ExportVerdict, verifyExport } from '../log/verify-export.ts';
import { type BlobFailure, type BlobWarning, blobsNamed, checkBlobs, type NamedBlob } from './check-blobs.ts';
import type { ArchiveContent } from './read-archive.ts';

/** Where an exported file fails: its log, what its events name, its countersignatures. */
export type ArchiveFailure = Failure | BlobFailure | WitnessFailure;

/** What does not make an exported file wrong, but a person should know. */
export type ArchiveWarning =
  | LogWarning
  | BlobWarning
  /** A countersignature for a log that is not in this file. */
  | { readonly code: 'witness-elsewhere'; readonly at: number }
  /** Something in the archive that belongs to no export. */
  | { readonly code: 'file-unknown'; readonly name: string };

/** What is to be said of an exported file. */
export interface ArchiveVerdict extends Omit<ExportVerdict, 'failure' | 'warnings'> {
  readonly failure?: ArchiveFailure;
  readonly warnings: readonly ArchiveWarning[];
  /** Those that hold. */
  readonly countersignatures: readonly Countersignature[];
}

/**
 * Checks an exported file: the log first, then the pictures and curves that its events name, then what witnesses say.
 *
 * @param content - of the file
 * @param verify - checks a signature
 * @param heard - hears of every event found whole, in order
 */
export async function verifyArchive(
  content: ArchiveContent,
  verify: Verify,
  heard: (event: LogEvent, id: string) => void = () => undefined,
): Promise<ArchiveVerdict> {
  const { log, blobs, witnesses = new Uint8Array(), others = [] } = content;
  const sizes = sizesWitnessed(witnesses);
  const marks = new Map<string, Map<number, Mark>>();
  const named: NamedBlob[] = [];
  const verdict = await verifyExport(log, {
    verify,
    onEvent: (event, id, { line, states }) => {
      heard(event, id);
      named.push(...blobsNamed(event.blobs, line - 1));
      const state = states.at(-1);
      if (state !== undefined && sizes.get(state.device)?.has(state.size))
        marks.set(state.device, (marks.get(state.device) ?? new Map()).set(state.size, markOf(state)));
    },
  });
  const { plant, logs } = verdict;
  if (verdict.failure !== undefined || plant === undefined) return { ...verdict, countersignatures: [] };
  const beside = checkBlobs(named, blobs);
  const strangers = others.map((name) => ({ code: 'file-unknown' as const, name }));
  const soFar = {
    ...verdict,
    warnings: [...verdict.warnings, ...beside.warnings, ...strangers],
    countersignatures: [],
  };
  if (beside.failure !== undefined) return { ...soFar, failure: beside.failure };
  const held = logs.map(
    ({ state: { device, size } }) =>
      [device, { size, marks: new Map([[0, startMark], ...(marks.get(device) ?? [])]) }] as const,
  );
  const witnessed = await checkCountersignatures(witnesses, { plant, verify, logs: new Map(held) });
  return withWitnesses(soFar, witnessed);
}

function withWitnesses(
  soFar: ArchiveVerdict,
  { failure, countersignatures, elsewhere }: Awaited<ReturnType<typeof checkCountersignatures>>,
): ArchiveVerdict {
  const strange = elsewhere.map((at) => ({ code: 'witness-elsewhere' as const, at }));
  const warnings = [...soFar.warnings, ...strange];
  return { ...soFar, ...(failure === undefined ? {} : { failure }), warnings, countersignatures };
}
