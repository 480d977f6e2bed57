import type { DefectCode } from '@loopwright/jobs/inspection';
import type { Shape } from '../../page/page.ts';
import { arrow, dimensionLine, type Point, polygon, polyline } from '../shapes.ts';
import {
  blot,
  hatch,
  type Lie,
  lying,
  middle,
  type Outline,
  outlineOf,
  piece,
  tips,
  zigzag,
  zone,
} from './belt-piece.ts';
import {
  blister,
  dirt,
  type Face,
  gloss,
  line,
  printed,
  scorched,
  seen,
  voids,
  weave,
  wrinkle,
} from './surface-marks.ts';

/** What a defect does to the picture of a face. */
interface FaceMark {
  readonly outline?: Outline;
  readonly lie?: (face: Face) => Lie;
  /** Drawn over belt and outline. */
  readonly over?: (face: Face) => readonly Shape[];
}

const wedge = ({ x, y }: Point, way: 1 | -1): Shape =>
  polygon(
    [
      { x: x + way * 2.5, y: y - 3.6 },
      { x: x - way * 9, y },
      { x: x + way * 2.5, y: y + 3.6 },
    ],
    'ink',
  );

/** A thin finger at the edge that stands off. */
function sliver(face: Face): readonly Shape[] {
  const way = face === 'roller' ? 1 : -1;
  const at = (x: number, y: number): Point => ({ x: middle.x + way * (x - middle.x), y });
  return [
    polygon([at(40, 20), at(52, 12), at(70, 7), at(86, 9), at(72, 13), at(56, 20)], 'paper', { width: 1.6 }),
    polyline([at(56, 20), at(84, 20)], { ink: 'paper', width: 2.2 }),
    line([at(54, 20), at(70, 24), at(86, 20)], 1.4),
    line([at(86, 9), at(91, 5)], 0.8),
    line([at(86, 9), at(92, 9)], 0.8),
    line([at(86, 9), at(91, 13)], 0.8),
  ];
}

/** What a straightedge shows of a kink. */
function straightedge(face: Face): readonly Shape[] {
  const y = face === 'roller' ? piece.top - 5 : piece.bottom + 5;
  return [
    polyline(
      [
        { x: piece.left, y },
        { x: piece.right, y },
      ],
      { ink: 'soft', width: 1, dash: [4, 3] },
    ),
  ];
}

/** Belt against what the card says: a second line, longer or shorter. */
function tooLong(face: Face): readonly Shape[] {
  const short = face === 'roller' ? piece.right - 26 : piece.right;
  const long = face === 'roller' ? piece.right : piece.right - 26;
  const end = (x: number, y: number): Shape =>
    line(
      [
        { x, y: y - 4 },
        { x, y: y + 4 },
      ],
      1.2,
    );
  return [
    ...dimensionLine({ x: piece.left, y: 79 }, { x: long, y: 79 }),
    end(piece.left, 79),
    end(long, 79),
    ...dimensionLine({ x: piece.left, y: 11 }, { x: short, y: 11 }),
    end(piece.left, 11),
    end(short, 11),
    ...arrow({ x: short, y: 45 }, { x: long, y: 45 }, { width: 2 }),
  ];
}

/** Skin that was squeezed out over both edges. */
function flash(): readonly Shape[] {
  const ragged = (y: number, way: 1 | -1): Shape => {
    const points = Array.from({ length: 13 }, (_, i) => ({
      x: 36 + i * 4,
      y: y + way * (i % 2 === 0 ? 3.5 : 8 - (i % 3)),
    }));
    return polygon([{ x: 36, y }, ...points, { x: 84, y }], 'soft', { width: 1.2 });
  };
  return [ragged(piece.top, -1), ragged(piece.bottom, 1)];
}

/** The outline comes out along the fingers to one end. */
function fading(face: Face): readonly Shape[] {
  const points = zigzag().map(({ x, y }) => ({ x: seen(x, face), y }));
  const legs = points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }));
  const at = (leg: (typeof legs)[number], share: number): Point => ({
    x: leg.from.x + (leg.to.x - leg.from.x) * share,
    y: leg.from.y + (leg.to.y - leg.from.y) * share,
  });
  const parts = [0, 0.25, 0.5, 0.75];
  return legs.flatMap((leg) =>
    parts.flatMap((share) => {
      const [a, b] = [at(leg, share), at(leg, share + 0.25)];
      const along = (seen((a.x + b.x) / 2, face) - zone.left) / (zone.right - zone.left);
      return along > 0.3 ? [line([a, b], 0.6 + 4.2 * (along - 0.3))] : [];
    }),
  );
}

/** Every finger wide open on one side, tight on the other. */
function skewed(face: Face): readonly Shape[] {
  const points = zigzag().map(({ x, y }) => ({ x: seen(x, face), y }));
  return points.slice(1).flatMap((to, i) => {
    const from = points[i] ?? to;
    const open = i % 2 === 0;
    if (!open) return [line([from, to], 0.7)];
    return [polygon([from, to, { x: to.x, y: to.y - 4.4 }, { x: from.x, y: from.y - 1 }], 'ink', { width: 0.6 })];
  });
}

/** Yarns that swam, on a smooth and shiny zone. */
function swum(face: Face): readonly Shape[] {
  const yarns = [27, 34, 41, 48, 55, 62].map((y, row) =>
    line(
      Array.from({ length: 27 }, (_, i) => {
        const x = 30 + i * (60 / 26);
        const inside = Math.exp(-(((x - middle.x) / 15) ** 2));
        return { x: seen(x, face), y: y + 5 * inside * Math.sin(x / 3.4 + row * 1.3) };
      }),
      1.1,
    ),
  );
  return [...yarns, polygon(blot({ x: 72, y: 30 }, { rx: 6, ry: 2 }, 2), 'paper', { width: 0.8 })];
}

const off =
  (slope: number, step = 0) =>
  (face: Face): Lie => ({ slope: face === 'roller' ? slope : -slope, step: face === 'roller' ? step : -step });

/** What each defect does to the picture of a face. One row a defect. */
export const faceMarks: Readonly<Record<DefectCode, FaceMark>> = {
  'outline-one-face': {},
  'outline-both-faces': {},
  'open-tip': {
    over: (face) =>
      face === 'roller' ? tips.left.map((tip) => wedge(tip, 1)) : tips.right.slice(1, -1).map((tip) => wedge(tip, -1)),
  },
  voids: { over: voids },
  scorch: { over: scorched },
  'gloss-change': { over: gloss },
  'edge-sliver': { over: sliver },
  'edge-step': { lie: off(0, 7) },
  kink: { lie: off(0.2), over: straightedge },
  'length-error': { over: tooLong },
  'thickness-step': {
    over: () => [
      line(
        [
          { x: zone.left - 6, y: piece.top },
          { x: zone.left - 6, y: piece.bottom },
        ],
        2.4,
      ),
      ...hatch({ left: zone.left - 16, right: zone.left - 6, top: piece.top + 1, bottom: piece.bottom - 1 }, 3.4),
    ],
  },
  flash: { over: flash },
  'cloth-wrinkle': { over: wrinkle },
  'template-print': { over: printed },
  'weave-visible': { over: weave },
  contamination: { over: dirt },
  delamination: { over: blister },
  'cold-end': { over: fading },
  'skewed-mesh': { outline: 'none', over: skewed },
  'over-fused': { outline: 'none', over: swum },
};

/** The outline of a mark where its halves lie. */
export function outlineShapes(mark: FaceMark, face: Face): readonly Shape[] {
  const lie = mark.lie?.(face);
  const points = lie === undefined ? zigzag() : zigzag().map((point) => lying(point, lie));
  return outlineOf(mark.outline ?? 'faint', points);
}
