import { rodasp, rowLength } from './rodas.ts';
import type { Slab } from './slab.ts';

const { a, c, d2, d3 } = rodasp;
type Stages = readonly [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

/**
 * Linear temperatures at a stage and the earlier stages' share of its right-hand side, in one pass over memory.
 * linear = T + sum_j a[s][j]*k_j; sum = sum_j c[s][j]*k_j.
 *
 * @param slab - slab with the stages before this one
 * @param stage - number of the stage [1], 0 to 5
 * @returns nothing
 * @source Rosenbrock method, see `rodas.ts`
 */
export function sumStages(slab: Slab, stage: number): void {
  if (stage === 0) firstStage(slab);
  else if (stage <= 2) sumTwo(slab, stage * rowLength);
  else sumFive(slab, stage * rowLength);
}

function firstStage({ temperature, linear, stage, sum, count }: Slab): void {
  for (let i = 0; i < count; i += 1) {
    const now = temperature[i] as number;
    linear[i] = now;
    stage[i] = now;
    sum[i] = 0;
  }
}

function sumTwo({ temperature, linear, stage, sum, count, k }: Slab, row: number): void {
  const [k0, k1] = k as Stages;
  const a0 = a[row] as number;
  const a1 = a[row + 1] as number;
  const c0 = c[row] as number;
  const c1 = c[row + 1] as number;
  for (let i = 0; i < count; i += 1) {
    const first = k0[i] as number;
    const second = k1[i] as number;
    const now = (temperature[i] as number) + a0 * first + a1 * second;
    linear[i] = now;
    stage[i] = now;
    sum[i] = c0 * first + c1 * second;
  }
}

/** Weights of stages that are still to come are 0. */
function sumFive({ temperature, linear, stage, sum, count, k }: Slab, row: number): void {
  const [k0, k1, k2, k3, k4] = k as Stages;
  const a0 = a[row] as number;
  const a1 = a[row + 1] as number;
  const a2 = a[row + 2] as number;
  const a3 = a[row + 3] as number;
  const a4 = a[row + 4] as number;
  const c0 = c[row] as number;
  const c1 = c[row + 1] as number;
  const c2 = c[row + 2] as number;
  const c3 = c[row + 3] as number;
  const c4 = c[row + 4] as number;
  for (let i = 0; i < count; i += 1) {
    const first = k0[i] as number;
    const second = k1[i] as number;
    const third = k2[i] as number;
    const fourth = k3[i] as number;
    const fifth = k4[i] as number;
    const now = (temperature[i] as number) + a0 * first + a1 * second + (a2 * third + a3 * fourth + a4 * fifth);
    linear[i] = now;
    stage[i] = now;
    sum[i] = c0 * first + c1 * second + (c2 * third + c3 * fourth + c4 * fifth);
  }
}

/**
 * Prepares the interpolation inside the step that was tried last.
 *
 * @param slab - slab with all stages of a step
 * @returns nothing
 * @source third-order interpolation of RODASP, see `rodas.ts`
 */
export function prepareInside({ inside2, inside3, count, k }: Slab): void {
  const [k0, k1, k2, k3, k4] = k as Stages;
  const s0 = d2[0] as number;
  const s1 = d2[1] as number;
  const s2 = d2[2] as number;
  const s3 = d2[3] as number;
  const t0 = d3[0] as number;
  const t1 = d3[1] as number;
  const t2 = d3[2] as number;
  const t3 = d3[3] as number;
  const t4 = d3[4] as number;
  for (let i = 0; i < count; i += 1) {
    const first = k0[i] as number;
    const second = k1[i] as number;
    const third = k2[i] as number;
    const fourth = k3[i] as number;
    inside2[i] = s0 * first + s1 * second + (s2 * third + s3 * fourth);
    inside3[i] = t0 * first + t1 * second + (t2 * third + t3 * fourth) + t4 * (k4[i] as number);
  }
}

/**
 * Forgets the stages of a step that came to nothing.
 *
 * @param slab - slab
 * @returns nothing
 * @source derived: a stage that is not a number must not reach the next try
 */
export function clearStages(slab: Slab): void {
  for (const one of slab.k) one.fill(0);
}
