import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import {
  meanTensionForNoSlip_N,
  pullOnLiveRollers_N,
  slackMinimum_N,
  slipFromMeanTension_N,
} from '../../src/loop/slip.ts';
import { capstanRatioRow } from '../../src/loop/slip-formulas.ts';
import { elongationForTension } from '../../src/loop/strand-tension.ts';
import { shaftLoadRow } from '../../src/loop/tension-formulas.ts';
import { between, runs } from './loops.ts';
import { refusalOf } from './refusals.ts';

const degrees = Math.PI / 180;
const grip = { friction: 0.25, driveWrap_rad: 185.7993 * degrees, beltMass_kg_m: 0.08, speed_m_s: 0.75 };
const grips = fc.record({
  friction: between(0.05, 0.8),
  driveWrap_rad: between(1, 5),
  beltMass_kg_m: between(0, 1),
  speed_m_s: between(0, 3),
});

/** e^(f w) for wraps of 150, 180, 210 and 240 degrees. */
const capstanTable: readonly (readonly [f: number, ...ratios: number[]])[] = [
  [0.2, 1.68809, 1.87446, 2.08139, 2.31118],
  [0.25, 1.92418, 2.19328, 2.50002, 2.84965],
  [0.3, 2.19328, 2.56633, 3.00284, 3.51359],
  [0.4, 2.84965, 3.51359, 4.3322, 5.34155],
  [0.5, 3.70246, 4.81048, 6.25009, 8.12053],
];

function check(id: string, published: number, ours: number, tolerance: number, unit = 'N'): void {
  checkAgainst({
    topic: 'loop',
    id,
    source: 'Euler-Eytelwein with centrifugal tension, worked apart from this program',
    evidence: 'derived',
    inputs: 'f 0.25, wrap 185.7993 deg, 180 N, 0.08 kg/m, 0.75 m/s',
    unit,
    published,
    ours,
    tolerance,
    why: 'digits given',
  });
}

describe('grip of a drive', () => {
  it('[TENSION-20] capstan ratio for usual frictions and wraps', () => {
    for (const [f, ...ratios] of capstanTable) {
      ratios.forEach((published, i) => {
        const w = 150 + 30 * i;
        const id = `T1.3 capstan ratio f ${f}, ${w} deg`;
        check(id, published, capstanRatioRow.compute({ f, w: w * degrees }), 5.1e-6, '1');
      });
    }
  });

  it('[TENSION-21] slack side, pull at slip and shaft load of the SI example', () => {
    check('T1.3 slack side minimum', 144.1041, slackMinimum_N(180, grip), 5e-4);
    check('T1.3 pull at slip', 184.5342, slipFromMeanTension_N(240, grip), 5e-4);
    check('T1.3 pull at slip without Fc', 184.5688, slipFromMeanTension_N(240, { ...grip, speed_m_s: 0 }), 5e-4);
    check('T1.3 mean tension for no slip', 240, meanTensionForNoSlip_N(184.5342, grip), 1e-3);
    const load = shaftLoadRow.compute({ T1: 324.0591, T2: 144.0591, w: grip.driveWrap_rad });
    check('T1.3 shaft load', 467.6075, load, 5e-4);
  });

  it('[TENSION-21] mean tension for a pull, and pull at slip for that tension, are inverse', () => {
    fc.assert(
      fc.property(grips, between(1, 5000), (g, pull_N) => {
        expect(slipFromMeanTension_N(meanTensionForNoSlip_N(pull_N, g), g) / pull_N).toBeCloseTo(1, 9);
      }),
      runs,
    );
  });

  it('[TENSION-22] more friction, more wrap and more tension hold more; more speed holds less', () => {
    fc.assert(
      fc.property(grips, between(100, 5000), (g, F0) => {
        const held = slipFromMeanTension_N(F0, g);
        expect(slipFromMeanTension_N(F0, { ...g, friction: g.friction * 1.1 })).toBeGreaterThan(held);
        expect(slipFromMeanTension_N(F0, { ...g, driveWrap_rad: g.driveWrap_rad * 1.1 })).toBeGreaterThan(held);
        expect(slipFromMeanTension_N(F0 * 1.1, g)).toBeGreaterThan(held);
        const faster = { ...g, beltMass_kg_m: 0.1, speed_m_s: g.speed_m_s + 1 };
        expect(slipFromMeanTension_N(F0, faster)).toBeLessThan(
          slipFromMeanTension_N(F0, { ...faster, speed_m_s: g.speed_m_s }),
        );
        expect(held).toBeLessThan(2 * F0);
      }),
      runs,
    );
  });

  it('[TENSION-23] lumped pull of live rollers', () => {
    const line = { load_kg_m: 200 / 6, rollers_kg_m: 12, belt_kg_m: 1.08206 / 6, bed_m: 6 };
    check('T5.1 lumped pull, 0.05', 133.901, pullOnLiveRollers_N({ ...line, lumpedFriction: 0.05 }), 5e-4);
    check('T5.1 lumped pull, 0.10', 267.802, pullOnLiveRollers_N({ ...line, lumpedFriction: 0.1 }), 5e-4);
  });

  it('[TENSION-24] a line with 30 kg/m over 17 m on a 50 mm belt of 12 N/mm needs 0.77 % to hold', () => {
    const belt_kg_m = 2.7 * 0.05;
    const pull_N = pullOnLiveRollers_N({ lumpedFriction: 0.06, load_kg_m: 30, rollers_kg_m: 16, belt_kg_m, bed_m: 17 });
    const needed = meanTensionForNoSlip_N(pull_N, {
      friction: 0.3,
      driveWrap_rad: 210 * degrees,
      beltMass_kg_m: belt_kg_m,
      speed_m_s: 0.6,
    });
    const elongation = elongationForTension({ tension_N: needed, k1_N_mm_pct: 12, width_m: 0.05 });
    check('T8 elongation for no slip', 0.77, 100 * elongation, 0.005, '%');
  });

  it('[TENSION-25] bad input is refused with its field', () => {
    expect(refusalOf(() => slackMinimum_N(-1, grip))).toMatchObject({ code: 'out-of-range', path: 'pull_N' });
    expect(refusalOf(() => slackMinimum_N(1, { ...grip, driveWrap_rad: 7 })).path).toBe('driveWrap_rad');
    expect(refusalOf(() => slipFromMeanTension_N(Number.POSITIVE_INFINITY, grip)).code).toBe('not-finite');
  });
});
