import { rounded } from '../drawing/shapes.ts';
import type { Shape } from '../page/page.ts';

/** Where a drawing is put: its corner and its scale. */
export interface Placement {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

type Mover = (values: readonly number[], to: Placement) => number[];

const points: Mover = (values, to) => values.map((value, i) => (i % 2 === 0 ? to.x : to.y) + value * to.scale);
const lengths: Mover = (values, to) => values.map((value) => value * to.scale);

/** How the numbers of each path command move. Only commands the drawings are made of. */
const movers: Readonly<Record<string, Mover>> = {
  M: points,
  L: points,
  h: lengths,
  v: lengths,
  Z: () => [],
  A: ([rx = 0, ry = 0, rotation = 0, large = 0, sweep = 0, x = 0, y = 0], to) => [
    rx * to.scale,
    ry * to.scale,
    rotation,
    large,
    sweep,
    ...points([x, y], to),
  ],
};

function movePath(d: string, to: Placement): string {
  return d.replace(/([A-Za-z])([^A-Za-z]*)/g, (_, command: string, numbers: string) => {
    const mover = movers[command];
    if (!mover) throw new RangeError(`path command ${command} is not one the drawings use`);
    const values =
      numbers.trim() === ''
        ? []
        : numbers
            .trim()
            .split(/[\s,]+/)
            .map(Number);
    return `${command}${mover(values, to).map(rounded).join(' ')} `;
  });
}

/** A shape moved to its place and scaled. */
export function moveShape(shape: Shape, to: Placement): Shape {
  const width = shape.width === undefined ? {} : { width: rounded(shape.width * to.scale) };
  const dash = shape.dash === undefined ? {} : { dash: shape.dash.map((part) => rounded(part * to.scale)) };
  if (shape.shape === 'path') return { ...shape, ...width, ...dash, d: movePath(shape.d, to).trim() };
  const [x, y] = [rounded(to.x + shape.x * to.scale), rounded(to.y + shape.y * to.scale)];
  if (shape.shape === 'circle') return { ...shape, ...width, ...dash, x, y, r: rounded(shape.r * to.scale) };
  return { ...shape, x, y, size: rounded(shape.size * to.scale) };
}
