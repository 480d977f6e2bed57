import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { beltPath } from '../../src/loop/path.ts';
import { pathPolyline } from '../../src/loop/path-polyline.ts';
import { dippedLayouts, hGeometry, layout, seeded } from './layouts.ts';

function closedLength(points: readonly (readonly [number, number])[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] as readonly [number, number];
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);
}

describe('polyline for drawing', () => {
  it('[PATH-19] comes up to the length from below as the chords shorten', () => {
    const input = layout(hGeometry());
    const path = beltPath(input);
    const ours = closedLength(pathPolyline(path, input.pulleys, 1e-6)) * 1000;
    // A chord misses its arc by e and is shorter by 8*e/(3*r) in proportion: here 1e-6/0.04*8/3 of 1.9 m of arcs at most.
    checkAgainst({
      topic: 'loop',
      id: 'T2 polyline of G',
      source: 'separate program, tangents of circles',
      evidence: 'independent',
      inputs: 'chords within 1e-6 m',
      unit: 'mm',
      published: 13526.143179,
      ours,
      tolerance: 0.13,
      why: 'sagitta 1e-6 m of arcs of 40 mm and more',
    });
    expect(ours).toBeLessThan(path.length_m * 1000);
  });

  it('[PATH-19] every point lies on the neutral line, every chord within the limit', () => {
    fc.assert(
      fc.property(dippedLayouts, fc.integer({ min: 1, max: 1000 }), (input, microns) => {
        const limit_m = microns * 1e-6;
        const path = beltPath(input);
        const points = pathPolyline(path, input.pulleys, limit_m);
        expect(points[0]).toEqual(path.tangents[0]?.from);
        const missing = path.length_m - closedLength(points);
        expect(missing).toBeGreaterThanOrEqual(-1e-9);
        const arcs = path.wraps_rad.reduce((sum, wrap, i) => {
          const r = path.neutralRadii_m[i] as number;
          // Arc less chord at the widest chord allowed, over the arcs of this pulley.
          const half = Math.acos(Math.max(0, 1 - limit_m / r));
          return sum + r * wrap * (1 - Math.sin(half) / half);
        }, 0);
        expect(missing).toBeLessThanOrEqual(arcs + 1e-9);
      }),
      seeded,
    );
  });

  it('[PATH-19] refuses a limit that would draw a belt of millions of points', () => {
    const input = layout(hGeometry());
    const path = beltPath(input);
    expect(() => pathPolyline(path, input.pulleys, 0)).toThrow(expect.objectContaining({ code: 'out-of-range' }));
    expect(() => pathPolyline(path, input.pulleys.slice(1), 1e-3)).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
  });
});
