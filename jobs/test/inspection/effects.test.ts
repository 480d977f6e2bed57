import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import {
  edgeStressShare,
  gradeOf,
  greyScale,
  greyScaleGrade,
  inspectionLimits,
  kinkEffect,
  thicknessStepEffect,
  tipGap_m,
} from '../../src/inspection/index.ts';

interface Line {
  readonly id: string;
  readonly inputs: string;
  readonly unit: string;
  readonly published: number;
  readonly ours: number;
  readonly tolerance: number;
}

const derived = (line: Line): void =>
  checkAgainst({
    topic: 'inspection',
    source: 'derivation of the acceptance numbers, printed rounded',
    evidence: 'derived',
    why: 'half of the last printed digit',
    ...line,
  });

describe('what a defect does', () => {
  it('[INSP-10] a kink: edge strain, length over which the belt straightens, wander', () => {
    const at = (elongation: number) => kinkEffect({ bow_m: 0.002, width_m: 0.05, elongation });
    const inputs = '2 mm over 1 m, belt of 50 mm, 0.8 %';
    const share = { id: 'INSP-10 edge strain, 0.8 %', inputs, unit: '%', published: 7.7, tolerance: 0.05 };
    derived({ ...share, ours: at(0.008).edgeStrainShare * 100 });
    derived({ ...share, id: 'INSP-10 edge strain, 0.5 %', published: 9.8, ours: at(0.005).edgeStrainShare * 100 });
    derived({
      id: 'INSP-10 straightens over',
      inputs,
      unit: 'mm',
      published: 161.4,
      ours: at(0.008).straightens_m * 1000,
      tolerance: 0.05,
    });
    derived({
      id: 'INSP-10 wander',
      inputs,
      unit: 'mm',
      published: 0.65,
      ours: at(0.008).wander_m * 1000,
      tolerance: 0.005,
    });
    checkAgainst({
      topic: 'inspection',
      id: 'INSP-10 edge strain by finite differences',
      source: 'finite differences of the beam under tension, another program',
      evidence: 'independent',
      inputs,
      unit: '1',
      published: 0.0774597,
      ours: at(0.008).edgeStrainShare,
      tolerance: 5e-8,
      why: 'half of the last printed digit',
    });
  });

  it('[INSP-11] a lateral step: eccentric pull', () => {
    const line = { unit: '%', tolerance: 0.5 };
    derived({
      ...line,
      id: 'INSP-11 step on 50 mm',
      inputs: '0.5 mm',
      published: 3,
      ours: edgeStressShare(0.0005, 0.05) * 100,
    });
    derived({
      ...line,
      id: 'INSP-11 step on 30 mm',
      inputs: '0.5 mm',
      published: 5,
      ours: edgeStressShare(0.0005, 0.03) * 100,
    });
  });

  it('[INSP-12] a mesh that lies off by 0.3 mm opens the tips', () => {
    const gap = (length_m: number, pitch_m: number) => tipGap_m(0.0003, { length_m, pitch_m }) * 1000;
    const line = { inputs: '0.3 mm off', unit: 'mm', tolerance: 0.005 };
    derived({ ...line, id: 'INSP-12 fingers 80 x 10', published: 4.8, ours: gap(0.08, 0.01) });
    derived({ ...line, id: 'INSP-12 fingers 40 x 5', published: 4.8, ours: gap(0.04, 0.005) });
    derived({ ...line, id: 'INSP-12 fingers 70 x 11.5', published: 3.65, ours: gap(0.07, 0.0115) });
  });

  it('[INSP-13] a step in thickness on a pulley and under a pressure roller', () => {
    const effect = thicknessStepEffect({
      step_m: 0.0002,
      radius_m: 0.025,
      speed_m_s: 0.75,
      neutral_m: 0.0006,
      tension_N: 200,
      rollerPitch_m: 0.1,
    });
    const inputs = 'step 0.2 mm, pulley radius 25 mm, 0.75 m/s; 200 N, rollers 100 mm apart';
    derived({ id: 'INSP-13 ramp', inputs, unit: 'mm', published: 3.17, ours: effect.ramp_m * 1000, tolerance: 0.005 });
    derived({ id: 'INSP-13 time', inputs, unit: 'ms', published: 4.2, ours: effect.time_s * 1000, tolerance: 0.05 });
    derived({
      id: 'INSP-13 acceleration',
      inputs,
      unit: 'm/s2',
      published: 22,
      ours: effect.acceleration_m_s2,
      tolerance: 0.5,
    });
    derived({ id: 'INSP-13 strain', inputs, unit: '%', published: 0.78, ours: effect.strain * 100, tolerance: 0.005 });
    derived({
      id: 'INSP-13 force',
      inputs,
      unit: 'N',
      published: 1.6,
      ours: effect.rollerForce_N ?? 0,
      tolerance: 0.05,
    });
  });

  it('[INSP-14] the grey scale: every printed difference has its grade, and so have both ends of its tolerance', () => {
    const printed = [
      [4, 1.7, 0.3],
      [3.5, 2.5, 0.35],
      [3, 3.4, 0.4],
      [2.5, 4.8, 0.5],
      [2, 6.8, 0.6],
    ] as const;
    for (const [grade, difference, tolerance] of printed) {
      const row = greyScale.find((each) => each.grade === grade);
      checkAgainst({
        topic: 'inspection',
        id: `INSP-14 grey scale grade ${grade}`,
        source: 'EN 20105-A02',
        evidence: 'printed',
        inputs: 'change in colour',
        unit: 'CIELAB',
        published: difference,
        ours: row?.difference ?? Number.NaN,
        tolerance: 1e-9,
        why: 'a table, carried over',
      });
      expect(row?.tolerance).toBe(tolerance);
      for (const at of [difference - tolerance, difference, difference + tolerance]) {
        expect(greyScaleGrade(at)).toBe(grade);
      }
    }
  });
});

describe('limits', () => {
  it('[INSP-15] accepted below L - U, refused above L + U, else looked at closer', () => {
    const limit = { accept: 2, refuse: 3, uncertainty: 0.25 };
    const grades = [1.75, 1.76, 2, 3, 3.25, 3.26].map((value) => gradeOf(value, limit));
    expect(grades).toEqual(['accept', 'look-closer', 'look-closer', 'look-closer', 'look-closer', 'refuse']);
    expect(gradeOf(2, limit, 0)).toBe('accept');
    expect(gradeOf(3.0001, limit, 0)).toBe('refuse');
  });

  it('[INSP-16] a narrow belt allows less step, a thin one less step and smaller voids; a limit set by the plant counts', () => {
    expect(inspectionLimits({ width_m: 0.03 })['edge-step']).toMatchObject({ accept: 0.0005, refuse: 0.0006 });
    expect(inspectionLimits({ width_m: 0.02 })['edge-step']).toMatchObject({ accept: 0.0004, refuse: 0.0004 });
    expect(inspectionLimits({ thickness_m: 0.0015 })['thickness-step'].refuse).toBeCloseTo(0.00015, 12);
    expect(inspectionLimits({ thickness_m: 0.0018 }).void).toMatchObject({ accept: 0.0009, refuse: 0.0009 });
    expect(inspectionLimits({ width_m: 0.05, thickness_m: 0.004 })).toEqual(inspectionLimits());
    const own = { accept: 0.001, refuse: 0.002, uncertainty: 0 };
    expect(inspectionLimits({}, { bow: own }).bow).toEqual(own);
  });
});
