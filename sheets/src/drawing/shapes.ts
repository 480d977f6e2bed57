import type { Ink, Shape } from '../page/page.ts';

/** A point of a drawing: x to the right, y downwards. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** How a line is drawn. */
export interface Stroke {
  readonly ink?: Ink;
  readonly width?: number;
  readonly dash?: readonly number[];
}

/** How a text is set. */
export interface Lettering {
  readonly size?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly ink?: Ink;
}

/** Type size of drawings, in drawing units. */
export const textSize = 8;
const hairline = 0.6;

/** Two decimals: a hundredth of a unit is finer than any screen or printer draws. */
export const rounded = (value: number): number => Math.round(value * 100) / 100 || 0;

/** A point as the path language writes it. */
export const at = (point: Point): string => `${rounded(point.x)} ${rounded(point.y)}`;

export function polyline(points: readonly Point[], stroke: Stroke = {}): Shape {
  return { shape: 'path', d: `M${points.map(at).join(' L')}`, fill: 'none', ink: 'ink', width: hairline, ...stroke };
}

export function polygon(points: readonly Point[], fill: Ink, stroke: Stroke = {}): Shape {
  return { shape: 'path', d: `M${points.map(at).join(' L')} Z`, fill, ink: 'ink', width: hairline, ...stroke };
}

export function rectangle(corner: Point, size: { readonly w: number; readonly h: number }, fill: Ink | 'none'): Shape {
  const { x, y } = corner;
  const d = `M${at({ x, y })} h${rounded(size.w)} v${rounded(size.h)} h${rounded(-size.w)} Z`;
  return { shape: 'path', d, fill, ink: 'ink', width: hairline };
}

export function ring(centre: Point, r: number, stroke: Stroke & { readonly fill?: Ink | 'none' } = {}): Shape {
  return {
    shape: 'circle',
    x: rounded(centre.x),
    y: rounded(centre.y),
    r,
    fill: 'none',
    ink: 'ink',
    width: 1,
    ...stroke,
  };
}

/** Text with its baseline at a point. */
export function lettering(text: string, point: Point, style: Lettering = {}): Shape {
  return {
    shape: 'text',
    x: rounded(point.x),
    y: rounded(point.y),
    text,
    size: style.size ?? textSize,
    anchor: style.anchor ?? 'start',
    ...(style.bold && { bold: true }),
    ink: style.ink ?? 'ink',
  };
}

/** A filled arrowhead whose tip stands at a point and looks along `direction` (of any length). */
export function arrowhead(tip: Point, direction: Point, size = 4, ink: Ink = 'ink'): Shape {
  const length = Math.hypot(direction.x, direction.y) || 1;
  const [ux, uy] = [direction.x / length, direction.y / length];
  const corner = (side: number): Point => ({
    x: tip.x - ux * size - uy * size * 0.36 * side,
    y: tip.y - uy * size + ux * size * 0.36 * side,
  });
  return polygon([tip, corner(1), corner(-1)], ink, { ink, width: 0.2 });
}

/** A straight arrow. */
export function arrow(from: Point, to: Point, stroke: Stroke = {}): Shape[] {
  const direction = { x: to.x - from.x, y: to.y - from.y };
  return [polyline([from, to], { width: 0.9, ...stroke }), arrowhead(to, direction, 4.5, stroke.ink ?? 'ink')];
}

/** A dimension line between two points of one height, with arrowheads outwards. */
export function dimensionLine(left: Point, right: Point): Shape[] {
  return [polyline([left, right]), arrowhead(left, { x: -1, y: 0 }, 4), arrowhead(right, { x: 1, y: 0 }, 4)];
}

/**
 * Two parallel zigzags that say "shortened here", across a strand.
 * @param centre - middle of the mark
 * @param height - how far the mark reaches across the strand
 * @param angle - direction of the strand [rad], y down
 */
export function breakMark(centre: Point, height: number, angle = 0): Shape[] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const turned = (along: number, across: number): Point => ({
    x: centre.x + along * cos - across * sin,
    y: centre.y + along * sin + across * cos,
  });
  const half = height / 2;
  const zigzag = (dx: number): Point[] => [
    turned(dx - 1, -half),
    turned(dx + 1.5, -half * 0.25),
    turned(dx - 1.5, half * 0.25),
    turned(dx + 1, half),
  ];
  const left = zigzag(-2);
  const right = zigzag(2);
  return [
    polygon([...left, ...right.toReversed()], 'paper', { ink: 'paper', width: 0 }),
    polyline(left, { width: 0.8 }),
    polyline(right, { width: 0.8 }),
  ];
}
