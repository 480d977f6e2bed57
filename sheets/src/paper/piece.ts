import type { Point } from '../drawing/shapes.ts';
import type { Shape } from '../page/page.ts';

/** Something of a known height that is printed whole, at a place chosen later. */
export interface Piece {
  readonly height: number;
  readonly draw: (corner: Point) => readonly Shape[];
  /** Never the last thing in a column: titles stay with what they title. */
  readonly keepWithNext?: boolean;
  /** White room that is dropped at the head of a column. */
  readonly space?: boolean;
}

/** How the pieces of one side are set. */
export interface PaperStyle {
  /** Size of the running text [pt]. */
  readonly size: number;
  /** Steps one after the other in one paragraph, to save room. */
  readonly runIn: boolean;
  /** Whether formulas name where they come from. */
  readonly formulaSources: boolean;
}

export const leadingOf = (size: number): number => size * 1.17;

export const space = (height: number): Piece => ({ height, draw: () => [], space: true });

/** Height of pieces in one column; white room at its head falls away. */
export const heightOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, piece, i) => sum + (i === 0 && piece.space ? 0 : piece.height), 0);
