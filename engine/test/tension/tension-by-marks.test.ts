import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { strandTension_N } from '../../src/loop/strand-tension.ts';
import { tensionByMarks } from '../../src/loop/tension-by-marks.ts';
import { sagRow } from '../../src/loop/tension-check-formulas.ts';
import { between, runs } from './loops.ts';
import { checkSpan as check } from './published.ts';
import { finiteOrRefused, refusalOf } from './refusals.ts';

describe('tension by marks', () => {
  const reference = { marks_m: 1, stretched_m: 1.008, k1_N_mm_pct: 8, width_m: 0.03 };
  const practice = 'common practice, no source';

  it('[TENSION-90] 1000 mm become 1008 mm: 0.8 %, 192 N, 12 N either way, 345.6 N fresh', () => {
    const out = tensionByMarks(reference);
    check({
      id: 'T8 marks 1000 mm',
      published: 0.8,
      ours: 100 * out.elongation,
      tolerance: 1e-9,
      unit: '%',
      source: practice,
      evidence: 'practice',
    });
    check({
      id: 'T4.1 strand tension',
      published: 192,
      ours: out.tension_N,
      tolerance: 1e-9,
      unit: 'N',
      source: 'k1% e b',
    });
    const reading = (out.range_N[1] - out.range_N[0]) / 2;
    check({
      id: 'T8 reading error of 0.5 mm',
      published: 12,
      ours: reading,
      tolerance: 1e-9,
      unit: 'N',
      source: practice,
      evidence: 'practice',
    });
    check({
      id: 'T4.1 fresh tension',
      published: 345.6,
      ours: out.fresh_N,
      tolerance: 1e-9,
      unit: 'N',
      source: '1.8 times 192 N',
    });
    expect(out.used).toEqual({ readingError_m: 0.0005, freshFactor: 1.8 });
  });

  it('[TENSION-91] round trip: a strand stretched by e pulls with the tension of e', () => {
    fc.assert(
      fc.property(
        between(0.5, 5),
        between(0, 0.05),
        between(1, 40),
        between(0.01, 0.2),
        (marks_m, elongation, k1_N_mm_pct, width_m) => {
          const out = tensionByMarks({ marks_m, stretched_m: marks_m * (1 + elongation), k1_N_mm_pct, width_m });
          const pull = strandTension_N({ k1_N_mm_pct, elongation, width_m });
          expect(out.elongation).toBeCloseTo(elongation, 12);
          expect(Math.abs(out.tension_N - pull)).toBeLessThan(1e-8 * Math.max(1, pull));
          expect(out.range_N[0]).toBeLessThanOrEqual(out.tension_N);
          expect(out.range_N[0]).toBeGreaterThanOrEqual(0);
          expect(out.range_N[1]).toBeGreaterThan(out.tension_N);
        },
      ),
      runs,
    );
  });

  it('[TENSION-91] marks twice as far apart halve the error of the reading', () => {
    const near = tensionByMarks(reference).range_N;
    const far = tensionByMarks({ ...reference, marks_m: 2, stretched_m: 2.016 }).range_N;
    expect(far[1] - far[0]).toBeCloseTo((near[1] - near[0]) / 2, 9);
  });

  it('[TENSION-92] bad input is refused with its field', () => {
    expect(refusalOf(() => tensionByMarks({ ...reference, stretched_m: 0.999 })).data).toMatchObject({
      value: 0.999,
      min: 1,
    });
    expect(refusalOf(() => tensionByMarks({ ...reference, freshFactor: 0.5 })).path).toBe('freshFactor');
    expect(refusalOf(() => tensionByMarks({ ...reference, readingError_m: -1 })).path).toBe('readingError_m');
    const number = fc.oneof(fc.double(), between(0, 2));
    fc.assert(
      fc.property(number, number, number, number, (marks_m, stretched_m, k1_N_mm_pct, width_m) =>
        finiteOrRefused(() => tensionByMarks({ marks_m, stretched_m, k1_N_mm_pct, width_m })),
      ),
      runs,
    );
  });

  it('[TENSION-93] sag of a strand by its own weight', () => {
    const ours = (l: number) => 1000 * sagRow.compute({ m: 0.08, l, T: 240 });
    check({
      id: 'T6.3 sag, 0.58 m',
      published: 0.137457,
      ours: ours(0.58),
      tolerance: 5e-7,
      unit: 'mm',
      source: 'flat parabola',
    });
    check({
      id: 'T6.3 sag, 2.09 m',
      published: 1.784851,
      ours: ours(2.09),
      tolerance: 5e-7,
      unit: 'mm',
      source: 'flat parabola',
    });
  });
});
