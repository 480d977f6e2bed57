import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BeltPath, beltPath } from '../../src/loop/path.ts';
import type { PathInput, PathPulley } from '../../src/loop/path-input.ts';
import { lengthPerDisplacement } from '../../src/loop/path-sensitivity.ts';
import { hullPerimeter } from './hull-perimeter.ts';
import { dippedLayouts, hullLayouts, seeded, thinBelt } from './layouts.ts';

// Both families are valid by construction, so none of the runs is thrown away: a refusal fails the property.
const layouts = fc.oneof(
  dippedLayouts,
  hullLayouts.map((pulleys): PathInput => ({ pulleys, belt: thinBelt })),
);
const picked = fc.tuple(layouts, fc.nat({ max: 10_000 }), fc.integer({ min: 0, max: 359 }));

function withPulley(input: PathInput, index: number, change: (pulley: PathPulley) => Partial<PathPulley>): PathInput {
  return { ...input, pulleys: input.pulleys.map((one, i) => (i === index ? { ...one, ...change(one) } : one)) };
}

/** Derivative by a central difference. */
function slope(length: (step: number) => number, step = 1e-6): number {
  return (length(step) - length(-step)) / (2 * step);
}

function sides(input: PathInput): number[] {
  return input.pulleys.map(({ turn }) => (turn === 'left' ? 1 : -1));
}

function transformed(input: PathInput, change: (pulley: PathPulley) => PathPulley): PathInput {
  return { ...input, pulleys: input.pulleys.map(change) };
}

function sameLength(a: BeltPath, b: BeltPath, scale = 1): void {
  expect(Math.abs(a.length_m * scale - b.length_m)).toBeLessThanOrEqual(1e-11 * b.length_m);
}

describe('properties of a belt path', () => {
  it('[PATH-04] signed wraps add up to one revolution', () => {
    fc.assert(
      fc.property(layouts, (input) => {
        const path = beltPath(input);
        const angle = path.wraps_rad.reduce((sum, wrap, i) => sum + wrap * (sides(input)[i] as number), 0);
        expect(Math.abs(Math.abs(angle) - 2 * Math.PI)).toBeLessThan(1e-9);
        expect(Math.sign(angle)).toBe(path.turning);
      }),
      seeded,
    );
  });

  it('[PATH-01] length is the spans and the arcs; spans join the touch points', () => {
    fc.assert(
      fc.property(layouts, (input) => {
        const path = beltPath(input);
        const arcs = path.wraps_rad.reduce((sum, wrap, i) => sum + wrap * (path.neutralRadii_m[i] as number), 0);
        const spans = path.spans_m.reduce((sum, span) => sum + span, 0);
        expect(path.length_m).toBeCloseTo(arcs + spans, 11);
        path.tangents.forEach(({ from, to }, i) => {
          expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(path.spans_m[i] as number, 11);
          const { x_m, y_m } = input.pulleys[i] as PathPulley;
          expect(Math.hypot(from[0] - x_m, from[1] - y_m)).toBeCloseTo(path.neutralRadii_m[i] as number, 11);
        });
      }),
      seeded,
    );
  });

  it('[PATH-05] growth by a radius equals the wrap', () => {
    fc.assert(
      fc.property(picked, ([input, pick]) => {
        const index = pick % input.pulleys.length;
        const path = beltPath(input);
        const grown = (step: number) =>
          beltPath(withPulley(input, index, (one) => ({ surfaceRadius_m: one.surfaceRadius_m + step }))).length_m;
        expect(Math.abs(slope(grown) - (path.dLength_dRadius[index] as number))).toBeLessThan(1e-6);
        expect(path.dLength_dRadius[index]).toBe(path.wraps_rad[index]);
      }),
      seeded,
    );
  });

  it('[PATH-06] growth by a displacement equals e.(t_in - t_out), 2*sin(w/2) along the bisector', () => {
    fc.assert(
      fc.property(picked, ([input, pick, degrees]) => {
        const index = pick % input.pulleys.length;
        const path = beltPath(input);
        const e: [number, number] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
        const moved = (step: number) =>
          beltPath(withPulley(input, index, (one) => ({ x_m: one.x_m + step * e[0], y_m: one.y_m + step * e[1] })))
            .length_m;
        expect(Math.abs(slope(moved) - lengthPerDisplacement(path, index, e))).toBeLessThan(1e-6);
        const steepest = Math.hypot(
          lengthPerDisplacement(path, index, [1, 0]),
          lengthPerDisplacement(path, index, [0, 1]),
        );
        expect(steepest).toBeCloseTo(2 * Math.sin((path.wraps_rad[index] as number) / 2), 9);
      }),
      seeded,
    );
  });

  it("[PATH-03] all pulleys on one side: length equals the hull's perimeter", () => {
    fc.assert(
      fc.property(hullLayouts, (pulleys) => {
        const discs = pulleys.map(({ x_m, y_m, surfaceRadius_m }) => ({ x: x_m, y: y_m, r: surfaceRadius_m }));
        expect(beltPath({ pulleys, belt: thinBelt }).length_m).toBeCloseTo(hullPerimeter(discs), 9);
      }),
      seeded,
    );
  });

  it('[PATH-03] equal pulleys in convex position: polygon and one circle', () => {
    fc.assert(
      fc.property(hullLayouts, (pulleys) => {
        const equal = pulleys.map((one) => ({ ...one, surfaceRadius_m: pulleys[0]?.surfaceRadius_m ?? 0 }));
        const r = equal[0]?.surfaceRadius_m ?? 0;
        const polygon = equal.reduce((sum, one, i) => {
          const next = equal[(i + 1) % equal.length] as PathPulley;
          return sum + Math.hypot(next.x_m - one.x_m, next.y_m - one.y_m);
        }, 0);
        expect(beltPath({ pulleys: equal, belt: thinBelt }).length_m).toBeCloseTo(polygon + 2 * Math.PI * r, 10);
      }),
      seeded,
    );
  });

  it('[PATH-07] turned, moved, renumbered, run backwards or scaled: the same belt', () => {
    fc.assert(
      fc.property(picked, ([input, pick, degrees]) => {
        const path = beltPath(input);
        const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
        const turned = transformed(input, (one) => ({
          ...one,
          x_m: one.x_m * cos - one.y_m * sin + 3,
          y_m: one.x_m * sin + one.y_m * cos - 7,
        }));
        sameLength(path, beltPath(turned));
        const start = pick % input.pulleys.length;
        sameLength(
          path,
          beltPath({ ...input, pulleys: [...input.pulleys.slice(start), ...input.pulleys.slice(0, start)] }),
        );
        const flipped = transformed(input, (one) => ({ ...one, turn: one.turn === 'left' ? 'right' : 'left' }));
        const backwards = beltPath({ ...flipped, pulleys: [...flipped.pulleys].reverse() });
        sameLength(path, backwards);
        expect(backwards.turning).toBe(-path.turning);
        const scale = 0.5 + degrees / 100;
        const { thickness_m, neutralLineFromRunningFace_m } = input.belt;
        const scaled = transformed(input, (one) => ({
          ...one,
          x_m: one.x_m * scale,
          y_m: one.y_m * scale,
          surfaceRadius_m: one.surfaceRadius_m * scale,
        }));
        const belt = {
          thickness_m: thickness_m * scale,
          neutralLineFromRunningFace_m: Math.min(thickness_m, neutralLineFromRunningFace_m) * scale,
        };
        sameLength(path, beltPath({ ...scaled, belt }), scale);
      }),
      seeded,
    );
  });
});
