import { type Point, polyline } from '../drawing/shapes.ts';
import type { Shape } from '../page/page.ts';
import type { Column } from './flow.ts';
import { margin, type Paper, paperSizes } from './paper-size.ts';

/** The printable part of one side, in points. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly inner: number;
  readonly bottom: number;
}

/** A part of a side that is already set: its shapes and where the next one may begin. */
export interface SetPart {
  readonly shapes: readonly Shape[];
  readonly end: number;
}

/** From where to where a body may reach. */
export interface Room {
  readonly top: number;
  readonly bottom: number;
}

const gutter = 10;

export function frameOf(paper: Paper): Frame {
  return frameOfSize(paperSizes[paper], margin);
}

/** The printable part of a paper, equally far from every edge. */
export function frameOfSize(
  { width, height }: { readonly width: number; readonly height: number },
  edge: number,
): Frame {
  return { width, height, left: edge, inner: width - 2 * edge, bottom: height - edge };
}

export const rule = (frame: Frame, y: number, width: number): Shape =>
  polyline(
    [
      { x: frame.left, y },
      { x: frame.left + frame.inner, y },
    ],
    { width },
  );

export const columnWidth = (frame: Frame): number => (frame.inner - gutter) / 2;

export function twoColumns(frame: Frame, top: number, bottom: number): Column[] {
  const corner = (i: number): Point => ({ x: frame.left + i * (columnWidth(frame) + gutter), y: top });
  return [0, 1].map((i) => ({ corner: corner(i), height: bottom - top }));
}

export const oneColumn = (frame: Frame, top: number, bottom: number): Column[] => [
  { corner: { x: frame.left, y: top }, height: bottom - top },
];
