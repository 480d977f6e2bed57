import { hexToBytes } from '@noble/hashes/utils.js';
import { canonicalValue } from './canonical.ts';
import { type Mark, markOf, sizesSpokenOf, startMark } from './check-checkpoints.ts';
import { type ExportHeader, headerFields } from './export-form.ts';
import { extendLog } from './extend-log.ts';
import { isHash, sha256Hex } from './hash.ts';
import { lastLineStart, lineAt } from './line-source.ts';
import { type LogEvent, openEvent } from './log-event.ts';
import { deviceOf, emptyLog, type LogState } from './log-state.ts';
import type { Verify } from './signing.ts';
import type { Failure, LogWarning } from './verdict.ts';
import { hasFields, namedField, wrongField } from './wrong-field.ts';

/** How far an export has been read and found whole; enough to go on from there. */
export interface ExportReading {
  readonly plant: string;
  readonly headerHash: string;
  readonly keys: readonly Uint8Array[];
  /** The logs begun so far, in the order of the keys; the last one is being read. */
  readonly states: readonly LogState[];
  /** Marks of each log at the sizes that the trailer speaks of. */
  readonly marks: readonly ReadonlyMap<number, Mark>[];
  readonly sizes: ReadonlySet<number>;
  /** Lines read. */
  readonly line: number;
  readonly warnings: readonly LogWarning[];
}

export interface ExportCheck {
  readonly verify: Verify;
  /** Called for every event found whole, in order, with the reading after it. */
  readonly onEvent?: (event: LogEvent, id: string, reading: ExportReading) => void;
}

/** The first line of an export read, and where the second starts. */
export interface ExportBegun {
  readonly reading: ExportReading;
  readonly next: number;
}

/**
 * Reads the first line of an export.
 *
 * @param bytes - of the file
 */
export function beginExport(bytes: Uint8Array): ExportBegun | Failure {
  const { text, next } = lineAt(bytes, 0);
  const header = headerOf(text);
  if ('verdict' in header) return header;
  const { plant } = header;
  const keys = header.keys.map((key) => hexToBytes(key));
  const begun = { plant, headerHash: sha256Hex(text ?? ''), keys, states: [], marks: [], line: 1, warnings: [] };
  return { reading: withLogs({ ...begun, sizes: sizesInTrailer(bytes) }, 1), next };
}

function headerOf(text: string | undefined): ExportHeader | Failure {
  const value = text === undefined ? undefined : canonicalValue(text);
  if (value === undefined) return { verdict: 'not-canonical', at: 0 };
  if (!hasFields(value, headerFields)) return badHeader(wrongField(value, headerFields));
  if (value['kind'] !== 'export') return badHeader('kind');
  const { plant, keys } = value;
  // A public key has as many digits as a hash.
  const areKeys = Array.isArray(keys) && keys.length > 0 && keys.every(isHash) && new Set(keys).size === keys.length;
  if (!areKeys) return badHeader('keys');
  return typeof plant === 'string' ? { v: 1, kind: 'export', plant, keys } : badHeader('plant');
}

function badHeader(field: string | undefined): Failure {
  return { verdict: 'bad-envelope', at: 0, ...namedField(field) };
}

/** The sizes that the last line speaks of, looked at before the events so that they are read only once. */
function sizesInTrailer(bytes: Uint8Array): ReadonlySet<number> {
  const value = canonicalValue(lineAt(bytes, lastLineStart(bytes)).text ?? '');
  const checkpoints = hasCheckpoints(value) ? value.checkpoints : [];
  return sizesSpokenOf(Array.isArray(checkpoints) ? checkpoints : []);
}

function hasCheckpoints(value: unknown): value is { readonly checkpoints: unknown } {
  return typeof value === 'object' && value !== null && 'checkpoints' in value;
}

/** A reading in which at least so many logs are begun. */
export function withLogs(reading: ExportReading, count: number): ExportReading {
  const begun = reading.keys.slice(reading.states.length, count);
  const states = [...reading.states, ...begun.map((key) => emptyLog(reading.plant, key))];
  return { ...reading, states, marks: [...reading.marks, ...begun.map(() => new Map([[0, startMark]]))] };
}

/** All events of an export read, or the first failure among them. */
export interface EventsRead {
  readonly reading: ExportReading;
  readonly failure?: Failure;
  /** The last line, when everything before it was an event; its text is undefined where it cannot be read. */
  readonly trailer?: string | undefined;
}

/**
 * Reads the events of an export: those of the first device, of the second, and so on.
 *
 * @param from - how far it was read
 * @param bytes - from the next line to the end of the file
 * @param check - checks signatures, and hears of the events
 */
export async function readEvents(from: ExportReading, bytes: Uint8Array, check: ExportCheck): Promise<EventsRead> {
  let reading = from;
  for (let start = 0; ; ) {
    const log = await readLog(reading, bytes.subarray(start), check);
    reading = log.reading;
    if (log.failure === undefined) return { reading, trailer: log.trailer };
    start += log.length;
    const next = log.failure.verdict === 'wrong-device' ? logOfLine(reading, lineAt(bytes, start).text) : undefined;
    if (next === undefined) return { reading, failure: { ...log.failure, at: reading.line } };
    reading = withLogs(reading, next + 1);
  }
}

interface LogRead {
  readonly reading: ExportReading;
  readonly failure?: Failure;
  readonly trailer: string | undefined;
  /** Bytes of the lines found whole. */
  readonly length: number;
}

async function readLog(from: ExportReading, bytes: Uint8Array, { verify, onEvent }: ExportCheck): Promise<LogRead> {
  const i = from.states.length - 1;
  const [state, publicKey] = [from.states[i], from.keys[i]];
  if (state === undefined || publicKey === undefined) return { reading: from, trailer: undefined, length: 0 };
  const lines = new EventLines(bytes);
  let reading = from;
  const extended = await extendLog(state, lines, {
    publicKey,
    verify,
    onEvent: (event, id, after) => {
      reading = withState(reading, after);
      onEvent?.(event, id, reading);
    },
  });
  const firstLine = from.line - state.size;
  const warnings = extended.warnings.map(({ code, at }) => ({ code, at: firstLine + at }));
  const whole = { reading: { ...reading, warnings: [...reading.warnings, ...warnings] }, trailer: lines.trailer };
  const length = lines.ends[reading.line - from.line - 1] ?? 0;
  return { ...whole, length, ...(extended.failure === undefined ? {} : { failure: extended.failure }) };
}

function withState(reading: ExportReading, state: LogState): ExportReading {
  const states = [...reading.states.slice(0, -1), state];
  const next = { ...reading, states, line: reading.line + 1 };
  if (!reading.sizes.has(state.size)) return next;
  const marked = new Map([...(reading.marks.at(-1) ?? []), [state.size, markOf(state)] as const]);
  return { ...next, marks: [...reading.marks.slice(0, -1), marked] };
}

/** The log, after the present one, that a line of another device belongs to. */
function logOfLine({ keys, states }: ExportReading, text: string | undefined): number | undefined {
  const opened = openEvent(text);
  if (typeof opened === 'string') return undefined;
  const found = keys.findIndex((key, i) => i >= states.length && deviceOf(key) === opened.event.device);
  return found < 0 ? undefined : found;
}

/** All lines of a file but the last, one at a time. */
class EventLines implements Iterable<string | undefined> {
  /** Where each line handed out ends. */
  readonly ends: number[] = [];
  trailer: string | undefined;
  readonly #bytes: Uint8Array;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  *[Symbol.iterator](): Iterator<string | undefined> {
    for (let start = 0; start < this.#bytes.length; ) {
      const { text, next, isLast } = lineAt(this.#bytes, start);
      if (isLast) {
        this.trailer = text;
        return;
      }
      this.ends.push(next);
      start = next;
      yield text;
    }
  }
}
