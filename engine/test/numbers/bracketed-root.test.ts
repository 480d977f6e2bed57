import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { bracketedRoot } from '../../src/numbers/bracketed-root.ts';

const runs = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((n) => min + ((max - min) * n) / 1_000_000);

describe('bracketed root', () => {
  it('[TENSION-130] finds the root of cos x = x to the last digits', () => {
    const { value, status } = bracketedRoot((x) => Math.cos(x) - x, [0, 1], { tolerance: 1e-15 });
    checkAgainst({
      topic: 'loop',
      id: 'NUM-01 root of cos x = x',
      source: 'Dottie number, OEIS A003957 (from memory): 0.739085133215160641...',
      evidence: 'printed',
      inputs: 'bracket 0 to 1',
      unit: '1',
      published: 0.7390851332151607,
      ours: value,
      tolerance: 5e-16,
      why: 'one unit in the last place',
    });
    expect(status).toBe('ok');
  });

  it('[TENSION-131] cubes with a known root, either direction of the bracket', () => {
    fc.assert(
      fc.property(between(-5, 5), between(0.01, 10), between(0.01, 10), fc.boolean(), (root, below, above, turned) => {
        const f = (x: number) => (x - root) * ((x - root) ** 2 + 0.1);
        const ends = [root - below, root + above] as const;
        const out = bracketedRoot(f, turned ? [ends[1], ends[0]] : ends);
        expect(out.status).toBe('ok');
        expect(Math.abs(out.value - root)).toBeLessThan(2e-12);
        expect(out.iterations).toBeLessThanOrEqual(100);
      }),
      runs,
    );
  });

  it('[TENSION-132] a root at an end of the bracket is found at once', () => {
    expect(bracketedRoot((x) => x, [0, 3])).toMatchObject({ value: 0, residual: 0, status: 'ok' });
    expect(bracketedRoot((x) => x - 3, [0, 3])).toMatchObject({ value: 3, residual: 0, status: 'ok' });
  });

  it('[TENSION-133] no change of sign and no number are a status, not a guess; so is too few iterations', () => {
    expect(bracketedRoot((x) => x * x + 1, [-1, 1]).status).toBe('no-bracket');
    expect(bracketedRoot(() => Number.NaN, [-1, 1]).status).toBe('no-bracket');
    expect(bracketedRoot((x) => Math.cos(x) - x, [0, 1], { maxIterations: 1 })).toMatchObject({
      status: 'not-converged',
      iterations: 1,
    });
  });

  it('[TENSION-133] a step is closed in by bisection where no curve fits it', () => {
    const out = bracketedRoot((x) => (x < 0.3 ? -1 : 1), [-7, 11], { tolerance: 1e-12 });
    expect(out.status).toBe('ok');
    expect(Math.abs(out.value - 0.3)).toBeLessThan(1e-11);
  });
});
