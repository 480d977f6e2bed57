import { describe, expect, it } from 'vitest';
import { checkAgainst } from '../../../tools/validation/check.ts';
import { beltPath } from '../../src/loop/path.ts';
import type { PathInput } from '../../src/loop/path-input.ts';
import { pathKernel, pathKernelOut } from '../../src/loop/path-kernel.ts';
import { turnAngle } from '../../src/loop/turn-angle.ts';
import { Refusal } from '../../src/refusal.ts';
import { layout } from './layouts.ts';

/** A bed of carrying rollers above the upper strand with a pressure roller before each, press-up 1 mm. */
function bed(carriers: number): PathInput {
  const rows = [
    [0, 0, 50, 1],
    [carriers * 100 + 1000, 0, 50, 1],
  ];
  for (let k = carriers - 1; k >= 0; k--) rows.push([k * 100 + 550, 76, 25.2, -1], [k * 100 + 500, 30, 20.2, 1]);
  return layout(rows, 1.6, 0.6);
}

/** CPU time, so that a busy machine does not fail the test. */
function answer(input: PathInput): { code: string; spent_ms: number } {
  const start = process.cpuUsage();
  let code = 'ok';
  try {
    beltPath(input);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    code = error.code;
  }
  const { user, system } = process.cpuUsage(start);
  return { code, spent_ms: (user + system) / 1000 };
}

describe('many pulleys', () => {
  it('[PATH-17] a bed of 10,000 pulleys answers in under a second', () => {
    const input = bed(4999);
    expect(input.pulleys.length).toBe(10_000);
    const { code, spent_ms } = answer(input);
    expect(code).toBe('ok');
    expect(spent_ms).toBeLessThan(1000);
  });

  it('[PATH-17] one pulley astray among 10,000 is found in under a second', () => {
    const { pulleys, belt } = bed(4999);
    const astray = pulleys.map((one, i) => (i === 5000 ? { ...one, y_m: one.y_m + 0.2 } : one));
    const { code, spent_ms } = answer({ pulleys: astray, belt });
    expect(code).not.toBe('ok');
    expect(spent_ms).toBeLessThan(1000);
  });

  it.each([
    ['along', 0],
    ['across', 1],
  ])('[PATH-17] 10,000 pulleys with every long span beside every other, %s', (_, swap) => {
    const rows = Array.from({ length: 9998 }, (_, k) => [k * 120, k % 2 ? 0 : 5000, 50, k % 2 ? 1 : -1]);
    rows.push([9998 * 120, 8000, 50, 1], [-300, 8000, 50, 1]);
    const festoon = layout(rows);
    const turned = { ...festoon, pulleys: festoon.pulleys.map((one) => ({ ...one, x_m: -one.y_m, y_m: one.x_m })) };
    const { code, spent_ms } = answer(swap ? turned : festoon);
    expect(code).toBe('ok');
    expect(spent_ms).toBeLessThan(1000);
  });

  it('[PATH-17] 10,000 pulleys thrown anywhere are refused in under a second, more than 20,000 at once', () => {
    const scattered = (count: number) =>
      layout(
        Array.from({ length: count }, (_, k) => [(k * 7919) % 100_003, (k * 104_729) % 99_991, 20, k % 3 ? 1 : -1]),
      );
    const { code, spent_ms } = answer(scattered(10_000));
    expect(code).not.toBe('ok');
    expect(spent_ms).toBeLessThan(1000);
    expect(answer(scattered(20_001)).code).toBe('out-of-range');
  });
});

describe('the kernel', () => {
  it('[PATH-18] gives what the checked path gives, and its derivatives', () => {
    const input = bed(20);
    const path = beltPath(input);
    const xs = Float64Array.from(input.pulleys, (one) => one.x_m);
    const ys = Float64Array.from(input.pulleys, (one) => one.y_m);
    const radii = Float64Array.from(path.neutralRadii_m, (r, i) => (input.pulleys[i]?.turn === 'left' ? r : -r));
    const out = pathKernelOut(xs.length);
    expect(pathKernel(xs, ys, radii, out)).toBe(path.length_m);
    const derivative = (values: Float64Array, i: number) => {
      const [kept, step] = [values[i] as number, 1e-6];
      const at = (value: number) => {
        values[i] = value;
        return pathKernel(xs, ys, radii, pathKernelOut(xs.length));
      };
      const slope = (at(kept + step) - at(kept - step)) / (2 * step);
      values[i] = kept;
      return slope;
    };
    xs.forEach((_, i) => {
      expect(derivative(xs, i)).toBeCloseTo(out.dLength_dX[i] as number, 6);
      expect(derivative(ys, i)).toBeCloseTo(out.dLength_dY[i] as number, 6);
    });
  });

  it('[PATH-18] angle of a unit vector against the arctangent', () => {
    let worst = 0;
    for (let k = 0; k < 200_000; k++) {
      const angle = (k / 200_000) * 2 * Math.PI;
      worst = Math.max(worst, Math.abs(turnAngle(Math.sin(angle), Math.cos(angle)) - angle));
    }
    checkAgainst({
      topic: 'loop',
      id: 'PATH-angle',
      source: 'sine and cosine of the platform',
      evidence: 'independent',
      inputs: '200,000 angles round the circle, largest error',
      unit: 'rad',
      published: 0,
      ours: worst,
      tolerance: 2e-15,
      why: 'a few rounding errors at 2*pi',
    });
    expect(turnAngle(0, 1)).toBe(0);
    expect(turnAngle(Number.NaN, 1)).toBeNaN();
  });
});
