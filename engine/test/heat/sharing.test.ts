import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  leakedBag_Pa,
  leakMean,
  leakTime_s,
  type PressureInput,
  platePressures,
  pressure,
  warmedBag_Pa,
} from '../../src/press/index.ts';
import { Refusal } from '../../src/refusal.ts';
import { checkHeat as check } from '../book.ts';

const seeded = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

/** 2 bar on a bag of 110 mm, belt of 50 mm, two strips of 30 mm under a stiff plate. */
function input(stripsThickness_mm: number, beltModulus_MPa = 20): PressureInput {
  return {
    gaugePressure_Pa: 2e5,
    bagWidth_m: 0.11,
    beltWidth_m: 0.05,
    stripsWidth_m: 0.06,
    plate: {
      beltThickness_m: 2.4e-3,
      beltModulus_MPa,
      stripsThickness_m: stripsThickness_mm / 1000,
      stripsModulus_MPa: 5,
    },
  };
}

describe('pressure on belt and strips', () => {
  it.each([
    ['SHARE-01 belt and strips of equal height', 2.4, 20, 3.385],
    ['SHARE-02 pressure under a plate with strips 0.1 mm too tall', 2.5, 20, 1.553],
    ['SHARE-01 strips 0.2 mm too tall', 2.6, 20, 0],
    ['SHARE-01 softened belt', 2.4, 1, 0.629],
  ])('[SHARE-01] %s', (id, strips_mm, modulus_MPa, published) => {
    const ours_bar = pressure(input(strips_mm, modulus_MPa)).belt_Pa / 1e5;
    check(id, '2 bar on 110 mm, belt 50 x 2.4 mm, strips 2 x 30 mm of 5 MPa', 'bar', published, ours_bar, 0.00051);
  });

  it('[SHARE-01] strips 0.1 mm too low are not reached: the belt carries all of it', () => {
    const ours = pressure(input(2.3));
    const derived = { evidence: 'derived' as const, source: '2 bar times 110 over 50' };
    check(
      'SHARE-01 belt alone under the plate',
      'strips 0.1 mm too low',
      'bar',
      4.4,
      ours.belt_Pa / 1e5,
      1e-9,
      derived,
    );
    expect(ours.strips_Pa).toBe(0);
  });

  it('[SHARE-01] forces add up to that of the bag, whatever heights and stiffnesses', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const body = fc.record({
      width_m: number(0.001, 0.2),
      height_m: number(1e-3, 5e-3),
      modulus_MPa: number(0.1, 500),
    });
    fc.assert(
      fc.property(body, body, number(1, 1e5), (belt, strips, force) => {
        const { belt_Pa, strips_Pa, travel_m } = platePressures(force, belt, strips);
        const carried = belt_Pa * belt.width_m + strips_Pa * strips.width_m;
        return travel_m > 0 && belt_Pa >= 0 && strips_Pa >= 0 && Math.abs(carried / force - 1) < 1e-9;
      }),
      seeded,
    );
  });

  it('[SHARE-02] from gauge to belt: strips that are too tall carry all, and it is said', () => {
    const tall = pressure(input(2.6));
    expect(tall.belt_Pa).toBe(0);
    expect(tall.warnings.map(({ code }) => code)).toEqual(['strips-carry-all']);
    const { plate: _, ...plain } = input(2.4);
    expect(pressure(plain)).toMatchObject({ belt_Pa: 2e5, strips_Pa: 2e5, ratio: 1, warnings: [] });
    expect(pressure({ ...plain, stripsWidth_m: 0 })).toMatchObject({ belt_Pa: 4.4e5, strips_Pa: null });
    expect(pressure({ ...input(2.4), stripsWidth_m: 0 }).belt_Pa).toBeCloseTo(4.4e5, 6);
    expect(pressure({ ...plain, gaugePressure_Pa: 0 }).ratio).toBeNull();
    const shut = pressure({ ...plain, shut: { filled_degC: 25, now_degC: 80, after_s: 1040, leakTime_s: 1169.7 } });
    expect(shut.gauge_Pa).toBeCloseTo(
      leakedBag_Pa(warmedBag_Pa({ gaugePressure_Pa: 2e5, temperature_degC: 25 }, 80), 1040, 1169.7),
      6,
    );
    expect(shut.worked.map(({ formula }) => formula)).toEqual(['warmed-bag', 'leaked-bag', 'belt-pressure']);
    expect(shut.worked.at(-1)?.value).toBe(shut.belt_Pa);
    expect(tall.worked.at(-1)?.value).toBe(0);
  });

  it('[SHARE-03] a shut bag follows absolute temperature', () => {
    const ours = warmedBag_Pa({ gaugePressure_Pa: 2e5, temperature_degC: 25 }, 80);
    check('SHARE-03 bag warmed to 80 degC', '2.000 bar at 25 degC', 'bar', 2.556, ours / 1e5, 0.00051);
    expect(warmedBag_Pa({ gaugePressure_Pa: 2e5, temperature_degC: 25 }, 25)).toBeCloseTo(2e5, 6);
  });

  it('[SHARE-04] a leak read from the gauge, and what it leaves over a cycle', () => {
    const tau = leakTime_s({ gaugePressure_Pa: 2e5, later_Pa: 1.9e5, after_s: 60 });
    check('SHARE-04 leak time', '2.0 to 1.9 bar in 60 s', 's', 1169.7, tau, 0.051);
    check(
      'SHARE-04 bag after a cycle',
      '1040 s without a pump',
      'bar',
      0.822,
      leakedBag_Pa(2e5, 1040, tau) / 1e5,
      0.00051,
    );
    check('SHARE-04 mean over a cycle', '1040 s', '1', 0.6624, leakMean(1040, tau), 0.51e-4);
    expect(leakTime_s({ gaugePressure_Pa: 2e5, later_Pa: 2e5, after_s: 60 })).toBe(Number.POSITIVE_INFINITY);
    expect(leakedBag_Pa(2e5, 1000, Number.POSITIVE_INFINITY)).toBeCloseTo(2e5, 0);
    expect(leakMean(0, tau)).toBe(1);
    expect(leakMean(1e-3, tau)).toBeCloseTo(1, 6);
  });

  it.each<[string, Partial<PressureInput>]>([
    ['gaugePressure_Pa', { gaugePressure_Pa: -1 }],
    ['gaugePressure_Pa', { gaugePressure_Pa: Number.NaN }],
    ['bagWidth_m', { bagWidth_m: 0 }],
    ['beltWidth_m', { beltWidth_m: 0 }],
    ['stripsWidth_m', { stripsWidth_m: -1 }],
    [
      'plate.beltModulus_MPa',
      { plate: { beltThickness_m: 0.002, beltModulus_MPa: 0, stripsThickness_m: 0.002, stripsModulus_MPa: 5 } },
    ],
    [
      'plate.stripsThickness_m',
      { plate: { beltThickness_m: 0.002, beltModulus_MPa: 5, stripsThickness_m: 0, stripsModulus_MPa: 5 } },
    ],
    ['now_degC', { shut: { filled_degC: 25, now_degC: 900 } }],
    ['leakTime_s', { shut: { filled_degC: 25, now_degC: 25, after_s: 10, leakTime_s: 0 } }],
  ])('[SHARE-05] bad %s is refused', (path, bad) => {
    const run = () => pressure({ ...input(2.4), ...bad });
    expect(run).toThrow(Refusal);
    expect(run).toThrow(` at ${path}`);
  });
});
