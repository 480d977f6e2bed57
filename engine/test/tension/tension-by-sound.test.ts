import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clampedTension, stiffStringFrequency } from '../../src/loop/stiff-string.ts';
import { tensionBySound } from '../../src/loop/tension-by-sound.ts';
import { between, runs } from './loops.ts';
import { checkSpan as check } from './published.ts';
import { finiteOrRefused, refusalOf } from './refusals.ts';

const string = { beltMass_kg_m: 0.08, bendingStiffness_Nm2: 0.003 };

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
