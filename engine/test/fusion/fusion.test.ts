import { describe, expect, it } from 'vitest';
import { type FusionInput, fusion, grade, hardSegmentDefaults } from '../../src/fusion/index.ts';
import { Refusal } from '../../src/refusal.ts';
import { checkFusion as check } from '../book.ts';

/** Up at 2 K/s, a hold, down at 3 K/s. */
function cycle(core_degC: number, hold_s: number, more: Partial<FusionInput> = {}): FusionInput {
  const up_s = (core_degC - 25) / 2;
  return {
    times_s: [0, up_s, up_s + hold_s, up_s + hold_s + (core_degC - 40) / 3],
    nodes_degC: [[25, core_degC, core_degC, 40]],
    pressure_Pa: 2e5,
    ...more,
  };
}

const quadrature = {
  source: 'quadrature with 30 digits by a separate program (mpmath 1.3.0)',
  why: 'digits given',
};

const strength = { best_N_mm: 100, belt_N_mm: 120, hardSegments: hardSegmentDefaults };
const strengthOf = (core_degC: number, hold_s: number, more: Partial<FusionInput> = {}) =>
  fusion(cycle(core_degC, hold_s, { strength, ...more })).strength?.min_N_mm ?? Number.NaN;

describe('fusion of a temperature history', () => {
  it('[FUSE-20] healing, flow and damage over a ramp, hold and ramp', () => {
    const given = { times_s: [0, 82.5, 102.5, 132.5], nodes_degC: [[25, 190, 190, 100]], pressure_Pa: 2e5 };
    const { min } = fusion(given);
    const inputs = '25 degC, +2 K/s to 190, 20 s, -3 K/s to 100, 2 bar';
    check('FUSE-20 healing over a ramp, hold and ramp', inputs, '1', 2.62328048626343, min.healing, 1e-8, quadrature);
    check('FUSE-20 flow over a ramp, hold and ramp', inputs, '1', 1183.19611634123, min.flow, 1e-5, quadrature);
    check(
      'FUSE-20 fill over a ramp, hold and ramp',
      inputs,
      'mm',
      1.40427686986412,
      min.fill_m * 1000,
      1e-8,
      quadrature,
    );
    check(
      'FUSE-20 chains broken over a ramp, hold and ramp',
      inputs,
      '1',
      0.00248861481502761,
      1 / min.molarMassShare - 1,
      1e-10,
      quadrature,
    );
    const parts = {
      times_s: [0, 40, 82.5, 91, 102.5, 132.5],
      nodes_degC: [[25, 105, 190, 190, 190, 100]],
      pressure_Pa: 2e5,
    };
    expect(fusion(parts).min.healing).toBeCloseTo(min.healing, 9);
    const later = { ...given, times_s: given.times_s.map((t) => t + 1000) };
    expect(fusion(later).min.flow).toBeCloseTo(min.flow, 7);
  });

  it('[FUSE-20] a held gap fills as by hand, shortened by what is not molten', () => {
    const { min } = fusion({ times_s: [0, 60], nodes_degC: [[190, 190]], pressure_Pa: 2e5 });
    const published = 2 / Math.sqrt(1 + Math.exp(-25 / 7));
    check('FUSE-20 fill of a held gap', '190 degC, 60 s, 2 bar, 0.1 mm', 'mm', published, min.fill_m * 1000, 1e-9, {
      evidence: 'derived',
      source: 'gap over square root of 6 times pressure, time and molten share over viscosity',
    });
  });

  it('[FUSE-21] smallest and mean over the points; pressure may change', () => {
    const two = fusion({
      times_s: [0, 60],
      nodes_degC: [
        [170, 170],
        [190, 190],
      ],
      pressure_Pa: [2e5, 2e5],
    });
    const [cold, warm] = two.nodes;
    expect(two.min.healing).toBe(cold?.healing);
    expect(two.mean.fill_m).toBeCloseTo(((cold?.fill_m ?? 0) + (warm?.fill_m ?? 0)) / 2, 15);
    const ramped = fusion({ times_s: [0, 60], nodes_degC: [[190, 190]], pressure_Pa: [0, 4e5] });
    expect(ramped.min.flow).toBeCloseTo(warm?.flow ?? 0, 6);
  });

  it('[FUSE-22] trend: strength rises in an S round the melting of the hard segments, is flat, then falls with damage', () => {
    const at = (t: number) => strengthOf(t, 150);
    expect(at(160)).toBeLessThan(0.5 * at(190));
    // Steepest in between: convex below, concave above.
    expect(at(175) - at(165)).toBeGreaterThan(at(165) - at(155));
    expect(at(175) - at(165)).toBeGreaterThan(at(185) - at(175));
    expect(Math.abs(at(195) - at(190)) / at(190)).toBeLessThan(0.02);
    expect(at(230)).toBeLessThan(0.85 * at(195));
  });

  it('[FUSE-22] trend: before the plateau the bond grows with the fourth root of time, its square with the root', () => {
    const hold = (time_s: number) =>
      fusion({
        times_s: [0, time_s],
        nodes_degC: [[175, 175]],
        pressure_Pa: 2e5,
        fusion: { fluidity: 100 },
        strength: { best_N_mm: 100, belt_N_mm: 120 },
      });
    const [short, long] = [hold(1), hold(16)];
    const ratio = (long.strength?.min_N_mm ?? 0) / (short.strength?.min_N_mm ?? 1);
    expect(short.min.fill_m).toBeGreaterThan(1.5e-3);
    expect(long.min.bond).toBeLessThan(1);
    expect(ratio).toBeCloseTo(2, 2);
  });

  it('[FUSE-22] trend: above the pressure that fills the gap more pressure adds nothing', () => {
    const at = (pressure_Pa: number) => strengthOf(185, 150, { pressure_Pa });
    expect(at(0.4e5)).toBeGreaterThan(1.2 * at(0.2e5));
    expect(at(4e5)).toBe(at(2e5));
  });

  it('[FUSE-22] trend: a wet belt is worse than a dry one, in chains and in bubbles', () => {
    const dry = fusion(cycle(190, 150, { fusion: { moisture_share: 0.0003 }, strength }));
    const wet = fusion(cycle(190, 150, { fusion: { moisture_share: 0.003 }, strength }));
    expect(wet.min.molarMassShare).toBeLessThan(dry.min.molarMassShare);
    expect(wet.strength?.min_N_mm).toBeLessThan(dry.strength?.min_N_mm ?? 0);
    expect(wet.grade).toBe('voids-likely');
    expect(dry.reasons.map(({ code }) => code)).not.toContain('voids');
  });

  it('[FUSE-23] too cold, too short, good, too hot, wet, opened hot', () => {
    const gradeOf = (core: number, hold: number, more: Partial<FusionInput> = {}) =>
      fusion(cycle(core, hold, more)).grade;
    expect(gradeOf(150, 60)).toBe('under-fused');
    expect(gradeOf(168, 90)).toBe('not-filled');
    expect(gradeOf(184, 90)).toBe('good');
    expect(gradeOf(220, 400)).toBe('over-fused');
    expect(gradeOf(184, 90, { fusion: { moisture_share: 0.004 } })).toBe('voids-likely');
    const hot = fusion({ ...cycle(184, 90), open_s: 170 });
    expect(hot.grade).toBe('voids-likely');
    expect(hot.reasons.map(({ code }) => code)).toEqual(['opened-hot']);
  });

  it('[FUSE-23] the worst limit passed gives the grade, all of them are reasons; on a limit it still holds', () => {
    const good = { bondMin: 1, fillMin: 1, fillMax: 2, damageMax: 0.01, beltMax_degC: 185 };
    expect(grade(good)).toEqual({ grade: 'good', reasons: [] });
    expect(
      grade({ ...good, bondMin: 0.95, fillMin: 0.95, fillMax: 2.5, damageMax: 0.05, beltMax_degC: 215 }).grade,
    ).toBe('good');
    const all = grade({
      bondMin: 0.5,
      fillMin: 0.5,
      fillMax: 3,
      damageMax: 0.1,
      beltMax_degC: 220,
      voidNumber: 0.9,
      atOpen_degC: 61,
    });
    expect(all.grade).toBe('voids-likely');
    expect(all.reasons.map(({ code }) => code)).toEqual([
      'voids',
      'too-much-flow',
      'damaged',
      'too-hot',
      'bond-too-weak',
      'gap-not-filled',
      'opened-hot',
    ]);
    expect(grade({ ...good, fillMax: 3, bondMin: 0.5 }).grade).toBe('over-fused');
    expect(grade({ ...good, fillMin: 0.5, bondMin: 0.5 }).grade).toBe('under-fused');
  });

  it('[FUSE-24] unknown moisture is said', () => {
    expect(fusion(cycle(184, 90)).warnings.map(({ code }) => code)).toEqual(['moisture-unknown']);
    const known = fusion(cycle(184, 90, { fusion: { moisture_share: 0 } }));
    expect(known.warnings).toEqual([]);
    expect(known.voidNumber).toBe(0);
  });

  it.each<[string, string, Partial<FusionInput>]>([
    ['too-few', 'times_s', { times_s: [0], nodes_degC: [[180]] }],
    ['too-few', 'nodes_degC', { nodes_degC: [] }],
    ['wrong-way-round', 'times_s[2]', { times_s: [0, 60, 60, 90] }],
    ['wrong-count', 'nodes_degC[0]', { nodes_degC: [[180, 180]] }],
    ['not-finite', 'nodes_degC[0][1]', { nodes_degC: [[25, Number.NaN, 180, 40]] }],
    ['out-of-range', 'nodes_degC[0][1]', { nodes_degC: [[25, 900, 180, 40]] }],
    ['out-of-range', 'pressure_Pa', { pressure_Pa: -1 }],
    ['wrong-count', 'pressure_Pa', { pressure_Pa: [2e5] }],
    ['out-of-range', 'open_s', { open_s: 1e6 }],
    ['out-of-range', 'limits.damageMax', { limits: { damageMax: 2 } }],
    ['out-of-range', 'strength.best_N_mm', { strength: { best_N_mm: 0, belt_N_mm: 10 } }],
    ['out-of-range', 'fusion.gap_m', { fusion: { gap_m: 0 } }],
    ['too-many', 'times_s', { times_s: Array.from({ length: 20_001 }, (_, i) => i) }],
    ['too-many', 'nodes_degC', { nodes_degC: Array.from({ length: 201 }, () => [25, 180, 180, 40]) }],
  ])('[FUSE-25] %s at %s is refused', (code, path, bad) => {
    const run = () => fusion(cycle(180, 60, bad));
    expect(run).toThrow(Refusal);
    expect(run).toThrow(`${code} at ${path}`);
  });
});
