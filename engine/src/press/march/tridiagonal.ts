/** Factors of a tridiagonal matrix, eliminated from both ends towards the middle so that two chains run side by side. */
export interface Factors {
  readonly count: number;
  readonly inverse: Float64Array;
  readonly forward: Float64Array;
  readonly back: Float64Array;
}

/**
 * Makes room for the factors of a tridiagonal matrix.
 *
 * @param count - number of unknowns [1], 2 or more
 * @returns empty factors [1]
 * @source derived: plain allocation
 */
export function emptyFactors(count: number): Factors {
  return {
    count,
    inverse: new Float64Array(count),
    forward: new Float64Array(count),
    back: new Float64Array(count),
  };
}

/**
 * Factors a tridiagonal matrix with off-diagonals -down[i] (row i + 1, column i) and -up[i] (row i, column i + 1).
 *
 * @param f - factors, overwritten
 * @param diagonal - main diagonal [unit of the matrix], overwritten
 * @param down - what row i + 1 takes from i [unit of the matrix]
 * @param up - what row i takes from i + 1 [unit of the matrix]
 * @returns nothing
 * @validity diagonally dominant: no pivoting
 * @source derived: Gauss elimination from both ends
 * @verified MARCH-04 solution of a tridiagonal system
 */
export function factorTridiagonal(f: Factors, diagonal: Float64Array, down: Float64Array, up: Float64Array): void {
  const { count, inverse, forward, back } = f;
  const middle = count >> 1;
  for (let i = 0; i < middle; i += 1) {
    const fromAbove = down[i] as number;
    const fromBelow = up[i] as number;
    const pivot = 1 / (diagonal[i] as number);
    inverse[i] = pivot;
    forward[i] = fromAbove * pivot;
    back[i] = fromBelow * pivot;
    diagonal[i + 1] = (diagonal[i + 1] as number) - fromAbove * fromBelow * pivot;
  }
  for (let i = count - 1; i > middle; i -= 1) {
    const fromAbove = down[i - 1] as number;
    const fromBelow = up[i - 1] as number;
    const pivot = 1 / (diagonal[i] as number);
    inverse[i] = pivot;
    forward[i] = fromBelow * pivot;
    back[i] = fromAbove * pivot;
    diagonal[i - 1] = (diagonal[i - 1] as number) - fromAbove * fromBelow * pivot;
  }
  inverse[middle] = 1 / (diagonal[middle] as number);
}

/**
 * Solves a factored tridiagonal system.
 *
 * @param f - factors
 * @param x - right-hand side, overwritten by the solution
 * @returns nothing
 * @source derived: substitution from both ends
 * @verified MARCH-04 solution of a tridiagonal system
 */
export function solveTridiagonal(f: Factors, x: Float64Array): void {
  const { count, inverse, forward, back } = f;
  const middle = count >> 1;
  const last = count - 1;
  const below = last - middle;
  let high = x[0] as number;
  let low = x[last] as number;
  for (let i = 0; i < below; i += 1) {
    high = (x[i + 1] as number) + (forward[i] as number) * high;
    x[i + 1] = high;
    low = (x[last - i - 1] as number) + (forward[last - i] as number) * low;
    x[last - i - 1] = low;
  }
  // With an even count the upper half is one row longer.
  if (below < middle) x[middle] = (x[middle] as number) + (forward[middle - 1] as number) * (x[middle - 1] as number);
  high = (x[middle] as number) * (inverse[middle] as number);
  x[middle] = high;
  low = high;
  if (below < middle) {
    high = (x[middle - 1] as number) * (inverse[middle - 1] as number) + (back[middle - 1] as number) * high;
    x[middle - 1] = high;
  }
  for (let i = below - 1; i >= 0; i -= 1) {
    high = (x[i] as number) * (inverse[i] as number) + (back[i] as number) * high;
    x[i] = high;
    low = (x[last - i] as number) * (inverse[last - i] as number) + (back[last - i] as number) * low;
    x[last - i] = low;
  }
}
