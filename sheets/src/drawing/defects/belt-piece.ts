import type { Shape } from '../../page/page.ts';
import { type FingerCut, fingerLine } from '../finger-line.ts';
import { type Point, polygon, polyline } from '../shapes.ts';

/** Room of a picture, in drawing units. */
export const room = { width: 120, height: 90 } as const;
/** The piece of belt in it, seen on a face. */
export const piece = { left: 4, right: 116, top: 20, bottom: 70 } as const;
export const middle = { x: 60, y: 45 } as const;
const cut: FingerCut = { width: piece.bottom - piece.top, pitch: 12.5, length: 44, firstTip: 6.25 };
const rootsX = 38;
/** Where the fingers begin and end. */
export const zone = { left: rootsX, right: rootsX + cut.length } as const;

/** The zig-zag of the splice, moved; with the fingers of the standard cut. */
export function zigzag(moved: Partial<Point> = {}): readonly Point[] {
  const { x = 0, y = 0 } = moved;
  return fingerLine(cut, { x: rootsX + x, y: piece.top + y }, 1);
}

/** Tips of the left end's fingers, and of the right end's. */
export const tips = {
  left: zigzag().filter((_, i) => i % 2 === 1),
  right: zigzag().filter((_, i) => i % 2 === 0),
} as const;

export type Outline = 'faint' | 'bold' | 'none';

/** How the zig-zag shows: hardly, as it should; as a dark line; or not at all. */
export function outlineOf(kind: Outline, points: readonly Point[] = zigzag()): readonly Shape[] {
  if (kind === 'none') return [];
  return [
    kind === 'bold'
      ? polyline(points, { width: 2.4 })
      : polyline(points, { ink: 'soft', width: 0.7, dash: [1.2, 2.6] }),
  ];
}

/** The end of the piece: torn off, as it goes on. */
function torn(x: number, y: number, way: 1 | -1): readonly Point[] {
  const steps = [0, 1, 2, 3, 4];
  return steps.map((i) => ({ x: x + (i % 2 === 0 ? -2 : 2), y: way === 1 ? y + i * 12.5 : y + 50 - i * 12.5 }));
}

/** How the two halves of the piece lie: by how far the right one is off, and its slope. */
export interface Lie {
  readonly step: number;
  readonly slope: number;
}

const straight: Lie = { step: 0, slope: 0 };

/** A point of the right half as it lies; the left half stays. */
export function lying({ x, y }: Point, { step, slope }: Lie): Point {
  return x <= middle.x ? { x, y } : { x, y: y + step + (x - middle.x) * slope };
}

/** The piece of belt on one face; the pulley side has the dots of its weave. */
export function beltFace(face: 'roller' | 'pulley', lie: Lie = straight): readonly Shape[] {
  const upper = [piece.left, middle.x, middle.x + 0.01, piece.right].map((x) => lying({ x, y: piece.top }, lie));
  const lower = upper.map(({ x, y }) => ({ x, y: y + piece.bottom - piece.top })).toReversed();
  const right = torn(piece.right, upper.at(-1)?.y ?? piece.top, 1);
  const outline = [...upper, ...right, ...lower, ...torn(piece.left, piece.top, -1)];
  return [polygon(outline, 'paper', { width: 1.4 }), ...(face === 'pulley' ? weaveDots(lie) : [])];
}

function weaveDots(lie: Lie): readonly Shape[] {
  const columns = [11, 17, 23, 97, 103, 109];
  const rows = [28, 36.5, 45, 53.5, 62];
  return columns.flatMap((x) =>
    rows.map((y): Shape => {
      const at = lying({ x, y }, lie);
      return polyline([at, { x: at.x + 2.4, y: at.y }], { ink: 'soft', width: 0.9 });
    }),
  );
}

/** A closed wavy line round a centre. */
export function blot(centre: Point, size: { readonly rx: number; readonly ry: number }, waves = 5): readonly Point[] {
  return Array.from({ length: 40 }, (_, i) => {
    const angle = (i / 40) * 2 * Math.PI;
    const stretch = 1 + 0.16 * Math.sin(waves * angle) + 0.08 * Math.cos(2 * angle);
    return {
      x: centre.x + size.rx * stretch * Math.cos(angle),
      y: centre.y + size.ry * stretch * Math.sin(angle),
    };
  });
}

/** Parallel strokes that fill a box; they are cut at its sides. */
export function hatch(
  box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
  gap: number,
  way: 1 | -1 = 1,
): readonly Shape[] {
  const { left, right, top, bottom } = box;
  const height = bottom - top;
  const starts = Array.from({ length: Math.ceil((right - left + height) / gap) }, (_, i) => left - height + i * gap);
  return starts.flatMap((start) => {
    const from = Math.max(start, left);
    const to = Math.min(start + height, right);
    if (to - from < 0.5) return [];
    const y = (x: number): number => (way === 1 ? top + (x - start) : bottom - (x - start));
    return [
      polyline(
        [
          { x: from, y: y(from) },
          { x: to, y: y(to) },
        ],
        { ink: 'soft', width: 0.6 },
      ),
    ];
  });
}
