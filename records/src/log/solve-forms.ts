import { Refusal } from '@loopwright/engine/refusal';
import { hexToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from './canonical.ts';
import { compareLogs } from './compare-logs.ts';
import { isHash, sha256Hex } from './hash.ts';
import { logRoot } from './log-state.ts';
import { leafHash } from './merkle.ts';
import { consistencyHolds, inclusionHolds } from './merkle-proof.ts';
import type { Verify } from './signing.ts';
import { readStrictly } from './strict-json.ts';
import type { LogWarning, Verdict } from './verdict.ts';
import { verifyLog } from './verify-log.ts';

/** Question and answer of the topic `canonical`. */
export interface CanonicalQuestion {
  readonly bytes_hex: string;
}
export interface CanonicalAnswer {
  readonly canonical: string;
  /** Of the canonical form as UTF-8. */
  readonly sha256: string;
}

/**
 * Canonical form and hash of a JSON text.
 *
 * @throws Refusal `not-hex`, or a code of the strict reader
 */
export function solveCanonical({ bytes_hex }: CanonicalQuestion): CanonicalAnswer {
  const read = readStrictly(bytesOf(bytes_hex, 'bytes_hex'));
  if ('fault' in read) throw new Refusal(read.fault, 'bytes_hex');
  const canonical = canonicalText(read.value);
  return { canonical, sha256: sha256Hex(canonical) };
}

/** Question and answer of the topic `log`. */
export interface LogQuestion {
  readonly lines: readonly string[];
  readonly publicKey_hex: string;
  readonly plant: string;
  readonly checkpoints: readonly unknown[];
}
export interface LogAnswer {
  readonly verdict: Verdict;
  readonly at?: number;
  /** Events that a checkpoint vouches for; with `truncated`, how many the checkpoint speaks of. */
  readonly witnessed: number;
  /** The log as far as it is whole. */
  readonly size: number;
  readonly head: string;
  readonly root: string;
  readonly warnings: readonly LogWarning[];
}

/**
 * Whether a log is whole.
 *
 * @throws Refusal `not-hex`, `wrong-length`
 */
export async function solveLog(
  { lines, publicKey_hex, plant, checkpoints }: LogQuestion,
  verify: Verify,
): Promise<LogAnswer> {
  const log = { lines, plant, checkpoints, publicKey: publicKeyOf(publicKey_hex) };
  const { failure, state, witnessed, warnings } = await verifyLog(log, verify);
  const found = failure ?? { verdict: 'ok' as const };
  return { witnessed, ...found, size: state.size, head: state.head, root: logRoot(state), warnings };
}

/** Question and answer of the topic `two-logs`. */
export interface TwoLogsQuestion {
  readonly a: readonly string[];
  readonly b: readonly string[];
  readonly publicKey_hex: string;
  readonly plant: string;
}
export interface TwoLogsAnswer {
  readonly verdict: Verdict;
  readonly at: number;
  /** The copy that is not whole in itself. */
  readonly log?: 'a' | 'b';
}

/**
 * Where two copies of one log part.
 *
 * @throws Refusal `not-hex`, `wrong-length`
 */
export async function solveTwoLogs(
  { publicKey_hex, ...logs }: TwoLogsQuestion,
  verify: Verify,
): Promise<TwoLogsAnswer> {
  return compareLogs({ ...logs, publicKey: publicKeyOf(publicKey_hex) }, verify);
}

/** Question of the topic `inclusion`; the answer says whether it holds. */
export interface InclusionQuestion {
  readonly entry_hex: string;
  readonly index: number;
  readonly size: number;
  readonly proof: readonly string[];
  readonly root: string;
}
export interface ProofAnswer {
  readonly holds: boolean;
}

/**
 * Whether an entry stands in a tree. The entry is hashed here.
 *
 * @throws Refusal `not-hex`, `not-a-hash`
 */
export function solveInclusion({ entry_hex, index, size, proof, root }: InclusionQuestion): ProofAnswer {
  const leaf = leafHash(bytesOf(entry_hex, 'entry_hex'));
  const claim = { leaf, index, size, proof: hashesOf(proof, 'proof'), root: hashOf(root, 'root') };
  return { holds: inclusionHolds(claim) };
}

/** Question of the topic `consistency`. */
export interface ConsistencyQuestion {
  readonly first: number;
  readonly second: number;
  readonly proof: readonly string[];
  readonly firstRoot: string;
  readonly secondRoot: string;
}

/**
 * Whether one tree is the beginning of another.
 *
 * @throws Refusal `not-a-hash`
 */
export function solveConsistency({ first, second, ...given }: ConsistencyQuestion): ProofAnswer {
  const proof = hashesOf(given.proof, 'proof');
  const firstRoot = hashOf(given.firstRoot, 'firstRoot');
  const secondRoot = hashOf(given.secondRoot, 'secondRoot');
  return { holds: consistencyHolds({ first, second, firstRoot, secondRoot, proof }) };
}

function bytesOf(hex: string, path: string): Uint8Array {
  if (!/^([0-9a-fA-F]{2})*$/.test(hex)) throw new Refusal('not-hex', path);
  return hexToBytes(hex);
}

function publicKeyOf(hex: string): Uint8Array {
  const key = bytesOf(hex, 'publicKey_hex');
  if (key.length !== 32)
    throw new Refusal('wrong-length', 'publicKey_hex', { value: key.length, min: 32, max: 32, unit: 'bytes' });
  return key;
}

function hashOf(text: string, path: string): string {
  const lower = text.toLowerCase();
  if (!isHash(lower)) throw new Refusal('not-a-hash', path, { value: text.slice(0, 80) });
  return lower;
}

function hashesOf(texts: readonly string[], path: string): readonly string[] {
  return texts.map((text, i) => hashOf(text, `${path}[${i}]`));
}
