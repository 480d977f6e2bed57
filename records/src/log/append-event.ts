import { Refusal } from '@loopwright/engine/refusal';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from './canonical.ts';
import { isUtc } from './clock.ts';
import { isHash } from './hash.ts';
import { type BlobReference, type LogEvent, largestEvent_bytes } from './log-event.ts';
import { type LogState, withEvent } from './log-state.ts';
import { leafHash } from './merkle.ts';
import { messageOf, type Sign } from './signing.ts';

/** What the device adds to a happening before it is signed. */
export interface Happening {
  /** Wall clock, UTC, like `2026-11-25T02:00:00.000Z`. */
  readonly at: string;
  readonly boot: string;
  /** Milliseconds since the device started, from a clock that is never set back. */
  readonly up_ms: number;
  /** Alias of the badge of whoever did it. */
  readonly by: string;
  readonly type: string;
  readonly body: unknown;
  readonly blobs?: readonly BlobReference[];
}

/** The next event of a log, and the log after it. */
export interface Appended {
  readonly state: LogState;
  readonly event: LogEvent;
  /** The exact text to store. */
  readonly line: string;
  readonly id: string;
}

/**
 * Makes and signs the next event of a device's log. Nothing counts as said until its line is stored.
 *
 * @param state - of the log so far
 * @param happening - what to write down
 * @param sign - with the device's key
 * @throws Refusal `not-a-moment`, `out-of-range`, `empty`, `not-a-hash`, `unsafe-integer`, `event-too-large`, and those
 * of the canonical form
 */
export async function appendEvent(state: LogState, happening: Happening, sign: Sign): Promise<Appended> {
  checkHappening(happening);
  const { at, boot, up_ms, by, type, body, blobs = [] } = happening;
  const { plant, device, size: seq, head: prev } = state;
  const said = { v: 1, plant, device, seq, prev, at, boot, up_ms, by, type, body, blobs } as const;
  const entry = utf8ToBytes(canonicalText(said));
  const id = leafHash(entry);
  const event = { ...said, sig: bytesToHex(await sign(messageOf('event', entry))) };
  const line = canonicalText(event);
  const size_bytes = utf8ToBytes(line).length;
  if (size_bytes > largestEvent_bytes)
    throw new Refusal('event-too-large', 'body', { value: size_bytes, max: largestEvent_bytes, unit: 'bytes' });
  return { state: withEvent(state, id, at), event, line, id };
}

function checkHappening({ at, boot, up_ms, by, type, body, blobs = [] }: Happening): void {
  if (!isUtc(at)) throw new Refusal('not-a-moment', 'at', { value: at });
  checkCount(up_ms, 'up_ms');
  for (const [name, value] of Object.entries({ boot, by, type }))
    if (value === '') throw new Refusal('empty', name, {});
  for (const [i, { sha256, bytes }] of blobs.entries()) {
    if (!isHash(sha256)) throw new Refusal('not-a-hash', `blobs[${i}].sha256`, { value: sha256 });
    checkCount(bytes, `blobs[${i}].bytes`);
  }
  checkIntegers(body, 'body');
}

function checkCount(value: number, path: string): void {
  if (!Number.isSafeInteger(value) || value < 0) throw new Refusal('out-of-range', path, { value, min: 0, step: 1 });
}

// Beyond 2^53 two integers share one double, so the record would say another number than was meant.
function checkIntegers(value: unknown, path: string): void {
  if (typeof value === 'number' && Number.isInteger(value) && !Number.isSafeInteger(value))
    throw new Refusal('unsafe-integer', path, { value, max: Number.MAX_SAFE_INTEGER });
  if (typeof value !== 'object' || value === null) return;
  for (const [name, below] of Object.entries(value))
    checkIntegers(below, Array.isArray(value) ? `${path}[${name}]` : `${path}.${name}`);
}
