import type { DefectCode } from '@loopwright/jobs/inspection';
import type { Shape } from '../../page/page.ts';
import { arrow, dimensionLine, type Point, polygon, polyline, ring } from '../shapes.ts';
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

export type Face = 'roller' | 'pulley';

/** What a defect does to the picture of a face. */
interface FaceMark {
  readonly outline?: Outline;
  readonly lie?: (face: Face) => Lie;
  /** Drawn over belt and outline. */
  readonly over?: (face: Face) => readonly Shape[];
}

const line = (points: readonly Point[], width = 1.2): Shape => polyline(points, { width });
const spot = (x: number, y: number, r: number): readonly Shape[] => [
  ring({ x, y }, r, { fill: 'soft', width: 1.6 }),
  ring({ x: x - r * 0.3, y: y - r * 0.3 }, r * 0.32, { fill: 'paper', ink: 'paper', width: 0.2 }),
];
/** The other face is seen from behind: what lies right lies left. */
const seen = (x: number, face: Face): number => (face === 'roller' ? x : 2 * middle.x - x);

const wedge = ({ x, y }: Point, way: 1 | -1): Shape =>
  polygon(
    [
      { x: x + way * 2.5, y: y - 3.6 },
      { x: x - way * 9, y },
      { x: x + way * 2.5, y: y + 3.6 },
    ],
    'ink',
  );

function voids(face: Face): readonly Shape[] {
  const places = [
    [47, 31, 3.2],
    [57, 52, 4.2],
    [70, 38, 2.6],
    [76, 60, 3.4],
    [52, 62, 2.2],
    [66, 26, 2],
  ] as const;
  return places.flatMap(([x, y, r]) => spot(seen(x, face), y, r));
}

function scorched(face: Face): readonly Shape[] {
  const x = seen(66, face);
  return [
    polygon(blot({ x, y: 46 }, { rx: 21, ry: 16 }), 'soft', { ink: 'soft', width: 0.6 }),
    polygon(blot({ x: x - 2, y: 47 }, { rx: 11, ry: 8.5 }, 4), 'ink'),
  ];
}

function gloss(face: Face): readonly Shape[] {
  const box = { left: zone.left - 6, right: zone.right + 6, top: piece.top + 1, bottom: piece.bottom - 1 };
  const star = (x: number, y: number, r: number): readonly Shape[] =>
    [0, 1, 2, 3].map((i) => {
      const [dx, dy] = [r * Math.cos((i * Math.PI) / 4), r * Math.sin((i * Math.PI) / 4)];
      const short = i % 2 === 0 ? 1 : 0.5;
      return line(
        [
          { x: x - dx * short, y: y - dy * short },
          { x: x + dx * short, y: y + dy * short },
        ],
        0.9,
      );
    });
  return face === 'pulley'
    ? hatch(box, 6)
    : [
        ...star(54, 36, 9),
        ...star(72, 54, 6),
        ...[40, 44, 48].map((x) =>
          line(
            [
              { x, y: 62 },
              { x: x + 5, y: 56 },
            ],
            0.8,
          ),
        ),
      ];
}

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

function wrinkle(face: Face): readonly Shape[] {
  const curve = (shift: number): readonly Point[] =>
    Array.from({ length: 21 }, (_, i) => ({
      x: seen(30 + i * 3 + shift, face),
      y: 22 + i * 2.3 + 3 * Math.sin(i / 2.2),
    }));
  return [
    line(curve(0), 2),
    polyline(curve(4), { ink: 'soft', width: 1 }),
    polyline(curve(7), { ink: 'soft', width: 0.6 }),
  ];
}

function printed(face: Face): readonly Shape[] {
  const box = { left: 30, right: 90, top: 26, bottom: 64 };
  const frame: readonly Point[] = [
    { x: box.left, y: box.top },
    { x: box.right, y: box.top },
    { x: box.right, y: box.bottom },
    { x: box.left, y: box.bottom },
    { x: box.left, y: box.top },
  ];
  if (face === 'pulley')
    return [
      line(
        [
          { x: 88, y: piece.top },
          { x: 88, y: piece.bottom },
        ],
        2.2,
      ),
    ];
  const upright = [42, 54, 66, 78].map((x) =>
    line(
      [
        { x, y: box.top },
        { x, y: box.bottom },
      ],
      0.7,
    ),
  );
  const level = [35.5, 45, 54.5].map((y) =>
    line(
      [
        { x: box.left, y },
        { x: box.right, y },
      ],
      0.7,
    ),
  );
  return [line(frame, 2), ...upright, ...level];
}

function weave(face: Face): readonly Shape[] {
  const reach = face === 'pulley' ? 20 : 11;
  const box = { left: middle.x - reach, right: middle.x + reach, top: middle.y - reach, bottom: middle.y + reach };
  const bare = [...hatch(box, 5, 1), ...hatch(box, 5, -1)].map(
    (shape): Shape => ({ ...shape, ink: 'ink', width: 1.3 }),
  );
  return [...bare];
}

function dirt(face: Face): readonly Shape[] {
  const x = (at: number): number => seen(at, face);
  const fibre = Array.from({ length: 16 }, (_, i) => ({ x: x(70 + i * 1.5), y: 32 + 5 * Math.sin(i / 2.4) }));
  return [
    polygon(blot({ x: x(52), y: 50 }, { rx: 3.6, ry: 3 }, 3), 'ink'),
    ring({ x: x(52), y: 50 }, 9, { ink: 'soft', width: 0.9, dash: [2, 2] }),
    line(fibre, 1.6),
    polygon(blot({ x: x(76), y: 58 }, { rx: 2, ry: 1.6 }, 3), 'ink'),
    polygon(blot({ x: x(42), y: 30 }, { rx: 1.6, ry: 1.4 }, 3), 'ink'),
  ];
}

/** A flat blister with its shadow. */
function blister(face: Face): readonly Shape[] {
  const centre = { x: seen(62, face), y: 45 };
  const edge = blot(centre, { rx: 22, ry: 15 }, 3);
  const shade = blot({ x: centre.x + 3, y: centre.y + 3 }, { rx: 22, ry: 15 }, 3);
  return [
    polygon(shade, 'soft', { ink: 'soft', width: 0.4 }),
    polygon(edge, 'paper', { width: 1.8 }),
    line(
      Array.from({ length: 9 }, (_, i) => ({
        x: centre.x - 14 + i * 2.4,
        y: centre.y - 6 - 4 * Math.sin((i / 8) * Math.PI),
      })),
      1,
    ),
  ];
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
      return along > 0.3 ? [line([a, b], 0.4 + 3.2 * (along - 0.3))] : [];
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
  'cold-end': { outline: 'none', over: fading },
  'skewed-mesh': { outline: 'none', over: skewed },
  'over-fused': { outline: 'none', over: swum },
};

/** The outline of a mark where its halves lie. */
export function outlineShapes(mark: FaceMark, face: Face): readonly Shape[] {
  const lie = mark.lie?.(face);
  const points = lie === undefined ? zigzag() : zigzag().map((point) => lying(point, lie));
  return outlineOf(mark.outline ?? 'faint', points);
}
