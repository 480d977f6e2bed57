import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { criticalWater_share, dryingTime_s, waterDiffusion_m2_s, waterLeft } from '../../src/fusion/index.ts';
import { checkFusion as check } from '../book.ts';

const seeded = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

describe('water in the belt', () => {
  it.each([
    [60, 7.963e-11],
    [80, 2.039e-10],
    [100, 4.723e-10],
  ])('[DRY-01] diffusion at %d degC', (t, published) => {
    check(
      `DRY-01 diffusion at ${t} degC`,
      '1e-11 at 23 degC, 46 kJ/mol',
      'm2/s',
      published,
      waterDiffusion_m2_s(t),
      0.0006 * published,
    );
  });

  it('[DRY-02] share of the water left in a sheet that dries from both faces', () => {
    check('DRY-02 half of the water left', 'Fo 0.0491827', '1', 0.5, waterLeft(0.0491827), 1e-6);
    check('DRY-02 a tenth of the water left', 'Fo 0.2120214', '1', 0.1, waterLeft(0.2120214), 1e-7);
    check('DRY-02 4 % of the water left', 'Fo 0.3048610', '1', 0.04, waterLeft(0.304861), 1e-7);
  });

  it('[DRY-02] falls from 1 to 0 without a jump where the two forms meet', () => {
    expect(waterLeft(0)).toBe(1);
    expect(waterLeft(0.005 - 1e-12)).toBeCloseTo(waterLeft(0.005), 10);
    const fo = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(fo, fo, (a, b) => {
        const [early, late] = [waterLeft(Math.min(a, b)), waterLeft(Math.max(a, b))];
        return late >= 0 && early <= 1 && late <= early + 1e-15;
      }),
      seeded,
    );
  });

  it.each([
    [23, [19.08, 33.92, 53.01]],
    [60, [2.4, 4.26, 6.66]],
    [80, [0.94, 1.66, 2.6]],
    [100, [0.4, 0.72, 1.12]],
  ])('[DRY-03] hours to dry to a tenth at %d degC', (temperature_degC, expected) => {
    for (const [i, thickness_mm] of [1.8, 2.4, 3].entries()) {
      const dried = dryingTime_s({ thickness_m: thickness_mm / 1000, temperature_degC, left: 0.1, openFaces: 2 });
      const id = `DRY-03 hours to a tenth at ${temperature_degC} degC and ${thickness_mm} mm`;
      check(id, 'both faces open', 'h', expected[i] ?? Number.NaN, dried / 3600, 0.0051);
    }
  });

  it('[DRY-03] one face closed takes four times as long; bad input is refused', () => {
    const belt = { thickness_m: 2.4e-3, temperature_degC: 80, left: 0.1 };
    expect(dryingTime_s({ ...belt, openFaces: 1 })).toBeCloseTo(4 * dryingTime_s({ ...belt, openFaces: 2 }), 6);
    for (const [field, bad] of [
      ['left', 0],
      ['left', 1],
      ['thickness_m', 0],
      ['temperature_degC', Number.NaN],
      ['temperature_degC', 180],
      ['diffusionAt23_m2_s', 0],
    ] as const) {
      expect(() => dryingTime_s({ ...belt, openFaces: 2, [field]: bad })).toThrow(field);
    }
  });

  it.each([
    [170, 7.92, 0.494],
    [180, 10.03, 0.391],
    [190, 12.55, 0.312],
  ])('[DRY-04] water content at which bubbles grow at %d degC', (t, vapour_bar, published_percent) => {
    const ours = criticalWater_share({
      saturation_share: 0.013,
      pressure_Pa: 2e5,
      vapourPressure_Pa: vapour_bar * 1e5,
    });
    const inputs = `saturation 1.3 %, 2 bar, vapour ${vapour_bar} bar (steam table, from memory)`;
    check(`DRY-04 critical water at ${t} degC`, inputs, '%', published_percent, ours * 100, 0.001, {
      why: 'vapour pressure rounded to three digits',
    });
  });
});
