import { sha256Hex } from './hash.ts';
import type { BlobReference } from './log-event.ts';

/** What a picture or curve beside an event is, in the order in which they travel: what proves most comes first. */
export const blobKinds = ['curve', 'preview', 'photo', 'document'] as const;
export type BlobKind = (typeof blobKinds)[number];

/**
 * How an event names the bytes that belong to it. A photo must be freed of its place and camera before.
 *
 * @param bytes - as they are stored
 * @param kind - what they are
 */
export function blobReference(bytes: Uint8Array, kind: BlobKind): BlobReference {
  return { sha256: sha256Hex(bytes), bytes: bytes.length, kind };
}
