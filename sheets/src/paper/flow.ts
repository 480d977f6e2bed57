import type { Point } from '../drawing/shapes.ts';
import type { Shape } from '../page/page.ts';
import type { Piece } from './piece.ts';

/** A column to fill: its top left corner and its height. */
export interface Column {
  readonly corner: Point;
  readonly height: number;
}

/** What was printed, and the pieces for which there was no room. */
export interface Flowed {
  readonly shapes: readonly Shape[];
  readonly left: readonly Piece[];
}

/** Height of a piece together with those that must stay with it. */
function groupHeight(pieces: readonly Piece[], from: number): number {
  let height = 0;
  for (let i = from; i < pieces.length; i += 1) {
    height += pieces[i]?.height ?? 0;
    if (!pieces[i]?.keepWithNext) break;
  }
  return height;
}

/** White room at the head falls away; within what is left it stays, and alone it is nothing left. */
function fromFirstWord(pieces: readonly Piece[]): readonly Piece[] {
  const first = pieces.findIndex((piece) => !piece.space);
  return first < 0 ? [] : pieces.slice(first);
}

/** Fills columns from the top, one after the other. */
export function flow(pieces: readonly Piece[], columns: readonly Column[]): Flowed {
  const shapes: Shape[] = [];
  let next = 0;
  for (const { corner, height } of columns) {
    let y = 0;
    for (let piece = pieces[next]; piece !== undefined; piece = pieces[next]) {
      const dropped = piece.space === true && y === 0;
      if (!dropped && y + groupHeight(pieces, next) > height + 0.01) break;
      if (!dropped) {
        shapes.push(...piece.draw({ x: corner.x, y: corner.y + y }));
        y += piece.height;
      }
      next += 1;
    }
  }
  return { shapes, left: fromFirstWord(pieces.slice(next)) };
}

/** The same with all columns about equally full. */
export function balanced(pieces: readonly Piece[], columns: readonly Column[]): Flowed {
  const full = flow(pieces, columns);
  if (full.left.length > 0) return full;
  const whole = Math.max(...columns.map(({ height }) => height));
  const total = pieces.reduce((sum, { height }) => sum + height, 0);
  for (let height = total / columns.length; height < whole; height += 3) {
    const tried = flow(
      pieces,
      columns.map((column) => ({ ...column, height: Math.min(height, column.height) })),
    );
    if (tried.left.length === 0) return tried;
  }
  return full;
}
