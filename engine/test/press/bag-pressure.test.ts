import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { beltPressure_Pa, gaugePressureRow } from '../../src/press/bag-pressure.ts';
import { refusalOf } from '../tension/refusals.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((n) => min + ((max - min) * n) / 1_000_000);
const lone = { gaugePressure_Pa: 2e5, bagWidth_m: 0.11, beltWidth_m: 0.05, stripsWidth_m: 0 };

function check(id: string, published: number, ours_Pa: number, tolerance = 1e-9): void {
  checkAgainst({
    topic: 'press',
    id,
    source: 'common practice, no source; balance of forces',
    evidence: 'practice',
    inputs: 'bag 110 mm wide',
    unit: 'bar',
    published,
    ours: ours_Pa / 1e5,
    tolerance,
    why: 'digits given',
  });
}

describe('bag pressure', () => {
  it('[TENSION-140] the bag’s force spreads over what carries it', () => {
    check('PRESS-01 lone belt', 4.4, beltPressure_Pa(lone));
    check('PRESS-01 with strips that fill the bag', 2, beltPressure_Pa({ ...lone, stripsWidth_m: 0.06 }));
    check(
      'PRESS-01 60 mm belt at 2.2 bar',
      4,
      beltPressure_Pa({ ...lone, gaugePressure_Pa: 2.2e5, beltWidth_m: 0.06 }),
      0.05,
    );
  });

  it('[TENSION-141] never under the gauge; the gauge for a belt pressure gives that pressure', () => {
    fc.assert(
      fc.property(between(0.1, 6), between(0.06, 0.2), between(0.01, 0.3), between(0, 0.3), (bar, wb, b, ws) => {
        const pressure = beltPressure_Pa({
          gaugePressure_Pa: bar * 1e5,
          bagWidth_m: wb,
          beltWidth_m: b,
          stripsWidth_m: ws,
        });
        expect(pressure).toBeGreaterThanOrEqual(bar * 1e5 * (1 - 1e-12));
        expect(gaugePressureRow.compute({ p: pressure, wb, b, ws }) / (bar * 1e5)).toBeCloseTo(1, 12);
        // Force on bag and force on belt and strips are the same where the bag is wide enough to press both.
        if (b + ws <= wb) expect((pressure * (b + ws)) / (bar * 1e5 * wb)).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });

  it('[TENSION-142] bad input is refused with its field', () => {
    expect(refusalOf(() => beltPressure_Pa({ ...lone, beltWidth_m: 0 })).path).toBe('beltWidth_m');
    expect(refusalOf(() => beltPressure_Pa({ ...lone, gaugePressure_Pa: Number.NaN })).code).toBe('not-finite');
  });
});
