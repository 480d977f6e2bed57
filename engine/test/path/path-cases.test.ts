import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { crossedLengthRow, openLengthRow } from '../../src/loop/index.ts';
import { beltPath } from '../../src/loop/path.ts';
import { lengthPerDisplacement } from '../../src/loop/path-sensitivity.ts';
import { hGeometry, layout } from './layouts.ts';

interface Case {
  readonly name: string;
  readonly pulleys: readonly (readonly number[])[];
  readonly length: number;
  readonly spans: readonly number[];
  readonly wraps_deg: readonly number[];
  readonly turning: number;
}

const { cases } = JSON.parse(readFileSync(join(import.meta.dirname, '../data/path-cases.json'), 'utf8')) as {
  cases: Case[];
};
const degrees = 180 / Math.PI;
const table = 'separate program, tangents of circles';
const sixDecimals = 'printed to 1e-6 mm, half the last digit and its rounding';

function check(
  id: string,
  inputs: string,
  unit: string,
  published: number,
  ours: number,
  tolerance: number,
  why: string,
) {
  checkAgainst({
    topic: 'loop',
    id: `T2 ${id}`,
    source: table,
    evidence: 'independent',
    inputs,
    unit,
    published,
    ours,
    tolerance,
    why,
  });
}

describe('belt path against a separate program', () => {
  const valid = cases.filter((one) => one.turning !== 0 || one.name.startsWith('C'));

  it.each(valid)('[PATH-01] length of $name', (one) => {
    const path = beltPath({ ...layout(one.pulleys), crossed: one.turning === 0 });
    check(
      one.name,
      `${one.pulleys.length} pulleys, neutral radii`,
      'mm',
      one.length,
      path.length_m * 1000,
      1e-6,
      sixDecimals,
    );
    expect(path.turning).toBe(one.turning);
  });

  it.each(valid)('[PATH-02] spans and wraps of $name', (one) => {
    const path = beltPath({ ...layout(one.pulleys), crossed: one.turning === 0 });
    one.spans.forEach((span, i) => {
      expect(Math.abs((path.spans_m[i] as number) * 1000 - span)).toBeLessThanOrEqual(1e-6);
    });
    one.wraps_deg.forEach((wrap, i) => {
      expect(Math.abs((path.wraps_rad[i] as number) * degrees - wrap)).toBeLessThanOrEqual(1e-6);
    });
  });

  it.each([
    [0, 13526.143179],
    [25, 13576.104524],
    [50, 13626.072442],
    [100, 13726.022282],
  ])('[PATH-01] live-roller loop with the take-up moved %i mm', (travel, length) => {
    const ours = beltPath(layout(hGeometry(travel))).length_m * 1000;
    check(`G with take-up ${travel}`, `take-up down ${travel} mm`, 'mm', length, ours, 1e-6, sixDecimals);
  });

  it.each([
    [0, 13542.517722],
    [30, 13602.488483],
  ])('[PATH-08] surface radii and a belt of 2.0 mm, neutral line 0.6 mm, take-up %i mm', (travel, length) => {
    const path = beltPath(layout(hGeometry(travel), 2, 0.6));
    const id = travel ? 'H with t 2.0, y 0.6 and take-up 30' : 'H with t 2.0, y 0.6';
    check(id, 'surface radii, t 2.0 mm, y 0.6 mm', 'mm', length, path.length_m * 1000, 1e-6, sixDecimals);
    expect(path.neutralRadii_m[0]).toBeCloseTo(0.0506, 12);
    expect(path.neutralRadii_m[1]).toBeCloseTo(0.0414, 12);
  });

  it('[PATH-02] drive wrap with the belt of 2.0 mm', () => {
    const wrap = (beltPath(layout(hGeometry(), 2, 0.6)).wraps_rad[2] as number) * degrees;
    check('H drive wrap', 'surface radii, t 2.0 mm, y 0.6 mm', 'deg', 185.799298, wrap, 1e-6, 'printed to 1e-6 deg');
  });

  it('[PATH-05] growth by thickness is about the sum of wraps times radius changes', () => {
    const bare = beltPath(layout(hGeometry()));
    const growth = bare.dLength_dRadius.reduce(
      (sum, w, i) => sum + w * ((hGeometry()[i]?.[3] ?? 0) > 0 ? 0.6 : 1.4),
      0,
    );
    check(
      'H first-order growth',
      'radii of G grown by 0.6 or 1.4 mm',
      'mm',
      16.33947,
      growth,
      1e-6,
      'printed to 1e-6 mm',
    );
  });

  it('[PATH-06] take-up derivative of the live-roller loop', () => {
    const path = beltPath(layout(hGeometry()));
    check(
      'G take-up derivative',
      'take-up straight down',
      'mm/mm',
      1.99829556,
      lengthPerDisplacement(path, 5, [0, -1]),
      1e-9,
      'printed to 1e-9',
    );
    const moved = hGeometry();
    moved[0] = [-40, 0, 50, 1];
    expect(beltPath(layout(moved)).length_m - path.length_m).toBeCloseTo(0.08, 12);
  });

  it('[PATH-03] hull of four discs by the support-function integral', () => {
    const ours = beltPath(
      layout([
        [0, 0, 30, 1],
        [800, 0, 50, 1],
        [800, 400, 25, 1],
        [0, 400, 60, 1],
      ]),
    ).length_m;
    check('E by support function', 'four discs', 'mm', 2662.104187, ours * 1000, 1e-6, sixDecimals);
  });
});

describe('two pulleys by the handbook formulas', () => {
  const inch = 25.4;

  it('[PATH-01] open belt of the textbook example', () => {
    const path = beltPath(
      layout([
        [0, 0, 3 * inch, 1],
        [96 * inch, 0, 9 * inch, 1],
      ]),
    );
    const source = 'Budynas & Nisbett, Mechanical Engineering Design, example 17-1, length by eq. 17-1';
    checkAgainst({
      topic: 'loop',
      id: 'T1.1 open length',
      source,
      evidence: 'independent',
      inputs: 'd 6 in, D 18 in, C 96 in',
      unit: 'in',
      published: 230.074234,
      ours: (path.length_m * 1000) / inch,
      tolerance: 0.5e-6,
      why: 'half the last digit',
    });
    checkAgainst({
      topic: 'loop',
      id: 'T1.1 wrap of the small pulley',
      source,
      evidence: 'independent',
      inputs: 'd 6 in, D 18 in, C 96 in',
      unit: 'rad',
      published: 3.016511,
      ours: path.wraps_rad[0] as number,
      tolerance: 0.5e-6,
      why: 'half the last digit',
    });
  });

  it.each([
    [0.2, 0.1, 0.5],
    [0.457, 0.152, 2.44],
    [0.06, 0.3, 1.1],
  ])('[PATH-01] open and crossed length, diameters %d and %d m at %d m, by the closed forms', (D, d, C) => {
    const rows = [
      [0, 0, D * 500, 1],
      [C * 1000, 0, d * 500, 1],
    ];
    const crossed = [
      [0, 0, D * 500, 1],
      [C * 1000, 0, d * 500, -1],
    ];
    expect(beltPath(layout(rows)).length_m).toBeCloseTo(openLengthRow.compute({ D, d, C }), 12);
    expect(beltPath({ ...layout(crossed), crossed: true }).length_m).toBeCloseTo(
      crossedLengthRow.compute({ D, d, C }),
      12,
    );
  });

  it('[PATH-01] equal pulleys: twice the distance and a circle', () => {
    const published = 2000 + 100 * Math.PI;
    const ours =
      beltPath(
        layout([
          [0, 0, 50, 1],
          [1000, 0, 50, 1],
        ]),
      ).length_m * 1000;
    checkAgainst({
      topic: 'loop',
      id: 'T2 A closed form',
      source: '2*C + 2*pi*r',
      evidence: 'derived',
      inputs: 'r 50 mm, C 1000 mm',
      unit: 'mm',
      published,
      ours,
      tolerance: 1e-9,
      why: 'rounding',
    });
  });
});
