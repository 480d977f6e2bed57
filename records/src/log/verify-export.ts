import { canonicalValue } from './canonical.ts';
import { checkCheckpoints } from './check-checkpoints.ts';
import { type Checkpoint, unsignedEntry } from './checkpoint.ts';
import { type ExportTrailer, trailerFields } from './export-form.ts';
import { openEvent } from './log-event.ts';
import type { LogState } from './log-state.ts';
import { beginExport, type ExportCheck, type ExportReading, readEvents, withLogs } from './read-export.ts';
import { signatureHolds, type Verify } from './signing.ts';
import type { Failure, LogWarning } from './verdict.ts';
import { hasFields, namedField, wrongField } from './wrong-field.ts';

/** The log of one device inside an export, as far as it is whole. */
export interface ExportedLog {
  readonly publicKey: Uint8Array;
  readonly state: LogState;
  /** How many of its first events its checkpoint vouches for. */
  readonly witnessed: number;
  /** The checkpoint that does so; only of an export that is whole. */
  readonly checkpoint?: Checkpoint;
}

/** What is to be said of an export. */
export interface ExportVerdict {
  /** Places are lines of the file, the header being 0; of a checkpoint its size. */
  readonly failure?: Failure;
  /** The device whose checkpoint failed. */
  readonly device?: string;
  /** Undefined when even the header cannot be read. */
  readonly plant?: string;
  readonly logs: readonly ExportedLog[];
  readonly warnings: readonly LogWarning[];
}

/**
 * Checks an export: header, every event by itself and against the one before, trailer, checkpoints. The first failure
 * is the verdict.
 *
 * @param bytes - of the file
 * @param check - checks signatures, and hears of the events
 */
export async function verifyExport(bytes: Uint8Array, check: ExportCheck): Promise<ExportVerdict> {
  const begun = beginExport(bytes);
  if ('verdict' in begun) return { failure: begun, logs: [], warnings: [] };
  return continueExport(begun.reading, bytes.subarray(begun.next), check);
}

/**
 * Goes on with the check of an export.
 *
 * @param from - how far it was found whole
 * @param bytes - from the next line to the end of the file
 * @param check - as for `verifyExport`
 */
export async function continueExport(
  from: ExportReading,
  bytes: Uint8Array,
  check: ExportCheck,
): Promise<ExportVerdict> {
  const { failure, trailer, reading } = await readEvents(from, bytes, check);
  if (failure !== undefined) return verdictOf(reading, { failure });
  const opened = await openTrailer(trailer, reading, check.verify);
  if ('verdict' in opened) return verdictOf(reading, { failure: opened });
  return checkpointVerdict(withLogs(reading, reading.keys.length), opened.checkpoints, check.verify);
}

interface Found {
  readonly failure?: Failure;
  readonly device?: string;
  readonly witnessed?: readonly number[];
  /** By log, each checked. */
  readonly checkpoints?: readonly Checkpoint[];
}

function verdictOf(
  { plant, keys, states, warnings }: ExportReading,
  { witnessed = [], checkpoints = [], ...found }: Found,
): ExportVerdict {
  const logs = keys.flatMap((publicKey, i) => {
    const state = states[i];
    const checkpoint = checkpoints[i];
    if (state === undefined) return [];
    return [{ publicKey, state, witnessed: witnessed[i] ?? 0, ...(checkpoint && { checkpoint }) }];
  });
  return { ...found, plant, logs, warnings };
}

/** The last line, when the exporting device signed it and means this header. */
async function openTrailer(
  line: string | undefined,
  { keys, headerHash, line: at }: ExportReading,
  verify: Verify,
): Promise<ExportTrailer | Failure> {
  const value = line === undefined ? undefined : canonicalValue(line);
  if (value === undefined) return { verdict: 'not-canonical', at };
  // Where the file was cut between two lines, an event stands in the trailer's place.
  if (typeof openEvent(line) !== 'string') return { verdict: 'truncated', at: at + 1 };
  if (!isTrailer(value))
    return { verdict: 'bad-envelope', at, ...namedField(wrongField(value, trailerFields) ?? 'checkpoints') };
  const [publicKey = new Uint8Array()] = keys;
  const entry = unsignedEntry(value) ?? new Uint8Array();
  const holds = await signatureHolds({ kind: 'export', entry, sig: value.sig, publicKey, verify });
  if (!holds) return { verdict: 'bad-signature', at };
  return value.header === headerHash ? value : { verdict: 'broken-link', at };
}

function isTrailer(value: unknown): value is ExportTrailer {
  return hasFields(value, trailerFields) && Array.isArray(value['checkpoints']);
}

async function checkpointVerdict(
  reading: ExportReading,
  checkpoints: readonly unknown[],
  verify: Verify,
): Promise<ExportVerdict> {
  const witnessed: number[] = [];
  for (const [i, { device, plant, size }] of reading.states.entries()) {
    const owner = { plant, device, verify, publicKey: reading.keys[i] ?? new Uint8Array() };
    const log = { size, marks: reading.marks[i] ?? new Map() };
    const vouched = await checkCheckpoints(checkpoints.slice(i, i + 1), owner, log);
    const failure = vouched.failure ?? missing({ isOwn: i === 0, given: i in checkpoints, size, ...vouched });
    if (failure !== undefined) return verdictOf(reading, { failure, device, witnessed });
    witnessed.push(vouched.witnessed);
  }
  if (checkpoints.length > witnessed.length)
    return verdictOf(reading, {
      failure: { verdict: 'bad-checkpoint', at: reading.line, field: 'checkpoints' },
      witnessed,
    });
  const warnings = [...reading.warnings, ...notWitnessed(reading.states, witnessed)];
  // Each was checked above, and there are no more of them than logs.
  return verdictOf({ ...reading, warnings }, { witnessed, checkpoints: checkpoints as readonly Checkpoint[] });
}

interface Voucher {
  readonly isOwn: boolean;
  readonly given: boolean;
  readonly size: number;
  readonly witnessed: number;
}

/** Each log has a checkpoint, and the exporting device's covers all its events: it knew them when it signed. */
function missing({ isOwn, given, size, witnessed }: Voucher): Failure | undefined {
  if (!given) return { verdict: 'bad-checkpoint' };
  return isOwn && witnessed < size ? { verdict: 'bad-checkpoint', at: witnessed, field: 'size' } : undefined;
}

/** For each log, the line of its first event that no checkpoint vouches for. */
function notWitnessed(states: readonly LogState[], witnessed: readonly number[]): LogWarning[] {
  let firstLine = 1;
  return states.flatMap(({ size }, i) => {
    const at = firstLine + (witnessed[i] ?? 0);
    firstLine += size;
    return at < firstLine ? [{ code: 'not-witnessed' as const, at }] : [];
  });
}
