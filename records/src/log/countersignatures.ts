import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { canonicalText, canonicalValue } from './canonical.ts';
import { contradiction, type Marks } from './check-checkpoints.ts';
import { isHash } from './hash.ts';
import { lineAt } from './line-source.ts';
import type { Verify } from './signing.ts';
import type { Failure } from './verdict.ts';
import { type WitnessStatement, witnessFault } from './witness.ts';
import { hasFields, namedField, wrongField } from './wrong-field.ts';

/** A statement of a witness with the key that it was signed with: one line of a file of countersignatures. */
export interface Countersignature {
  readonly v: 1;
  /** Public key of the witness, in hex. */
  readonly key: string;
  readonly statement: WitnessStatement;
}

const fields = ['key', 'statement', 'v'];

/** A countersignature as it is kept and passed on. */
export function countersignature(statement: WitnessStatement, publicKey: Uint8Array): Countersignature {
  return { v: 1, key: bytesToHex(publicKey), statement };
}

/** The text of a file of countersignatures: one canonical line each, every line ended. */
export function writeCountersignatures(list: readonly Countersignature[]): string {
  return list.map((each) => `${canonicalText(each)}\n`).join('');
}

/** Where a file of countersignatures fails. */
export interface WitnessFailure extends Omit<Failure, 'verdict'> {
  /** `bad-witness`: the line by itself; the others: what it says and the log does not. */
  readonly verdict: 'bad-witness' | 'truncated' | 'history-rewritten';
  /** Log that the statement is about. */
  readonly device?: string;
  /** Line of the statement that the log contradicts. */
  readonly witness?: number;
}

/** Countersignatures held against the logs that they speak of. */
export interface WitnessesChecked {
  readonly failure?: WitnessFailure;
  /** Sound, and not contradicted; up to the first failure. */
  readonly countersignatures: readonly Countersignature[];
  /** Lines that speak of a log which is not here. */
  readonly elsewhere: readonly number[];
}

export interface WitnessedLogs {
  readonly plant: string;
  readonly verify: Verify;
  /** By device: size, and marks at the sizes that the statements speak of. */
  readonly logs: ReadonlyMap<string, { readonly size: number; readonly marks: Marks }>;
}

/**
 * Checks countersignatures, each by itself and against its log, line by line.
 *
 * @param bytes - of the file
 * @param held - the logs
 */
export async function checkCountersignatures(bytes: Uint8Array, held: WitnessedLogs): Promise<WitnessesChecked> {
  const countersignatures: Countersignature[] = [];
  const elsewhere: number[] = [];
  let line = 0;
  for (let start = 0; start < bytes.length; line++) {
    const { text, next } = lineAt(bytes, start);
    start = next;
    const value = text === undefined ? undefined : canonicalValue(text);
    const fault = await countersignatureFault(value, held.plant, held.verify);
    if (fault !== undefined) {
      const failure = { verdict: 'bad-witness' as const, at: line, ...namedField(fault) };
      return { failure, countersignatures, elsewhere };
    }
    const { statement } = value as Countersignature;
    const failure = contradicted(statement, held, line);
    if (failure !== undefined) return { failure, countersignatures, elsewhere };
    if (!held.logs.has(statement.device)) elsewhere.push(line);
    countersignatures.push(value as Countersignature);
  }
  return { countersignatures, elsewhere };
}

/**
 * The first field that keeps a value from being a countersignature for a plant; those of the statement read like
 * `statement.size`.
 *
 * @param value - anything
 * @param plant - id of the plant it must be for
 * @param verify - checks a signature
 * @returns undefined for a sound one; an empty name for what has no fields at all
 */
export async function countersignatureFault(
  value: unknown,
  plant: string,
  verify: Verify,
): Promise<string | undefined> {
  if (!hasFields(value, fields)) return wrongField(value, fields);
  const { key, statement } = value;
  // A public key has as many digits as a hash.
  if (!isHash(key)) return 'key';
  const fault = await witnessFault(statement, hexToBytes(key), verify);
  if (fault !== undefined) return fault === '' ? 'statement' : `statement.${fault}`;
  return (statement as WitnessStatement).plant === plant ? undefined : 'statement.plant';
}

/** The sizes that countersignatures speak of, by device; what they say of them is checked later. */
export function sizesWitnessed(bytes: Uint8Array): ReadonlyMap<string, ReadonlySet<number>> {
  const sizes = new Map<string, Set<number>>();
  for (let start = 0; start < bytes.length; ) {
    const { text, next } = lineAt(bytes, start);
    start = next;
    const value = (text === undefined ? undefined : canonicalValue(text)) as
      | Partial<Countersignature>
      | null
      | undefined;
    const { device, size } = (value?.statement ?? {}) as Partial<WitnessStatement>;
    if (typeof device === 'string' && typeof size === 'number')
      sizes.set(device, (sizes.get(device) ?? new Set()).add(size));
  }
  return sizes;
}

function contradicted(statement: WitnessStatement, { logs }: WitnessedLogs, line: number): WitnessFailure | undefined {
  const { device } = statement;
  const log = logs.get(device);
  const failure = log === undefined ? undefined : contradiction(statement, log);
  return failure === undefined ? undefined : ({ ...failure, device, witness: line } as WitnessFailure);
}
