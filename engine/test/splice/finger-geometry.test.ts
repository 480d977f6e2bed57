import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { biasGrowth_m, fingerGeometry, misregistrationTipGap_m } from '../../src/splice/finger-geometry.ts';
import { seeded } from './seeded.ts';

const source = 'triangle of half a pitch and the finger length, evaluated by a separate program';

function check(id: string, inputs: string, unit: string, published: number, ours: number, tolerance: number): void {
  checkAgainst({
    topic: 'splice',
    id: `T7 ${id}`,
    source,
    evidence: 'independent',
    inputs,
    unit,
    published,
    ours,
    tolerance,
    why: 'half the last digit',
  });
}

describe('finger geometry', () => {
  it.each([
    [35, 11.5, 9.32954, 6.08696, 35.46918, 2.6087, 185.05657, 6.16855],
    [70, 11.5, 4.6959, 12.17391, 70.23576, 2.6087, 366.44746, 12.21492],
    [80, 20, 7.12502, 8, 80.62258, 1.5, 241.86773, 8.06226],
    [120, 20, 4.76364, 12, 120.41595, 1.5, 361.24784, 12.04159],
    [50, 10, 5.71059, 10, 50.24938, 3, 301.49627, 10.04988],
    [110, 11.5, 2.99228, 19.13043, 110.15018, 2.6087, 574.6966, 19.15655],
  ])('[SPLICE-01] %d x %d on a 30 mm belt', (l, p, angle, slope, flank, fingers, weld, perWidth) => {
    const found = fingerGeometry({ fingerLength_m: l / 1000, pitch_m: p / 1000, width_m: 0.03 });
    const name = `${l} x ${p}`;
    check(`flank angle ${name}`, name, 'deg', angle, (found.flankAngle_rad * 180) / Math.PI, 0.51e-5);
    check(`slope ${name}`, name, '1', slope, found.slope, 0.51e-5);
    check(`flank ${name}`, name, 'mm', flank, found.flank_m * 1000, 0.51e-5);
    check(`fingers ${name}`, name, '1', fingers, found.fingers, 0.51e-5);
    check(`weld length ${name}`, name, 'mm', weld, found.weldLength_m * 1000, 0.51e-5);
    check(`flank per width ${name}`, name, 'mm/mm', perWidth, found.flankPerWidth, 0.51e-5);
  });

  it('[SPLICE-02] sideways error opens a gap at the tips', () => {
    const gap = misregistrationTipGap_m({ sideways_m: 0.001, fingerLength_m: 0.07, pitch_m: 0.0115 });
    check('tip gap 70 x 11.5', '70 x 11.5, 1 mm sideways', 'mm', 12.17391, gap * 1000, 0.51e-5);
    const most = { sideways_m: 0.006, fingerLength_m: 0.07, pitch_m: 0.0115 };
    expect(() => misregistrationTipGap_m(most)).toThrow(
      expect.objectContaining({ code: 'out-of-range', path: 'sideways_m' }),
    );
  });

  it.each([
    [75, 8.0385],
    [60, 17.3205],
  ])('[SPLICE-03] a splice askew by %d degrees grows', (bias, growth) => {
    const ours = biasGrowth_m(0.03, (bias / 180) * Math.PI) * 1000;
    check(`bias ${bias} degrees`, `b 30 mm, ${bias} deg`, 'mm', growth, ours, 0.5e-4);
  });

  it('[SPLICE-01] longer fingers: flatter flanks, more weld; the same weld per width for any belt width', () => {
    const mm = (min: number, max: number) => fc.integer({ min, max }).map((tenths) => tenths / 10_000);
    fc.assert(
      fc.property(mm(100, 2000), mm(20, 500), mm(100, 3000), (fingerLength_m, pitch_m, width_m) => {
        const short = fingerGeometry({ fingerLength_m, pitch_m, width_m });
        const long = fingerGeometry({ fingerLength_m: fingerLength_m * 1.1, pitch_m, width_m });
        expect(long.flankAngle_rad).toBeLessThan(short.flankAngle_rad);
        expect(long.weldLength_m).toBeGreaterThan(short.weldLength_m);
        expect(Math.tan(short.flankAngle_rad) * short.slope).toBeCloseTo(1, 12);
        expect(fingerGeometry({ fingerLength_m, pitch_m, width_m: width_m * 2 }).flankPerWidth).toBe(
          short.flankPerWidth,
        );
      }),
      seeded,
    );
  });

  it.each([
    [{ fingerLength_m: 0, pitch_m: 0.01, width_m: 0.03 }, 'out-of-range', 'fingerLength_m'],
    [{ fingerLength_m: 0.05, pitch_m: -0.01, width_m: 0.03 }, 'out-of-range', 'pitch_m'],
    [{ fingerLength_m: 0.05, pitch_m: 0.01, width_m: Number.NaN }, 'not-finite', 'width_m'],
  ])('[SPLICE-10] refuses %o', (input, code, path) => {
    expect(() => fingerGeometry(input)).toThrow(expect.objectContaining({ code, path }));
  });
});
