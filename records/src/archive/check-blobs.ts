import { isHash, sha256Hex } from '../log/hash.ts';

/** Bytes that an event names. */
export interface NamedBlob {
  readonly sha256: string;
  /** As the event says. */
  readonly bytes: unknown;
  /** Line of the event. */
  readonly at: number;
}

/** What an event names that is there and is something else. */
export interface BlobFailure {
  readonly verdict: 'blob-changed';
  readonly at: number;
  /** Its name, which is the hash of what it was. */
  readonly blob: string;
  /** `sha256` where its content is another, `bytes` where the event says another size. */
  readonly field: 'sha256' | 'bytes';
}

/** What is worth knowing of blobs without being wrong. */
export type BlobWarning =
  | { readonly code: 'blob-missing'; readonly at: number; readonly blob: string }
  | { readonly code: 'blob-unnamed'; readonly blob: string };

/**
 * The blobs that an event names. Nothing but its signature has been checked of an event: what stands for its blobs may
 * be anything, and what is no reference names nothing.
 *
 * @param given - the event's `blobs`
 * @param at - line of the event
 */
export function blobsNamed(given: unknown, at: number): readonly NamedBlob[] {
  if (!Array.isArray(given)) return [];
  return given.flatMap((value: unknown) => {
    if (typeof value !== 'object' || value === null || !('sha256' in value) || !('bytes' in value)) return [];
    return isHash(value.sha256) ? [{ sha256: value.sha256, bytes: value.bytes, at }] : [];
  });
}

/**
 * Holds blobs against the events that name them.
 *
 * @param named - in the order of the log
 * @param blobs - bytes by the SHA-256 that they are said to have
 */
export function checkBlobs(
  named: readonly NamedBlob[],
  blobs: ReadonlyMap<string, Uint8Array>,
): { readonly failure?: BlobFailure; readonly warnings: readonly BlobWarning[] } {
  const warnings: BlobWarning[] = [];
  const hashes = new Map<string, string>();
  let failure: BlobFailure | undefined;
  for (const { sha256, bytes, at } of named) {
    const given = blobs.get(sha256);
    if (given === undefined) warnings.push({ code: 'blob-missing', at, blob: sha256 });
    else {
      const hash = hashes.get(sha256) ?? sha256Hex(given);
      hashes.set(sha256, hash);
      const field = hash !== sha256 ? 'sha256' : given.length !== bytes ? 'bytes' : undefined;
      if (field !== undefined) failure ??= { verdict: 'blob-changed', at, blob: sha256, field };
    }
  }
  const known = new Set(named.map(({ sha256 }) => sha256));
  for (const blob of [...blobs.keys()].sort()) if (!known.has(blob)) warnings.push({ code: 'blob-unnamed', blob });
  return { ...(failure === undefined ? {} : { failure }), warnings };
}
