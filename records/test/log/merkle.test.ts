import { hexToBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  consistencyHolds,
  consistencyProof,
  emptyFrontier,
  grown,
  inclusionHolds,
  inclusionProof,
  leafHash,
  rootOf,
  rootOfLeaves,
  sha256Hex,
} from '../../src/log/index.ts';
import { consistency6to8, entries, inclusion5in8, roots } from '../vectors/rfc-6962.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
const leaves = entries.map((entry) => leafHash(hexToBytes(entry)));
const leavesOf = (count: number) => Array.from({ length: count }, (_, i) => leafHash(Uint8Array.of(i & 255, i >> 8)));
const many = leavesOf(130);
const rootsOfMany = Array.from({ length: many.length + 1 }, (_, size) => rootOfLeaves(many.slice(0, size)));

describe('Merkle tree', () => {
  it.each(roots.map((root, size) => [size, root] as const))('[LOG-10] RFC 6962: root of size %d', (size, root) => {
    expect(rootOfLeaves(leaves.slice(0, size))).toBe(root);
  });

  it('[LOG-10] RFC 6962: entry 5 in the tree of 8', () => {
    expect(inclusionProof(leaves, 5)).toEqual(inclusion5in8);
    const claim = { leaf: leaves[5] ?? '', index: 5, size: 8, root: roots[8] ?? '', proof: inclusion5in8 };
    expect(inclusionHolds(claim)).toBe(true);
  });

  it('[LOG-10] RFC 6962: the tree of 6 begins the tree of 8', () => {
    expect(consistencyProof(leaves, 6)).toEqual(consistency6to8);
    const claim = {
      first: 6,
      second: 8,
      firstRoot: roots[6] ?? '',
      secondRoot: roots[8] ?? '',
      proof: consistency6to8,
    };
    expect(consistencyHolds(claim)).toBe(true);
  });

  it('[LOG-11] a tree that grows entry by entry keeps one root per set bit, and has the root of the definition', () => {
    // The recursive definition of RFC 9162, 2.1.1, written out apart from the code under test.
    const defined = (list: readonly string[]): string => {
      if (list.length === 0) return sha256Hex('');
      if (list.length === 1) return list[0] ?? '';
      const k = 2 ** Math.ceil(Math.log2(list.length) - 1);
      const pair = `01${defined(list.slice(0, k))}${defined(list.slice(k))}`;
      return sha256Hex(hexToBytes(pair));
    };
    let tree = emptyFrontier;
    for (let size = 0; size < many.length; size++) {
      expect(rootOf(tree)).toBe(defined(many.slice(0, size)));
      expect(tree.peaks).toHaveLength(size.toString(2).replaceAll('0', '').length);
      tree = grown(tree, many[size] ?? '');
    }
  });

  it('[LOG-12] every entry of every tree up to 130 has a proof, and it holds for no other place', () => {
    for (let size = 1; size <= many.length; size += size < 20 ? 1 : 22) {
      const list = many.slice(0, size);
      const root = rootsOfMany[size] ?? '';
      for (let index = 0; index < size; index++) {
        const proof = inclusionProof(list, index);
        const claim = { leaf: list[index] ?? '', index, size, root, proof };
        expect(inclusionHolds(claim)).toBe(true);
        expect(inclusionHolds({ ...claim, index: index + 1 })).toBe(false);
        expect(inclusionHolds({ ...claim, leaf: many[(index + 1) % 130] ?? '' })).toBe(false);
        expect(inclusionHolds({ ...claim, proof: [...proof, root] })).toBe(false);
      }
    }
  });

  it('[LOG-12] an inner node is no entry', () => {
    // Node 0..1 stands where entry 0 of a tree of half the size would stand; only the entry's own hash tells.
    const [a, b] = [leaves[0] ?? '', leaves[1] ?? ''];
    const inner = hexToBytes(`${a}${b}`);
    expect(leafHash(inner)).not.toBe(rootOfLeaves([a, b]));
  });

  it('[LOG-13] every tree begins every later one, and the proof holds for nothing else', () => {
    for (let second = 0; second <= many.length; second += second < 20 ? 1 : 22) {
      for (let first = 0; first <= second; first++) {
        const proof = consistencyProof(many.slice(0, second), first);
        const claim = {
          first,
          second,
          firstRoot: rootsOfMany[first] ?? '',
          secondRoot: rootsOfMany[second] ?? '',
          proof,
        };
        expect(consistencyHolds(claim), `${first} to ${second}`).toBe(true);
        const other = sha256Hex('another root');
        expect(consistencyHolds({ ...claim, secondRoot: other })).toBe(first === 0 && second > 0);
        expect(consistencyHolds({ ...claim, firstRoot: other })).toBe(false);
        expect(consistencyHolds({ ...claim, proof: [...proof, other] })).toBe(false);
      }
    }
  });

  it('[LOG-13] a later tree is not the beginning of an earlier one', () => {
    const claim = {
      first: 8,
      second: 6,
      firstRoot: roots[8] ?? '',
      secondRoot: roots[6] ?? '',
      proof: consistency6to8,
    };
    expect(consistencyHolds(claim)).toBe(false);
  });

  it('[LOG-12] [LOG-13] a proof with one bit changed does not hold', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 130 }), fc.nat(), fc.nat(), fc.nat(), (size, a, b, c) => {
        const list = many.slice(0, size);
        const index = a % size;
        const flip = (proof: readonly string[]) =>
          proof.map((hash, i) => (i === b % proof.length ? flipped(hash, c % 256) : hash));
        const inclusion = flip(inclusionProof(list, index));
        expect(
          inclusionHolds({ leaf: list[index] ?? '', index, size, root: rootsOfMany[size] ?? '', proof: inclusion }),
        ).toBe(false);
        const first = 1 + (a % (size - 1));
        const proof = flip(consistencyProof(list, first));
        const [firstRoot, secondRoot] = [rootsOfMany[first] ?? '', rootsOfMany[size] ?? ''];
        expect(consistencyHolds({ first, second: size, firstRoot, secondRoot, proof })).toBe(false);
      }),
      { ...runs, numRuns: runs.numRuns / 4 },
    );
  });

  it('[LOG-11] sizes beyond 32 bits are counted rightly', () => {
    // The last entry of a tree of 2^40 + 1 hangs directly under the root.
    const [left, last] = [sha256Hex('left'), sha256Hex('last')];
    const root = rootOf({ size: 2 ** 40 + 1, peaks: [left, last] });
    const claim = { leaf: last, index: 2 ** 40, size: 2 ** 40 + 1, root, proof: [left] };
    expect(inclusionHolds(claim)).toBe(true);
    expect(inclusionHolds({ ...claim, index: 0 })).toBe(false);
  });
});

function flipped(hash: string, bit: number): string {
  const bytes = hexToBytes(hash);
  bytes[bit >> 3] = (bytes[bit >> 3] ?? 0) ^ (1 << (bit & 7));
  return Buffer.from(bytes).toString('hex');
}
