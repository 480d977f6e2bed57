import fc from 'fast-check';
import { beltPath } from '../../src/loop/path.ts';
import type { BeltSection, PathInput, PathPulley } from '../../src/loop/path-input.ts';

/** Seeded, and as many runs as the command asks for. */
export const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };

export const noThickness: BeltSection = { thickness_m: 0, neutralLineFromRunningFace_m: 0 };
/** 2.0 mm thick, neutral line 0.6 mm from the running face. */
export const twoMillimetres: BeltSection = { thickness_m: 0.002, neutralLineFromRunningFace_m: 0.0006 };

/** Eight pulleys: ends, drive (2) and take-up (5) under the bed, each between two snubs. Carrying span: 7. */
export function liveRollerLoop(belt: BeltSection): PathInput {
  const rows = [
    [0, 0, 50, 1],
    [2890, -90, 40, -1],
    [3000, -330, 80, 1],
    [3110, -90, 40, -1],
    [3690, -90, 40, -1],
    [3800, -330, 60, 1],
    [3910, -90, 40, -1],
    [6000, 0, 50, 1],
  ] as const;
  return { belt, pulleys: rows.map((row) => pulley(row[0], row[1], row[2], row[3])) };
}

export const drive = 2;
export const takeUpPulley = 5;
export const carryingSpan = 7;

function pulley(x_mm: number, y_mm: number, radius_mm: number, turn: 1 | -1): PathPulley {
  return { x_m: x_mm / 1000, y_m: y_mm / 1000, surfaceRadius_m: radius_mm / 1000, turn: turn > 0 ? 'left' : 'right' };
}

const mm = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);
export const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((millionths) => min + ((max - min) * millionths) / 1_000_000);

/** Live-roller loops of the same build with every size drawn at random; all of them are valid paths. */
export const liveRollerLoops: fc.Arbitrary<PathInput> = fc
  .record({
    length: mm(3000, 30_000),
    end: mm(40, 80),
    snub: mm(20, 45),
    drive: mm(60, 110),
    takeUp: mm(40, 80),
    driveAt: between(0.25, 0.4),
    takeUpAt: between(0.6, 0.75),
    driveDown: mm(160, 400),
    takeUpDown: mm(160, 400),
    gap: mm(2, 40),
    thickness: mm(0, 4),
    neutral: between(0, 1),
  })
  .map((d) => {
    const snubY = -d.end - d.snub;
    const driveX = d.driveAt * d.length;
    const takeUpX = d.takeUpAt * d.length;
    const driveGap = d.drive + d.snub + d.gap;
    const takeUpGap = d.takeUp + d.snub + d.gap;
    return {
      belt: { thickness_m: d.thickness / 1000, neutralLineFromRunningFace_m: (d.neutral * d.thickness) / 1000 },
      pulleys: [
        pulley(0, 0, d.end, 1),
        pulley(driveX - driveGap, snubY, d.snub, -1),
        pulley(driveX, snubY - d.driveDown, d.drive, 1),
        pulley(driveX + driveGap, snubY, d.snub, -1),
        pulley(takeUpX - takeUpGap, snubY, d.snub, -1),
        pulley(takeUpX, snubY - d.takeUpDown, d.takeUp, 1),
        pulley(takeUpX + takeUpGap, snubY, d.snub, -1),
        pulley(d.length, 0, d.end, 1),
      ],
    };
  })
  .filter((input) => {
    try {
      return beltPath(input).turning === 1;
    } catch {
      return false;
    }
  });

/** The layout enlarged about its origin. */
export function scaled(input: PathInput, by: number): PathInput {
  return {
    ...input,
    belt: {
      thickness_m: input.belt.thickness_m * by,
      neutralLineFromRunningFace_m: input.belt.neutralLineFromRunningFace_m * by,
    },
    pulleys: input.pulleys.map((p) => ({
      ...p,
      x_m: p.x_m * by,
      y_m: p.y_m * by,
      surfaceRadius_m: p.surfaceRadius_m * by,
    })),
  };
}
