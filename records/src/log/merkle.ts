import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes, hexToBytes } from '@noble/hashes/utils.js';
import { sha256Hex } from './hash.ts';

// Leaves and inner nodes are hashed behind different first bytes, else a node could pass for an entry.
const leafMark = Uint8Array.of(0);
const nodeMark = Uint8Array.of(1);

/** Root of a tree without entries. */
export const emptyRoot: string = sha256Hex('');

/**
 * Hash of an entry: SHA-256(0x00 ‖ entry).
 *
 * @source RFC 9162, 2.1.1
 */
export function leafHash(entry: Uint8Array): string {
  return bytesToHex(sha256(concatBytes(leafMark, entry)));
}

/**
 * Hash of two subtrees: SHA-256(0x01 ‖ left ‖ right).
 *
 * @source RFC 9162, 2.1.1
 */
export function nodeHash(left: string, right: string): string {
  return bytesToHex(sha256(concatBytes(nodeMark, hexToBytes(left), hexToBytes(right))));
}

/**
 * What must be kept of a growing tree to go on: the roots of its full subtrees, largest first. One for each bit that
 * is set in its size.
 */
export interface Frontier {
  readonly size: number;
  readonly peaks: readonly string[];
}

export const emptyFrontier: Frontier = { size: 0, peaks: [] };

/**
 * A tree with one entry more; costs as many hashes as the old size has ones at its end.
 *
 * @param frontier - of the tree so far
 * @param leaf - hash of the new entry
 */
export function grown({ size, peaks }: Frontier, leaf: string): Frontier {
  const next = [...peaks];
  let top = leaf;
  for (let rest = size; rest % 2 === 1; rest = (rest - 1) / 2) top = nodeHash(next.pop() ?? '', top);
  next.push(top);
  return { size: size + 1, peaks: next };
}

/**
 * Root of a tree.
 *
 * @param frontier - of the tree
 * @source RFC 9162, 2.1.1
 */
export function rootOf({ peaks }: Frontier): string {
  return peaks.length === 0 ? emptyRoot : peaks.reduceRight((right, left) => nodeHash(left, right));
}

/**
 * Root over entries whose hashes are given.
 *
 * @param leaves - hashes of the entries, in their order
 */
export function rootOfLeaves(leaves: readonly string[]): string {
  return rootOf(leaves.reduce(grown, emptyFrontier));
}
