import { inRange } from '../in-range.ts';
import { Refusal } from '../refusal.ts';

/** One way in which the endless length is known. */
export interface LengthSource {
  readonly kind: string;
  readonly length_m: number;
  readonly standardUncertainty_m: number;
}

export interface ReconciledLength {
  /** Inverse-variance weighted mean. */
  readonly length_m: number;
  /** Of the mean; widened by the Birge ratio when the sources disagree. */
  readonly standardUncertainty_m: number;
  /** About 95 %; when the sources disagree, wide enough to cover each of them with its own range. */
  readonly range_m: readonly [low: number, high: number];
  /** In the order of the sources, sum 1. */
  readonly weights: readonly number[];
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  /** 95 % quantile; null with one source. */
  readonly critical: number | null;
  /** False: they differ by more than chance allows, and a person must find out which one is wrong. */
  readonly agree: boolean;
  readonly status: 'agree' | 'disagree';
  readonly birgeRatio: number;
  /** The two that differ most, in combined standard uncertainties; null with one source. */
  readonly worstPair: {
    readonly first: number;
    readonly second: number;
    readonly difference_m: number;
    readonly combinedSigmas: number;
  } | null;
}

/** 95 % quantiles of chi-square for 1 to 4 degrees of freedom, as printed in every table of it. */
export const chiSquare95: readonly number[] = [3.841, 5.991, 7.815, 9.488];

const maxSources = chiSquare95.length + 1;

/** Two standard uncertainties: about 95 %. */
const coverage = 2;

/**
 * One length from several sources, each with its uncertainty, and whether they agree.
 *
 * L = sum(L_i/u_i^2)/sum(1/u_i^2); u = 1/sqrt(sum(1/u_i^2)); X = sum(((L_i - L)/u_i)^2) against the 95 % quantile of
 * chi-square. A disagreement is reported, never averaged away: u grows by sqrt(X/(n - 1)) and the range covers them all.
 *
 * @param sources - 1 to 5; length_m [m], 0.05 to 20000; standardUncertainty_m [m], 1e-6 to 100
 * @returns weighted mean, uncertainty, range [m], weights and the test [1]
 * @throws too-few-sources, too-many-sources, not-finite, out-of-range
 * @validity independent sources, errors about normal
 * @source weighted mean and scale factor as in Review of Particle Physics, Introduction (from memory); Birge, Phys. Rev. 40 (1932) 207
 * @verified T8 weighted mean of two sources, T8 chi-square of three sources
 */
export function reconcileLengths(sources: readonly LengthSource[]): ReconciledLength {
  checkSources(sources);
  // Sums run in the order of size, so that the order of the sources cannot change a digit.
  const sorted = [...sources].sort(
    (a, b) => a.length_m - b.length_m || a.standardUncertainty_m - b.standardUncertainty_m,
  );
  const first_m = sorted[0]?.length_m ?? 0;
  const weightSum = sum(sorted, weightOf);
  const length_m = first_m + sum(sorted, (s) => weightOf(s) * (s.length_m - first_m)) / weightSum;
  const chiSquare = sum(sorted, (s) => ((s.length_m - length_m) / s.standardUncertainty_m) ** 2);
  const degreesOfFreedom = sources.length - 1;
  const critical = chiSquare95[degreesOfFreedom - 1] ?? null;
  const agree = critical === null || chiSquare <= critical;
  const birgeRatio = degreesOfFreedom === 0 ? 1 : Math.sqrt(chiSquare / degreesOfFreedom);
  const standardUncertainty_m = (agree ? 1 : birgeRatio) / Math.sqrt(weightSum);
  return {
    length_m,
    standardUncertainty_m,
    range_m: rangeOf(length_m, standardUncertainty_m, agree ? [] : sources),
    weights: sources.map((source) => weightOf(source) / weightSum),
    chiSquare,
    degreesOfFreedom,
    critical,
    agree,
    status: agree ? 'agree' : 'disagree',
    birgeRatio,
    worstPair: worstPair(sources),
  };
}

function checkSources(sources: readonly LengthSource[]): void {
  const count = { value: sources.length, min: 1, max: maxSources, unit: '1' };
  if (sources.length < 1) throw new Refusal('too-few-sources', 'sources', count);
  if (sources.length > maxSources) throw new Refusal('too-many-sources', 'sources', count);
  sources.forEach((source, i) => {
    inRange(source.length_m, `sources[${i}].length_m`, { min: 0.05, max: 20_000, unit: 'm' });
    const limits = { min: 1e-6, max: 100, unit: 'm' };
    inRange(source.standardUncertainty_m, `sources[${i}].standardUncertainty_m`, limits);
  });
}

function weightOf({ standardUncertainty_m }: LengthSource): number {
  return 1 / (standardUncertainty_m * standardUncertainty_m);
}

function sum(sources: readonly LengthSource[], of: (source: LengthSource) => number): number {
  return sources.reduce((total, source) => total + of(source), 0);
}

function rangeOf(length_m: number, uncertainty_m: number, toCover: readonly LengthSource[]): readonly [number, number] {
  const reach = coverage * uncertainty_m;
  return [
    Math.min(length_m - reach, ...toCover.map((s) => s.length_m - coverage * s.standardUncertainty_m)),
    Math.max(length_m + reach, ...toCover.map((s) => s.length_m + coverage * s.standardUncertainty_m)),
  ];
}

function worstPair(sources: readonly LengthSource[]): ReconciledLength['worstPair'] {
  let worst: ReconciledLength['worstPair'] = null;
  sources.forEach((a, first) => {
    sources.slice(first + 1).forEach((b, offset) => {
      const difference_m = b.length_m - a.length_m;
      const combinedSigmas = Math.abs(difference_m) / Math.hypot(a.standardUncertainty_m, b.standardUncertainty_m);
      if (worst === null || combinedSigmas > worst.combinedSigmas) {
        worst = { first, second: first + 1 + offset, difference_m, combinedSigmas };
      }
    });
  });
  return worst;
}
