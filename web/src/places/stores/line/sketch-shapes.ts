import type { Ink, Shape } from '@loopwright/sheets';

/** A point of a sketch: x to the right, y downwards. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

const at = ({ x, y }: Spot) => `${x.toFixed(1)} ${y.toFixed(1)}`;

export function circle(centre: Spot, r: number, ink: Ink, fill: Ink | 'none'): Shape {
  return { shape: 'circle', x: centre.x, y: centre.y, r, ink, fill, width: 1 };
}

export function line(points: readonly Spot[], ink: Ink, dash?: readonly number[]): Shape {
  const drawn = { shape: 'path', d: `M${points.map(at).join(' L')}`, fill: 'none', ink, width: 1 } as const;
  return dash === undefined ? drawn : { ...drawn, dash };
}

/** A filled head whose tip stands at a point. */
export function head(tip: Spot, from: Spot, ink: Ink): Shape {
  const length = Math.hypot(tip.x - from.x, tip.y - from.y) || 1;
  const [ux, uy] = [(tip.x - from.x) / length, (tip.y - from.y) / length];
  const corner = (side: number): Spot => ({
    x: tip.x - ux * 6 - uy * 2.4 * side,
    y: tip.y - uy * 6 + ux * 2.4 * side,
  });
  return { shape: 'path', d: `M${[tip, corner(1), corner(-1)].map(at).join(' L')} Z`, fill: ink, ink, width: 0.3 };
}

export function arrowTo(from: Spot, to: Spot, ink: Ink): readonly Shape[] {
  return [line([from, to], ink), head(to, from, ink)];
}

/** A dimension line with a head at each end. */
export function dimension(from: Spot, to: Spot, ink: Ink): readonly Shape[] {
  const shaft = line([from, to], ink);
  return [{ ...shaft, width: 1.6 }, head(from, to, ink), head(to, from, ink)];
}
