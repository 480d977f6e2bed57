import { utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from './canonical.ts';
import { isHash } from './hash.ts';
import { noEvent } from './log-event.ts';
import { type LogState, logRoot } from './log-state.ts';
import { emptyRoot } from './merkle.ts';
import { type Sign, signatureHolds, signatureOf, type Verify } from './signing.ts';
import { hasFields, wrongField } from './wrong-field.ts';

/** What a device says of its own log: so many events, this root, this last one. */
export interface Checkpoint {
  readonly v: 1;
  readonly plant: string;
  readonly device: string;
  readonly size: number;
  readonly root: string;
  readonly head: string;
  readonly at: string;
  readonly sig: string;
}

const fields = ['at', 'device', 'head', 'plant', 'root', 'sig', 'size', 'v'];

/**
 * A signed statement of how far a log has come.
 *
 * @param state - of the log
 * @param at - wall clock, UTC
 * @param sign - with the device's key
 */
export async function signCheckpoint(state: LogState, at: string, sign: Sign): Promise<Checkpoint> {
  const { plant, device, size, head } = state;
  const said = { v: 1, plant, device, size, root: logRoot(state), head, at } as const;
  return { ...said, sig: await signatureOf('checkpoint', said, sign) };
}

/** Whose checkpoint it must be. */
export interface CheckpointOwner {
  readonly plant: string;
  readonly device: string;
  readonly publicKey: Uint8Array;
  readonly verify: Verify;
}

/**
 * A checkpoint whose fields and signature are right, or undefined.
 *
 * @param value - anything
 * @param owner - the log it must belong to
 */
export async function soundCheckpoint(value: unknown, owner: CheckpointOwner): Promise<Checkpoint | undefined> {
  return (await checkpointFault(value, owner)) === undefined ? (value as Checkpoint) : undefined;
}

/**
 * The first field that keeps a value from being a checkpoint of a log: by names and version first, then plant, device,
 * size, root, head, signature.
 *
 * @param value - anything
 * @param owner - the log it must belong to
 * @returns undefined for a sound one; an empty name for what has no fields at all
 */
export async function checkpointFault(value: unknown, owner: CheckpointOwner): Promise<string | undefined> {
  if (!hasFields(value, fields)) return wrongField(value, fields);
  if (value['plant'] !== owner.plant) return 'plant';
  if (value['device'] !== owner.device) return 'device';
  const form = markFault(value);
  if (form !== undefined) return form;
  const { sig } = value;
  const entry = unsignedEntry({ ...value, sig });
  if (entry === undefined) return 'sig';
  const { publicKey, verify } = owner;
  return (await signatureHolds({ kind: 'checkpoint', entry, sig, publicKey, verify })) ? undefined : 'sig';
}

/** The first of size, root and head that no log can have. */
export function markFault({
  size,
  root,
  head,
}: Readonly<Record<string, unknown>>): 'size' | 'root' | 'head' | undefined {
  if (typeof size !== 'number' || !Number.isSafeInteger(size) || size < 0) return 'size';
  if (!isHash(root) || (size === 0 && root !== emptyRoot)) return 'root';
  return isHash(head) && (size > 0 || head === noEvent) ? undefined : 'head';
}

/** Canonical form of a signed thing without its signature, as UTF-8; undefined where it has none. */
export function unsignedEntry({ sig: _, ...said }: { readonly sig: unknown }): Uint8Array | undefined {
  try {
    return utf8ToBytes(canonicalText(said));
  } catch {
    return undefined;
  }
}
