import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { crownHeight_m, crownTable } from '../../src/loop/crown.ts';
import { checkElongation, elongationWindows } from '../../src/loop/elongation-window.ts';
import { lengthToleranceShare, toleranceTables, widthTolerance_m } from '../../src/loop/length-tolerance.ts';
import { refusalOf } from './refusals.ts';

function check(id: string, published: number, ours: number, source: string, tolerance = 1e-9): void {
  const why = tolerance === 1e-9 ? 'exact' : 'inches rounded to a tenth of a millimetre';
  checkAgainst({
    topic: 'loop',
    id,
    source,
    evidence: 'practice',
    inputs: id,
    unit: 'mm',
    published,
    ours,
    tolerance,
    why,
  });
}

describe('tables', () => {
  it('[TENSION-120] crown by diameter, and the handbook’s inches', () => {
    const iso = 'ISO 22:1991 (from memory)';
    const rows = [
      [40, 0.3],
      [112, 0.3],
      [125, 0.4],
      [140, 0.4],
      [160, 0.5],
      [180, 0.5],
      [200, 0.6],
      [224, 0.6],
      [250, 0.8],
      [280, 0.8],
      [315, 1],
      [355, 1],
    ] as const;
    for (const [D, h] of rows) check(`T3 crown by diameter, ${D} mm`, h, 1000 * crownHeight_m(D / 1000), iso);
    const inches = [0.012, 0.016, 0.02, 0.024, 0.03];
    inches.forEach((h, i) => {
      check(
        `T3 crown of the handbook, ${h} in`,
        h * 25.4,
        1000 * (crownTable[i]?.height_m ?? 0),
        'Shigley, Table 17-5 (from memory)',
        0.05,
      );
    });
    expect(refusalOf(() => crownHeight_m(0.03)).data).toMatchObject({ min: 0.04, max: 0.355, unit: 'm' });
  });

  it('[TENSION-121] length tolerance: each row of both tables, from its own end to the next', () => {
    const mm = (id: 'smooth-cut-belt' | 'flat-power-belt', length: number) =>
      length * lengthToleranceShare(id, length / 1000);
    const smooth = [
      [1000, 5],
      [3000, 10],
      [7000, 20],
      [7001, 21.003],
      [20_000, 60],
    ] as const;
    for (const [length, published] of smooth)
      check(
        `T3 length tolerance, smooth, ${length} mm`,
        published,
        mm('smooth-cut-belt', length),
        'trade table (from memory)',
      );
    const power = [
      [300, 1.6],
      [1222, 3.2],
      [2540, 5],
      [6100, 8],
      [15_250, 13],
      [30_500, 19],
      [61_000, 38],
      [100_000, 70],
    ] as const;
    for (const [length, published] of power)
      check(
        `T3 length tolerance, power, ${length} mm`,
        published,
        mm('flat-power-belt', length),
        'trade table (from memory)',
      );
    expect(refusalOf(() => lengthToleranceShare('smooth-cut-belt', 0)).path).toBe('length_m');
  });

  it('[TENSION-122] width tolerance, refused beyond the table', () => {
    const rows = [
      ['smooth-cut-belt', 200, 1],
      ['smooth-cut-belt', 600, 2],
      ['smooth-cut-belt', 1000, 4],
      ['flat-power-belt', 50, 0.4],
      ['flat-power-belt', 300, 0.8],
    ] as const;
    for (const [id, width, published] of rows)
      check(
        `T3 width tolerance, ${id}, ${width} mm`,
        published,
        1000 * widthTolerance_m(id, width / 1000),
        'trade table (from memory)',
      );
    expect(refusalOf(() => widthTolerance_m('flat-power-belt', 0.4)).data).toMatchObject({ max: 0.3 });
    for (const table of toleranceTables) {
      const ends = table.length.map(({ upTo_m }) => upTo_m);
      expect(ends).toEqual([...ends].sort((a, b) => a - b));
      expect(table.source).not.toBe('');
    }
  });

  it('[TENSION-123] elongation windows: low under high, and every elongation has its place', () => {
    for (const { low, high, source } of elongationWindows) {
      expect(low).toBeLessThan(high);
      expect(source).not.toBe('');
      expect(checkElongation(low, { low, high })).toEqual({ place: 'inside', missedBy: 0 });
      expect(checkElongation(high, { low, high }).place).toBe('inside');
      expect(checkElongation(low / 2, { low, high })).toEqual({ place: 'under', missedBy: low / 2 });
      expect(checkElongation(high * 1.5, { low, high }).place).toBe('over');
    }
    const polyester = elongationWindows.find(({ id }) => id === 'polyester-fabric');
    expect(polyester).toMatchObject({ low: 0.003, high: 0.01 });
    expect(refusalOf(() => checkElongation(0.01, { low: 0.02, high: 0.01 })).path).toBe('window.high');
    expect(refusalOf(() => checkElongation(Number.NaN, { low: 0, high: 0.01 })).code).toBe('not-finite');
  });
});
