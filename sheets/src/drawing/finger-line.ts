import type { Point } from './shapes.ts';

/** One cut end in drawing units: across the belt from its first edge to the other. */
export interface FingerCut {
  /** Belt width. */
  readonly width: number;
  readonly pitch: number;
  readonly length: number;
  /** Distance of the first tip from the first edge. */
  readonly firstTip: number;
}

/** How far the cut stands out at a distance from the first edge: 1 at a tip, 0 at a root. */
function reach(cut: FingerCut, across: number): number {
  const phase = (((across - cut.firstTip) / cut.pitch) % 1) + 1;
  return Math.abs((phase % 1) - 0.5) * 2;
}

/**
 * The zigzag of a cut end.
 * @param cut - pitch, length and phase
 * @param root - where the roots stand on the first edge; y goes across the belt
 * @param side - 1 with the tips to the right, -1 to the left
 */
export function fingerLine(cut: FingerCut, root: Point, side: 1 | -1): Point[] {
  const half = cut.pitch / 2;
  const first = ((cut.firstTip % half) + half) % half;
  const turns: number[] = [0];
  for (let across = first; across < cut.width - 1e-9; across += half) if (across > 1e-9) turns.push(across);
  turns.push(cut.width);
  return turns.map((across) => ({ x: root.x + side * cut.length * reach(cut, across), y: root.y + across }));
}
