import { utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from './canonical.ts';
import { isHash } from './hash.ts';
import { hasFields, noEvent } from './log-event.ts';
import { type LogState, logRoot } from './log-state.ts';
import { emptyRoot } from './merkle.ts';
import { type Sign, signatureHolds, signatureOf, type Verify } from './signing.ts';

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

const fields = 'at,device,head,plant,root,sig,size,v';

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
  if (!hasFields(value, fields) || !isForm(value)) return undefined;
  if (value.plant !== owner.plant || value.device !== owner.device) return undefined;
  const entry = unsignedEntry(value);
  if (entry === undefined) return undefined;
  const { publicKey, verify } = owner;
  return (await signatureHolds({ kind: 'checkpoint', entry, sig: value.sig, publicKey, verify })) ? value : undefined;
}

function isForm(value: object): value is Checkpoint {
  const { v, size, root, head } = value as Record<string, unknown>;
  if (v !== 1 || typeof size !== 'number' || !Number.isSafeInteger(size) || size < 0) return false;
  return isHash(root) && isHash(head) && (size > 0 || (root === emptyRoot && head === noEvent));
}

/** Canonical form of a signed thing without its signature, as UTF-8; undefined where it has none. */
export function unsignedEntry({ sig: _, ...said }: { readonly sig: unknown }): Uint8Array | undefined {
  try {
    return utf8ToBytes(canonicalText(said));
  } catch {
    return undefined;
  }
}
