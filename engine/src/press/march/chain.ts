import { lastStage, type Rosenbrock, rodasp, rowLength } from './rodas.ts';

/**
 * A Rosenbrock step in another basis, in which each solution needs only the one before. With W = C/(gamma*h) - J for
 * C*y' = f(y):
 *   W*v_0 = f(y);  W*x = d_1;  W*v_i = C/(gamma*h)*(v_i-1 + carry_i*x) + sum_s bend_is*d_s, i = 1..4,
 * where d_s = f(Y_s) - f(y) - J*(Y_s - y) is what bends f at the stage Y_s = y + sum_i stage_si*v_i: nothing at all where
 * heat flows in straight lines, so that such a stack needs five solutions with nothing to add up before each, instead
 * of six with all that came before. The step's end, its error and what lies inside it are sums of v and x.
 *
 * Every row holds the weights of v_0..v_4, then x.
 */
export interface Chain {
  readonly gamma: number;
  /** Six rows. */
  readonly stage: Float64Array;
  /** A row of six stages for each of v_0..v_4, then x. */
  readonly bend: Float64Array;
  readonly carry: Float64Array;
  readonly next: Float64Array;
  readonly error: Float64Array;
  /** Third-order interpolation inside the step. */
  readonly d2: Float64Array;
  readonly d3: Float64Array;
  /** Weights of the right-hand sides, over the step, in something that is only summed up: it balances with the states. */
  readonly sum: Float64Array;
  /** The same for what each stage bends. */
  readonly sumBend: Float64Array;
}

/** Entries of a row, the last of v, and the place of x. */
export const chainRow = 6;
export const lastLink = 4;
export const EXTRA = 5;

type Matrix = number[][];

/** RODASP as such a chain; the tests hold both against each other. */
export const chain: Chain = chainOf(rodasp);

/** With A = 1 + a, N = (a + gamma*c)/A: u = A*k solves W*u = f + d + C/(gamma*h)*N*u, and the basis is 1, N1, N^2*1... */
function chainOf(method: Rosenbrock): Chain {
  const { gamma } = method;
  const a = rowsOf(method.a);
  const inverse = inverseOf(a.map((row, s) => row.map((value, j) => (s === j ? 1 : value))));
  const c = rowsOf(method.c);
  const n = times(
    a.map((row, s) => row.map((value, j) => value + gamma * (c[s]?.[j] ?? 0))),
    inverse,
  );
  const basis = basisOf(n);
  const k = times(inverse, basis);
  const last = [...Array.from(method.a.subarray(lastStage * rowLength)), 1];
  const next = combine(last, k);
  const carry = fromBasis(
    basis,
    n.map((row) => row[1] ?? 0),
  );
  const bends = Array.from({ length: chainRow }, (_, s) =>
    s < 2 ? new Array<number>(chainRow).fill(0) : fromBasis(basis, unit(s)),
  );
  const bend = Array.from({ length: chainRow }, (_, i) => bends.map((row) => row[i] ?? 0));
  bend[EXTRA] = unit(1);
  const sum = sumWeights(next, carry, gamma);
  return {
    gamma,
    stage: Float64Array.from(basis.flatMap((row, s) => row.map((value, i) => value - (k[s]?.[i] ?? 0)))),
    bend: Float64Array.from(bend.flat()),
    carry: Float64Array.from(carry),
    next: Float64Array.from(next),
    error: Float64Array.from(k[lastStage] ?? []),
    d2: Float64Array.from(combine([...method.d2, 0], k)),
    d3: Float64Array.from(combine([...method.d3, 0], k)),
    sum: Float64Array.from(sum),
    sumBend: Float64Array.from(combine(sum, bend)),
  };
}

/** Columns 1, N1 ... N^4*1 and the second unit vector, which is all of the second stage that is not the first. */
function basisOf(n: Matrix): Matrix {
  const columns: number[][] = [new Array<number>(chainRow).fill(1)];
  for (let i = 1; i <= lastLink; i += 1) columns.push(n.map((row) => dot(row, columns[i - 1] ?? [])));
  columns.push(unit(1));
  return Array.from({ length: chainRow }, (_, s) => columns.map((column) => column[s] ?? 0));
}

/** Weights of v_1..v_4 in a vector whose first two entries are 0 (or not asked for): a triangle of four rows. */
function fromBasis(basis: Matrix, vector: readonly number[]): number[] {
  const weights = new Array<number>(chainRow).fill(0);
  for (let i = 1; i <= lastLink; i += 1) {
    const row = basis[i + 1] ?? [];
    weights[i] = ((vector[i + 1] ?? 0) - dot(row, weights)) / (row[i] ?? 1);
  }
  return weights;
}

/** Something that is only summed up is a chain of its own, v_i = gamma*h*g_i + v_i-1 + carry_i*x, weighted by `next`. */
function sumWeights(next: readonly number[], carry: readonly number[], gamma: number): number[] {
  const weights = new Array<number>(chainRow).fill(0);
  let tail = 0;
  weights[EXTRA] = gamma * (next[EXTRA] ?? 0);
  for (let i = lastLink; i >= 0; i -= 1) {
    tail += next[i] ?? 0;
    weights[i] = gamma * tail;
    weights[EXTRA] = (weights[EXTRA] ?? 0) + gamma * tail * (carry[i] ?? 0);
  }
  return weights;
}

function rowsOf(flat: Float64Array): Matrix {
  return Array.from({ length: chainRow }, (_, s) => [
    ...Array.from(flat.subarray(s * rowLength, (s + 1) * rowLength)),
    0,
  ]);
}

function unit(at: number): number[] {
  return Array.from({ length: chainRow }, (_, i) => (i === at ? 1 : 0));
}

function dot(row: readonly number[], column: readonly number[]): number {
  return row.reduce((sum, value, i) => sum + value * (column[i] ?? 0), 0);
}

function combine(weights: readonly number[], rows: Matrix): number[] {
  return unit(0).map((_, i) => weights.reduce((sum, weight, s) => sum + weight * (rows[s]?.[i] ?? 0), 0));
}

function times(left: Matrix, right: Matrix): Matrix {
  return left.map((row) => combine(row, right));
}

/** Of a lower triangle, column by column. */
function inverseOf(triangle: Matrix): Matrix {
  const inverse = triangle.map(() => new Array<number>(chainRow).fill(0));
  for (let j = 0; j < chainRow; j += 1) {
    for (let i = j; i < chainRow; i += 1) {
      const row = triangle[i] ?? [];
      let value = i === j ? 1 : 0;
      for (let s = j; s < i; s += 1) value -= (row[s] ?? 0) * (inverse[s]?.[j] ?? 0);
      (inverse[i] ?? [])[j] = value / (row[i] ?? 1);
    }
  }
  return inverse;
}
