/** What a solver found, and how well: `not-converged` and `no-bracket` never carry a usable value. */
export interface RootResult {
  readonly value: number;
  /** Function value left at `value`. */
  readonly residual: number;
  readonly iterations: number;
  readonly status: 'ok' | 'no-bracket' | 'not-converged';
}

export interface RootOptions {
  /** Width of the bracket at which the search ends, in the unit of the argument. */
  readonly tolerance?: number;
  readonly maxIterations?: number;
}

/**
 * Root of a continuous function between two points where it has opposite signs, by Brent's method:
 * inverse quadratic interpolation or secant where they make headway, bisection where they do not.
 *
 * @param f - the function; called at points of the bracket only
 * @param bracket - two arguments with function values of opposite sign, any order
 * @param options - tolerance [unit of the argument], > 0; maxIterations [1], >= 1
 * @returns the root with residual, iterations and status [unit of the argument]
 * @validity continuous on the bracket; `no-bracket` when the signs at its ends are equal or not finite
 * @source Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4 (from memory)
 * @verified NUM-01 root of cos x = x
 */
export function bracketedRoot(
  f: (x: number) => number,
  bracket: readonly [number, number],
  options: RootOptions = {},
): RootResult {
  const { tolerance = 1e-12, maxIterations = 100 } = options;
  const state = start(f, bracket);
  if (!(Number.isFinite(state.fa) && Number.isFinite(state.fb)) || state.fa * state.fb > 0) {
    return { value: state.b, residual: state.fb, iterations: 0, status: 'no-bracket' };
  }
  for (let iterations = 0; iterations <= maxIterations; iterations += 1) {
    const half = 0.5 * (state.c - state.b);
    const smallest = 2 * Number.EPSILON * Math.abs(state.b) + 0.5 * tolerance;
    if (state.fb === 0 || Math.abs(half) <= smallest) {
      return { value: state.b, residual: state.fb, iterations, status: 'ok' };
    }
    step(state, half, smallest);
    state.fb = f(state.b);
    rebracket(state);
  }
  return { value: state.b, residual: state.fb, iterations: maxIterations, status: 'not-converged' };
}

/** b: best estimate; a: the one before; c: end of the bracket on the other side of the root. */
interface State {
  a: number;
  b: number;
  c: number;
  fa: number;
  fb: number;
  fc: number;
  last: number;
  beforeLast: number;
}

function start(f: (x: number) => number, [a, b]: readonly [number, number]): State {
  const fa = f(a);
  const fb = f(b);
  const state = { a, b, c: a, fa, fb, fc: fa, last: b - a, beforeLast: b - a };
  if (Math.abs(fa) < Math.abs(fb)) swapEnds(state);
  return state;
}

function swapEnds(s: State): void {
  [s.a, s.b, s.c] = [s.b, s.c, s.b];
  [s.fa, s.fb, s.fc] = [s.fb, s.fc, s.fb];
}

function step(s: State, half: number, smallest: number): void {
  const trial = interpolated(s, half);
  const [p, q] = trial;
  if (Math.abs(s.beforeLast) >= smallest && Math.abs(s.fa) > Math.abs(s.fb) && accepted(s, p, q, half, smallest)) {
    s.beforeLast = s.last;
    s.last = p / q;
  } else {
    s.beforeLast = half;
    s.last = half;
  }
  s.a = s.b;
  s.fa = s.fb;
  s.b += Math.abs(s.last) > smallest ? s.last : Math.sign(half) * smallest;
}

/** Step p / q from b: secant with two points, inverse quadratic with three. */
function interpolated(s: State, half: number): [p: number, q: number] {
  const r3 = s.fb / s.fa;
  if (s.a === s.c) return signed(2 * half * r3, 1 - r3);
  const r1 = s.fa / s.fc;
  const r2 = s.fb / s.fc;
  const p = r3 * (2 * half * r1 * (r1 - r2) - (s.b - s.a) * (r2 - 1));
  return signed(p, (r1 - 1) * (r2 - 1) * (r3 - 1));
}

function signed(p: number, q: number): [p: number, q: number] {
  return p > 0 ? [p, -q] : [-p, q];
}

function accepted(s: State, p: number, q: number, half: number, smallest: number): boolean {
  return 2 * p < Math.min(3 * half * q - Math.abs(smallest * q), Math.abs(s.beforeLast * q));
}

function rebracket(s: State): void {
  if (s.fb > 0 === s.fc > 0) {
    s.c = s.a;
    s.fc = s.fa;
    s.last = s.b - s.a;
    s.beforeLast = s.last;
  }
  if (Math.abs(s.fc) < Math.abs(s.fb)) swapEnds(s);
}
