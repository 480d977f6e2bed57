import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { flatBeltDrive, twoPulleyBelt } from '../../src/loop/flat-belt-drive.ts';
import { capstanRatioRow, frictionNeededRow } from '../../src/loop/slip-formulas.ts';
import { sagRow } from '../../src/loop/tension-check-formulas.ts';
import { refusalOf } from './refusals.ts';

const inch = 0.0254;
const foot = 0.3048;
const lbf = 4.4482216152605;
const horsepower = 550 * foot * lbf;
const shigley = 'Budynas & Nisbett, Shigley’s Mechanical Engineering Design, chapter 17-2';
const halfDigit = 'half the last printed digit';

/** A belt of 0.13 in polyamide, 0.042 lbf/in3, as both examples use it. */
function polyamide(width_in: number, correction: number) {
  const weight_lbf_ft = 12 * 0.042 * width_in * 0.13;
  return {
    beltMass_kg_m: (weight_lbf_ft * lbf) / foot / 9.80665,
    allowedTension_N: width_in * 100 * correction * lbf,
    friction: 0.8,
  };
}

const example1 = {
  smallDiameter_m: 6 * inch,
  largeDiameter_m: 18 * inch,
  centreDistance_m: 96 * inch,
  revolutions_1_s: 1750 / 60,
  power_W: 15 * horsepower,
  factor: 1.25 * 1.1,
  ...polyamide(6, 0.7),
};
const example2 = {
  smallDiameter_m: 16 * inch,
  largeDiameter_m: 36 * inch,
  centreDistance_m: 192 * inch,
  revolutions_1_s: 860 / 60,
  power_W: 60 * horsepower,
  factor: 1.15 * 1.05,
  ...polyamide(10, 0.94),
};

type Line = readonly [id: string, unit: string, published: number, ours: number, tolerance: number];

describe('flat belt drive', () => {
  const ours = flatBeltDrive(example1);
  const printed: readonly Line[] = [
    ['T1.1 capstan ratio', '1', 11.17, ours.capstanRatio, 0.005],
    ['T1.1 belt speed', 'ft/min', 2749, (ours.speed_m_s * 60) / foot, 0.5],
    ['T1.1 belt weight', 'lbf/ft', 0.393, (example1.beltMass_kg_m * 9.80665 * foot) / lbf, 0.0005],
    ['T1.1 centrifugal tension', 'lbf', 25.6, ours.centrifugalTension_N / lbf, 0.05],
    ['T1.1 torque', 'lbf in', 742.8, ours.torque_Nm / (lbf * inch), 0.05],
    ['T1.1 tension difference', 'lbf', 247.6, ours.difference_N / lbf, 0.05],
    ['T1.1 slack side', 'lbf', 172.4, ours.slack_N / lbf, 0.05],
    ['T1.1 initial tension', 'lbf', 270.6, ours.initial_N / lbf, 0.05],
    ['T1.1 developed friction', '1', 0.328, ours.developedFriction, 0.0005],
    ['T1.1 dip', 'in', 0.14, ours.dip_m / inch, 0.005],
  ];
  it.each(printed)('[TENSION-10] example 17-1: %s', (id, unit, published, value, tolerance) => {
    const inputs = 'd 6 in, D 18 in, C 96 in, 1750 rpm, 6 in wide, 15 hp';
    const source = `${shigley}, example 17-1`;
    checkAgainst({
      topic: 'loop',
      id,
      source,
      evidence: 'printed',
      inputs,
      unit,
      published,
      ours: value,
      tolerance,
      why: halfDigit,
    });
  });

  const derived: readonly Line[] = [
    ['T1.1 wrap', 'rad', 3.016511, ours.smallWrap_rad, 5e-7],
    ['T1.1 length exact', 'in', 230.074234, ours.length_m / inch, 5e-7],
    ['T1.1 length approximate', 'in', 230.074112, ours.approximateLength_m / inch, 5e-7],
    ['T1.1 slack side, all digits', 'lbf', 172.4018, ours.slack_N / lbf, 1.5e-3],
  ];
  it.each(derived)('[TENSION-10] example 17-1: %s', (id, unit, published, value, tolerance) => {
    const inputs = 'd 6 in, D 18 in, C 96 in';
    const source = 'the handbook’s equations worked apart from this program';
    checkAgainst({
      topic: 'loop',
      id,
      source,
      evidence: 'derived',
      inputs,
      unit,
      published,
      ours: value,
      tolerance,
      why: 'digits given; 63 025 in the handbook’s torque is 63 025.36',
    });
  });

  const second = flatBeltDrive(example2);
  const printed2: readonly Line[] = [
    ['T1.2 centrifugal tension', 'lbf', 73.4, second.centrifugalTension_N / lbf, 0.05],
    ['T1.2 slack side', 'lbf', 276, second.slack_N / lbf, 0.5],
    ['T1.2 initial tension', 'lbf', 535, second.initial_N / lbf, 0.5],
    // The book goes on with its own rounded figures; so does this check.
    [
      'T1.2 developed friction',
      '1',
      0.479,
      frictionNeededRow.compute({ F1: 940, F2: 276, Fc: 73.4, w: 3.037 }),
      0.0005,
    ],
    ['T1.2 dip', 'in', 0.47, dipFromRounded(535), 0.0005],
  ];
  it.each(printed2)('[TENSION-10] example 17-2: %s', (id, unit, published, value, tolerance) => {
    const inputs = 'd 16 in, D 36 in, C 192 in, 860 rpm, 10 in wide, 60 hp';
    const source = `${shigley}, example 17-2`;
    checkAgainst({
      topic: 'loop',
      id,
      source,
      evidence: 'printed',
      inputs,
      unit,
      published,
      ours: value,
      tolerance,
      why: halfDigit,
    });
  });

  it('[TENSION-10] example 17-2: at the printed smallest width of 8.40 in the belt just holds', () => {
    const narrow = flatBeltDrive({ ...example2, ...polyamide(8.4, 0.94) });
    checkAgainst({
      topic: 'loop',
      id: 'T1.2 friction at the smallest width',
      source: `${shigley}, example 17-2: b = 8.40 in for f = 0.8`,
      evidence: 'printed',
      inputs: '8.40 in wide',
      unit: '1',
      published: 0.8,
      ours: narrow.developedFriction,
      tolerance: 0.0015,
      why: 'half the last digit of the width moves the friction by 0.0014',
    });
    expect(narrow.holds).toBe(true);
    expect(flatBeltDrive({ ...example2, ...polyamide(8.39, 0.94) }).holds).toBe(false);
  });

  it('[TENSION-11] crossed: both wraps are equal, and a crossed belt is longer', () => {
    const pulleys = { smallDiameter_m: 0.1, largeDiameter_m: 0.2, centreDistance_m: 0.5 };
    const crossed = twoPulleyBelt({ ...pulleys, crossed: true });
    expect(crossed.smallWrap_rad).toBe(crossed.largeWrap_rad);
    expect(crossed.smallWrap_rad).toBeCloseTo(Math.PI + 2 * Math.asin(0.3), 14);
    expect(crossed.length_m).toBeGreaterThan(twoPulleyBelt(pulleys).length_m);
  });

  it('[TENSION-11] open: wraps add to a full turn, and equal pulleys need 2C + pi D', () => {
    const { smallWrap_rad, largeWrap_rad } = twoPulleyBelt({
      smallDiameter_m: 0.1,
      largeDiameter_m: 0.3,
      centreDistance_m: 1,
    });
    expect(smallWrap_rad + largeWrap_rad).toBeCloseTo(2 * Math.PI, 14);
    const equal = twoPulleyBelt({ smallDiameter_m: 0.2, largeDiameter_m: 0.2, centreDistance_m: 1 });
    expect(equal.length_m).toBeCloseTo(2 + 0.2 * Math.PI, 14);
    expect(equal.approximateLength_m).toBeCloseTo(2 + 0.2 * Math.PI, 14);
  });

  it('[TENSION-12] friction developed lies under the friction there is exactly while the belt holds', () => {
    expect(ours.holds).toBe(true);
    const ratio = (ours.tight_N - ours.centrifugalTension_N) / (ours.slack_N - ours.centrifugalTension_N);
    expect(capstanRatioRow.compute({ f: ours.developedFriction, w: ours.smallWrap_rad })).toBeCloseTo(ratio, 12);
    expect(flatBeltDrive({ ...example1, friction: 0.3 }).holds).toBe(false);
  });

  it('[TENSION-13] bad input is refused with its field and limits', () => {
    expect(refusalOf(() => flatBeltDrive({ ...example1, allowedTension_N: 900 }))).toMatchObject({
      code: 'tension-too-small',
      path: 'allowedTension_N',
    });
    expect(refusalOf(() => twoPulleyBelt({ ...example1, centreDistance_m: 0.1 })).path).toBe('centreDistance_m');
    expect(refusalOf(() => twoPulleyBelt({ ...example1, smallDiameter_m: Number.NaN })).code).toBe('not-finite');
    expect(refusalOf(() => flatBeltDrive({ ...example1, friction: 0 })).data).toMatchObject({ value: 0, min: 0.001 });
  });
});

function dipFromRounded(initial_lbf: number): number {
  return sagRow.compute({ m: example2.beltMass_kg_m, l: 192 * inch, T: initial_lbf * lbf }) / inch;
}
