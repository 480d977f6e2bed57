import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { clampedTension, stiffStringFrequency } from '../../src/loop/stiff-string.ts';
import { strandTension_N } from '../../src/loop/strand-tension.ts';
import { tensionByMarks } from '../../src/loop/tension-by-marks.ts';
import { tensionByPush } from '../../src/loop/tension-by-push.ts';
import { tensionBySound } from '../../src/loop/tension-by-sound.ts';
import { sagRow } from '../../src/loop/tension-check-formulas.ts';
import { between, runs } from './loops.ts';
import { finiteOrRefused, refusalOf } from './refusals.ts';

const string = { beltMass_kg_m: 0.08, bendingStiffness_Nm2: 0.003 };

interface Published {
  readonly id: string;
  readonly published: number;
  readonly ours: number | null;
  readonly tolerance: number;
  readonly unit: string;
  readonly source: string;
  readonly evidence?: 'derived' | 'independent' | 'practice';
}

function check({ evidence = 'derived', ours, ...rest }: Published): void {
  const inputs = '240 N, 0.08 kg/m, EI 0.0030 N m2, EA 24 000 N';
  checkAgainst({
    topic: 'loop',
    evidence,
    inputs,
    why: 'half the last digit given',
    ours: ours ?? Number.NaN,
    ...rest,
  });
}

const beam = 'stiff string; Rayleigh (hinged), Fletcher & Rossing (clamped series), worked apart from this program';
const elements =
  'finite elements with 400 cubic beam elements under tension, independent/clamped_string.py, scipy 1.17.1';

describe('tension by sound', () => {
  const spans = [
    [0.58, 47.21746, 47.2261, 47.8088, 47.809],
    [0.25, 109.5445, 109.6526, 112.8386, 112.8451],
    [0.1, 273.8613, 275.5454, 296.2848, 296.5302],
  ] as const;

  it.each(spans)('[TENSION-80] frequencies of a span of %d m', (span_m, plain, hinged, series, clamped) => {
    const ours = stiffStringFrequency(240, { span_m, ...string });
    const line = (what: string, published: number, value: number, tolerance = 5.1e-5) =>
      check({ id: `T6.1 ${what}, ${span_m} m`, published, ours: value, tolerance, unit: 'Hz', source: beam });
    line('string', plain, ours.string_Hz, 5e-5);
    line('hinged', hinged, ours.hinged_Hz);
    line('clamped, series', series, ours.clampedSeries_Hz);
    line('clamped, exact', clamped, ours.clamped_Hz);
  });

  it('[TENSION-81] exact clamped frequency against finite elements', () => {
    const table = [
      [240, { span_m: 0.25, ...string }, 112.845146],
      [240, { span_m: 0.1, ...string }, 296.530222],
      [500, { span_m: 0.4, beltMass_kg_m: 0.2, bendingStiffness_Nm2: 0.05 }, 65.994191],
    ] as const;
    for (const [tension, s, published] of table) {
      const ours = stiffStringFrequency(tension, s).clamped_Hz;
      const id = `T6.1 clamped by finite elements, ${s.span_m} m, EI ${s.bendingStiffness_Nm2}`;
      check({ id, published, ours, tolerance: 5e-5, unit: 'Hz', source: elements, evidence: 'independent' });
    }
  });

  it('[TENSION-82] the frequency of each end condition gives its tension back', () => {
    const bare = { frequency_Hz: 47.809, span_m: 0.58, ...string };
    check({
      id: 'T6.1 clamped',
      published: 240,
      ours: tensionBySound(bare).clamped_N,
      tolerance: 0.005,
      unit: 'N',
      source: beam,
    });
    const hinged = tensionBySound({ ...bare, frequency_Hz: 47.2261 }).hinged_N;
    check({ id: 'T6.1 hinged', published: 240, ours: hinged, tolerance: 0.005, unit: 'N', source: beam });
    const plain = tensionBySound({ ...bare, frequency_Hz: 47.21746 });
    check({ id: 'T6.1 string', published: 240, ours: plain.string_N, tolerance: 0.0005, unit: 'N', source: beam });
    const over = (tensionBySound(bare).string_N / 240 - 1) * 100;
    check({
      id: 'T6.1 over-read of a clamped belt',
      published: 2.52,
      ours: over,
      tolerance: 0.005,
      unit: '%',
      source: beam,
    });
    fc.assert(
      fc.property(between(20, 2000), between(0.1, 3), between(0.02, 0.5), between(1e-5, 0.05), (T, span_m, m, EI) => {
        const s = { span_m, beltMass_kg_m: m, bendingStiffness_Nm2: EI };
        const f = stiffStringFrequency(T, s);
        expect((clampedTension({ ...s, frequency_Hz: f.clamped_Hz }) ?? 0) / T).toBeCloseTo(1, 6);
        expect((tensionBySound({ ...s, frequency_Hz: f.hinged_Hz }).hinged_N ?? 0) / T).toBeCloseTo(1, 9);
        expect(tensionBySound({ ...s, frequency_Hz: f.string_Hz }).string_N / T).toBeCloseTo(1, 9);
        expect(f.clamped_Hz).toBeGreaterThan(f.hinged_Hz);
        expect(f.hinged_Hz).toBeGreaterThan(f.string_Hz);
      }),
      runs,
    );
  });

  it('[TENSION-83] the same sound: string above hinged above clamped; without stiffness all are one', () => {
    fc.assert(
      fc.property(between(5, 200), between(0.3, 3), between(0.02, 0.5), between(0, 0.01), (f, span_m, m, EI) => {
        const out = tensionBySound({ frequency_Hz: f, span_m, beltMass_kg_m: m, bendingStiffness_Nm2: EI });
        if (out.hinged_N !== null) expect(out.hinged_N).toBeLessThanOrEqual(out.string_N);
        if (out.clamped_N !== null) expect(out.clamped_N).toBeLessThanOrEqual((out.hinged_N ?? 0) * (1 + 1e-12));
        const plain = tensionBySound({ frequency_Hz: f, span_m, beltMass_kg_m: m });
        expect(plain.hinged_N).toBe(plain.string_N);
        expect(plain.clamped_N).toBeCloseTo(plain.string_N, 6);
        expect(plain.moving_N).toBeCloseTo(plain.string_N, 6);
      }),
      runs,
    );
  });

  it('[TENSION-84] moving belt: f = f1 (1 - v^2/c^2)', () => {
    const c2 = 240 / 0.08;
    const factor = 1 - 0.75 ** 2 / c2;
    check({ id: 'T6.1 moving, factor', published: 0.9998125, ours: factor, tolerance: 1e-12, unit: '1', source: beam });
    const frequency_Hz = (Math.sqrt(c2) / (2 * 0.58)) * factor;
    const moving = tensionBySound({ frequency_Hz, span_m: 0.58, beltMass_kg_m: 0.08, speed_m_s: 0.75 }).moving_N;
    check({ id: 'T6.1 moving', published: 240, ours: moving, tolerance: 1e-9, unit: 'N', source: beam });
  });

  it('[TENSION-85] a span under 0.3 m is answered with a warning; bending alone gives null, not a number', () => {
    const short = tensionBySound({ frequency_Hz: 296.5302, span_m: 0.1, ...string });
    expect(short.warnings).toEqual([
      { code: 'span-too-short', path: 'span_m', data: { value: 0.1, min: 0.3, unit: 'm' } },
    ]);
    expect(short.clamped_N).toBeCloseTo(240, 3);
    const beamAlone = tensionBySound({ frequency_Hz: 1, span_m: 1, beltMass_kg_m: 0.1, bendingStiffness_Nm2: 50 });
    expect(beamAlone).toMatchObject({ hinged_N: null, clamped_N: null });
    expect(beamAlone.warnings.map(({ code }) => code)).toEqual(['bending-outweighs-tension']);
    expect(tensionBySound({ frequency_Hz: 40, span_m: 0.3, beltMass_kg_m: 0.1 }).warnings).toEqual([]);
  });

  it('[TENSION-86] bad input is refused or answered with finite numbers', () => {
    const good = { frequency_Hz: 40, span_m: 0.5, beltMass_kg_m: 0.1 };
    expect(refusalOf(() => tensionBySound({ ...good, span_m: 0 })).path).toBe('span_m');
    expect(refusalOf(() => tensionBySound({ ...good, frequency_Hz: Number.NaN })).code).toBe('not-finite');
    expect(refusalOf(() => tensionBySound({ ...good, bendingStiffness_Nm2: -1 })).path).toBe('bendingStiffness_Nm2');
    expect(refusalOf(() => tensionBySound({ ...good, speed_m_s: -1 })).path).toBe('speed_m_s');
    const number = fc.oneof(fc.double(), between(0, 10), between(0, 1e-3));
    fc.assert(
      fc.property(
        number,
        number,
        number,
        number,
        number,
        (frequency_Hz, span_m, beltMass_kg_m, bendingStiffness_Nm2, speed_m_s) =>
          finiteOrRefused(() =>
            tensionBySound({ frequency_Hz, span_m, beltMass_kg_m, bendingStiffness_Nm2, speed_m_s }),
          ),
      ),
      runs,
    );
  });
});

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
