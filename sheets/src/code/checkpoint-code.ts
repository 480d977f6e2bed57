import type { Checkpoint, Countersignature } from '@loopwright/records/log';
import { base32OfHex, hexOfBase32 } from './base-32.ts';
import { checksum, family, sealed, separator } from './checksum.ts';

/** Letters behind the family's name that tell what a log says of itself from what a witness says of it. */
const [checkpointKind, witnessKind] = ['C', 'W'];
const [hashDigits, signatureDigits] = [64, 128];
/** A moment and a plant's id hold no space; the record checks what they say. */
const word = /^\S{1,64}$/;

/** A checkpoint with the public key that its signature is checked by, in hex. */
export interface CheckpointWithKey {
  readonly key: string;
  readonly checkpoint: Checkpoint;
}

/**
 * The payload of a checkpoint's code: `LW1C key plant size root head at signature checksum`. Whole, so that whoever scans
 * it can check and countersign it without the log. The device is left out: it is the hash of the key.
 *
 * @param given - signed checkpoint and key
 */
export function checkpointCode({ key, checkpoint }: CheckpointWithKey): string {
  return sealed([`${family}${checkpointKind}`, base32OfHex(key), ...marked(checkpoint)]);
}

/**
 * Reads the code of a checkpoint. Its signature and its form are still to be checked.
 *
 * @param text - as scanned
 * @param deviceOf - SHA-256 of a public key, both in hex
 * @returns undefined for anything that is no such code or was read wrongly
 */
export function readCheckpointCode(text: string, deviceOf: (key: string) => string): CheckpointWithKey | undefined {
  const [key32 = '', ...rest] = fieldsOf(text, checkpointKind) ?? [];
  const key = hexOfBase32(key32, hashDigits);
  const said = rest.length === 6 ? readMarked(rest) : undefined;
  return key === undefined || said === undefined ? undefined : { key, checkpoint: { ...said, device: deviceOf(key) } };
}

/**
 * The payload of a countersignature's code: `LW1W key device plant size root head at signature checksum`, to give it back
 * to the device whose log was seen.
 *
 * @param given - what the witness signed, and its key
 */
export function witnessCode({ key, statement }: Countersignature): string {
  return sealed([`${family}${witnessKind}`, base32OfHex(key), base32OfHex(statement.device), ...marked(statement)]);
}

/**
 * Reads the code of a countersignature. Its signature and its form are still to be checked.
 *
 * @param text - as scanned
 * @param deviceOf - SHA-256 of a public key, both in hex
 * @returns undefined for anything that is no such code or was read wrongly
 */
export function readWitnessCode(text: string, deviceOf: (key: string) => string): Countersignature | undefined {
  const [key32 = '', device32 = '', ...rest] = fieldsOf(text, witnessKind) ?? [];
  const [key, device] = [hexOfBase32(key32, hashDigits), hexOfBase32(device32, hashDigits)];
  const said = rest.length === 6 ? readMarked(rest) : undefined;
  if (key === undefined || device === undefined || said === undefined) return undefined;
  return { v: 1, key, statement: { ...said, device, witness: deviceOf(key) } };
}

type Marked = Omit<Checkpoint, 'device'>;

function marked({ plant, size, root, head, at, sig }: Marked): readonly string[] {
  return [plant, String(size), base32OfHex(root), base32OfHex(head), at, base32OfHex(sig)];
}

function readMarked(fields: readonly string[]): Marked | undefined {
  const [plant = '', size = '', root32 = '', head32 = '', at = '', sig32 = ''] = fields;
  const [root, head] = [hexOfBase32(root32, hashDigits), hexOfBase32(head32, hashDigits)];
  const sig = hexOfBase32(sig32, signatureDigits);
  if (root === undefined || head === undefined || sig === undefined) return undefined;
  if (!word.test(plant) || !word.test(at) || !/^(0|[1-9]\d{0,14})$/.test(size)) return undefined;
  return { v: 1, plant, size: Number(size), root, head, at, sig };
}

/** What stands between the name of a code and its checksum. */
function fieldsOf(text: string, kind: string): readonly string[] | undefined {
  const parts = text.trim().split(separator);
  const isOf = parts[0] === `${family}${kind}` && parts.at(-1) === checksum(parts.slice(0, -1).join(separator));
  return isOf ? parts.slice(1, -1) : undefined;
}
