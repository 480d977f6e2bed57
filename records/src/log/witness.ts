import { type Checkpoint, markFault, unsignedEntry } from './checkpoint.ts';
import { isHash } from './hash.ts';
import { deviceOf } from './log-state.ts';
import { consistencyHolds } from './merkle-proof.ts';
import { type Sign, signatureHolds, signatureOf, type Verify } from './signing.ts';
import { hasFields, wrongField } from './wrong-field.ts';

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

const fields = ['at', 'device', 'head', 'plant', 'root', 'sig', 'size', 'v', 'witness'];

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
  return (await witnessFault(value, publicKey, verify)) === undefined ? (value as WitnessStatement) : undefined;
}

/**
 * The first field that keeps a value from being a statement of a witness: by names and version first, then plant,
 * device, size, root, head, witness, signature.
 *
 * @param value - anything
 * @param publicKey - of the witness
 * @param verify - checks a signature
 * @returns undefined for a sound one; an empty name for what has no fields at all
 */
export async function witnessFault(value: unknown, publicKey: Uint8Array, verify: Verify): Promise<string | undefined> {
  if (!hasFields(value, fields)) return wrongField(value, fields);
  const { plant, device, witness, sig } = value;
  if (typeof plant !== 'string') return 'plant';
  if (!isHash(device)) return 'device';
  const form = markFault(value);
  if (form !== undefined) return form;
  // A device that vouches for its own log says nothing that its checkpoint does not say.
  if (witness !== deviceOf(publicKey) || witness === device) return 'witness';
  const entry = unsignedEntry({ ...value, sig });
  if (entry === undefined) return 'sig';
  return (await signatureHolds({ kind: 'witness', entry, sig, publicKey, verify })) ? undefined : 'sig';
}
