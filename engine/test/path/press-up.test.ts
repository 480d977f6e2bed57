import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { beltPath } from '../../src/loop/path.ts';
import { type PressUpInput, pressUp } from '../../src/loop/press-up.ts';
import { layout, seeded } from './layouts.ts';

const rollers = {
  carrierRadius_m: 0.025,
  pressureRollerRadius_m: 0.02,
  beltThickness_m: 0.002,
  pitch_m: 0.1,
  tension_N: 200,
};
const source = 'inner tangent of two circles, evaluated by a separate program';

function check(id: string, u_mm: number, unit: string, published: number, ours: number, tolerance: number): void {
  checkAgainst({
    topic: 'loop',
    id: `T2 ${id}`,
    source,
    evidence: 'independent',
    inputs: `R 25, r 20, t 2, p 100 mm, T 200 N, u ${u_mm} mm`,
    unit,
    published,
    ours,
    tolerance,
    why: 'half the last digit',
  });
}

describe('press-up of the driving strand', () => {
  it.each([
    [0.5, 0.010047, 4.0188, 4, 0.0502],
    [1, 0.020189, 8.075, 8, 0.2013],
    [2, 0.040759, 16.299, 16, 0.81],
    [3, 0.061714, 24.6701, 24, 1.8336],
  ])('[PRESS-UP-01] %d mm: angle, force per carrying roller, extra belt', (u_mm, angle, force, first, extra) => {
    const found = pressUp({ ...rollers, pressUp_m: u_mm / 1000 });
    check(`press-up ${u_mm} mm`, u_mm, 'N', force, found.force_N, 0.5e-4);
    check(`press-up ${u_mm} mm, angle`, u_mm, 'rad', angle, found.angle_rad, 0.5e-6);
    check(`press-up ${u_mm} mm, extra belt`, u_mm, 'mm/m', extra, found.extraLength_m_m * 1000, 0.5e-4);
    expect(found.firstOrderForce_N).toBeCloseTo(first, 9);
  });

  it('[PRESS-UP-02] extra belt agrees with the path round ten carrying rollers', () => {
    const ends = [
      [0, 0, 50.8, 1],
      [2000, 0, 50.8, 1],
    ];
    const rows = [...ends];
    for (let k = 0; k < 10; k++) rows.push([1500 - 100 * k, 30, 20.8, 1], [1450 - 100 * k, 76, 26.2, -1]);
    rows.push([500, 30, 20.8, 1]);
    const grown = beltPath(layout(rows)).length_m - beltPath(layout(ends)).length_m;
    const one = pressUp({ ...rollers, tension_N: 1, pressUp_m: 0.001 });
    // Twenty half pitches of 50 mm are one metre of bed.
    expect(grown).toBeCloseTo(one.extraLength_m_m, 9);
  });

  it('[PRESS-UP-03] from the force back to the same press-up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 60, max: 300 }), (microns, pitch_mm) => {
        const input = { ...rollers, pitch_m: pitch_mm / 1000 };
        const there = pressUp({ ...input, pressUp_m: Math.min(microns * 1e-6, 0.009) });
        const back = pressUp({ ...input, force_N: there.force_N });
        expect(back.pressUp_m).toBeCloseTo(there.pressUp_m, 12);
        expect(there.force_N).toBeGreaterThanOrEqual(there.firstOrderForce_N * (1 - 1e-9));
      }),
      seeded,
    );
  });

  it.each([
    ['one-of', rollers],
    ['one-of', { ...rollers, pressUp_m: 0.001, force_N: 4 }],
    ['out-of-range', { ...rollers, pressUp_m: -0.001 }],
    ['out-of-range', { ...rollers, pressUp_m: 0.1 }],
    ['out-of-range', { ...rollers, force_N: 401 }],
    ['out-of-range', { ...rollers, pitch_m: 0, pressUp_m: 0.001 }],
    ['not-finite', { ...rollers, tension_N: Number.NaN, pressUp_m: 0.001 }],
  ] as [string, PressUpInput][])('[PRESS-UP-04] %s', (code, input) => {
    expect(() => pressUp(input)).toThrow(expect.objectContaining({ code }));
  });
});
