import { describe, expect, it } from 'vitest';
import {
  bondOfHealing,
  fusedShare,
  fusedStrength_N_mm,
  fusionParameters,
  hardSegmentDefaults,
  hardSegmentFactor,
  historyIntegral,
  weldingTime_s,
} from '../../src/fusion/index.ts';
import { checkFusion as check } from '../book.ts';

const p = fusionParameters();

function ramp(from_degC: number, to_degC: number, rate_K_s: number) {
  const duration_s = Math.abs(to_degC - from_degC) / rate_K_s;
  return { times_s: [0, duration_s], temperatures_degC: [from_degC, to_degC], pressures_Pa: [0, 0] };
}

const molten = (t: number) => 1 / weldingTime_s(t, p);

describe('healing', () => {
  it.each([
    [160, 0.618991746, 0.814638951],
    [170, 0.723960632, 0.952785774],
    [180, 0.840896415, 1],
    [190, 0.970425044, 1],
    [200, 1, 1],
  ])('[FUSE-10] bond at %d degC', (t, after10, after30) => {
    for (const [time_s, published] of [
      [10, after10],
      [30, after30],
    ] as const) {
      const ours = Math.min(1, bondOfHealing(time_s / weldingTime_s(t, p)));
      check(
        `FUSE-10 bond after ${time_s} s at ${t} degC`,
        '20 s at 180 degC, 100 kJ/mol',
        '1',
        published,
        ours,
        0.51e-9,
      );
    }
  });

  it.each([
    ['heating', 150, 180],
    ['cooling', 180, 150],
  ])('[FUSE-10] bond over 30 s of %s is the same whichever way time runs', (name, from, to) => {
    const healing = historyIntegral(ramp(from, to, 1), molten, 4);
    check(`FUSE-10 healing while ${name}`, '150 and 180 degC, 1 K/s', '1', 0.689530088651, healing, 1e-11);
    check(`FUSE-10 bond while ${name}`, '150 and 180 degC, 1 K/s', '1', 0.9112516034, bondOfHealing(healing), 1e-10);
  });

  it('[FUSE-10] a cycle with a hard gate at 160 degC', () => {
    const up = historyIntegral(ramp(160, 190, 2), molten, 4);
    const hold = historyIntegral({ ...ramp(190, 190, 2), times_s: [0, 20] }, molten, 4);
    const down = historyIntegral(ramp(190, 160, 3), molten, 4);
    const inputs = '25 degC, +2 K/s to 190, 20 s, -3 K/s to 100';
    check('FUSE-10 healing on the way up', inputs, '1', 0.629028486, up, 0.51e-9);
    check('FUSE-10 healing in the hold', inputs, '1', 1.77369107, hold, 0.51e-8);
    check('FUSE-10 healing on the way down', inputs, '1', 0.419352324, down, 0.51e-9);
    check('FUSE-10 healing above 160 degC', inputs, '1', 2.82207188, up + hold + down, 0.51e-8);
    const all = historyIntegral(ramp(25, 190, 2), molten, 4) + hold + historyIntegral(ramp(190, 100, 3), molten, 4);
    check('FUSE-10 healing without a gate', inputs, '1', 2.99985386, all, 0.51e-8);
  });

  it('[FUSE-18] an integral over a history agrees with the closed form, and does not depend on how it is cut up', () => {
    const rate = (t: number) => Math.exp(-150e3 / (8.314462618 * (t + 273.15)));
    const ours = historyIntegral(ramp(25, 200, 1), rate, 4);
    check('FUSE-18 integral of exp(-E/RT)', '150 kJ/mol, 25 to 200 degC', '1e-16 K', 3.25635674158, ours * 1e16, 1e-9);
    const whole = historyIntegral(ramp(150, 190, 1), molten, 4);
    const parts = historyIntegral(ramp(150, 171, 1), molten, 4) + historyIntegral(ramp(171, 190, 1), molten, 4);
    expect(parts).toBeCloseTo(whole, 12);
  });
});

describe('strength of a fused flank', () => {
  it.each([
    [163.4, 0.52608],
    [170, 0.61135],
    [180, 0.88865],
    [184, 0.95233],
  ])('[FUSE-16] factor of hard segments at %d degC', (t, published) => {
    check(
      `FUSE-16 hard segments at ${t} degC`,
      'centre 175 degC, width 4 K, 0.5 without',
      '1',
      published,
      hardSegmentFactor(t),
      0.51e-5,
    );
  });

  it('[FUSE-17] share is fill times bond times molar mass, the first two capped; strength is capped by the belt', () => {
    const half = { fillShare: 0.5, bond: 0.8, molarMassShare: 0.9, peak_degC: 180 };
    const derived = { evidence: 'derived' as const, source: 'product by hand' };
    check(
      'FUSE-17 strength share of a half-filled flank',
      'fill 0.5, bond 0.8, molar mass 0.9',
      '1',
      0.36,
      fusedShare(half),
      1e-12,
      derived,
    );
    expect(fusedShare({ ...half, fillShare: 3, bond: 2 })).toBe(0.9);
    expect(fusedShare(half, { molarMassExponent: 2 })).toBeCloseTo(0.324, 12);
    expect(fusedShare(half, { hardSegments: hardSegmentDefaults })).toBeCloseTo(0.36 * hardSegmentFactor(180), 12);
    check(
      'FUSE-17 strength capped by the belt',
      'share 0.9 of 100 N/mm, belt 80 N/mm',
      'N/mm',
      80,
      fusedStrength_N_mm(0.9, 100, 80),
      0,
      derived,
    );
    expect(fusedStrength_N_mm(0.5, 100, 80)).toBe(50);
  });
});
