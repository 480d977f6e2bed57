import {
  endlessLengthRow,
  estimateOfThreeRow,
  estimateOfTwoRow,
  oldBeltEndless,
  reconcileLengths,
} from '@loopwright/engine/loop';
import { work } from '@loopwright/engine/worked';
import type { Line, Position } from '@loopwright/plant';
import { computed, given, type Quantity } from '../quantity.ts';
import type { Loop } from './loop.ts';

/** One way in which the endless length is known. */
export interface LengthSource {
  readonly kind: 'survey' | 'old-belt' | 'record';
  /** Endless length with its 95 % range. */
  readonly length: Quantity;
  /** Its weight in the result, 0 to 1. */
  readonly weight: number;
}

export interface EndlessLength {
  readonly endless: Quantity;
  readonly sources: readonly LengthSource[];
  /** False when the sources differ by more than chance allows. */
  readonly agree: boolean;
  /** Between the two that differ most [m]; 0 for a single source. */
  readonly difference: Quantity;
}

/** A record without an uncertainty of its own: share of its length, common practice, no source. */
const recordShare = 0.0005;

interface Candidate {
  readonly kind: LengthSource['kind'];
  readonly length: Quantity;
  /** Half the 95 % range [m]: two standard uncertainties. */
  readonly half_m: number;
}

/**
 * The endless length of a position's belt from everything that says it: the path at the set elongation, the last
 * record, the old belt. Each source counts by its uncertainty; where they disagree by more than chance, the range
 * covers them all and the answer says so.
 *
 * @returns undefined when nothing is known
 */
export function endlessLength(position: Position, line: Line, loop: Loop | undefined): EndlessLength | undefined {
  const candidates = known(survey(line, loop), position, line);
  if (candidates.length === 0) return undefined;
  const joined = reconcileLengths(candidates.map(asSource));
  return {
    endless: estimate(candidates, joined.length_m, joined.range_m),
    sources: candidates.map(({ kind, length }, i) => ({ kind, length, weight: joined.weights[i] ?? 0 })),
    agree: joined.agree,
    difference: computed('length', spread(candidates)),
  };
}

/**
 * The endless lengths of a line's positions as bare numbers: what a list of thousands needs. What is the same for the
 * whole line is computed once.
 *
 * @returns a function from a position to its endless length [m], undefined when nothing is known
 */
export function endlessLengthsOf(line: Line, loop: Loop | undefined): (position: Position) => number | undefined {
  const path = survey(line, loop);
  return (position) => {
    const candidates = known(path, position, line);
    const [only] = candidates;
    return candidates.length > 1 ? reconcileLengths(candidates.map(asSource)).length_m : only?.length.value;
  };
}

function known(path: Candidate | undefined, position: Position, line: Line): readonly Candidate[] {
  return [path, record(position), oldBelt(position, line)].filter((candidate) => candidate !== undefined);
}

function asSource({ kind, length, half_m }: Candidate) {
  return { kind, length_m: length.value, standardUncertainty_m: half_m / 2 };
}

function survey(line: Line, loop: Loop | undefined): Candidate | undefined {
  if (!loop) return undefined;
  const e = line.setElongation;
  const half_m = (2 * loop.uncertainty_m) / (1 + e);
  const worked = work(endlessLengthRow, { L: loop.path.length_m, e });
  return { kind: 'survey', length: computed('length', worked, half_m), half_m };
}

function record(position: Position): Candidate | undefined {
  const length_m = position.recordedLength_m;
  if (length_m === undefined) return undefined;
  const half_m = position.recordedUncertainty_m ?? recordShare * length_m;
  return { kind: 'record', length: given('length', length_m, position, 'recordedLength_m', half_m), half_m };
}

function oldBelt(position: Position, line: Line): Candidate | undefined {
  const measured_m = position.oldBeltLength_m;
  if (measured_m === undefined) return undefined;
  const { length, standardUncertainty_m } = oldBeltEndless({
    measured_m,
    permanentSet: position.oldBeltSet ?? 0,
    elongation: position.oldBeltTensioned ? line.setElongation : 0,
  });
  const half_m = Math.max(position.oldBeltUncertainty_m ?? 0, 2 * standardUncertainty_m);
  return { kind: 'old-belt', length: computed('length', length, half_m), half_m };
}

function estimate(candidates: readonly Candidate[], value_m: number, range: readonly [number, number]): Quantity {
  const [a, b, c] = candidates;
  if (!a || !b) return a?.length ?? computed('length', value_m, range);
  const two = { L1: a.length.value, u1: a.half_m / 2, L2: b.length.value, u2: b.half_m / 2 };
  const worked = c
    ? work(estimateOfThreeRow, { ...two, L3: c.length.value, u3: c.half_m / 2 })
    : work(estimateOfTwoRow, two);
  return computed('length', worked, range);
}

function spread(candidates: readonly Candidate[]): number {
  const lengths = candidates.map(({ length }) => length.value);
  return Math.max(...lengths) - Math.min(...lengths);
}
