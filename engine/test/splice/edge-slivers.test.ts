import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import {
  edgeSlivers,
  firstTipFromEdge_m,
  type PhaseSetting,
  secondEndFenceMove_m,
  turnedOverShift_m,
} from '../../src/splice/edge-slivers.ts';
import { seeded } from './seeded.ts';

const settings: PhaseSetting[] = ['tip', 'flank'];
const sizes = fc.tuple(
  fc.integer({ min: 100, max: 2000 }).map((tenths) => tenths / 10_000),
  fc.integer({ min: 20, max: 300 }).map((tenths) => tenths / 10_000),
);

/** What is cut off at a place across the belt, 0 at a tip and 1 at a root: a die with its first tip at `tip`. */
function cut(fromFence: number, tip: number, pitch: number): number {
  const along = (((fromFence - tip) % pitch) + pitch) % pitch;
  return along < pitch / 2 ? along / (pitch / 2) : 2 - along / (pitch / 2);
}

/**
 * Largest misfit of two ends meshed with one end slid sideways: 0 when every tip fills a root. The first end has the
 * belt's edge y = 0 at the fence; the second, pushed in the same way, the edge y = b, unless it was turned over.
 */
function misfit(b: number, p: number, tips: readonly [number, number], slide = 0, turnedOver = false): number {
  let worst = 0;
  for (let k = 0; k <= 60; k++) {
    const y = (b * k) / 60;
    const second = turnedOver ? y - slide : b - (y - slide);
    worst = Math.max(worst, Math.abs(cut(y, tips[0], p) + cut(second, tips[1], p) - 1));
  }
  return worst;
}

function check(id: string, source: string, inputs: string, published: number, ours: number): void {
  checkAgainst({
    topic: 'splice',
    id: `T7 ${id}`,
    source,
    evidence: 'derived',
    inputs,
    unit: 'mm',
    published,
    ours,
    tolerance: 1e-9,
    why: 'rounding',
  });
}

describe('edge slivers and the lateral phase', () => {
  it.each([
    [20, 11.5, 1.5, 1.375, 'tip'],
    [25, 11.5, 1, 1.875, 'flank'],
    [30, 11.5, 2.25, 0.625, 'tip'],
    [40, 11.5, 2.75, 0.125, 'tip'],
    [50, 11.5, 2, 0.875, 'tip'],
    [60, 11.5, 1.25, 1.625, 'flank'],
    [80, 11.5, 0.25, 2.625, 'flank'],
    [20, 20, 0, 5, 'flank'],
    [25, 20, 2.5, 2.5, 'either'],
    [30, 20, 5, 0, 'tip'],
    [40, 20, 0, 5, 'flank'],
    [50, 20, 5, 0, 'tip'],
    [60, 20, 0, 5, 'flank'],
  ])('[SPLICE-04] belt %d mm, pitch %d mm', (b, p, tip, flank, setting) => {
    const found = edgeSlivers({ width_m: b / 1000, pitch_m: p / 1000 });
    const source = 'remainders by hand';
    check(`slivers b ${b} p ${p} tip`, source, 'belt centre on a tip', tip, found.atTip_m * 1000);
    check(`slivers b ${b} p ${p} flank`, source, 'belt centre in a flank', flank, found.atFlank_m * 1000);
    expect(found.setting).toBe(setting);
    expect(found.best_m * 1000).toBeCloseTo(Math.max(tip, flank), 9);
  });

  it.each([
    [5, 1],
    [7.5, 1.5],
    [11.5, 1.5],
  ])('[SPLICE-04] threshold at a pitch of %d mm', (pitch, threshold) => {
    expect(edgeSlivers({ width_m: 0.03, pitch_m: pitch / 1000 }).threshold_m * 1000).toBeCloseTo(threshold, 12);
  });

  it('[SPLICE-05] the score is the distance of the belt edges from the nearest tip or root line', () => {
    fc.assert(
      fc.property(sizes, ([b, p]) => {
        const found = edgeSlivers({ width_m: b, pitch_m: p });
        for (const setting of settings) {
          const first = firstTipFromEdge_m(b, p, setting);
          let nearest = Number.POSITIVE_INFINITY;
          for (let k = -2; k * (p / 2) < b + 2 * p; k++) {
            const line = first + k * (p / 2);
            nearest = Math.min(nearest, Math.abs(line), Math.abs(b - line));
          }
          expect(nearest).toBeCloseTo(setting === 'tip' ? found.atTip_m : found.atFlank_m, 12);
        }
        expect(found.atTip_m + found.atFlank_m).toBeCloseTo(p / 4, 12);
      }),
      seeded,
    );
  });

  it('[SPLICE-05] no other phase leaves a thicker edge finger', () => {
    fc.assert(
      fc.property(sizes, fc.integer({ min: 0, max: 999 }), ([b, p], share) => {
        const first = (p / 2) * (share / 1000);
        const edge = (distance: number) => {
          const rest = distance - (p / 2) * Math.floor(distance / (p / 2));
          return Math.min(rest, p / 2 - rest);
        };
        expect(Math.min(edge(first), edge(b - first))).toBeLessThanOrEqual(
          edgeSlivers({ width_m: b, pitch_m: p }).best_m + 1e-12,
        );
      }),
      seeded,
    );
  });

  it('[SPLICE-06] both ends pushed in alike against one fence mesh without a shift', () => {
    fc.assert(
      fc.property(sizes, ([b, p]) => {
        for (const setting of settings) {
          const first = firstTipFromEdge_m(b, p, setting);
          const second = first + secondEndFenceMove_m(p, setting);
          expect(misfit(b, p, [first, second])).toBeLessThan(1e-9);
        }
        const alike = firstTipFromEdge_m(b, p, 'tip');
        expect(misfit(b, p, [alike, alike])).toBeGreaterThan(0.9);
      }),
      seeded,
    );
  });

  it('[SPLICE-07] an end turned over meshes only when slid by the shift', () => {
    fc.assert(
      fc.property(sizes, fc.constantFrom(...settings), ([b, p], setting) => {
        const first = firstTipFromEdge_m(b, p, setting);
        const second = first + secondEndFenceMove_m(p, setting);
        const shift = turnedOverShift_m({ width_m: b, pitch_m: p, firstTip_m: second });
        const slid = [shift, -shift].map((slide) => misfit(b, p, [first, second], slide, true));
        expect(Math.min(...slid)).toBeLessThan(1e-9);
        expect(shift).toBeCloseTo(setting === 'flank' ? p / 2 : 0, 12);
      }),
      seeded,
    );
  });

  it('[SPLICE-07] 30 mm belt, pitch 11.5 mm, by hand', () => {
    const source = 'remainders by hand';
    const [b, p] = [0.03, 0.0115];
    check(
      'first tip b 30 p 11.5 flank',
      source,
      '15 - 2.875 = 12.125, less 2 half pitches',
      0.625,
      firstTipFromEdge_m(b, p, 'flank') * 1000,
    );
    check('first tip b 30 p 11.5 tip', source, '15 less 2 half pitches', 3.5, firstTipFromEdge_m(b, p, 'tip') * 1000);
    check('fence move p 11.5', source, 'half a pitch', 5.75, secondEndFenceMove_m(p, 'tip') * 1000);
    expect(secondEndFenceMove_m(p, 'flank')).toBe(0);
    const turned = (tip: number) => turnedOverShift_m({ width_m: b, pitch_m: p, firstTip_m: tip / 1000 }) * 1000;
    check('turned over b 30 p 11.5 flank', source, '30 - 1.25 = 28.75 = 2.5 pitches', 5.75, turned(0.625));
    check('turned over b 30 p 11.5 tip', source, '30 - 7 = 23 = 2 pitches', 0, turned(3.5));
  });

  it.each([
    [{ width_m: 0, pitch_m: 0.01 }, 'out-of-range', 'width_m'],
    [{ width_m: 0.03, pitch_m: 0 }, 'out-of-range', 'pitch_m'],
    [{ width_m: Number.NaN, pitch_m: 0.01 }, 'not-finite', 'width_m'],
  ])('[SPLICE-10] refuses %o', (input, code, path) => {
    expect(() => edgeSlivers(input)).toThrow(expect.objectContaining({ code, path }));
  });
});
