import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tensionByPush } from '../../src/loop/tension-by-push.ts';
import { between, runs } from './loops.ts';
import { checkSpan as check } from './published.ts';
import { finiteOrRefused, refusalOf } from './refusals.ts';

describe('tension by push', () => {
  const mechanics = 'triangle of the pushed strand, worked apart from this program';
  const reference = { span_m: 0.58, force_N: 10, deflection_m: 0.006041667, tensileStiffness_N: 24_000 };

  it('[TENSION-87] first order and cubic formula', () => {
    const first = tensionByPush(reference).firstOrder_N;
    check({ id: 'T6.2 first order', published: 240, ours: first, tolerance: 5e-5, unit: 'N', source: mechanics });
    const table = [
      [5, 8.275862, 8.397611, 8.398868],
      [10, 16.551724, 17.525066, 17.535774],
      [15, 24.827586, 28.108961, 28.148756],
    ] as const;
    for (const [d_mm, linear, exact, cubic] of table) {
      const input = { ...reference, deflection_m: d_mm / 1000 };
      const simple = tensionByPush({ ...input, force_N: linear }).firstOrder_N;
      check({
        id: `T6.2 first order, ${d_mm} mm`,
        published: 240,
        ours: simple,
        tolerance: 1e-4,
        unit: 'N',
        source: mechanics,
      });
      const ours = tensionByPush({ ...input, force_N: cubic }).tension_N;
      check({ id: `T6.2 cubic, ${d_mm} mm`, published: 240, ours, tolerance: 1e-4, unit: 'N', source: mechanics });
      const force = pushForce({ ...input, tension_N: 240, share: 1 });
      check({
        id: `T6.2 exact force, ${d_mm} mm`,
        published: exact,
        ours: force,
        tolerance: 5e-7,
        unit: 'N',
        source: mechanics,
      });
    }
    const exact = tensionByPush({ ...reference, deflection_m: 0.005919612 }).tension_N;
    check({
      id: 'T6.2 exact deflection of 10 N',
      published: 240,
      ours: exact,
      tolerance: 0.06,
      unit: 'N',
      source: mechanics,
    });
  });

  it('[TENSION-88] cubic formula against the exact triangle: within 2 (d/l)^2 T + 6 (d/l)^4 EA k', () => {
    fc.assert(
      fc.property(
        between(50, 2000),
        between(0.3, 3),
        between(0.002, 0.05),
        between(1000, 60_000),
        between(1, 20),
        (tension_N, span_m, q, tensileStiffness_N, loops) => {
          const deflection_m = q * span_m;
          const share = 1 / loops;
          const force_N = pushForce({ span_m, deflection_m, tensileStiffness_N, tension_N, share });
          const loop_m = span_m * loops;
          const ours = tensionByPush({ span_m, force_N, deflection_m, tensileStiffness_N, loop_m }).tension_N ?? 0;
          const bound = 2 * q ** 2 * tension_N + 6 * q ** 4 * tensileStiffness_N * share;
          expect(Math.abs(ours - tension_N)).toBeLessThanOrEqual(bound + 1e-9 * tension_N);
        },
      ),
      runs,
    );
  });

  it('[TENSION-88] stretch makes the first order read high, never low; a free loop lies between', () => {
    const input = { ...reference, force_N: 17.5, deflection_m: 0.01 };
    const isolated = tensionByPush(input).tension_N ?? 0;
    const free = tensionByPush({ ...input, loop_m: 13.5 }).tension_N ?? 0;
    expect(isolated).toBeLessThan(free);
    expect(free).toBeLessThan(tensionByPush(input).firstOrder_N);
  });

  it('[TENSION-89] a force that stretch alone explains gives null with a warning; bad input is refused', () => {
    const slack = tensionByPush({ ...reference, deflection_m: 0.06 });
    expect(slack.tension_N).toBeNull();
    expect(slack.warnings.map(({ code }) => code)).toEqual(['stretch-explains-push', 'deflection-large']);
    expect(refusalOf(() => tensionByPush({ ...reference, deflection_m: 0.3 })).path).toBe('deflection_m');
    expect(refusalOf(() => tensionByPush({ ...reference, force_N: 0 })).path).toBe('force_N');
    expect(refusalOf(() => tensionByPush({ ...reference, loop_m: 0.5 })).path).toBe('loop_m');
    const number = fc.oneof(fc.double(), between(0, 10));
    fc.assert(
      fc.property(number, number, number, number, (span_m, force_N, deflection_m, tensileStiffness_N) =>
        finiteOrRefused(() => tensionByPush({ span_m, force_N, deflection_m, tensileStiffness_N })),
      ),
      runs,
    );
  });
});

/** Force in the middle of a strand that is pushed aside, from the triangle it makes, without approximations. */
function pushForce(p: {
  readonly span_m: number;
  readonly deflection_m: number;
  readonly tensileStiffness_N: number;
  readonly tension_N: number;
  readonly share: number;
}): number {
  const side = Math.hypot(p.span_m / 2, p.deflection_m);
  const strain = (side - p.span_m / 2) / (p.span_m / 2);
  return (2 * (p.tension_N + p.tensileStiffness_N * p.share * strain) * p.deflection_m) / side;
}
