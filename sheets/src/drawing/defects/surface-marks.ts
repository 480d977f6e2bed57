import type { Shape } from '../../page/page.ts';
import { type Point, polygon, polyline, ring } from '../shapes.ts';
import { blot, hatch, middle, piece, zone } from './belt-piece.ts';

export type Face = 'roller' | 'pulley';

export const line = (points: readonly Point[], width = 1.2): Shape => polyline(points, { width });
/** The other face is seen from behind: what lies right lies left. */
export const seen = (x: number, face: Face): number => (face === 'roller' ? x : 2 * middle.x - x);
const spot = (x: number, y: number, r: number): readonly Shape[] => [
  ring({ x, y }, r, { fill: 'soft', width: 1.6 }),
  ring({ x: x - r * 0.3, y: y - r * 0.3 }, r * 0.32, { fill: 'paper', ink: 'paper', width: 0.2 }),
];

export function voids(face: Face): readonly Shape[] {
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

export function scorched(face: Face): readonly Shape[] {
  const x = seen(66, face);
  return [
    polygon(blot({ x, y: 46 }, { rx: 21, ry: 16 }), 'soft', { ink: 'soft', width: 0.6 }),
    polygon(blot({ x: x - 2, y: 47 }, { rx: 11, ry: 8.5 }, 4), 'ink'),
  ];
}

export function gloss(face: Face): readonly Shape[] {
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

export function wrinkle(face: Face): readonly Shape[] {
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

export function printed(face: Face): readonly Shape[] {
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

export function weave(face: Face): readonly Shape[] {
  const reach = face === 'pulley' ? 20 : 11;
  const box = { left: middle.x - reach, right: middle.x + reach, top: middle.y - reach, bottom: middle.y + reach };
  const bare = [...hatch(box, 5, 1), ...hatch(box, 5, -1)].map(
    (shape): Shape => ({ ...shape, ink: 'ink', width: 1.3 }),
  );
  return [...bare];
}

export function dirt(face: Face): readonly Shape[] {
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
export function blister(face: Face): readonly Shape[] {
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
