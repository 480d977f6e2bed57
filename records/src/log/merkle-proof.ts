import { isHash } from './hash.ts';
import { emptyRoot, nodeHash, rootOfLeaves } from './merkle.ts';

/** Largest power of two below n, for n > 1. */
function split(n: number): number {
  let k = 1;
  while (k * 2 < n) k *= 2;
  return k;
}

/**
 * The hashes beside the way from an entry to the root.
 *
 * @param leaves - hashes of all entries of the tree
 * @param index - of the entry, from 0
 * @source RFC 9162, 2.1.3.1
 */
export function inclusionProof(leaves: readonly string[], index: number): readonly string[] {
  if (leaves.length <= 1) return [];
  const k = split(leaves.length);
  const [left, right] = [leaves.slice(0, k), leaves.slice(k)];
  return index < k
    ? [...inclusionProof(left, index), rootOfLeaves(right)]
    : [...inclusionProof(right, index - k), rootOfLeaves(left)];
}

/** A claim that an entry stands at a place of a tree. */
export interface InclusionClaim {
  /** Hash of the entry, made from the entry itself: an inner node could else pass for an entry of a smaller tree. */
  readonly leaf: string;
  readonly index: number;
  /** Size and root come from a signed checkpoint. */
  readonly size: number;
  readonly root: string;
  readonly proof: readonly string[];
}

/**
 * Whether an entry stands at a place of the tree with this size and root.
 *
 * @source RFC 9162, 2.1.3.2
 */
export function inclusionHolds({ leaf, index, size, root, proof }: InclusionClaim): boolean {
  if (!isCount(index) || !isCount(size) || index >= size || !proof.every(isHash)) return false;
  let [place, last, node] = [index, size - 1, leaf];
  for (const beside of proof) {
    if (last === 0) return false;
    if (place % 2 === 1 || place === last) {
      node = nodeHash(beside, node);
      [place, last] = climbed(place, last);
    } else node = nodeHash(node, beside);
    [place, last] = [half(place), half(last)];
  }
  return last === 0 && node === root;
}

/** Up past the levels at which a last node without a neighbour is carried on as it is. */
function climbed(place: number, last: number): [number, number] {
  let [at, end] = [place, last];
  while (at % 2 === 0 && at !== 0) [at, end] = [half(at), half(end)];
  return [at, end];
}

// Not by shifting: shifts work on 32 bits, sizes may be larger.
const half = (n: number): number => Math.floor(n / 2);
const isCount = (n: number): boolean => Number.isSafeInteger(n) && n >= 0;

/**
 * The hashes that show an earlier state of the tree to be a beginning of the present one.
 *
 * @param leaves - hashes of all entries of the present tree
 * @param first - size of the earlier one, 0 to the present
 * @source RFC 9162, 2.1.4.1
 */
export function consistencyProof(leaves: readonly string[], first: number): readonly string[] {
  return first === 0 || first === leaves.length ? [] : subproof(leaves, first, true);
}

function subproof(leaves: readonly string[], first: number, whole: boolean): readonly string[] {
  if (first === leaves.length) return whole ? [] : [rootOfLeaves(leaves)];
  const k = split(leaves.length);
  const [left, right] = [leaves.slice(0, k), leaves.slice(k)];
  return first <= k
    ? [...subproof(left, first, whole), rootOfLeaves(right)]
    : [...subproof(right, first - k, false), rootOfLeaves(left)];
}

/** A claim that a tree is the beginning of another. */
export interface ConsistencyClaim {
  readonly first: number;
  readonly second: number;
  readonly firstRoot: string;
  readonly secondRoot: string;
  readonly proof: readonly string[];
}

/**
 * Whether the first tree is a beginning of the second.
 *
 * @source RFC 9162, 2.1.4.2
 */
export function consistencyHolds({ first, second, firstRoot, secondRoot, proof }: ConsistencyClaim): boolean {
  if (!isCount(first) || !isCount(second) || first > second || !proof.every(isHash)) return false;
  if (first === second) return proof.length === 0 && firstRoot === secondRoot && (first > 0 || firstRoot === emptyRoot);
  // Nothing is a beginning of everything; there is nothing to prove.
  if (first === 0) return proof.length === 0 && firstRoot === emptyRoot;
  return laterConsistencyHolds({ first, second, firstRoot, secondRoot, proof });
}

function laterConsistencyHolds({ first, second, firstRoot, secondRoot, proof }: ConsistencyClaim): boolean {
  const path = isPowerOfTwo(first) ? [firstRoot, ...proof] : proof;
  const start = path[0];
  if (start === undefined || proof.length === 0) return false;
  let [place, last] = [first - 1, second - 1];
  while (place % 2 === 1) [place, last] = [half(place), half(last)];
  let [older, newer] = [start, start];
  for (const beside of path.slice(1)) {
    if (last === 0) return false;
    if (place % 2 === 1 || place === last) {
      [older, newer] = [nodeHash(beside, older), nodeHash(beside, newer)];
      [place, last] = climbed(place, last);
    } else newer = nodeHash(newer, beside);
    [place, last] = [half(place), half(last)];
  }
  return last === 0 && older === firstRoot && newer === secondRoot;
}

function isPowerOfTwo(n: number): boolean {
  let rest = n;
  while (rest % 2 === 0) rest /= 2;
  return rest === 1;
}
