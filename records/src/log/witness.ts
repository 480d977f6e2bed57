import { type Checkpoint, unsignedEntry } from './checkpoint.ts';
import { isHash } from './hash.ts';
import { hasFields } from './log-event.ts';
import { deviceOf } from './log-state.ts';
import { consistencyHolds } from './merkle-proof.ts';
import { type Sign, signatureHolds, signatureOf, type Verify } from './signing.ts';

/** What a server or another device says of a log it met: I saw it at this size, with this root and last event. */
export interface WitnessStatement {
  readonly v: 1;
  readonly plant: string;
  readonly device: string;
  readonly size: number;
  readonly root: string;
  readonly head: string;
  readonly at: string;
  /** SHA-256 of the witness's public key. */
  readonly witness: string;
  readonly sig: string;
}

const fields = 'at,device,head,plant,root,sig,size,v,witness';

/** What a witness finds when a log shows it a checkpoint. */
export type Meeting =
  /** Nothing was known of the log: nothing to compare with. */
  | 'first-seen'
  | 'same'
  | 'grown'
  /** Older than what is known; nothing wrong by itself, but nothing to countersign. */
  | 'older'
  /** Larger, but not shown to contain what is known: ask for a proof. */
  | 'not-proved'
  /** The log says two different things of one size. */
  | 'fork';

/**
 * Weighs a checkpoint against the latest that is known of its log. The caller stores the new one before it answers,
 * in one step with the comparison; else two answers at once let a log roll back.
 *
 * @param known - latest sound checkpoint of this log, if any
 * @param offered - a sound checkpoint of it
 * @param proof - that the known one is a beginning of the offered
 */
export function meetCheckpoint(known: Checkpoint | undefined, offered: Checkpoint, proof: readonly string[]): Meeting {
  if (known === undefined) return 'first-seen';
  if (offered.size === known.size) return offered.root === known.root && offered.head === known.head ? 'same' : 'fork';
  if (offered.size < known.size) return 'older';
  const claim = { first: known.size, second: offered.size, firstRoot: known.root, secondRoot: offered.root, proof };
  return consistencyHolds(claim) ? 'grown' : 'not-proved';
}

/**
 * Countersigns a checkpoint.
 *
 * @param checkpoint - sound, and weighed before
 * @param at - wall clock of the witness, UTC
 * @param key - of the witness
 */
export async function signWitness(
  { plant, device, size, root, head }: Checkpoint,
  at: string,
  key: { readonly publicKey: Uint8Array; readonly sign: Sign },
): Promise<WitnessStatement> {
  const said = { v: 1, plant, device, size, root, head, at, witness: deviceOf(key.publicKey) } as const;
  return { ...said, sig: await signatureOf('witness', said, key.sign) };
}

/**
 * A witness's statement whose fields and signature are right, or undefined.
 *
 * @param value - anything
 * @param publicKey - of the witness
 * @param verify - checks a signature
 */
export async function soundWitness(
  value: unknown,
  publicKey: Uint8Array,
  verify: Verify,
): Promise<WitnessStatement | undefined> {
  if (!hasFields(value, fields) || value['v'] !== 1 || value['witness'] !== deviceOf(publicKey)) return undefined;
  const statement = value as unknown as WitnessStatement;
  if (!Number.isSafeInteger(statement.size) || !isHash(statement.root) || !isHash(statement.head)) return undefined;
  const entry = unsignedEntry(statement);
  if (entry === undefined) return undefined;
  const { sig } = statement;
  return (await signatureHolds({ kind: 'witness', entry, sig, publicKey, verify })) ? statement : undefined;
}
