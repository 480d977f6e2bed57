import { describe, expect, it } from 'vitest';
import { chain, chainRow, EXTRA, lastLink } from '../../../src/press/march/chain.ts';
import { lastStage, rodasp, rowLength } from '../../../src/press/march/rodas.ts';

/** One unknown, y' = f(y), and how a Rosenbrock step and a chain of solutions march it. */
interface Equation {
  readonly f: (y: number) => number;
  readonly slope: (y: number) => number;
}

const weight = (table: Float64Array, row: number, column: number, length: number) => table[row * length + column] ?? 0;

function byStages({ f, slope }: Equation, y: number, step: number): { next: number; error: number } {
  const { gamma, a, c } = rodasp;
  const k: number[] = [];
  let stage = y;
  for (let s = 0; s <= lastStage; s += 1) {
    stage = y + k.reduce((sum, one, j) => sum + weight(a, s, j, rowLength) * one, 0);
    const earlier = k.reduce((sum, one, j) => sum + weight(c, s, j, rowLength) * one, 0);
    k.push((f(stage) + earlier / step) / (1 / (gamma * step) - slope(y)));
  }
  const error = k[lastStage] ?? Number.NaN;
  return { next: stage + error, error };
}

function byChain({ f, slope }: Equation, y: number, step: number): { next: number; error: number } {
  const rate = 1 / (chain.gamma * step);
  const matrix = rate - slope(y);
  const v: number[] = new Array<number>(chainRow).fill(0);
  const bends: number[] = new Array<number>(chainRow).fill(0);
  const sum = (weights: Float64Array, row = 0) =>
    v.reduce((all, one, i) => all + weight(weights, row, i, chainRow) * one, 0);
  const bend = (stage: number) => {
    const rise = sum(chain.stage, stage);
    bends[stage] = f(y + rise) - f(y) - slope(y) * rise;
  };
  const bent = (link: number) => bends.reduce((all, one, s) => all + weight(chain.bend, link, s, chainRow) * one, 0);
  v[0] = f(y) / matrix;
  bend(1);
  v[EXTRA] = bent(EXTRA) / matrix;
  for (let link = 1; link <= lastLink; link += 1) {
    bend(link + 1);
    const carried = (v[link - 1] ?? 0) + (chain.carry[link] ?? 0) * (v[EXTRA] ?? 0);
    v[link] = (rate * carried + bent(link)) / matrix;
  }
  return { next: y + sum(chain.next), error: sum(chain.error) };
}

const equations: Readonly<Record<string, Equation>> = {
  "y' = -3 y + 1": { f: (y) => 1 - 3 * y, slope: () => -3 },
  "y' = -y^2": { f: (y) => -y * y, slope: (y) => -2 * y },
  "y' = cos(4 y) - y^3": { f: (y) => Math.cos(4 * y) - y ** 3, slope: (y) => -4 * Math.sin(4 * y) - 3 * y * y },
};

describe('a Rosenbrock step as a chain of solutions', () => {
  it.each(Object.entries(equations))('[MARCH-01] the chain gives step and error of the stages: %s', (_, equation) => {
    for (const step of [0.01, 0.3, 5]) {
      const [stages, links] = [byStages(equation, 0.7, step), byChain(equation, 0.7, step)];
      expect(Math.abs(links.next - stages.next)).toBeLessThan(1e-11 * Math.max(1, Math.abs(stages.next)));
      expect(Math.abs(links.error - stages.error)).toBeLessThan(1e-11 * Math.max(1, Math.abs(stages.next)));
    }
  });

  it('[MARCH-01] what is only summed up has the weight of the whole step', () => {
    // y' = 1: the first right-hand side alone, and it must come to the length of the step.
    expect(chain.sum[0]).toBeCloseTo(1, 12);
    expect(chain.next.slice(0, EXTRA).reduce((sum, one) => sum + one, 0) * chain.gamma).toBeCloseTo(1, 12);
  });
});
