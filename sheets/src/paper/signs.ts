import { type Point, polygon, polyline, ring } from '../drawing/shapes.ts';
import type { Shape, StateShape } from '../page/page.ts';

const around = (centre: Point, r: number, corners: number, from: number): Point[] =>
  Array.from({ length: corners }, (_, i) => {
    const angle = from + (i * 2 * Math.PI) / corners;
    return { x: centre.x + r * Math.cos(angle), y: centre.y + r * Math.sin(angle) };
  });

const bang = ({ x, y }: Point, r: number, ink: 'ink' | 'paper'): Shape[] => [
  polyline(
    [
      { x, y: y - r * 0.4 },
      { x, y: y + r * 0.15 },
    ],
    { width: r * 0.24, ink },
  ),
  polyline(
    [
      { x, y: y + r * 0.36 },
      { x, y: y + r * 0.52 },
    ],
    { width: r * 0.24, ink },
  ),
];

/** Signs of a caution: a filled octagon stops, a triangle asks for care, a ring is a note. */
export const cautionSign: Readonly<Record<'stop' | 'care' | 'note', (centre: Point, r: number) => readonly Shape[]>> = {
  stop: (c, r) => [polygon(around(c, r, 8, Math.PI / 8), 'stop', { ink: 'stop', width: 0 }), ...bang(c, r, 'paper')],
  care: (c, r) => [
    polygon(around({ x: c.x, y: c.y + r * 0.2 }, r * 1.1, 3, -Math.PI / 2), 'paper', { ink: 'care', width: r * 0.2 }),
    ...bang({ x: c.x, y: c.y + r * 0.12 }, r * 0.9, 'ink'),
  ],
  note: (c, r) => [ring(c, r * 0.45, { width: r * 0.2 })],
};

/** Signs of a state, told apart by shape alone. */
export const stateSign: Readonly<Record<StateShape, (centre: Point, r: number) => readonly Shape[]>> = {
  running: (c, r) => [ring(c, r, { fill: 'ink', width: 0 })],
  due: (c, r) => [polygon(around({ x: c.x, y: c.y + r * 0.2 }, r * 1.15, 3, -Math.PI / 2), 'ink')],
  past: (c, r) => [polygon(around(c, r * 1.15, 4, 0), 'ink')],
  torn: ({ x, y }, r) => [
    polyline(
      [
        { x: x - r, y: y - r },
        { x: x + r, y: y + r },
      ],
      { width: r * 0.5 },
    ),
    polyline(
      [
        { x: x - r, y: y + r },
        { x: x + r, y: y - r },
      ],
      { width: r * 0.5 },
    ),
  ],
  empty: (c, r) => [ring(c, r, { width: r * 0.3 })],
};
