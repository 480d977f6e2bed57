import fc from 'fast-check';
import type { PathInput, PathPulley } from '../../src/loop/path-input.ts';

/** Pulleys as [x, y, surface radius, side] in millimetres, side +1 counter-clockwise. */
export type Row = readonly [x: number, y: number, radius: number, side: number];

export const thinBelt = { thickness_m: 0, neutralLineFromRunningFace_m: 0 };

export function pulleysOf(rows: readonly (readonly number[])[]): PathPulley[] {
  return rows.map(([x = 0, y = 0, radius = 0, side = 1]) => ({
    x_m: x / 1000,
    y_m: y / 1000,
    surfaceRadius_m: radius / 1000,
    turn: side > 0 ? 'left' : 'right',
  }));
}

export function layout(rows: readonly (readonly number[])[], t_mm = 0, y_mm = 0): PathInput {
  return {
    pulleys: pulleysOf(rows),
    belt: { thickness_m: t_mm / 1000, neutralLineFromRunningFace_m: y_mm / 1000 },
  };
}

export function hGeometry(takeUp_mm = 0): Row[] {
  return [
    [0, 0, 50, 1],
    [2890, -90, 40, -1],
    [3000, -330, 80, 1],
    [3110, -90, 40, -1],
    [3690, -90, 40, -1],
    [3800, -330 - takeUp_mm, 60, 1],
    [3910, -90, 40, -1],
    [6000, 0, 50, 1],
  ];
}

// Integers, because random doubles crowd round 0.
const share = fc.integer({ min: 0, max: 1_000_000 }).map((millionths) => millionths / 1_000_000);

/** Pulleys on an ellipse, each on the hull: gaps and radii are drawn so that none hides behind its neighbours. */
export const hullLayouts = fc
  .record({
    shares: fc.array(fc.tuple(share, share), { minLength: 2, maxLength: 12 }),
    wide: share,
    round: share,
  })
  .map(({ shares, wide, round }): PathPulley[] => {
    const wide_m = 0.5 + 4.5 * wide;
    const flat = 0.5 + 0.5 * round;
    const gap = (2 * Math.PI) / shares.length;
    // Half the height of a flat three-pulley arc bounds how much smaller a pulley may be than its neighbours.
    const bulge_m = wide_m * flat * flat * (1 - Math.cos(gap * 0.6));
    const base_m = 0.1 * wide_m * flat * Math.min(1, gap);
    return shares.map(([turn, size], i) => ({
      x_m: wide_m * Math.cos(gap * (i + 0.4 * turn)),
      y_m: wide_m * flat * Math.sin(gap * (i + 0.4 * turn)),
      surfaceRadius_m: base_m + size * Math.min(0.15 * bulge_m, base_m),
      turn: 'left',
    }));
  });

/** A long bed whose lower strand dips round drive and take-up pulleys, each between two snubs; belt of any section. */
export const dippedLayouts = fc
  .record({
    ends: fc.tuple(share, share),
    dips: fc.array(fc.tuple(share, share, share, share, share), { minLength: 0, maxLength: 4 }),
    idlers: fc.array(fc.tuple(share, share), { minLength: 0, maxLength: 2 }),
    thickness: share,
    neutral: share,
    turned: share,
    flipped: fc.boolean(),
  })
  .map(({ ends, dips, idlers, thickness, neutral, turned, flipped }): PathInput => {
    const left_m = 0.04 + 0.03 * ends[0];
    const right_m = 0.04 + 0.03 * ends[1];
    const rows = [[0, 0, left_m, 1], ...dips.flatMap((dip, i) => dipRows(dip, 1 + 1.5 * i, Math.min(left_m, right_m)))];
    const end = 1.5 * dips.length + 2;
    rows.push([end, 0, right_m, 1], ...idlerRows(idlers, end, Math.min(left_m, right_m)));
    const t_m = 0.004 * thickness;
    const belt = { thickness_m: t_m, neutralLineFromRunningFace_m: t_m * neutral };
    return { pulleys: posed(rows, 2 * Math.PI * turned, flipped), belt };
  });

/** Snub, dipping pulley, snub. The snubs press on the strand from below by at least a touch. */
function dipRows(dip: readonly number[], x: number, end_m: number): number[][] {
  const [size = 0, snub = 0, apart = 0, depth = 0, press = 0] = dip;
  const snub_m = 0.02 + 0.03 * snub;
  const radius_m = 0.03 + 0.07 * size;
  const half_m = snub_m + 0.02 + Math.max(0, radius_m - 0.04) + 0.06 * apart;
  // The belt runs over the snubs: their tops stand a little above the lower tangent of the end pulleys.
  const y = -end_m - snub_m + 0.005 + 0.01 * press;
  const drop_m = snub_m + radius_m + 0.03 + 0.3 * depth;
  return [
    [x - half_m, y, snub_m, -1],
    [x, y - drop_m, radius_m, 1],
    [x + half_m, y, snub_m, -1],
  ];
}

/** Pulleys along the upper strand from right to left that press it down, and stay clear of the lower strand. */
function idlerRows(idlers: readonly (readonly [number, number])[], end: number, end_m: number): number[][] {
  const step = end / (idlers.length + 1);
  return idlers.map(([size, press], i) => {
    const radius_m = 0.015 + 0.02 * size;
    return [end - step * (i + 1), end_m + radius_m - 0.012 - 0.01 * press, radius_m, -1];
  });
}

/** Turned by an angle and, when flipped, mirrored: a clockwise loop. */
function posed(rows: readonly number[][], angle: number, flipped: boolean): PathPulley[] {
  const [cos, sin, mirror] = [Math.cos(angle), Math.sin(angle), flipped ? -1 : 1];
  return rows.map(([x = 0, y = 0, radius = 0, side = 1]) => ({
    x_m: x * cos - mirror * y * sin,
    y_m: x * sin + mirror * y * cos,
    surfaceRadius_m: radius,
    turn: side * mirror > 0 ? 'left' : 'right',
  }));
}

// Without the bias to 0 and 1, which would put most pulleys in one place.
const evenShare = fc.noBias(share);

/** Pulleys anywhere on any side: mostly impossible layouts. */
export const anyLayouts = fc
  .array(fc.tuple(evenShare, evenShare, evenShare, fc.boolean()), { minLength: 2, maxLength: 5 })
  .map((rows): PathPulley[] =>
    rows.map(([x, y, size, left]) => ({
      x_m: x,
      y_m: y,
      surfaceRadius_m: 0.005 + 0.05 * size,
      turn: left ? 'left' : 'right',
    })),
  );

export const seeded = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
