import { utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText, canonicalValue } from './canonical.ts';
import { leafHash } from './merkle.ts';
import { hasFields, wrongField } from './wrong-field.ts';

/** A picture or curve that belongs to an event; its bytes lie elsewhere under their hash. */
export interface BlobReference {
  readonly sha256: string;
  readonly bytes: number;
  readonly kind: string;
}

/** What someone did or defined, as a device wrote it down. These fields and no other. */
export interface LogEvent {
  readonly v: 1;
  readonly plant: string;
  /** SHA-256 of the device's public key. */
  readonly device: string;
  /** From 0, without gaps. */
  readonly seq: number;
  /** Id of the event before; 64 zeros at the first. */
  readonly prev: string;
  /** Wall clock, UTC. */
  readonly at: string;
  /** Names one start of the device; `up_ms` counts from it and is never set back. */
  readonly boot: string;
  readonly up_ms: number;
  /** Alias of the badge. */
  readonly by: string;
  readonly type: string;
  readonly body: unknown;
  readonly blobs: readonly BlobReference[];
  readonly sig: string;
}

/** What stands before the first event. */
export const noEvent: string = '0'.repeat(64);

/** The fields of an event in canonical order. */
const fields = 'at,blobs,body,boot,by,device,plant,prev,seq,sig,type,up_ms,v'.split(',');

/** Largest event, as its line in UTF-8. */
export const largestEvent_bytes = 65_536;

/** An event read from its line, not yet checked against a log; beyond its fields and `v` nothing is known of it. */
export interface OpenedEvent {
  readonly event: LogEvent;
  /** Canonical form without `sig`, as UTF-8: what is signed and hashed. */
  readonly entry: Uint8Array;
  readonly id: string;
}

/** Why a line is no event at all. */
export type LineFault = 'not-canonical' | 'bad-envelope';

/**
 * Reads one line of a log.
 *
 * @param line - the exact text, without its line end; undefined where the bytes were no UTF-8
 */
export function openEvent(line: string | undefined): OpenedEvent | LineFault {
  const value = line === undefined || isTooLarge(line) ? undefined : canonicalValue(line);
  if (line === undefined || value === undefined) return 'not-canonical';
  if (!isEvent(value)) return 'bad-envelope';
  const entry = utf8ToBytes(withoutSignature(line, value));
  return { event: value, entry, id: leafHash(entry) };
}

/** The field that keeps a canonical line from being an event; see `wrongField`. */
export function wrongEventField(line: string | undefined): string | undefined {
  return wrongField(line === undefined ? undefined : canonicalValue(line), fields);
}

function isEvent(value: unknown): value is LogEvent {
  return hasFields(value, fields);
}

// A letter takes three bytes at most; only a line that could be too large is measured.
function isTooLarge(line: string): boolean {
  return line.length * 3 > largestEvent_bytes && utf8ToBytes(line).length > largestEvent_bytes;
}

// The text is canonical, so its last fields are known to the letter and need not be written again.
function withoutSignature(line: string, { sig, type, up_ms }: LogEvent): string {
  const rest = `,"type":${canonicalText(type)},"up_ms":${canonicalText(up_ms)},"v":1}`;
  const signature = `,"sig":${canonicalText(sig)}`;
  return `${line.slice(0, line.length - rest.length - signature.length)}${rest}`;
}
