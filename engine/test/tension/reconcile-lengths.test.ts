import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { oldBeltEndless } from '../../src/loop/old-belt.ts';
import { beltPath } from '../../src/loop/path.ts';
import { pathUncertainty } from '../../src/loop/path-uncertainty.ts';
import { chiSquare95, type LengthSource, reconcileLengths } from '../../src/loop/reconcile-lengths.ts';
import { between, liveRollerLoops, noThickness, runs } from './loops.ts';
import { finiteOrRefused, refusalOf } from './refusals.ts';

function source(length_m: number, standardUncertainty_m: number, kind = 'survey'): LengthSource {
  return { kind, length_m, standardUncertainty_m };
}

function check(
  id: string,
  published: number,
  ours: number,
  tolerance: number,
  unit = 'mm',
  evidence = 'derived',
): void {
  checkAgainst({
    topic: 'loop',
    id,
    source: 'weighted mean and chi-square worked by hand',
    evidence: evidence as 'derived',
    inputs: id,
    unit,
    published,
    ours,
    tolerance,
    why: 'exact up to rounding',
  });
}

const sources = fc.array(
  fc.tuple(between(-0.1, 0.1), between(0.005, 0.1)).map(([off, u]) => source(20 + off, u)),
  { minLength: 1, maxLength: 5 },
);

describe('endless length from several sources', () => {
  it('[TENSION-70] one source stands for itself', () => {
    fc.assert(
      fc.property(between(1, 100), between(0.001, 1), (length_m, u) => {
        const out = reconcileLengths([source(length_m, u)]);
        expect(out).toMatchObject({
          length_m,
          weights: [1],
          chiSquare: 0,
          agree: true,
          critical: null,
          worstPair: null,
        });
        expect(out.standardUncertainty_m).toBeCloseTo(u, 12);
      }),
      runs,
    );
  });

  it('[TENSION-71] n equal sources: the same length, uncertainty over sqrt n, equal weights', () => {
    fc.assert(
      fc.property(between(1, 100), between(0.001, 1), fc.integer({ min: 1, max: 5 }), (length_m, u, n) => {
        const out = reconcileLengths(Array.from({ length: n }, () => source(length_m, u)));
        expect(out.length_m).toBe(length_m);
        expect(out.standardUncertainty_m).toBeCloseTo(u / Math.sqrt(n), 12);
        expect(out.agree).toBe(true);
        for (const weight of out.weights) expect(weight).toBeCloseTo(1 / n, 12);
      }),
      runs,
    );
  });

  it('[TENSION-72] the order of the sources changes nothing, not even a digit', () => {
    fc.assert(
      fc.property(sources, fc.integer({ min: 0, max: 4 }), (list, by) => {
        const turned = [...list.slice(by), ...list.slice(0, by)];
        const [a, b] = [reconcileLengths(list), reconcileLengths(turned)];
        expect([b.length_m, b.standardUncertainty_m, b.chiSquare, b.agree, ...b.range_m]).toEqual([
          a.length_m,
          a.standardUncertainty_m,
          a.chiSquare,
          a.agree,
          ...a.range_m,
        ]);
        expect(b.worstPair?.combinedSigmas).toBe(a.worstPair?.combinedSigmas);
      }),
      runs,
    );
  });

  it('[TENSION-73] the mean lies among the sources; weights add to 1; shifting all shifts the mean', () => {
    fc.assert(
      fc.property(sources, between(0, 10), (list, shift) => {
        const out = reconcileLengths(list);
        const lengths = list.map(({ length_m }) => length_m);
        expect(out.length_m).toBeGreaterThanOrEqual(Math.min(...lengths) - 1e-12);
        expect(out.length_m).toBeLessThanOrEqual(Math.max(...lengths) + 1e-12);
        expect(out.weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
        const shifted = reconcileLengths(list.map((s) => ({ ...s, length_m: s.length_m + shift })));
        expect(shifted.length_m - out.length_m).toBeCloseTo(shift, 9);
        expect(shifted.chiSquare).toBeCloseTo(out.chiSquare, 6);
      }),
      runs,
    );
  });

  it('[TENSION-74] a disagreement is said, the range covers every source, and the uncertainty grows', () => {
    fc.assert(
      fc.property(sources, (list) => {
        const out = reconcileLengths(list);
        const plain = 1 / Math.sqrt(list.reduce((sum, s) => sum + 1 / s.standardUncertainty_m ** 2, 0));
        expect(out.agree).toBe(out.status === 'agree');
        if (out.agree) {
          expect(out.standardUncertainty_m).toBeCloseTo(plain, 12);
          return;
        }
        expect(out.chiSquare).toBeGreaterThan(chiSquare95[list.length - 2] ?? 0);
        expect(out.standardUncertainty_m).toBeGreaterThan(plain);
        for (const s of list) {
          expect(out.range_m[0]).toBeLessThanOrEqual(s.length_m - s.standardUncertainty_m);
          expect(out.range_m[1]).toBeGreaterThanOrEqual(s.length_m + s.standardUncertainty_m);
        }
      }),
      runs,
    );
  });

  it('[TENSION-74] two sources disagree exactly when they lie more than 1.96 combined sigmas apart', () => {
    fc.assert(
      fc.property(between(0.01, 0.1), between(0.01, 0.1), between(0, 0.5), (u1, u2, apart) => {
        const out = reconcileLengths([source(20, u1), source(20 + apart, u2, 'old-belt')]);
        const sigmas = apart / Math.hypot(u1, u2);
        expect(out.worstPair?.combinedSigmas ?? 0).toBeCloseTo(sigmas, 9);
        expect(out.chiSquare).toBeCloseTo(sigmas * sigmas, 6);
        if (Math.abs(sigmas - 1.96) > 0.001) expect(out.agree).toBe(sigmas < 1.96);
      }),
      runs,
    );
  });

  it('[TENSION-75] worked cases', () => {
    const two = reconcileLengths([source(10, 0.01), source(10.03, 0.02)]);
    check('T8 weighted mean of two sources', 10_006, 1000 * two.length_m, 1e-9);
    check('T8 uncertainty of two sources', 8.94427191, 1000 * two.standardUncertainty_m, 1e-8);
    const three = reconcileLengths([source(10, 0.01), source(10.02, 0.01), source(10.04, 0.01)]);
    check('T8 chi-square of three sources', 8, three.chiSquare, 1e-9, '1');
    check('T8 Birge ratio of three sources', 2, three.birgeRatio, 1e-9, '1');
    check('T8 widened uncertainty', (2 * 10) / Math.sqrt(3), 1000 * three.standardUncertainty_m, 1e-9);
    expect(three).toMatchObject({ agree: false, status: 'disagree', worstPair: { first: 0, second: 2 } });
  });

  it('[TENSION-75] quantiles of chi-square as every table prints them', () => {
    expect(chiSquare95).toEqual([3.841, 5.991, 7.815, 9.488]);
    // With two degrees of freedom the distribution is exponential: -2 ln 0.05.
    check('T8 chi-square quantile, 2 degrees', -2 * Math.log(0.05), chiSquare95[1] ?? 0, 0.0005, '1');
    check('T8 chi-square quantile, 1 degree', 1.959964 ** 2, chiSquare95[0] ?? 0, 0.0005, '1');
  });

  it('[TENSION-76] bad input is refused with its field', () => {
    expect(refusalOf(() => reconcileLengths([])).code).toBe('too-few-sources');
    expect(refusalOf(() => reconcileLengths(Array.from({ length: 6 }, () => source(1, 1)))).code).toBe(
      'too-many-sources',
    );
    expect(refusalOf(() => reconcileLengths([source(1, 1), source(1, 0)])).path).toBe(
      'sources[1].standardUncertainty_m',
    );
    expect(refusalOf(() => reconcileLengths([source(Number.NaN, 1)]))).toMatchObject({
      code: 'not-finite',
      path: 'sources[0].length_m',
    });
    fc.assert(
      fc.property(fc.double(), fc.double(), (length_m, u) =>
        finiteOrRefused(() => reconcileLengths([source(20, 0.01), source(length_m, u)])),
      ),
      runs,
    );
  });
});

describe('sources of a length', () => {
  it('[TENSION-77] old belt: stretch and set are taken off, it lies within 0.3 %, two standard uncertainties', () => {
    fc.assert(
      fc.property(between(1, 100), between(0, 0.02), between(0, 0.03), (length_m, elongation, permanentSet) => {
        const measured_m = length_m * (1 + elongation) * (1 + permanentSet);
        const out = oldBeltEndless({ measured_m, elongation, permanentSet });
        expect(out.length.value).toBeCloseTo(length_m, 10);
        expect((2 * out.standardUncertainty_m) / out.length.value).toBeCloseTo(0.003, 12);
      }),
      runs,
    );
    check('T8 old belt', 20_000, 1000 * oldBeltEndless({ measured_m: 20.2, permanentSet: 0.01 }).length.value, 1e-9);
    expect(refusalOf(() => oldBeltEndless({ measured_m: 0, permanentSet: 0 })).path).toBe('measured_m');
    expect(refusalOf(() => oldBeltEndless({ measured_m: 20, permanentSet: Number.NaN })).path).toBe('permanentSet');
  });

  it('[TENSION-78] survey of two equal pulleys: dL/dx = 2 at both, dL/dr = pi', () => {
    const path = beltPath({
      belt: noThickness,
      pulleys: [
        { x_m: 0, y_m: 0, surfaceRadius_m: 0.05, turn: 'left' },
        { x_m: 5, y_m: 0, surfaceRadius_m: 0.05, turn: 'left' },
      ],
    });
    const out = pathUncertainty(path, [{ position_m: 0.003 }, { position_m: 0.004, radius_m: 0.001 }]);
    const published = Math.hypot(2 * 3, 2 * 4, Math.PI);
    check('T8 survey uncertainty of two pulleys', published, 1000 * out.standardUncertainty_m, 1e-9);
    expect(refusalOf(() => pathUncertainty(path, [{ position_m: 0.003 }])).code).toBe('wrong-count');
    expect(refusalOf(() => pathUncertainty(path, [{ position_m: 1 }, { position_m: -1 }])).path).toBe(
      'pulleys[1].position_m',
    );
  });

  it('[TENSION-78] survey: derivatives agree with moving each pulley a little', () => {
    fc.assert(
      fc.property(liveRollerLoops, fc.integer({ min: 0, max: 7 }), (input, index) => {
        const path = beltPath(input);
        const out = pathUncertainty(
          path,
          input.pulleys.map(() => ({ position_m: 0.003, radius_m: 0.0005 })),
        );
        const step = 1e-6;
        const moved = (dx: number) =>
          beltPath({ ...input, pulleys: input.pulleys.map((p, i) => (i === index ? { ...p, x_m: p.x_m + dx } : p)) })
            .length_m;
        expect((moved(step) - moved(-step)) / (2 * step)).toBeCloseTo(out.pulleys[index]?.dLength_dx ?? Number.NaN, 5);
        const total = Math.hypot(...out.pulleys.map(({ uncertainty_m }) => uncertainty_m));
        expect(out.standardUncertainty_m).toBeCloseTo(total, 12);
      }),
      runs,
    );
  });
});
